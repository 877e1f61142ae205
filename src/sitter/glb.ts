import { MeshoptDecoder } from 'meshoptimizer/decoder';
import * as v from 'valibot';

/**
 * Reads the binary glTF that scripts/sculpt/write.ts makes, and nothing more general: one buffer of
 * meshopt-compressed views (EXT_meshopt_compression), quantised attributes (KHR_mesh_quantization),
 * a node a mesh with translation and one scale.
 */
export interface GlbMesh {
  readonly name: string;
  readonly extras: unknown;
  readonly indices: Uint32Array;
  /** A second set of fewer triangles over the same vertices. */
  readonly coarse?: Uint32Array;
  /** Dequantised: metres and unit vectors. */
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Attributes whose name starts with an underscore: four bytes a vertex. */
  readonly channels: Readonly<Record<string, Uint8Array>>;
}

export interface Glb {
  readonly meshes: readonly GlbMesh[];
  readonly extras: unknown;
}

/** A file that is not a sculpture; the message says what was expected. */
export class BadSculpture extends Error {
  constructor(message: string) {
    super(`not a sculpture: ${message}`);
    this.name = 'BadSculpture';
  }
}

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
const three = v.tuple([v.number(), v.number(), v.number()]);
const primitive = v.object({
  attributes: v.record(v.string(), whole),
  indices: whole,
  mode: v.literal(4),
});
const root = v.object({
  asset: v.object({ version: v.literal('2.0') }),
  nodes: v.array(v.object({ mesh: whole, translation: three, scale: three })),
  meshes: v.array(
    v.object({
      name: v.string(),
      extras: v.unknown(),
      primitives: v.pipe(v.array(primitive), v.minLength(1), v.maxLength(2)),
    }),
  ),
  accessors: v.array(
    v.object({
      bufferView: whole,
      count: whole,
      componentType: v.picklist([5121, 5122, 5125]),
      type: v.picklist(['SCALAR', 'VEC3', 'VEC4']),
      normalized: v.exactOptional(v.boolean()),
    }),
  ),
  bufferViews: v.array(
    v.object({
      extensions: v.object({
        EXT_meshopt_compression: v.object({
          buffer: v.literal(0),
          byteOffset: whole,
          byteLength: whole,
          byteStride: whole,
          count: whole,
          mode: v.picklist(['ATTRIBUTES', 'TRIANGLES']),
          filter: v.exactOptional(v.literal('OCTAHEDRAL')),
        }),
      }),
    }),
  ),
  extras: v.unknown(),
});
type Root = v.InferOutput<typeof root>;

const MAGIC = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BIN_CHUNK = 0x004e4942;

/** Splits the container. @throws BadSculpture when it is cut short or of another kind. */
function chunks(bytes: Uint8Array): { json: unknown; binary: Uint8Array } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const word = (at: number): number => {
    if (at + 4 > bytes.byteLength) throw new BadSculpture('the file ends early');
    return view.getUint32(at, true);
  };
  if (word(0) !== MAGIC || word(4) !== 2) throw new BadSculpture('expected binary glTF 2');
  if (word(8) !== bytes.byteLength)
    throw new BadSculpture(`expected ${word(8)} bytes, received ${bytes.byteLength}`);
  const jsonSize = word(12);
  const binaryAt = 20 + jsonSize;
  if (word(16) !== JSON_CHUNK || word(binaryAt + 4) !== BIN_CHUNK)
    throw new BadSculpture('expected a JSON chunk and a binary chunk');
  const text = new TextDecoder().decode(bytes.subarray(20, binaryAt));
  const binary = bytes.subarray(binaryAt + 8, binaryAt + 8 + word(binaryAt));
  try {
    return { json: JSON.parse(text), binary };
  } catch {
    throw new BadSculpture('its JSON cannot be read');
  }
}

/** @throws BadSculpture */
export async function readGlb(bytes: Uint8Array): Promise<Glb> {
  const { json, binary } = chunks(bytes);
  const parsed = v.safeParse(root, json);
  if (!parsed.success) {
    const [issue] = parsed.issues;
    throw new BadSculpture(`${v.getDotPath(issue) ?? 'its JSON'}: ${issue.message}`);
  }
  await MeshoptDecoder.ready;
  const file = parsed.output;
  const meshes = file.nodes.map((node): GlbMesh => {
    const mesh = at(file.meshes, node.mesh, 'mesh');
    const { attributes, indices } = at(mesh.primitives, 0, 'primitive');
    const [, coarse] = mesh.primitives;
    const triangles = (accessor: number): Uint32Array => {
      const bytes = decode(file, binary, accessor);
      return new Uint32Array(bytes.buffer, 0, bytes.byteLength / 4);
    };
    const read = (name: string): Uint8Array => {
      const accessor = attributes[name];
      if (accessor === undefined) throw new BadSculpture(`mesh ${mesh.name} has no ${name}`);
      return decode(file, binary, accessor);
    };
    const quantised = shorts(read('POSITION'));
    const positions = new Float32Array((quantised.length / 4) * 3);
    const normals = new Float32Array(positions.length);
    const octahedral = shorts(read('NORMAL'));
    for (let p = 0, o = 0; o < positions.length; p += 4, o += 3) {
      for (let j = 0; j < 3; j++)
        positions[o + j] =
          (quantised[p + j] as number) * (node.scale[j] as number) +
          (node.translation[j] as number);
      const [x, y, z] = [octahedral[p], octahedral[p + 1], octahedral[p + 2]] as [
        number,
        number,
        number,
      ];
      const length = Math.hypot(x, y, z) || 1;
      normals[o] = x / length;
      normals[o + 1] = y / length;
      normals[o + 2] = z / length;
    }
    return {
      name: mesh.name,
      extras: mesh.extras,
      indices: triangles(indices),
      ...(coarse && { coarse: triangles(coarse.indices) }),
      positions,
      normals,
      channels: Object.fromEntries(
        Object.keys(attributes)
          .filter((name) => name.startsWith('_'))
          .map((name) => [name, read(name)]),
      ),
    };
  });
  return { meshes, extras: file.extras };
}

const shorts = (bytes: Uint8Array): Int16Array => new Int16Array(bytes.buffer);

function at<T>(list: readonly T[], index: number, what: string): T {
  const item = list[index];
  if (item === undefined) throw new BadSculpture(`there is no ${what} ${index}`);
  return item;
}

function decode(file: Root, binary: Uint8Array, accessor: number): Uint8Array {
  const { bufferView } = at(file.accessors, accessor, 'accessor');
  const packed = at(file.bufferViews, bufferView, 'buffer view').extensions.EXT_meshopt_compression;
  const source = binary.subarray(packed.byteOffset, packed.byteOffset + packed.byteLength);
  const target = new Uint8Array(packed.count * packed.byteStride);
  try {
    MeshoptDecoder.decodeGltfBuffer(
      target,
      packed.count,
      packed.byteStride,
      source,
      packed.mode,
      packed.filter ?? 'NONE',
    );
  } catch {
    throw new BadSculpture(`buffer view ${bufferView} is damaged`);
  }
  return target;
}
