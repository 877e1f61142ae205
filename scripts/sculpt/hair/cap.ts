import { type Field, mix, smoothMax, step } from '../field';
import type { HeadShape } from '../head/shape';
import { bareHead } from '../head/skin';
import { type Hairline, hairline } from './hairline';

/** Slope by which the cap's fields under-estimate distance. */
export const CAP_SLOPE = 0.8;
/** The volume starts this far inside the hairline, mm: the border itself is locks alone. */
const MARGIN = 7;

/** Its inside lies this far under the skin, mm. */
const DEPTH = 5;

export interface Cap extends Hairline {
  /** Closed volume; it dips under the skin at its border, so that no rim stands off the skin. */
  readonly volume: Field;
  /** What locks lie on: the volume, and the skin beyond its border. */
  readonly bed: Field;
}

/** A distance `q` to the hairline, along the skin, of a point that stands `d` off it. */
const along = (q: number, d: number): number =>
  Math.sign(q) * Math.sqrt(Math.max(0, q * q - d * d));

/** A cap of hair over the bare head, `thickness` mm thick at `q` mm inside the hairline. */
export function cap(
  shape: HeadShape,
  thickness: (q: number, x: number, y: number, z: number) => number,
): Cap {
  const bare = bareHead(shape);
  const { inside, direction } = hairline(shape);
  const volume: Field = (x, y, z) => {
    const d = bare(x, y, z);
    if (Math.abs(d) > 60) return (Math.abs(d) - 15) * CAP_SLOPE;
    const q = along(inside(x, y, z), d) - MARGIN;
    const t = mix(-2.5, thickness(Math.max(q, 0), x, y, z), step(-2.5, 4, q));
    // A shell: what lies deeper in the head is never seen.
    return Math.max(smoothMax(d - t, -q - 2.5, 2), -d - DEPTH) * CAP_SLOPE;
  };
  const bed: Field = (x, y, z) => {
    const d = bare(x, y, z);
    if (Math.abs(d) > 60) return d * CAP_SLOPE;
    const q = along(inside(x, y, z), d) - MARGIN;
    return (d - mix(0.5, thickness(Math.max(q, 0), x, y, z), step(-7, 4, q))) * CAP_SLOPE;
  };
  return { volume, bed, inside, direction };
}

/** Smooth noise of period 1 a step along `x`, -1..1: how combed hair gathers in locks. */
export function wave(x: number): number {
  const cell = Math.floor(x);
  const part = x - cell;
  const at = (k: number): number => {
    const s = Math.sin(k * 127.1 + 3.3) * 43758.5453;
    return 2 * (s - Math.floor(s)) - 1;
  };
  return mix(at(cell), at(cell + 1), step(0, 1, part));
}
