import type { Vec3 } from '../../src/optics/types';

/** Twice the area, along the normal, of the triangle whose first corner is the t-th index. */
function normalOf(P: Float32Array, I: Uint32Array, t: number): Vec3 {
  const [a, b, c] = [0, 1, 2].map((k) => 3 * (I[t + k] as number)) as [number, number, number];
  const edge = (from: number, to: number): Vec3 => [
    (P[to] as number) - (P[from] as number),
    (P[to + 1] as number) - (P[from + 1] as number),
    (P[to + 2] as number) - (P[from + 2] as number),
  ];
  const [u, v] = [edge(a, b), edge(a, c)];
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}

/** Triangles of no area. */
export function degenerate(P: Float32Array, I: Uint32Array): number {
  let count = 0;
  for (let t = 0; t < I.length; t += 3) if (Math.hypot(...normalOf(P, I, t)) < 1e-14) count++;
  return count;
}

/** Triangles that face away from where they did. */
export function flipped(before: Float32Array, after: Float32Array, I: Uint32Array): number {
  let count = 0;
  for (let t = 0; t < I.length; t += 3) {
    const [a, b] = [normalOf(before, I, t), normalOf(after, I, t)];
    if (a[0] * b[0] + a[1] * b[1] + a[2] * b[2] < 0) count++;
  }
  return count;
}
