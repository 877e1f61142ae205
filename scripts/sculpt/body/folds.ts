import { bell, clamp, step } from '../field';

/** A place on cloth wrapped round a trunk or limb: turn from the front (degrees), and y (mm). */
export type Wrapped = readonly [degrees: number, y: number];

/** One soft fold: a ridge (height > 0) or a furrow along a line on the cloth, fading at its ends. */
export interface Fold {
  readonly from: Wrapped;
  readonly to: Wrapped;
  /** Standard deviation of the profile across, mm. */
  readonly width: number;
  readonly height: number;
  /** How far the line's middle leaves the straight one, mm, to the right of its way seen from outside. */
  readonly sag: number;
}

export const fold = (from: Wrapped, to: Wrapped, width: number, height: number, sag = 0): Fold => ({
  from,
  to,
  width,
  height,
  sag,
});

/** What a fold takes from the cloth beside it: shallow troughs, as cloth has no more length to give. */
const TROUGH = 0.32;
/** Where their middles lie, in widths of the fold. */
const BESIDE = 2.1;

/**
 * Height of folds on cloth round an axis: the cloth is unrolled at `radius` mm, so that a fold
 * follows the surface however strongly that bends. Arguments are the point relative to the axis.
 */
export function wrappedFolds(
  folds: readonly Fold[],
  radius: number,
): (x: number, y: number, z: number) => number {
  const perDegree = (radius * Math.PI) / 180;
  return (x, y, z) => {
    const degrees = (Math.atan2(x, z) * 180) / Math.PI;
    let sum = 0;
    for (const { from, to, width, height, sag } of folds) {
      const du = (to[0] - from[0]) * perDegree;
      const dv = to[1] - from[1];
      const pu = (degrees - from[0]) * perDegree;
      const pv = y - from[1];
      const t = (pu * du + pv * dv) / (du * du + dv * dv);
      if (t < -0.15 || t > 1.15) continue;
      const c = clamp(t);
      const away = (pu * dv - pv * du) / Math.hypot(du, dv) - 4 * sag * c * (1 - c);
      if (Math.abs(away) > 5 * width) continue;
      const beside = bell(Math.abs(away) - BESIDE * width, width);
      const across = bell(away, width) - TROUGH * beside;
      sum += height * across * step(-0.15, 0.35, t) * step(1.15, 0.6, t);
    }
    return sum;
  };
}
