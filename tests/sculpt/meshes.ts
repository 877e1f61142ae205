import { createHash } from 'node:crypto';
import type { TriangleMesh } from '../../scripts/sculpt/mesh';

/**
 * Edges that are not run as often one way as the other (the surface is open or turned over there),
 * and the count of edges that two triangles run the same way (two sheets touch there).
 */
export function edgeFaults({ indices }: TriangleMesh): {
  open: [number, number][];
  touching: number;
} {
  const edges = new Map<string, number>();
  for (let t = 0; t < indices.length; t += 3)
    for (let e = 0; e < 3; e++) {
      const key = `${indices[t + e]},${indices[t + ((e + 1) % 3)]}`;
      edges.set(key, (edges.get(key) ?? 0) + 1);
    }
  const open: [number, number][] = [];
  let touching = 0;
  for (const [key, count] of edges) {
    const [a, b] = key.split(',').map(Number) as [number, number];
    if (count > 1) touching++;
    if (edges.get(`${b},${a}`) !== count) open.push([a, b]);
  }
  return { open, touching };
}

/** Enclosed volume (divergence theorem) and surface area. */
export function extent({ positions: P, indices }: TriangleMesh): { volume: number; area: number } {
  let [volume, area] = [0, 0];
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => {
      const v = 3 * (indices[t + k] as number);
      return [P[v], P[v + 1], P[v + 2]] as [number, number, number];
    }) as [[number, number, number], [number, number, number], [number, number, number]];
    const u = b.map((x, j) => x - (a[j] as number)) as typeof a;
    const w = c.map((x, j) => x - (a[j] as number)) as typeof a;
    const n = [
      u[1] * w[2] - u[2] * w[1],
      u[2] * w[0] - u[0] * w[2],
      u[0] * w[1] - u[1] * w[0],
    ] as const;
    area += Math.hypot(...n) / 2;
    volume += (a[0] * n[0] + a[1] * n[1] + a[2] * n[2]) / 6;
  }
  return { volume, area };
}

export function digest({ positions, normals, indices }: TriangleMesh): string {
  const hash = createHash('sha256');
  for (const a of [positions, normals, indices])
    hash.update(new Uint8Array(a.buffer, a.byteOffset, a.byteLength));
  return hash.digest('hex');
}

/** Every vertex has a twin at exactly -x. */
export function isMirrored({ positions: P }: TriangleMesh): boolean {
  const seen = new Set<string>();
  for (let i = 0; i < P.length; i += 3) seen.add(`${P[i]},${P[i + 1]},${P[i + 2]}`);
  for (let i = 0; i < P.length; i += 3) {
    const x = P[i] as number;
    if (!seen.has(`${x === 0 ? 0 : -x},${P[i + 1]},${P[i + 2]}`)) return false;
  }
  return true;
}
