import { curve, mix, type Point } from '../field';
import type { HeadShape } from '../head/shape';

/** Middle from which directions to the hairline are taken, drawn coordinates. */
export const HAIR_CENTRE = [0, 20, -85] as const;

export interface Hairline {
  /** Millimetres inside the hair at a point of the scalp; negative on bare skin. */
  inside(x: number, y: number, z: number): number;
  /**
   * From HAIR_CENTRE to the hairline at a share 0..1 of its length (0 and 1 at the nape, 0.5 over the
   * forehead), raised by some degrees.
   */
  direction(share: number, raised: number): Point;
}

/** The hairline, a curve of elevation over azimuth (both in degrees) about HAIR_CENTRE. */
export function hairline(shape: HeadShape): Hairline {
  const f = shape.femininity;
  const [sx, sy, sz] = shape.scale;
  const elevation = curve([
    [0, 40.5],
    [14, mix(41, 41.4, f)],
    [26, mix(44.5, 41.8, f)],
    [36, mix(44, 38.5, f)],
    [44, mix(35, 31, f)],
    [50, mix(24, 21, f)],
    [56, mix(13, 10, f)],
    [63, mix(0, -1, f)],
    [69, mix(-14, -8, f)],
    [74, mix(-25, -13, f)],
    [79, mix(-22, -11, f)],
    [86, -5],
    [95, 3],
    [103, 2],
    [110, -8],
    [117, -24],
    [126, -36],
    [138, -42],
    [155, -45],
    [180, -48],
  ]);
  const inside = (X: number, Y: number, Z: number): number => {
    const x = Math.abs(X) / sx;
    const y = Y / sy - HAIR_CENTRE[1];
    const z = Z / sz - HAIR_CENTRE[2];
    const level = Math.hypot(x, z);
    const azimuth = (Math.atan2(x, z) * 180) / Math.PI;
    const height = (Math.atan2(y, level) * 180) / Math.PI;
    // Steep stretches of the line are nearer than they look along the meridian.
    const slope = (elevation(azimuth + 5) - elevation(azimuth - 5)) / 10;
    const flat = Math.max(0.35, Math.cos((height * Math.PI) / 180));
    const radius = Math.hypot(level, y);
    return (
      ((((height - elevation(azimuth)) * Math.PI) / 180) * radius) / Math.hypot(1, slope / flat)
    );
  };
  // Length of the line from the forehead to each degree of azimuth, so that locks stand evenly.
  const lengths = [0];
  for (let a = 1; a <= 180; a++) {
    const flat = Math.cos((elevation(a) * Math.PI) / 180);
    lengths.push((lengths[a - 1] as number) + Math.hypot(flat, elevation(a) - elevation(a - 1)));
  }
  const direction = (share: number, raised: number): Point => {
    const wanted = Math.abs(2 * share - 1) * (lengths[180] as number);
    const over = Math.max(
      1,
      lengths.findIndex((l) => l >= wanted),
    );
    const [from, to] = [lengths[over - 1] as number, lengths[over] as number];
    const degrees = over - 1 + (wanted - from) / (to - from);
    const e = ((elevation(degrees) + raised) * Math.PI) / 180;
    const a = (Math.sign(share - 0.5) * degrees * Math.PI) / 180;
    return [sx * Math.cos(e) * Math.sin(a), sy * Math.sin(e), sz * Math.cos(e) * Math.cos(a)];
  };
  return { inside, direction };
}
