import { type Field, mix, type Point } from '../field';
import { gradient, type PathPoint, scatter, settle } from '../ribbons';

/** Heading (any length) of the hair at a point of the surface. */
export type Flow = (p: Point) => Point;

/**
 * Follows a flow over the surface from `root`, `steps` steps of `stride` mm; `height` gives the
 * distance over the surface at a share of the way.
 */
export function follow(
  surface: Field,
  slope: number,
  flow: Flow,
  root: Point,
  steps: number,
  stride: number,
  height: (t: number) => number,
): PathPoint[] {
  let foot = settle(surface, root, 0, slope);
  const path: PathPoint[] = [];
  for (let i = 0; i <= steps; i++) {
    const h = height(i / steps);
    const { at, normal } = foot;
    path.push({
      at: [at[0] + normal[0] * h, at[1] + normal[1] * h, at[2] + normal[2] * h],
      normal,
    });
    const heading = flow(at);
    const lift = heading[0] * normal[0] + heading[1] * normal[1] + heading[2] * normal[2];
    const along = heading.map((c, j) => c - lift * (normal[j] as number)) as [
      number,
      number,
      number,
    ];
    const n = Math.hypot(...along) || 1e-9;
    foot = settle(
      surface,
      [
        at[0] + (along[0] / n) * stride,
        at[1] + (along[1] / n) * stride,
        at[2] + (along[2] / n) * stride,
      ],
      0,
      slope,
    );
  }
  return path;
}

/** A point of the surface in a direction from a centre, with its normal. */
export function onSurface(surface: Field, centre: Point, direction: Point): PathPoint {
  let [low, high] = [0, 260];
  const n = Math.hypot(...direction);
  const at = (s: number): Point => [
    centre[0] + (direction[0] / n) * s,
    centre[1] + (direction[1] / n) * s,
    centre[2] + (direction[2] / n) * s,
  ];
  for (let i = 0; i < 22; i++) {
    const middle = (low + high) / 2;
    if (surface(...at(middle)) < 0) low = middle;
    else high = middle;
  }
  const p = at(low);
  return { at: p, normal: gradient(surface, p) };
}

/** Where the `i`-th lock of `along + over` is rooted: first ones along the hairline, then all over. */
export function rootDirection(
  i: number,
  along: number,
  direction: (share: number, raised: number) => Point,
): Point {
  if (i < along) {
    return direction((i + 0.5 * scatter(i, 1)) / along, 7 * scatter(i, 0) ** 1.5);
  }
  const up = mix(-0.8, 1, scatter(i, 0));
  const around = 2 * Math.PI * scatter(i, 1);
  const level = Math.sqrt(1 - up * up);
  return [level * Math.sin(around), up, level * Math.cos(around)];
}
