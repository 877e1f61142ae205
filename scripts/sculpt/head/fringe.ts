import { bell, curve, type Field, mix, type Point, step } from '../field';
import { chance, RibbonBuilder, type Ribbons, scatter, settle } from '../ribbons';
import { lidOpening } from './eyes';
import type { HeadShape } from './shape';
import { skin } from './skin';
import { trace } from './trace';

/** Where the brow runs, true mm in front view: middle height and half width by distance from the midline. */
export interface Brow {
  middle(ax: number): number;
  halfWidth(ax: number): number;
  readonly inner: number;
  readonly outer: number;
}

export function brow(shape: HeadShape): Brow {
  const f = shape.femininity;
  const inner = mix(10.5, 12.5, f);
  const outer = mix(56.5, 54.5, f);
  const middle = curve([
    [inner, mix(20.6, 21.8, f)],
    [18, mix(21.6, 22.8, f)],
    [28, mix(23, 24.6, f)],
    [37, mix(23.6, 25.6, f)],
    [45, mix(22.2, 24.2, f)],
    [outer, mix(16.6, 18.4, f)],
  ]);
  const full = mix(4, 2.8, f);
  const halfWidth = curve([
    [inner, full * 0.45],
    [19, full * 0.9],
    [30, full * 0.9],
    [42, full * 0.6],
    [outer, 0.5],
  ]);
  return { middle, halfWidth, inner, outer };
}

/** Soft tint of the skin under the brow's hairs, 0..1. */
export function browTint(b: Brow, ax: number, y: number): number {
  if (ax < b.inner - 4 || ax > b.outer + 4 || y < 6 || y > 36) return 0;
  const off = (y - b.middle(ax)) / (b.halfWidth(ax) + 0.8);
  return bell(off, 0.55) * step(b.inner - 2, b.inner + 6, ax) * step(b.outer + 2, b.outer - 9, ax);
}

const SLOPE = 0.9;
type Drop = (x: number, y: number) => Point | undefined;
const onSide = (points: readonly Point[], side: number): Point[] =>
  points.map((p) => [side * p[0], p[1], p[2]]);

/** Brows and lashes as single hairs on the skin. */
export function fringe(shape: HeadShape): Ribbons {
  const surface = skin(shape);
  const builder = new RibbonBuilder();
  const drop: Drop = (x, y) => trace(surface, [x, y, 60], [0, 0, -1]);
  for (const side of [1, -1]) {
    browHairs(shape, surface, drop, builder, side);
    lashes(shape, drop, builder, side);
  }
  return builder.build();
}

/** Narrow sheets of a few hairs, thin at the brow's borders and its inner end, and single hairs there. */
function browHairs(
  shape: HeadShape,
  surface: Field,
  drop: Drop,
  builder: RibbonBuilder,
  side: number,
): void {
  const f = shape.femininity;
  const b = brow(shape);
  const count = Math.round(mix(430, 380, f));
  for (let n = 0; n < count; n++) {
    const i = 2 * n + (side > 0 ? 0 : 1);
    const along = scatter(n, 0);
    // A ragged inner end, or the brow looks stamped.
    const ax = mix(b.inner, b.outer - 2, along) + 4 * (chance(i, 1) - 0.4) * step(0.25, 0, along);
    const across = 1.9 * (0.5 * (chance(i, 2) + chance(i, 3)) - 0.5) * mix(1.15, 1.5, chance(i, 4));
    const y = b.middle(ax) + across * b.halfWidth(ax);
    const root = drop(ax, y);
    if (!root) continue;
    // Upright at the inner end, then lying outwards; upper hairs sweep down, lower ones up.
    const upright = mix(1.2, 0.14, step(0, 0.32, along));
    const slope = b.middle(ax + 1) - b.middle(ax);
    const angle = Math.atan(slope) + upright - 0.3 * across + 0.4 * (chance(i, 5) - 0.5);
    const length =
      mix(mix(6.5, 8.5, step(0.1, 0.4, along)), 5, step(0.6, 1, along)) *
      mix(0.65, 1.1, chance(i, 6));
    const path = [0, 1 / 3, 2 / 3, 1].map((t): Point => {
      const bend = angle - 0.5 * t * upright;
      return [
        root[0] + Math.cos(bend) * length * t,
        root[1] + Math.sin(bend) * length * t,
        root[2],
      ];
    });
    const single = Math.abs(across) > 0.75 || along < 0.05 || chance(i, 7) < 0.22;
    const full = single ? mix(0.09, 0.13, chance(i, 8)) : mix(0.55, 1.05, chance(i, 8));
    const bare =
      mix(mix(0.2, 0.32, f), 0.62, step(0.2, 0.9, Math.abs(across))) + 0.25 * step(0.2, 0, along);
    const tone = mix(0.8, 1.35, chance(i, 9));
    builder.add(
      onSide(path, side).map((p, k) => settle(surface, p, 0.1 + 0.2 * k * chance(i, 10), SLOPE)),
      {
        width: (t) => full * (single ? 1 - 0.8 * t : mix(1, 0.7, t)),
        shade: () => tone,
        sheer: single
          ? () => 0
          : (t) => Math.max(bare, 0.8 * (1 - step(0, 0.3, t)), step(0.35, 1, t)),
        hairs: single ? 1 : Math.round(full / 0.15),
        roundness: 0,
      },
    );
  }
}

/** Rows of lashes along both lids; neighbours lean together at their tips. */
function lashes(shape: HeadShape, drop: Drop, builder: RibbonBuilder, side: number): void {
  const f = shape.femininity;
  const opening = lidOpening(shape);
  const pupil = shape.interpupillary / 2;
  const row = (count: number, upper: boolean): void => {
    for (let n = 0; n < count; n++) {
      const i = 4 * n + (upper ? 0 : 1) + (side > 0 ? 0 : 2);
      const share = (n + 0.8 * chance(i, 20)) / count;
      const dx = mix(opening.inner + 3, opening.outer - 0.5, share);
      const edge = upper
        ? opening.upper(dx) + 0.75 + 0.3 * chance(i, 21)
        : opening.lower(dx) - 0.8 - 0.25 * chance(i, 21);
      const root = drop(pupil + dx, edge);
      if (!root) continue;
      const reach =
        (upper ? mix(6.2, 8.6, f) : mix(3, 4.2, f)) *
        mix(0.55, 1, step(0, 0.6, share)) *
        mix(0.72, 1.08, chance(i, 22));
      const tuft = ((Math.floor(n / 3) + 0.5) * 3) / count - share;
      const fan = 0.8 * (share - 0.4) + 0.16 * (chance(i, 23) - 0.5);
      const curl = upper ? mix(0.5, 0.66, f) : -0.3;
      const path = [0, 0.25, 0.5, 0.75, 1].map(
        (t): Point => [
          root[0] + reach * fan * t * mix(0.7, 1, t) + 12 * tuft * t * t,
          root[1] + reach * (upper ? -0.14 * t + curl * t * t : -0.42 * t + 0.5 * curl * t * t),
          root[2] - 0.2 + reach * (0.78 * t - mix(0.2, 0.34, f) * t * t),
        ],
      );
      const normal: Point = [0, upper ? 0.5 : 0.3, 0.86];
      const root0 = upper ? mix(0.13, 0.16, f) : 0.09;
      builder.add(
        onSide(path, side).map((at) => ({ at, normal })),
        {
          width: (t) => root0 * (1 - 0.85 * t),
          shade: () => mix(0.22, 0.12, f),
          roundness: 0,
        },
      );
    }
  };
  row(Math.round(mix(84, 112, f)), true);
  row(Math.round(mix(44, 54, f)), false);
}
