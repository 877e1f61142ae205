import { clamp, type Field, mix, type Point, step } from '../field';
import { chance, cross, gradient, type PathPoint, scatter, settle } from '../ribbons';

/** Heading (any length) of the hair at a point of the surface. */
export type Flow = (p: Point) => Point;

export interface Course {
  readonly root: Point;
  /** Millimetres to go. */
  readonly length: number;
  /** Height down to which it falls, mm; it then goes as far as that takes. */
  readonly tip?: number;
  readonly steps: number;
  /** Height over the surface at a share of the way, mm. */
  readonly height: (t: number) => number;
  /** Angle on the surface between the hair and the flow, radians. */
  readonly stray?: (t: number) => number;
}

/** Follows a flow over a surface. */
export function follow(surface: Field, slope: number, flow: Flow, course: Course): PathPoint[] {
  const { root, length, tip, steps, height, stray = () => 0 } = course;
  let foot = settle(surface, root, 0, slope);
  const path: PathPoint[] = [];
  for (let i = 0; i <= steps; i++) {
    const h = height(i / steps);
    const { at, normal } = foot;
    path.push({
      at: [at[0] + normal[0] * h, at[1] + normal[1] * h, at[2] + normal[2] * h],
      normal,
    });
    const along = heading(flow(at), normal, stray(i / steps));
    // What falls has as far to go as it stands above its tip, and farther where it runs level; its
    // steps grow, since it bends most near the root.
    const share = (2 * (i + 2)) / ((steps - i) * (steps + i + 3));
    const stride =
      tip === undefined
        ? length / steps
        : ((at[1] - tip) / Math.max(0.8, -along[1])) * Math.min(1, share);
    foot = settle(
      surface,
      [at[0] + along[0] * stride, at[1] + along[1] * stride, at[2] + along[2] * stride],
      0,
      slope,
    );
  }
  return path;
}

/** Unit heading on the surface: the flow without its rise, turned about the normal. */
function heading(flow: Point, normal: Point, turn: number): Point {
  const lift = flow[0] * normal[0] + flow[1] * normal[1] + flow[2] * normal[2];
  const flat: Point = [
    flow[0] - lift * normal[0],
    flow[1] - lift * normal[1],
    flow[2] - lift * normal[2],
  ];
  const beside = cross(normal, flat);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const turned = flat.map((v, j) => c * v + s * (beside[j] as number));
  const n = Math.hypot(...turned) || 1e-9;
  return turned.map((v) => v / n) as unknown as Point;
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

/** Directions are shaken by so much, or their lattice would show as rows. */
const SHAKEN = 0.06;

/** A direction spread evenly over the sphere above an elevation whose sine is `low`. */
export function spread(i: number, low: number): Point {
  const shaken = (draw: number): number => SHAKEN * (chance(i, draw) - 0.5);
  const up = mix(low, 1, clamp(scatter(i, 0) + shaken(60)));
  const around = 2 * Math.PI * (scatter(i, 1) + shaken(61));
  const level = Math.sqrt(1 - up * up);
  return [level * Math.sin(around), up, level * Math.cos(around)];
}

/** Share of the hairline's length for the `i`-th of some roots: closer over forehead and temples. */
export function alongHairline(i: number, count: number): number {
  const even = (i + chance(i, 6)) / count - 0.5;
  return 0.5 + even * mix(0.62, 1, step(0.2, 0.5, Math.abs(even)));
}

/** Share of missing hairs: ragged at the root (at `most` there) and at the tip, over shares of the way. */
export const ragged =
  (root: number, tip: number, most = 1): ((t: number) => number) =>
  (t) =>
    Math.max(root > 0 ? most * (1 - step(0, root, t)) : 0, tip > 0 ? step(1 - tip, 1, t) : 0);
