import { curve, mix } from '../field';
import type { HeadShape } from '../head/shape';

/** Middle from which directions to the hairline are taken, drawn coordinates. */
export const HAIR_CENTRE = [0, 20, -85] as const;

/**
 * How far inside the hair a point of the scalp lies, mm (negative on bare skin). The hairline is a
 * curve of elevation over azimuth (degrees, 0 = straight ahead) about HAIR_CENTRE.
 */
export function hairline(shape: HeadShape): (x: number, y: number, z: number) => number {
  const f = shape.femininity;
  const [sx, sy, sz] = shape.scale;
  const elevation = curve([
    [0, 40.5],
    [14, mix(41, 41.2, f)],
    [28, mix(46, 42.5, f)],
    [38, mix(45, 38, f)],
    [48, mix(31, 27, f)],
    [56, mix(17, 15, f)],
    [63, mix(8, 5, f)],
    [70, mix(-10, -5, f)],
    [76, mix(-23, -13, f)],
    [82, mix(-16, -8, f)],
    [90, 0],
    [98, 4],
    [106, 0],
    [113, -14],
    [120, -31],
    [130, -40],
    [145, -45],
    [160, -46.5],
    [180, -47.5],
  ]);
  return (X, Y, Z) => {
    const x = Math.abs(X) / sx;
    const y = Y / sy - HAIR_CENTRE[1];
    const z = Z / sz - HAIR_CENTRE[2];
    const level = Math.hypot(x, z);
    const azimuth = (Math.atan2(x, z) * 180) / Math.PI;
    const height = (Math.atan2(y, level) * 180) / Math.PI;
    // Steep stretches of the line are nearer than they look along the meridian.
    const slope = (elevation(azimuth + 1.5) - elevation(azimuth - 1.5)) / 3;
    const flat = Math.max(0.35, Math.cos((height * Math.PI) / 180));
    const radius = Math.hypot(level, y);
    return (
      ((((height - elevation(azimuth)) * Math.PI) / 180) * radius) / Math.hypot(1, slope / flat)
    );
  };
}
