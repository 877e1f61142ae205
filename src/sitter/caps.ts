/** Closes the open end of the skin under the clothes. */
import { areaNormals } from './normals';
import type { SculptureMesh } from './sculpture';

/** Directed edges that one triangle alone has, from vertex to vertex. */
export function openEdges(indices: Uint32Array): (readonly [number, number])[] {
  const pairs = new Map<string, readonly [number, number]>();
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const [a, b] = [indices[t + k], indices[t + ((k + 1) % 3)]] as [number, number];
      const key = `${Math.min(a, b)} ${Math.max(a, b)}`;
      if (!pairs.delete(key)) pairs.set(key, [a, b]);
    }
  return [...pairs.values()];
}

/** The rings that open edges form, each vertex once. */
function rings(indices: Uint32Array): number[][] {
  const next = new Map(openEdges(indices));
  const found: number[][] = [];
  for (;;) {
    const [start] = next.keys();
    if (start === undefined) return found;
    const ring: number[] = [];
    for (let v: number | undefined = start; v !== undefined; ) {
      ring.push(v);
      const after: number | undefined = next.get(v);
      next.delete(v);
      v = after !== undefined && next.has(after) ? after : undefined;
    }
    found.push(ring);
  }
}

const joined = (indices: Uint32Array, more: readonly number[]): Uint32Array => {
  const out = new Uint32Array(indices.length + more.length);
  out.set(indices);
  out.set(more, indices.length);
  return out;
};

/** A list with one more vertex, which is like another one. */
const grown = <T extends Float32Array | Uint8Array>(list: T, each: number, like: number): T => {
  const out = new (list.constructor as new (length: number) => T)(list.length + each);
  out.set(list);
  out.set(list.subarray(like * each, (like + 1) * each), list.length);
  return out;
};

/**
 * The longest ring filled from one new vertex below its middle, as low as the ring's lowest, so that the
 * end lies under everything that is seen. The new vertex is the last one. The ring's normals turn to where
 * the triangles on both its sides face, since skin and filling meet there in one vertex.
 */
export function closedBelow(mesh: SculptureMesh): SculptureMesh {
  const longest = (indices: Uint32Array): number[] =>
    rings(indices).reduce((a, b) => (b.length > a.length ? b : a), []);
  const ring = longest(mesh.indices);
  const [like] = ring;
  if (like === undefined) return mesh;
  const P = mesh.positions;
  const mean = (j: number): number =>
    ring.reduce((sum, v) => sum + (P[3 * v + j] as number), 0) / ring.length;
  const low = Math.min(...ring.map((v) => P[3 * v + 1] as number));
  const tip = P.length / 3;
  const cap = (edge: readonly number[]): number[] =>
    edge.flatMap((v, i) => [tip, edge[(i + 1) % edge.length] as number, v]);
  const positions = grown(P, 3, like);
  positions.set([mean(0), low, mean(2)], 3 * tip);
  const normals = grown(mesh.normals, 3, like);
  normals.set([0, -1, 0], 3 * tip);
  const indices = joined(mesh.indices, cap(ring));
  const facing = areaNormals(positions, indices);
  for (const v of ring) {
    const [x, y, z] = facing.subarray(3 * v, 3 * v + 3) as unknown as [number, number, number];
    const length = Math.hypot(x, y, z);
    if (length > 0) normals.set([x / length, y / length, z / length], 3 * v);
  }
  return {
    ...mesh,
    positions,
    normals,
    indices,
    ...(mesh.coarse && { coarse: joined(mesh.coarse, cap(longest(mesh.coarse))) }),
    openness: grown(mesh.openness, 1, like),
    regions: grown(mesh.regions, 1, like),
    masks: Object.fromEntries(
      Object.entries(mesh.masks).map(([name, mask]) => [name, grown(mask, 1, like)]),
    ),
    ...(mesh.joints && { joints: grown(mesh.joints, 4, like) }),
    ...(mesh.weights && { weights: grown(mesh.weights, 4, like) }),
  };
}

/** Vertices of what `closedBelow` filled in, its ring with them. */
export function fillingOf({
  indices,
  positions,
}: Pick<SculptureMesh, 'indices' | 'positions'>): ReadonlySet<number> {
  const last = positions.length / 3 - 1;
  const found = new Set<number>();
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [indices[t], indices[t + 1], indices[t + 2]] as [number, number, number];
    if (a === last || b === last || c === last) found.add(a).add(b).add(c);
  }
  return found;
}
