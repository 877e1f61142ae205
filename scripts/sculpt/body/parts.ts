import type { Substance } from '../../../src/sitter/types';
import { type Field, smoothMin } from '../field';
import type { Grid } from '../nets';

/** One closed, mirrored part of the body: its field and the grid that resolves it. */
export interface BodyPart {
  readonly name: string;
  readonly substance: Substance;
  readonly field: Field;
  readonly grid: Grid;
}

/** Cell size that narrows from `wide` to `fine` within reach of the places named (mm). */
export const cells =
  (wide: number, fine: number, places: readonly (readonly [at: number, reach: number])[]) =>
  (at: number): number => {
    const away = Math.min(...places.map(([p, reach]) => Math.abs(at - p) - reach));
    return away < 0 ? fine : Math.min(wide, fine + away * 0.12);
  };

/** Distance to everything the body shows, for occlusion. */
export function wholeBody(parts: readonly BodyPart[]): Field {
  return (x, y, z) =>
    parts.reduce((d, part) => smoothMin(d, part.field(x, y, z), 1), Number.POSITIVE_INFINITY);
}
