import * as v from 'valibot';
import { BadSculpture, type GlbMesh, readGlb } from './glb';
import type { SculptureFile, SculptureMesh } from './sculpture';
import { LANDMARKS, type LandmarkName, SUBSTANCES } from './types';

const place = v.tuple([
  v.pipe(v.number(), v.integer(), v.minValue(0)),
  v.pipe(v.number(), v.integer(), v.minValue(0)),
]);
const point = v.tuple([v.number(), v.number(), v.number()]);
const extras = v.object({
  format: v.literal('sculpture'),
  version: v.literal(2),
  id: v.string(),
  source: v.string(),
  landmarks: v.record(v.picklist(LANDMARKS), place),
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
  for (const indices of [mesh.indices, mesh.coarse ?? []])
    if (indices.some((i) => i >= count))
      throw new BadSculpture(`mesh ${mesh.name} has a triangle without a vertex`);
  const { _JOINTS: joints, _WEIGHTS: weights } = mesh.channels;
  return {
    name: mesh.name,
    substance,
    positions: mesh.positions,
    normals: mesh.normals,
    indices: mesh.indices,
    ...(mesh.coarse && { coarse: mesh.coarse }),
    openness: column(channel('_SURFACE'), 0),
    regions: column(channel('_SURFACE'), 1),
    masks: Object.fromEntries(
      masks.map((name, k) => [name, column(channel(`_MASKS_${Math.floor(k / 4)}`), k % 4)]),
    ),
    ...(joints && weights && { joints, weights }),
  };
}

/** Reads a file of models/sculpture. @throws BadSculpture with what was expected. */
export async function loadSculptureFile(bytes: Uint8Array): Promise<SculptureFile> {
  const glb = await readGlb(bytes);
  const { landmarks, guides, anchors, id, source, body } = parse(extras, glb.extras, 'extras');
  const meshes = glb.meshes.map(toMesh);
  for (const [name, at] of Object.entries({ ...landmarks, ...guides }))
    if (at && at[1] * 3 >= (meshes[at[0]]?.positions.length ?? 0))
      throw new BadSculpture(`${name} stands on no vertex`);
  return {
    id,
    source,
    meshes,
    landmarks: landmarks as Partial<Record<LandmarkName, (typeof guides)[string]>>,
    guides,
    anchors,
    body,
  };
}
