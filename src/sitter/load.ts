import * as v from 'valibot';
import { BadSculpture, type GlbMesh, readGlb } from './glb';
import type { Sculpture, SculptureMesh } from './sculpture';
import { LANDMARKS, SUBSTANCES } from './types';

const place = v.tuple([
  v.pipe(v.number(), v.integer(), v.minValue(0)),
  v.pipe(v.number(), v.integer(), v.minValue(0)),
]);
const point = v.tuple([v.number(), v.number(), v.number()]);
const extras = v.object({
  format: v.literal('sculpture'),
  version: v.literal(1),
  id: v.string(),
  source: v.string(),
  landmarks: v.strictObject(v.entriesFromList(LANDMARKS, place)),
  guides: v.record(v.string(), place),
  anchors: v.record(v.string(), point),
  body: v.record(v.string(), v.number()),
});
const meshExtras = v.object({ substance: v.picklist(SUBSTANCES), masks: v.array(v.string()) });

function parse<T extends v.GenericSchema>(schema: T, input: unknown, what: string) {
  const result = v.safeParse(schema, input);
  if (result.success) return result.output;
  const [issue] = result.issues;
  throw new BadSculpture(`${what} ${v.getDotPath(issue) ?? ''}: ${issue.message}`);
}

/** One byte of every four. */
const column = (channels: Uint8Array, k: number): Uint8Array =>
  Uint8Array.from({ length: channels.length / 4 }, (_, i) => channels[4 * i + k] as number);

function toMesh(mesh: GlbMesh): SculptureMesh {
  const { substance, masks } = parse(meshExtras, mesh.extras, `mesh ${mesh.name}`);
  const channel = (name: string): Uint8Array => {
    const data = mesh.channels[name];
    if (!data) throw new BadSculpture(`mesh ${mesh.name} has no ${name}`);
    return data;
  };
  const count = mesh.positions.length / 3;
  if (mesh.indices.some((i) => i >= count))
    throw new BadSculpture(`mesh ${mesh.name} has a triangle without a vertex`);
  return {
    name: mesh.name,
    substance,
    positions: mesh.positions,
    normals: mesh.normals,
    indices: mesh.indices,
    openness: column(channel('_SURFACE'), 0),
    regions: column(channel('_SURFACE'), 1),
    masks: Object.fromEntries(
      masks.map((name, k) => [name, column(channel(`_MASKS_${Math.floor(k / 4)}`), k % 4)]),
    ),
  };
}

/** Reads a file of models/sculpture. @throws BadSculpture with what was expected. */
export async function loadSculpture(bytes: Uint8Array): Promise<Sculpture> {
  const glb = await readGlb(bytes);
  const { landmarks, guides, anchors, id, source, body } = parse(extras, glb.extras, 'extras');
  const meshes = glb.meshes.map(toMesh);
  for (const [name, [m, vertex]] of Object.entries({ ...landmarks, ...guides }))
    if (vertex * 3 >= (meshes[m]?.positions.length ?? 0))
      throw new BadSculpture(`${name} stands on no vertex`);
  return { id, source, meshes, landmarks, guides, anchors, body };
}
