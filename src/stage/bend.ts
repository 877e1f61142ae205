/** How sharply a surface bends outwards at each vertex: where light travels through from side to side. */
import type { SitterMesh } from '../sitter/types';
import { SHARPEST_BEND } from './shaders/skin';

const kept = new WeakMap<Uint32Array, Uint8Array>();

/**
 * Bend a vertex, 0..255 for 0 .. `SHARPEST_BEND` per mm: the mean along its edges of the change of the
 * normal over the way, evened with its neighbours'. Kept for each list of triangles, since no change of
 * dimensions or pose alters it visibly.
 */
export function bends({ positions: P, normals: N, indices }: SitterMesh): Uint8Array {
  const known = kept.get(indices);
  if (known) return known;
  const count = P.length / 3;
  const [sum, weight] = [new Float32Array(count), new Float32Array(count)];
  const edges = (visit: (a: number, b: number) => void) => {
    for (let t = 0; t < indices.length; t += 3)
      for (let k = 0; k < 3; k++)
        visit(indices[t + k] as number, indices[t + ((k + 1) % 3)] as number);
  };
  edges((a, b) => {
    let [way, turn] = [0, 0];
    for (let j = 0; j < 3; j++) {
      const step = (P[3 * b + j] as number) - (P[3 * a + j] as number);
      way += step * step;
      turn += step * ((N[3 * b + j] as number) - (N[3 * a + j] as number));
    }
    const bend = Math.max(
      -SHARPEST_BEND,
      Math.min(SHARPEST_BEND, turn / Math.max(way, 1e-9) / 1000),
    );
    for (const v of [a, b]) {
      sum[v] = (sum[v] as number) + bend;
      weight[v] = (weight[v] as number) + 1;
    }
  });
  let bend = sum.map((value, v) => value / Math.max(1, weight[v] as number));
  for (let round = 0; round < 3; round++) {
    const even = bend.map((value, v) => value * (weight[v] as number));
    edges((a, b) => {
      even[a] = (even[a] as number) + (bend[b] as number);
      even[b] = (even[b] as number) + (bend[a] as number);
    });
    bend = even.map((value, v) => value / Math.max(1, 2 * (weight[v] as number)));
  }
  const bytes = Uint8Array.from(bend, (value) =>
    Math.round((255 * Math.max(0, Math.min(SHARPEST_BEND, value))) / SHARPEST_BEND),
  );
  kept.set(indices, bytes);
  return bytes;
}
