import { type Field, mix, smoothMax, step } from '../field';
import type { HeadShape } from '../head/shape';
import { bareHead } from '../head/skin';
import { hairline } from './hairline';

/** Slope by which the cap's field under-estimates distance. */
export const CAP_SLOPE = 0.8;

/**
 * A cap of hair over the bare head: `thickness` in mm at a place that lies `q` mm inside the
 * hairline. It dips under the skin at the hairline, so that no rim stands off the skin.
 */
export function cap(
  shape: HeadShape,
  thickness: (q: number, x: number, y: number, z: number) => number,
): Field {
  const bare = bareHead(shape);
  const inside = hairline(shape);
  return (x, y, z) => {
    const d = bare(x, y, z);
    if (Math.abs(d) > 60) return d * CAP_SLOPE - 12;
    const q = inside(x, y, z);
    const t = mix(-2.5, thickness(q, x, y, z), step(-2.5, 1.5, q));
    return smoothMax(d - t, -q - 2.5, 2) * CAP_SLOPE;
  };
}
