import { type Field, step } from '../field';
import type { HeadShape } from '../head/shape';
import { bareHead } from '../head/skin';
import { hairline } from './hairline';

/** Heights over the skin between which hair begins to hang instead of following it, mm. */
const HEIGHT = [5, 16] as const;
/** So far outside the hairline no hair grows on the skin: what lies there hangs, mm. */
const OUTSIDE = [12, 30] as const;

/** How free of the skin hair hangs at a point, 0..1: it then follows the skin under it no longer. */
export function hanging(shape: HeadShape): Field {
  const skin = bareHead(shape);
  const { inside } = hairline(shape);
  return (x, y, z) =>
    Math.max(
      step(HEIGHT[0], HEIGHT[1], skin(x, y, z)),
      step(OUTSIDE[0], OUTSIDE[1], -inside(x, y, z)),
    );
}
