/** Dimension lines as on a workshop drawing. */
import type { Letter } from '../../session/types';
import type { Box, Point, Segment } from '../geometry';
import type { MeasureText } from '../text-width';

export interface DimensionAsked {
  readonly id: string;
  /** The points that are measured. */
  readonly from: Point;
  readonly to: Point;
  /** From the points to the dimension line, pixels. */
  readonly offset: Point;
  readonly text: string;
  readonly letter?: Letter | undefined;
  readonly strong?: boolean;
}

export interface DimensionPlace {
  readonly id: string;
  readonly line: Segment;
  /** From the measured points to a little beyond the line. */
  readonly extensions: readonly Segment[];
  readonly text: string;
  /** Middle of the text, its turn in degrees, and the upright box round it. */
  readonly at: Point;
  readonly turn: number;
  readonly box: Box;
  readonly size: number;
  readonly letter?: Letter | undefined;
  readonly strong: boolean;
  /** Wider than its line: it stands beyond its end. */
  readonly beyond: boolean;
}

/** Length of half a slash at a dimension's ends, pixels. */
export const SLASH = 4;
/** Air between the measured point and its extension line, and beyond the dimension line. */
const AIR = 4;
/** A text's middle over its line, in text sizes. */
const OVER = 0.75;

const plus = (a: Point, b: Point, times = 1): Point => ({
  x: a.x + times * b.x,
  y: a.y + times * b.y,
});

/** The text reads from below or from the right; where it is wider than the line it stands beyond `to`. */
export function placeDimension(
  { id, from, to, offset, text, letter, strong = false }: DimensionAsked,
  size: number,
  measure: MeasureText,
): DimensionPlace {
  const a = plus(from, offset);
  const b = plus(to, offset);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  // From below, or from the right for an upright line.
  const flip = along.x < -1e-6 || (Math.abs(along.x) <= 1e-6 && along.y > 0) ? -1 : 1;
  const turn = (Math.atan2(flip * along.y, flip * along.x) * 180) / Math.PI;
  const over = { x: flip * along.y, y: -flip * along.x };
  const width = measure(text, size, strong ? 650 : 400);
  const beyond = width + 2 * SLASH > length;
  const middle = beyond
    ? plus(b, along, width / 2 + 2 * SLASH)
    : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const at = beyond ? middle : plus(middle, over, OVER * size);
  const [w, h] = [
    Math.abs(along.x) * width + Math.abs(along.y) * size * 1.2,
    Math.abs(along.y) * width + Math.abs(along.x) * size * 1.2,
  ];
  const way = Math.hypot(offset.x, offset.y) || 1;
  const unit = { x: offset.x / way, y: offset.y / way };
  return {
    id,
    line: [a, b],
    extensions: [from, to].map(
      (point): Segment => [plus(point, unit, Math.min(AIR, way)), plus(point, unit, way + AIR)],
    ),
    text,
    at,
    turn,
    box: { x: at.x - w / 2, y: at.y - h / 2, width: w, height: h },
    size,
    letter,
    strong,
    beyond,
  };
}
