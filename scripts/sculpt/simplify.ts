import { MeshoptSimplifier } from 'meshoptimizer/simplifier';
import type { TriangleMesh } from './mesh';
import { withoutNeedles } from './needles';

/** The half x >= 0 of a mirrored mesh; its rim is the midline. */
export function leftHalf(mesh: TriangleMesh): TriangleMesh {
  const { positions: P, indices: I } = mesh;
  const kept: number[] = [];
  for (let t = 0; t < I.length; t += 3) {
    const [a, b, c] = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    if ((P[3 * a] as number) + (P[3 * b] as number) + (P[3 * c] as number) > 0) kept.push(a, b, c);
  }
  return compact(mesh, Uint32Array.from(kept)).mesh;
}

/** The mesh of the given triangles alone, with the vertices they use. */
export function compact(
  mesh: TriangleMesh,
  triangles: Uint32Array,
): { mesh: TriangleMesh; place: ReadonlyMap<number, number> } {
  const map = new Map<number, number>();
  const indices = triangles.map((v) => {
    const known = map.get(v);
    if (known !== undefined) return known;
    map.set(v, map.size);
    return map.size - 1;
  });
  const positions = new Float32Array(map.size * 3);
  const normals = new Float32Array(map.size * 3);
  for (const [from, to] of map)
    for (let j = 0; j < 3; j++) {
      positions[3 * to + j] = mesh.positions[3 * from + j] as number;
      normals[3 * to + j] = mesh.normals[3 * from + j] as number;
    }
  return { mesh: { positions, normals, indices }, place: map };
}

/** Vertices closer to the mirror plane than this lie on it, mm. */
const ON_MIDLINE = 1e-6;

/** A half mesh and its mirror image, joined along the midline. Left vertices come first. */
export function mirrored(half: TriangleMesh): { mesh: TriangleMesh; mirror: Uint32Array } {
  const count = half.positions.length / 3;
  const mirror = new Uint32Array(count);
  let next = count;
  for (let v = 0; v < count; v++)
    mirror[v] = Math.abs(half.positions[3 * v] as number) < ON_MIDLINE ? v : next++;
  const reflect = (from: Float32Array): Float32Array => {
    const out = new Float32Array(next * 3);
    out.set(from);
    for (let v = 0; v < count; v++)
      for (let j = 0; j < 3; j++) {
        const value = from[3 * v + j] as number;
        const to = mirror[v] as number;
        out[3 * to + j] = to === v ? (j === 0 ? 0 : value) : j === 0 ? -value : value;
      }
    return out;
  };
  const n = half.indices.length;
  const indices = new Uint32Array(2 * n);
  indices.set(half.indices);
  for (let t = 0; t < n; t += 3) {
    const at = (k: number): number => mirror[half.indices[t + k] as number] as number;
    indices.set([at(0), at(2), at(1)], n + t);
  }
  return {
    mesh: { positions: reflect(half.positions), normals: reflect(half.normals), indices },
    mirror,
  };
}

export interface SimplifyOptions {
  readonly triangles: number;
  /** Vertices that must stay. */
  readonly locked: readonly number[];
  /** Further values a vertex whose borders should survive (0..1 each), and their weight. */
  readonly detail?: readonly Float32Array[];
  readonly detailWeight?: number | undefined;
}

/** How much a turn of the normal counts against a move of the surface. */
const NORMAL_WEIGHT = 0.1;

/**
 * Fewer triangles, same vertices: the result indexes the given mesh's vertices.
 * Meshoptimizer's quadric simplifier; deterministic. Borders keep their shape.
 */
export async function simplify(
  mesh: TriangleMesh,
  { triangles, locked, detail = [], detailWeight = 0.6 }: SimplifyOptions,
): Promise<Uint32Array> {
  await MeshoptSimplifier.ready;
  const count = mesh.positions.length / 3;
  const width = 3 + detail.length;
  const attributes = new Float32Array(count * width);
  for (let v = 0; v < count; v++) {
    for (let j = 0; j < 3; j++) attributes[v * width + j] = mesh.normals[3 * v + j] as number;
    detail.forEach((d, k) => {
      attributes[v * width + 3 + k] = d[v] as number;
    });
  }
  const lock = new Uint8Array(count);
  for (const v of locked) lock[v] = 1;
  const [indices] = MeshoptSimplifier.simplifyWithAttributes(
    mesh.indices,
    mesh.positions,
    3,
    attributes,
    width,
    [...[0, 1, 2].map(() => NORMAL_WEIGHT), ...detail.map(() => detailWeight)],
    lock,
    triangles * 3,
    1,
  );
  return withoutNeedles(mesh.positions, indices);
}
