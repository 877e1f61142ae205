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

/** Vertices in the order that compresses and draws best: new indices and each vertex's new place. */
function reordered(mesh: AssetMesh): { indices: Uint32Array; place: Uint32Array; count: number } {
  const indices = mesh.indices.slice();
  const [place, count] = MeshoptEncoder.reorderMesh(indices, true, true);
  return { indices, place, count };
}

const moved = (data: ArrayLike<number>, width: number, place: Uint32Array, out: Float32Array) => {
  place.forEach((to, from) => {
    if (to < out.length / width)
      for (let j = 0; j < width; j++) out[to * width + j] = data[from * width + j] as number;
  });
  return out;
};

function addMesh(b: Builder, mesh: AssetMesh) {
  const { indices, place, count } = reordered(mesh);
  const P = moved(mesh.positions, 3, place, new Float32Array(count * 3));
  const low = [1, 2].map((j) => bound(P, j, Math.min));
  const high = [1, 2].map((j) => bound(P, j, Math.max));
  const centre = [0, ...low.map((l, j) => (l + (high[j] as number)) / 2)];
  const reach = P.reduce((r, c, i) => Math.max(r, Math.abs(c - (centre[i % 3] as number))), 0);
  const step = reach / STEPS;
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
  const N = moved(mesh.normals, 3, place, new Float32Array(count * 3));
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
  const channels = (name: string, columns: readonly Uint8Array[]): void => {
    const data = new Uint8Array(count * 4);
    columns.forEach((column, k) => {
      place.forEach((to, from) => {
        if (to < count) data[to * 4 + k] = column[from] as number;
      });
    });
    attributes[name] = b.add(
      { data, count, stride: 4, mode: 'ATTRIBUTES' },
      { componentType: BYTE, type: 'VEC4' },
    );
  };
  channels('_SURFACE', [mesh.openness, mesh.regions]);
  const masks = Object.keys(mesh.masks);
  for (let k = 0; k < masks.length; k += 4)
    channels(
      `_MASKS_${k / 4}`,
      masks.slice(k, k + 4).map((name) => mesh.masks[name] as Uint8Array),
    );
  const index = b.add(
    { data: bytes(indices), count: indices.length, stride: 4, mode: 'TRIANGLES' },
    { componentType: UNSIGNED_INT, type: 'SCALAR' },
  );
  return {
    place,
    mesh: {
      name: mesh.name,
      primitives: [{ attributes, indices: index, mode: 4 }],
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

/** The bytes of a sculpture file. */
export async function writeAsset(asset: Asset): Promise<Uint8Array> {
  await MeshoptEncoder.ready;
  const b = new Builder();
  const parts = asset.meshes.map((mesh) => addMesh(b, mesh));
  const placed = (places: Asset['guides']) =>
    Object.fromEntries(
      Object.entries(places).map(([name, [m, v]]) => [name, [m, parts[m]?.place[v]]]),
    );
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
      version: 1,
      id: asset.id,
      source: asset.source,
      landmarks: placed(asset.landmarks),
      guides: placed(asset.guides),
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
