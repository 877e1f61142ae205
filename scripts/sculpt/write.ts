import { MeshoptEncoder } from 'meshoptimizer/encoder';
import type { Asset, AssetMesh } from './asset';

/**
 * Binary glTF 2.0 with EXT_meshopt_compression and KHR_mesh_quantization, holding exactly what
 * src/sitter/glb.ts reads. Metres. Deterministic.
 */
const BYTE = 5121;
const SHORT = 5122;
const UNSIGNED_INT = 5125;
const VERTEX = 34962;
const INDEX = 34963;
const NORMAL_BITS = 12;
const STEPS = 32767;

interface View {
  readonly data: Uint8Array;
  readonly count: number;
  readonly stride: number;
  readonly mode: 'ATTRIBUTES' | 'TRIANGLES';
  readonly filter?: 'OCTAHEDRAL';
}

const pad4 = (n: number): number => (n + 3) & ~3;

class Builder {
  readonly views: View[] = [];
  readonly accessors: object[] = [];

  add(view: View, accessor: object): number {
    this.views.push(view);
    this.accessors.push({ bufferView: this.views.length - 1, count: view.count, ...accessor });
    return this.accessors.length - 1;
  }
}

/** A column of a mesh' vertices in another order. */
function reordered<T extends Float32Array | Uint8Array>(
  column: T,
  width: number,
  place: Uint32Array,
  out: T,
): T {
  place.forEach((to, from) => {
    if (to < out.length / width)
      for (let j = 0; j < width; j++) out[to * width + j] = column[from * width + j] as number;
  });
  return out;
}

function arrangedMesh(mesh: AssetMesh): { mesh: AssetMesh; place: Uint32Array } {
  const indices = mesh.indices.slice();
  const [place, count] = MeshoptEncoder.reorderMesh(indices, true, true);
  const floats = (column: Float32Array): Float32Array =>
    reordered(column, 3, place, new Float32Array(3 * count));
  const column = (column: Uint8Array, width = 1): Uint8Array =>
    reordered(column, width, place, new Uint8Array(width * count));
  const { coarse, joints, weights } = mesh;
  return {
    place,
    mesh: {
      ...mesh,
      indices,
      positions: floats(mesh.positions),
      normals: floats(mesh.normals),
      openness: column(mesh.openness),
      regions: column(mesh.regions),
      masks: Object.fromEntries(
        Object.entries(mesh.masks).map(([name, mask]) => [name, column(mask)]),
      ),
      ...(coarse && { coarse: coarse.map((v) => place[v] as number) }),
      ...(joints && weights && { joints: column(joints, 4), weights: column(weights, 4) }),
    },
  };
}

/** The asset with its vertices in the order that compresses and draws best. */
export async function arranged(asset: Asset): Promise<Asset> {
  await MeshoptEncoder.ready;
  const parts = asset.meshes.map(arrangedMesh);
  const placed = (places: Asset['guides']): Asset['guides'] =>
    Object.fromEntries(
      Object.entries(places).map(([name, [m, v]]) => [name, [m, parts[m]?.place[v] as number]]),
    );
  return {
    ...asset,
    meshes: parts.map(({ mesh }) => mesh),
    landmarks: placed(asset.landmarks as Asset['guides']),
    guides: placed(asset.guides),
  };
}

function addMesh(b: Builder, mesh: AssetMesh) {
  const { positions: P, normals: N, indices, coarse } = mesh;
  const count = P.length / 3;
  const low = [1, 2].map((j) => bound(P, j, Math.min));
  const high = [1, 2].map((j) => bound(P, j, Math.max));
  const centre = [0, ...low.map((l, j) => (l + (high[j] as number)) / 2)];
  const reach = P.reduce((r, c, i) => Math.max(r, Math.abs(c - (centre[i % 3] as number))), 0);
  const step = (reach || 1) / STEPS;
  const shorts = new Int16Array(count * 4);
  const min = [STEPS, STEPS, STEPS];
  const max = [-STEPS, -STEPS, -STEPS];
  P.forEach((c, i) => {
    const j = i % 3;
    const q = Math.round((c - (centre[j] as number)) / step);
    shorts[Math.floor(i / 3) * 4 + j] = q;
    min[j] = Math.min(min[j] as number, q);
    max[j] = Math.max(max[j] as number, q);
  });
  const four = new Float32Array(count * 4);
  for (let v = 0; v < count; v++) four.set(N.subarray(3 * v, 3 * v + 3), 4 * v);

  const attributes: Record<string, number> = {
    POSITION: b.add(
      { data: bytes(shorts), count, stride: 8, mode: 'ATTRIBUTES' },
      { componentType: SHORT, type: 'VEC3', min, max },
    ),
    NORMAL: b.add(
      {
        data: MeshoptEncoder.encodeFilterOct(four, count, 8, NORMAL_BITS),
        count,
        stride: 8,
        mode: 'ATTRIBUTES',
        filter: 'OCTAHEDRAL',
      },
      { componentType: SHORT, normalized: true, type: 'VEC3' },
    ),
  };
  const channel = (name: string, data: Uint8Array): void => {
    attributes[name] = b.add(
      { data, count, stride: 4, mode: 'ATTRIBUTES' },
      { componentType: BYTE, type: 'VEC4' },
    );
  };
  const channels = (name: string, columns: readonly Uint8Array[]): void => {
    const data = new Uint8Array(count * 4);
    columns.forEach((column, k) => {
      column.forEach((value, v) => {
        data[4 * v + k] = value;
      });
    });
    channel(name, data);
  };
  channels('_SURFACE', [mesh.openness, mesh.regions]);
  const masks = Object.keys(mesh.masks);
  for (let k = 0; k < masks.length; k += 4)
    channels(
      `_MASKS_${k / 4}`,
      masks.slice(k, k + 4).map((name) => mesh.masks[name] as Uint8Array),
    );
  if (mesh.joints && mesh.weights) {
    channel('_JOINTS', mesh.joints);
    channel('_WEIGHTS', mesh.weights);
  }
  const index = (triangles: Uint32Array): number =>
    b.add(
      { data: bytes(triangles), count: triangles.length, stride: 4, mode: 'TRIANGLES' },
      { componentType: UNSIGNED_INT, type: 'SCALAR' },
    );
  const sets = [indices, ...(coarse && coarse.length > 0 ? [coarse] : [])];
  return {
    mesh: {
      name: mesh.name,
      primitives: sets.map((set) => ({ attributes, indices: index(set), mode: 4 })),
      extras: { substance: mesh.substance, masks },
    },
    node: {
      name: mesh.name,
      translation: centre.map((c) => c / 1000),
      scale: [step / 1000, step / 1000, step / 1000],
    },
  };
}

