/** Measures -> readings with their words. */
import { type Measures, measure } from './measures';
import { type ReadingId, ROWS, type Row } from './rows';
import { showValue } from './show';
import type { PictureInput, Reading } from './types';
import type { Visibility } from './visibility';
import type { Lettered, Say, Words } from './words';
import { EN } from './words.en';

/** How the sentences speak; metric and of nobody in particular unless told. */
export interface Speaking extends Partial<Say> {
  readonly words?: Words;
}

/** Fills in what the caller has left open. */
export function speaking({ units = 'metric', pronoun = 'them', words = EN }: Speaking) {
  return { say: { units, pronoun }, words };
}

/** One row of one picture. */
export function readRow(row: Row<ReadingId>, m: Measures, options: Speaking): Reading<ReadingId> {
  const { say, words } = speaking(options);
  const own = words.rows[row.id];
  const value = row.value(m);
  const missing = value === null ? { missing: own.missing ?? words.missing } : {};
  return {
    id: row.id,
    name: own.name(say),
    unit: row.unit,
    value: value === Number.POSITIVE_INFINITY ? null : value,
    ...missing,
    shown: value === null ? words.none : showValue(value, row.show, say, words),
    meaning: value === null ? (own.missing ?? words.missing) : own.meaning(m, say),
    formula: own.formula,
  };
}

/** All readings of measures already taken, in the order of the full table. */
export function readings(m: Measures, options: Speaking = {}): Reading<ReadingId>[] {
  return ROWS.map((row) => readRow(row, m, options));
}

/** All readings of one picture. Visible shares are there when `visibility` is passed in. */
export function readPicture(
  input: PictureInput,
  options: Speaking & { readonly visibility?: Visibility } = {},
): Reading<ReadingId>[] {
  return readings(measure(input, options.visibility ?? null), options);
}

/** The sentence under a row where pictures stand side by side (with one, its own sentence). */
export function rowSentence(
  id: ReadingId,
  pictures: readonly Lettered[],
  options: Speaking = {},
): string {
  const { say, words } = speaking(options);
  const own = words.rows[id];
  const [first, second] = pictures;
  if (first && !second) return own.meaning(first.measures, say);
  return own.together(pictures, say);
}
