import { bell, curve, type Field, mix, type Point, step } from '../field';
import { RibbonBuilder, type Ribbons, scatter, settle } from '../ribbons';
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
    [inner, mix(18.6, 19.8, f)],
    [18, mix(19.8, 20.6, f)],
    [28, mix(21.6, 22.8, f)],
    [37, mix(22.4, 24.2, f)],
    [45, mix(20.6, 22.4, f)],
    [outer, mix(14.2, 16, f)],
  ]);
  const full = mix(4, 2.8, f);
  const halfWidth = curve([
    [inner, full * 0.5],
    [17, full],
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
const bothSides = (points: readonly Point[], side: number): Point[] =>
  points.map((p) => [side * p[0], p[1], p[2]]);

/** Brows and lashes as single hairs on the skin. */
export function fringe(shape: HeadShape): Ribbons {
  const surface = skin(shape);
  const builder = new RibbonBuilder();
  const drop = (x: number, y: number): Point | undefined => trace(surface, [x, y, 60], [0, 0, -1]);
  browHairs(shape, surface, drop, builder);
  lashes(shape, surface, drop, builder);
  return builder.build();
}

function browHairs(
  shape: HeadShape,
  surface: Field,
  drop: (x: number, y: number) => Point | undefined,
  builder: RibbonBuilder,
): void {
  const f = shape.femininity;
  const b = brow(shape);
  const count = Math.round(mix(430, 380, f));
  const thick = mix(0.27, 0.21, f);
  for (let i = 0; i < count; i++) {
    const along = scatter(i, 0);
    // A ragged inner end, or the brow looks stamped.
    const ax =
      mix(b.inner, b.outer - 3, along) + 3.4 * (scatter(i * 3 + 1, 2) - 0.35) * step(0.2, 0, along);
    const across = 2 * scatter(i, 1) - 1;
    const y = b.middle(ax) + across * b.halfWidth(ax) * 0.85;
    const root = drop(ax, y);
    if (!root) continue;
    // Upright at the inner end, then lying outwards; upper hairs sweep down, lower ones up.
    const upright = mix(1.25, 0.12, step(0, 0.3, along));
    const slope = b.middle(ax + 1) - b.middle(ax);
    const angle = Math.atan(slope) + upright - 0.32 * across + 0.5 * (scatter(i, 2) - 0.5);
    const length =
      mix(mix(7, 8.5, step(0.1, 0.4, along)), 5, step(0.6, 1, along)) *
      (0.75 + 0.4 * scatter(i, 2));
    const path = [0, 1 / 3, 2 / 3, 1].map((t): Point => {
      const bend = angle - 0.45 * t * upright;
      return [
        root[0] + Math.cos(bend) * length * t,
        root[1] + Math.sin(bend) * length * t,
        root[2],
      ];
    });
    const tone = 0.85 + 0.6 * scatter(i, 1);
    for (const side of [1, -1])
      builder.add(
        bothSides(path, side).map((p, k) => settle(surface, p, 0.12 + 0.22 * k, SLOPE)),
        { width: (t) => thick * (1 - 0.85 * t), shade: () => tone, roundness: 0.3 },
      );
  }
}

function lashes(
  shape: HeadShape,
  _surface: Field,
  drop: (x: number, y: number) => Point | undefined,
  builder: RibbonBuilder,
): void {
  const f = shape.femininity;
  const opening = lidOpening(shape);
  const pupil = shape.interpupillary / 2;
  const row = (count: number, upper: boolean): void => {
    for (let i = 0; i < count; i++) {
      const share = (i + 0.6 * scatter(i, 1)) / count;
      const dx = mix(opening.inner + 3.5, opening.outer - 0.6, share);
      const edge = upper ? opening.upper(dx) + 0.95 : opening.lower(dx) - 0.95;
      const root = drop(pupil + dx, edge);
      if (!root) continue;
      const reach =
        (upper ? mix(5.6, 7.4, f) : mix(2.4, 3.2, f)) *
        mix(0.62, 1, step(0, 0.65, share)) *
        (0.8 + 0.35 * scatter(i, 0));
      const fan = 0.75 * (share - 0.42) + 0.25 * (scatter(i, 2) - 0.5);
      const lift = upper ? 1 : -0.85;
      const path = [0, 0.3, 0.65, 1].map(
        (t): Point => [
          root[0] + reach * fan * t,
          root[1] + reach * lift * (upper ? -0.1 * t + 0.38 * t * t : 0.3 * t + 0.12 * t * t),
          root[2] - 0.25 + reach * (0.82 * t - 0.28 * t * t),
        ],
      );
      const normal: Point = [0, upper ? 0.5 : 0.3, 0.86];
      for (const side of [1, -1])
        builder.add(
          bothSides(path, side).map((at) => ({ at, normal })),
          {
            width: (t) => (upper ? mix(0.2, 0.26, f) : 0.13) * (1 - 0.9 * t),
            shade: () => 0.12,
            roundness: 0,
          },
        );
    }
  };
  row(Math.round(mix(66, 86, f)), true);
  row(Math.round(mix(30, 36, f)), false);
}
