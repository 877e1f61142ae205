import { axis, type Grid, mirroredAxis } from '../nets';
import { mouth } from './mouth';
import type { HeadShape } from './shape';

/** Lowest plane of the bust, mm: well below any neckline. */
export const BUST_BOTTOM = -330;

/**
 * Planes for the whole skin: `fine` mm over the face, closer over eyes and mouth line, wider over
 * cranium and bust.
 */
export function skinGrid(shape: HeadShape, fine: number): Grid {
  const [, sy] = shape.scale;
  const lips = mouth(shape).line(14);
  return {
    x: mirroredAxis(shape.id === 'female' ? 222 : 252, (x) =>
      x < 50
        ? fine * 0.9
        : x < 102
          ? Math.max(fine, Math.min(1.3, fine * 1.3))
          : Math.min(7, fine * 1.3 + (x - 102) * 0.12),
    ),
    y: axis(BUST_BOTTOM, 142 * sy, (y) => {
      const v = y / sy;
      if (Math.abs(v - lips) < 4) return fine * 0.5;
      if (y > -9 && y < 13) return fine * 0.6;
      if (v > -84 && v < 32) return fine;
      if (v > -120) return Math.min(2.6, fine + Math.max(v - 32, -84 - v) * 0.06);
      return Math.min(7, 2.4 + (-120 - v) * 0.06);
    }),
    z: axis(-262, 45, (z) =>
      z > -16
        ? fine
        : z > -130
          ? Math.min(1.9, fine + (-16 - z) * 0.03)
          : Math.min(5, 1.9 + (-130 - z) * 0.03),
    ),
  };
}
