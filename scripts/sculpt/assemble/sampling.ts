import type { TriangleMesh } from '../mesh';
import type { Grid } from '../nets';

type Triple = readonly [number, number, number];

/** A share 0..1 as a byte. */
export const byte = (share: number): number => Math.round(255 * Math.min(1, Math.max(0, share)));

/** Bytes of a function of place (and normal) at every vertex of a mesh. */
export function sample(mesh: TriangleMesh, at: (p: Triple, n: Triple) => number): Uint8Array {
  const { positions: P, normals: N } = mesh;
  const triple = (from: Float32Array, v: number): Triple =>
    [from[3 * v], from[3 * v + 1], from[3 * v + 2]] as [number, number, number];
  return Uint8Array.from({ length: P.length / 3 }, (_, v) => at(triple(P, v), triple(N, v)));
}

/** A coarser grid over the same space. */
export function thinned(grid: Grid, every: number): Grid {
  const thin = (planes: Float64Array): Float64Array =>
    planes.filter((_, i) => i % every === 0 || i === planes.length - 1);
  return { x: thin(grid.x), y: thin(grid.y), z: thin(grid.z) };
}

/**
 * The mesh with triangles counter-clockwise seen from where their vertices' normals point: ribbons are
 * laid without regard to it.
 */
export function facing<T extends TriangleMesh>(mesh: T): T {
  const { positions: P, normals: N, indices: I } = mesh;
  const out = I.slice();
  for (let t = 0; t < I.length; t += 3) {
    const [a, b, c] = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    const edge = (v: number): number[] =>
      [0, 1, 2].map((j) => (P[3 * v + j] as number) - (P[3 * a + j] as number));
    const [u, w] = [edge(b), edge(c)] as [number[], number[]];
    const dot = [0, 1, 2].reduce((sum, j) => {
      const [k, l] = [(j + 1) % 3, (j + 2) % 3];
      const normal = (u[k] as number) * (w[l] as number) - (u[l] as number) * (w[k] as number);
      return sum + normal * (N[3 * a + j] as number);
    }, 0);
    if (dot < 0) out.set([a, c, b], t);
  }
  return { ...mesh, indices: out };
}
