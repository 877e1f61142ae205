import type { Field } from '../field';
import type { Grid } from '../nets';
import type { Ribbons } from '../ribbons';

/** What the stage needs to know of hair at a point of the volume. */
export interface HairPaint {
  /** Lightness against the hair's own colour. */
  readonly shade: number;
  /** Number of the hair, 0..1 over all of them; its gradient is square to the combing. */
  readonly strand: number;
  /** Share of the hairs that are missing. */
  readonly sheer: number;
}

/** One way to wear the hair: a smooth volume and the locks that lie on it. */
export interface HairParts {
  readonly volume: Field;
  readonly paint: (x: number, y: number, z: number) => HairPaint;
  /** Planes that resolve the volume. */
  readonly grid: Grid;
  /** Locks over the volume, tapering out beyond the hairline. */
  readonly locks: () => Ribbons;
}
