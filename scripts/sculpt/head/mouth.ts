import { bell, clamp, curve, mix, step } from '../field';
import type { HeadShape } from './shape';

/** Lips as relief over the muzzle: heights of the borders and the relief itself. Drawn coordinates. */
export interface Mouth {
  /** Relief outwards, mm, at a place in front view. */
  relief(ax: number, y: number): number;
  /** 1 on the red of the lips, 0 outside. */
  red(ax: number, y: number): number;
  /** 1 on the parting line. */
  parting(ax: number, y: number): number;
  /** Height of the parting line. */
  line(ax: number): number;
}

export const MOUTH_HALF_WIDTH = 26;

/** Height of a lip over its muzzle from the parting (0) to its border (1) and on, in mm. */
const profile = (share: number, inner: number, crest: number, border: number): number =>
  share < 0.42
    ? mix(inner, crest, step(-0.25, 0.42, share))
    : mix(crest, border, step(0.42, 1.15, share));

export function mouth(shape: HeadShape): Mouth {
  const f = shape.femininity;
  const low = mix(-3.7, -1.5, f);
  const line = curve([
    [0, -61.9 + low],
    [3.5, -61.6 + low],
    [8, -61.4 + low],
    [14, -61.6 + low],
    [20, -61.2 + low],
    [26, -60.4 + low],
  ]);
  const [upperHeight, lowerHeight] = [mix(1, 1.24, f), mix(1.08, 1.22, f)];
  const upperRed = curve([
    [0, 7],
    [3.4, 8],
    [6.2, 8.1],
    [11, 6.6],
    [17, 4.4],
    [22, 2.6],
    [26, 0.8],
  ]);
  const lowerRed = curve([
    [0, 8.9],
    [5, 8.8],
    [10, 8],
    [16, 5.9],
    [21, 3.6],
    [26, 0.9],
  ]);
  const borders = (ax: number): [number, number, number] => {
    const s = clamp(ax, 0, MOUTH_HALF_WIDTH);
    const m = line(s);
    return [m + upperRed(s) * upperHeight, m, m - lowerRed(s) * lowerHeight];
  };
  const fullness = mix(0.92, 1.08, f);
  const relief = (ax: number, y: number): number => {
    if (ax > 42 || y > -36 || y < -96) return 0;
    const [t, m, b] = borders(ax);
    const q = y - m;
    const upper = Math.max(t - m, 2);
    const lower = Math.max(m - b, 2);
    // The cupid's bow: the middle of the upper lip hangs a little over the lower.
    const bow = 0.25 * bell(ax, 4.5);
    const up =
      profile(q / upper, 1.1 + bow, mix(3, 2.9, f) + bow, 1.5) *
      (q > upper ? bell(q - upper, 3.6) : 1);
    const below = -q / lower;
    const low2 =
      profile(below, 1.2, 4 - 0.4 * bell(ax, 3), 1.7) * (below > 1 ? bell(-q - lower, 3.6) : 1);
    const side = step(-1.1, 1.1, q);
    const middle = step(29, 10, ax);
    const end = step(28.5, 13, ax);
    let h =
      fullness * end * (up * side * mix(0.6, 1, middle) + low2 * (1 - side) * mix(0.5, 1, middle));
    // The parting: a rounded furrow wide enough for the net to resolve.
    h -= mix(0.9, 1.15, middle) * bell(q, mix(1, 0.85, middle)) * step(27, 17, ax);
    // The corner tucks in a little.
    h -= 0.7 * bell(Math.hypot(ax - 28, (y - line(26)) * 0.8), 4.2);
    return h;
  };
  const red = (ax: number, y: number): number => {
    if (ax > MOUTH_HALF_WIDTH + 0.5 || y > -45 || y < -86) return 0;
    const [t, m, b] = borders(ax);
    // The border fades over a millimetre: a hard one looks painted.
    const inside = y > m ? t - y : y - b;
    return step(-0.6, 0.8, inside) * step(MOUTH_HALF_WIDTH + 0.5, MOUTH_HALF_WIDTH - 5, ax);
  };
  const parting = (ax: number, y: number): number =>
    ax > 28 ? 0 : bell(y - line(clamp(ax, 0, 26)), 0.55) * step(25.5, 17, ax);
  return { relief, red, parting, line };
}
