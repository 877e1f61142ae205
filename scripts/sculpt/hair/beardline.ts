import { curve, softAbs } from '../field';
import { mouth } from '../head/mouth';
import type { HeadShape } from '../head/shape';

const DEGREES = 180 / Math.PI;
/** Depth of the upright axis about which the beard's borders are drawn, drawn mm. */
export const BEARD_AXIS = -60;
/** Beyond this azimuth, degrees, is the ear. */
export const BEARD_END = 109;

/**
 * Borders of the beard: height over azimuth about BEARD_AXIS (0 before the face), drawn mm. Moustache
 * under the nose, cheek line from the corner of the mouth to the sideburn, neck line under the jaw; a
 * sculptor's choice.
 */
const upper = curve([
  [0, -41],
  [8, -41],
  [15, -44],
  [22, -51],
  [32, -58],
  [43, -57],
  [59, -49],
  [75, -39],
  [88, -27],
  [100, -13],
  [109, -6],
]);
const lower = curve([
  [0, -111],
  [35, -111],
  [60, -109],
  [80, -101],
  [95, -86],
  [109, -70],
]);

export interface Beardline {
  /** About how many millimetres inside the beard a point of the skin lies; negative outside. */
  inside(x: number, y: number, z: number): number;
  /** Azimuth about the beard's axis, degrees, 0 before the face. */
  azimuth(x: number, z: number): number;
}

export function beardline(shape: HeadShape): Beardline {
  const [sx, sy, sz] = shape.scale;
  const lips = mouth(shape);
  const azimuth = (x: number, z: number): number =>
    Math.atan2(Math.abs(x / sx), z / sz - BEARD_AXIS) * DEGREES;
  const inside = (X: number, Y: number, Z: number): number => {
    const ax = softAbs(X / sx);
    const y = Y / sy;
    const around = azimuth(X, Z);
    const fromLine = y - lips.line(Math.min(ax, 26));
    // The lips with their bare border; a bare place at either side below the lower lip.
    const mouthGap =
      Z > -30 ? (Math.hypot(ax / 30, fromLine / (fromLine > 0 ? 9 : 11.5)) - 1) * 10 : 99;
    const bare = Z > -30 ? Math.hypot((ax - 15) / 1.6, fromLine + 15) - 4 : 99;
    return Math.min(
      upper(around) - y,
      y - lower(around),
      (BEARD_END - around) * 0.9,
      mouthGap,
      bare,
    );
  };
  return { inside, azimuth };
}
