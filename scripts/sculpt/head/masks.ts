import { bell, clamp, ellipsoid, softAbs, step } from '../field';
import { hairline } from '../hair/hairline';
import { ear } from './ear';
import { lidOpening } from './eyes';
import { brow, browTint } from './fringe';
import { mouth } from './mouth';
import { nostril } from './nose';
import type { HeadShape } from './shape';

/** Shares of colour on the skin, each 0..1. */
export interface Masks {
  readonly lips: number;
  /** The dark of the closed mouth's line. */
  readonly parting: number;
  /** Tint of the skin under the brow's hairs. */
  readonly brow: number;
  /** Tint of the scalp under hair; leave it out for a bald head. */
  readonly scalp: number;
  readonly blush: number;
  /** Inside of nostrils and ear canals, where hardly any light comes back. */
  readonly hollow: number;
  /** Rim of the lids where the lashes stand. */
  readonly lash: number;
  /** Wet pink of the lids' rims and inner corner. */
  readonly lidRim: number;
}

export function skinMasks(shape: HeadShape): (x: number, y: number, z: number) => Masks {
  const [sx, sy, sz] = shape.scale;
  const lips = mouth(shape);
  const opening = lidOpening(shape);
  const nostrilAt = nostril(shape);
  const { toLocal } = ear(shape);
  const hollow = (ax: number, y: number, z: number): number => {
    if (z > 5 && ax < 16) return step(1.2, 0.2, nostrilAt(ax, y, z));
    if (ax < 55) return 0;
    const [u, v, w] = toLocal(ax, y, z);
    return step(1.25, 0.9, Math.hypot((u - 5.8) / 2.4, (v + 4.8) / 3.4)) * step(0, -2.5, w);
  };
  const eyebrow = brow(shape);
  const covered = hairline(shape);
  const pupil = shape.interpupillary / 2;
  return (X, Y, Z) => {
    const ax = softAbs(X / sx);
    const y = Y / sy;
    const z = Z / sz;
    const front = step(-22, -14, z);
    const ex = Math.abs(X) - pupil;
    const gap = Math.abs(ex) < 22 && Math.abs(Y) < 16 && Z > -26 ? opening.distance(ex, Y) : 9;
    const upper = Y > opening.lower(clamp(ex, opening.inner, opening.outer)) + 3 ? 1 : 0;
    const cheek = bell(Math.hypot((ax - 44) * 0.8, y + 27, (z + 14) * 0.7), 17) * 0.42;
    const tip = bell(Math.hypot(ax, y + 29, z - 33), 12) * 0.5;
    const ear = ax > 74 && y > -60 && z < -66 ? 0.5 * step(73, 82, ax) : 0;
    const chin = bell(Math.hypot(ax, y + 93, z - 11), 12) * 0.15;
    return {
      lips: front * lips.red(ax, y),
      parting: front * lips.parting(ax, y),
      brow: front * browTint(eyebrow, Math.abs(X), Y),
      scalp: step(-2.5, 8, covered.inside(X, Y, Z)),
      blush: clamp(cheek + tip + ear + chin),
      hollow: hollow(ax, y, z),
      lash: upper * step(2.4, 1, gap),
      lidRim:
        step(0.9, 0.1, gap) * (1 - upper * 0.4) +
        (1 - step(0.9, 0.1, gap)) *
          step(2, 0, ellipsoid(ex, Y, Z, opening.inner + 2, -1.6, -4, 2.6, 2, 4)),
    };
  };
}
