import type { Field, Point } from '../field';

/**
 * Walks a ray until it meets the surface; the field's gradient must stay below 1.4.
 * Returns undefined when nothing is met within 400 mm.
 */
export function trace(field: Field, from: Point, direction: Point): Point | undefined {
  const length = Math.hypot(...direction);
  const d = direction.map((c) => c / length) as [number, number, number];
  for (let s = 0; s < 400; ) {
    const at: [number, number, number] = [
      from[0] + d[0] * s,
      from[1] + d[1] * s,
      from[2] + d[2] * s,
    ];
    const gap = field(...at);
    if (gap < 0.002) return at;
    s += Math.max(0.001, gap * 0.7);
  }
  return undefined;
}

/** Of many points the one with the largest score; absent points are left out. */
export function best(points: readonly (Point | undefined)[], score: (p: Point) => number): Point {
  let top: Point | undefined;
  for (const p of points) if (p && (!top || score(p) > score(top))) top = p;
  if (!top) throw new Error('no ray met the surface');
  return top;
}

/** Evenly spaced numbers, both ends included. */
export const range = (from: number, to: number, by: number): number[] =>
  Array.from({ length: Math.floor((to - from) / by + 1.001) }, (_, i) => from + i * by);
