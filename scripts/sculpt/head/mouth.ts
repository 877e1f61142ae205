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

export function mouth(shape: HeadShape): Mouth {
  const f = shape.femininity;
  const line = curve([
    [0, -61.9],
    [3.5, -61.5],
    [8, -61.1],
    [14, -61.6],
    [20, -61.2],
    [26, -60],
  ]);
  const top = curve([
    [0, -54.6],
    [3.2, -53.7],
    [6, -53.3],
    [11, -54.8],
    [17, -57.3],
    [22, -59],
    [26, -59.8],
  ]);
  const bottom = curve([
    [0, -70.6],
    [5, -70.5],
    [10, -69.4],
    [16, -66.7],
    [21, -63.7],
    [26, -60.2],
  ]);
  const fullness = mix(1, 1.1, f);
  const [upperHeight, lowerHeight] = [mix(1, 1.24, f), mix(1, 1.14, f)];
  const borders = (ax: number): [number, number, number] => {
    const s = clamp(ax, 0, MOUTH_HALF_WIDTH);
    const m = line(s);
    return [m + (top(s) - m) * upperHeight, m, m + (bottom(s) - m) * lowerHeight];
  };
  const relief = (ax: number, y: number): number => {
    if (ax > 42 || y > -36 || y < -90) return 0;
    const [t, m, b] = borders(ax);
    const q = y - m;
    const upper = Math.max(t - m, 1.5);
    const lower = Math.max(m - b, 1.5);
    const u = q / upper;
    const l = -q / lower;
    const up =
      u < 1
        ? 2.3 + 1.3 * Math.sin(Math.PI * 0.5 * clamp(u * 1.7)) - 1.1 * step(0.5, 1, u)
        : 2.5 * bell((u - 1) * upper, 4);
    const low =
      l < 1
        ? 2.6 + 1.9 * Math.sin(Math.PI * 0.5 * clamp(l * 1.6)) - 1.9 * step(0.4, 1, l)
        : 2.6 * bell((l - 1) * lower, 3.6);
    const side = step(-0.7, 0.7, q);
    const middle = step(29, 12, ax);
    const end = step(28.8, 16.5, ax);
    let h =
      fullness * end * (up * side * mix(0.55, 1, middle) + low * (1 - side) * mix(0.45, 1, middle));
    // The parting: a rounded furrow wide enough for the net to resolve.
    h -= mix(1, 1.7, middle) * bell(q, mix(1, 0.8, middle)) * step(27.6, 22, ax);
    // The corner tucks in a little.
    h -= 0.9 * bell(Math.hypot(ax - 27.5, (y + 60) * 0.8), 3);
    return h;
  };
  const red = (ax: number, y: number): number => {
    if (ax > MOUTH_HALF_WIDTH + 0.5 || y > -45 || y < -80) return 0;
    const [t, m, b] = borders(ax);
    const share = y > m ? (y - m) / (t - m + 0.2) : (m - y) / (m - b + 0.2);
    return step(1.08, 0.92, share) * step(MOUTH_HALF_WIDTH + 0.4, MOUTH_HALF_WIDTH - 2, ax);
  };
  const parting = (ax: number, y: number): number =>
    ax > 28 ? 0 : bell(y - line(clamp(ax, 0, 26)), 0.55) * step(27, 22, ax);
  return { relief, red, parting, line };
}
