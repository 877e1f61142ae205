import type { Field } from '../field';
import type { Grid } from '../nets';
import type { Ribbons } from '../ribbons';

/** One way to wear the hair: a smooth volume and the locks that lie on it. */
export interface HairParts {
  readonly volume: Field;
  /** Planes that resolve the volume. */
  readonly grid: Grid;
  /** Locks over the volume, tapering out beyond the hairline. */
  readonly locks: () => Ribbons;
}