const bytes = (a: ArrayBufferView): Uint8Array =>
  new Uint8Array(a.buffer, a.byteOffset, a.byteLength);

function bound(P: Float32Array, axis: number, pick: (a: number, b: number) => number): number {
  let out = P[axis] as number;
  for (let i = axis; i < P.length; i += 3) out = pick(out, P[i] as number);
  return out;
}

/** The bytes of a sculpture file; vertices keep their order (see `arranged`). */
export async function writeAsset(asset: Asset): Promise<Uint8Array> {
  await MeshoptEncoder.ready;
  const b = new Builder();
  const parts = asset.meshes.map((mesh) => addMesh(b, mesh));
  const chunks: Uint8Array[] = [];
  let at = 0;
  let plain = 0;
  const bufferViews = b.views.map((view) => {
    const packed = MeshoptEncoder.encodeGltfBuffer(
      view.data,
      view.count,
      view.stride,
      view.mode,
      0,
    );
    const entry = {
      buffer: 1,
      byteOffset: plain,
      byteLength: view.count * view.stride,
      ...(view.mode === 'ATTRIBUTES' ? { byteStride: view.stride } : {}),
      target: view.mode === 'ATTRIBUTES' ? VERTEX : INDEX,
      extensions: {
        EXT_meshopt_compression: {
          buffer: 0,
          byteOffset: at,
          byteLength: packed.byteLength,
          byteStride: view.stride,
          count: view.count,
          mode: view.mode,
          ...(view.filter ? { filter: view.filter } : {}),
        },
      },
    };
    const chunk = new Uint8Array(pad4(packed.byteLength));
    chunk.set(packed);
    chunks.push(chunk);
    at += chunk.byteLength;
    plain += pad4(view.count * view.stride);
    return entry;
  });
  const extensions = ['EXT_meshopt_compression', 'KHR_mesh_quantization'];
  const json = {
    asset: { version: '2.0', generator: 'npm run sculpt' },
    extensionsUsed: extensions,
    extensionsRequired: extensions,
    scene: 0,
    scenes: [{ nodes: parts.map((_, i) => i) }],
    nodes: parts.map(({ node }, mesh) => ({ ...node, mesh })),
    meshes: parts.map(({ mesh }) => mesh),
    accessors: b.accessors,
    bufferViews,
    buffers: [
      { byteLength: at },
      { byteLength: plain, extensions: { EXT_meshopt_compression: { fallback: true } } },
    ],
    extras: {
      format: 'sculpture',
      version: 2,
      id: asset.id,
      source: asset.source,
      landmarks: asset.landmarks,
      guides: asset.guides,
      anchors: Object.fromEntries(
        Object.entries(asset.anchors).map(([k, p]) => [k, p.map((c) => c / 1000)]),
      ),
      body: asset.body,
    },
  };
  return pack(new TextEncoder().encode(JSON.stringify(json)), chunks, at);
}

/** GLB container: header, JSON chunk padded with spaces, BIN chunk. */
function pack(json: Uint8Array, chunks: readonly Uint8Array[], size: number): Uint8Array {
  const jsonSize = pad4(json.byteLength);
  const out = new Uint8Array(12 + 8 + jsonSize + 8 + size);
  const head = new DataView(out.buffer);
  const words = [0x46546c67, 2, out.byteLength, jsonSize, 0x4e4f534a];
  for (const [i, w] of words.entries()) head.setUint32(4 * i, w, true);
  out.fill(0x20, 20, 20 + jsonSize);
  out.set(json, 20);
  head.setUint32(20 + jsonSize, size, true);
  head.setUint32(24 + jsonSize, 0x004e4942, true);
  let at = 28 + jsonSize;
  for (const chunk of chunks) {
    out.set(chunk, at);
    at += chunk.byteLength;
  }
  return out;
}
