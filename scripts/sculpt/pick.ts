import type { Point } from './field';
import type { TriangleMesh } from './mesh';

/** How a landmark's vertex is chosen: the one farthest along `toward` within `reach` mm of its seed. */
export interface PickRule {
  readonly toward?: Point;
  readonly reach?: number;
  readonly midline?: boolean;
  /** Only vertices of this kind. */
  readonly among?: (x: number, y: number, z: number) => boolean;
}

/** The vertex nearest to a seed, or the extreme one near it. @throws when none lies near. */
export function pickVertex(
  mesh: TriangleMesh,
  seed: Point,
  { toward, reach = 6, midline = false, among }: PickRule = {},
): number {
  const { positions: P } = mesh;
  let best = -1;
  let score = Number.POSITIVE_INFINITY;
  for (let v = 0; v < P.length / 3; v++) {
    const [x, y, z] = [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number];
    if (midline && x !== 0) continue;
    const away = Math.hypot(x - seed[0], y - seed[1], z - seed[2]);
    if (away > reach || (among && !among(x, y, z))) continue;
    const s = toward ? -(x * toward[0] + y * toward[1] + z * toward[2]) : away;
    if (s < score) {
      score = s;
      best = v;
    }
  }
  if (best < 0)
    throw new Error(`no vertex within ${reach} mm of ${seed.map((c) => c.toFixed(1)).join(', ')}`);
  return best;
}
