import {
  bell,
  clamp,
  curve,
  ellipsoid,
  joinTube,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  step,
  tube,
} from '../field';
import { GLOBE_DEPTH, type HeadShape } from './shape';

/**
 * The opening between the lids, in millimetres from the pupil, `dx` outwards. Negative inside.
 * 30 mm wide; the upper lid covers the iris' top by about 1.5 mm, the lower lid touches it.
 */
export interface LidOpening {
  distance(dx: number, dy: number): number;
  upper(dx: number): number;
  lower(dx: number): number;
  readonly inner: number;
  readonly outer: number;
}

export function lidOpening(shape: HeadShape): LidOpening {
  const f = shape.femininity;
  const inner = -15.2;
  const outer = 14.3;
  const upperCurve = curve([
    [inner, -2.2],
    [-13.2, -0.2],
    [-10, 2.3],
    [-6, mix(3.3, 3.4, f)],
    [-1.5, mix(3.7, 4, f)],
    [4, mix(3.5, 4, f)],
    [8.5, mix(2.8, 3.3, f)],
    [12, mix(1.8, 2.3, f)],
    [outer, mix(0.5, 0.9, f)],
  ]);
  const lowerCurve = curve([
    [inner, -2.2],
    [-12.8, -3],
    [-9, -4.2],
    [-4, mix(-4.8, -4.9, f)],
    [1.5, mix(-5, -5.2, f)],
    [6, mix(-4.5, -4.7, f)],
    [10, -3.1],
    [12.8, -1],
    [outer, mix(0.5, 0.9, f)],
  ]);
  return {
    inner,
    outer,
    upper: upperCurve,
    lower: lowerCurve,
    distance: (dx, dy) => {
      const ends = Math.max(inner - dx, dx - outer);
      const lids = Math.max(dy - upperCurve(dx), lowerCurve(dx) - dy);
      return ends > 0 ? Math.hypot(ends, Math.max(0, lids)) : Math.max(lids, ends);
    },
  };
}

/**
 * Digs the orbit, lays the lids over the globe and opens them. Takes true millimetres (eyes are
 * not scaled with the head).
 */
export function lids(shape: HeadShape): (d: number, x: number, y: number, z: number) => number {
  const f = shape.femininity;
  const pupil = shape.interpupillary / 2;
  const opening = lidOpening(shape);
  // Fullness between crease and brow.
  const fold = tube([
    [-12.5, 10.5, -0.5, 1.4],
    [-8, 12, 0.4, 3.2],
    [1, 12.8, -1.4, 4.2],
    [10.5, 10.4, -6.6, 4.2],
    [16, 5, -12.6, 3],
    [21, -2, -19.5, 1.4],
  ]);
  const creaseAt = mix(2.6, 3.3, f);
  return (d0, x, y, z) => {
    if (z < -50 || y > 50 || y < -45 || Math.abs(x) > 76) return d0;
    const ax = softAbs(x);
    const ex = ax - pupil;
    let d = smoothMax(d0, -ellipsoid(ex, y, z, 2.5, -1, 12.5, 18.6, 13, 17.8), 15);
    // The hollow beside the nose's root, up to where the nose is narrowest.
    d = smoothMax(d, -ellipsoid(ex, y, z, -15, 1.5, 14.5, 8.5, 12.5, 14.6), 9);
    // Over it the brow's inner end runs softly down to the nose: a steep step there shades like a frown.
    d -= 3.2 * bell(ax - 15, 5.5) * bell(y - 8.5, 6.5) * bell(z - 5, 14);
    const near = ex * ex + y * y + (z + 12) * (z + 12);
    if (near > 1700) return d;
    // The outer corner lies farther back than the ball alone would put it.
    const back = z + 0.02 * Math.max(0, ex) ** 2;
    d = smoothMin(d, ellipsoid(ex, y, back, -0.7, -0.2, -GLOBE_DEPTH, 16.7, 14.3, 13.9), 6);
    d = joinTube(d, fold, ex, y, z, 8);
    if (near > 1200 || z < -15) return d;
    const floor = ellipsoid(ex, y, z, 0, 0, -GLOBE_DEPTH - 2, 17.4, 11.4, 11.4);
    d = smoothMax(d, -smoothMax(opening.distance(ex, y) * 0.9, -floor, 1), 1.2);
    // The flesh of the inner corner.
    d = smoothMin(d, ellipsoid(ex, y, z, -13.6, -2, -6.2, 2.8, 1.7, 3.4), 1.2);
    // Crease over the upper lid.
    const dx = clamp(ex, opening.inner, opening.outer);
    const reach = step(-15, -7, ex) * step(18, 8, ex) * step(-14, -7, z);
    d += mix(0.9, 1, f) * bell(y - opening.upper(dx) - creaseAt, 1.25) * reach;
    // Hollow under the lower lid, very slight.
    d += 0.35 * bell(y - opening.lower(dx) + 5.5, 1.6) * step(-15, -8, ex) * step(16, 9, ex);
    return d;
  };
}
