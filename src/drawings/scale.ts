/**
 * Distance from the eyes <-> place on the screen. Distances are metres along the line from the
 * sitter's eyes to the camera, negative behind the eyes; places are CSS pixels, to the right.
 */

export type ScaleKind = 'even' | 'stretched';

export interface DistanceScale {
  readonly kind: ScaleKind;
  toX(distance: number): number;
  toDistance(x: number): number;
  /** Pixels for a metre, at the eyes. On the even scale this holds everywhere. */
  readonly pxPerMetreAtEyes: number;
}

export interface Extent {
  /** Nearest and farthest distance shown; the first is negative. */
  readonly from: number;
  readonly to: number;
}

/** Distance over which the stretched scale turns from even to logarithmic: arm's length. */
const NEAR = 0.4;
/** How much sooner that happens behind the sitter, where no camera stands. */
const BEHIND = 0.3;

/** s = ln(1 + d/NEAR) before the eyes; behind them the same law, tighter, with equal slope at 0. */
function stretch(distance: number): number {
  return distance >= 0
    ? Math.log1p(distance / NEAR)
    : -BEHIND * Math.log1p(-distance / (BEHIND * NEAR));
}

function unstretch(s: number): number {
  return s >= 0 ? NEAR * Math.expm1(s) : -BEHIND * NEAR * Math.expm1(-s / BEHIND);
}

/** The even scale of `pxPerMetre` whose zero stands at `zeroX`. */
export function evenScale(zeroX: number, pxPerMetre: number): DistanceScale {
  return {
    kind: 'even',
    toX: (distance) => zeroX + distance * pxPerMetre,
    toDistance: (x) => (x - zeroX) / pxPerMetre,
    pxPerMetreAtEyes: pxPerMetre,
  };
}

/** The scale stretched near the sitter that shows `extent` between `left` and `right`. */
export function stretchedScale(extent: Extent, left: number, right: number): DistanceScale {
  const start = stretch(extent.from);
  const pxPerUnit = (right - left) / (stretch(extent.to) - start);
  return {
    kind: 'stretched',
    toX: (distance) => left + (stretch(distance) - start) * pxPerUnit,
    toDistance: (x) => unstretch((x - left) / pxPerUnit + start),
    pxPerMetreAtEyes: pxPerUnit / NEAR,
  };
}
