/** Readings over a range of standpoints, a row a standpoint: tab-separated text, and CSV (RFC 4180). */
import type { Measures } from '../readings/measures';
import { readRow, type Speaking } from '../readings/read';
import { type ReadingId, ROWS, type Row } from '../readings/rows';
import type { Reading, ReadingUnit } from '../readings/types';
import { isSamePlace } from '../session/standpoint-list';
import type { Letter } from '../session/types';
import { csvLine, raw } from './table';

/** What hangs on rays against a mesh, on a cut, or is the table's own first column. */
const NOT_TABLED = /^(visible_share\.|cut\.|standpoint_m$)/;

/** Readings that a table of standpoints can show. */
export const TABLED_ROWS: readonly Row<ReadingId>[] = ROWS.filter(({ id }) => !NOT_TABLED.test(id));

/** What a table shows until something else is chosen. */
export const USUAL_TABLED: readonly ReadingId[] = [
  'nose_to_ear_ratio',
  'size_ratio.nose_tip',
  'size_ratio.ears',
  'background_size_ratio',
  'depth_of_field_m.total',
  'focal_length_mm',
];

/** Somebody who is measured from any standpoint, metres. */
export interface Tabled {
  readonly name: string;
  readonly at: (standpoint: number) => Measures;
}

export interface RangeColumn {
  readonly sitter: string;
  readonly row: Row<ReadingId>;
  readonly name: string;
}

export interface RangeRow {
  readonly standpoint: number;
  readonly shown: string;
  /** Whose picture was taken from there. */
  readonly letter: Letter | null;
  /** One a column. */
  readonly cells: readonly Reading<ReadingId>[];
}

export interface RangeTable {
  readonly columns: readonly RangeColumn[];
  readonly rows: readonly RangeRow[];
}

/** Readings in the order of the full table, for each sitter. */
export function rangeTable(
  asked: {
    readonly standpoints: readonly number[];
    readonly sitters: readonly Tabled[];
    readonly readings: ReadonlySet<ReadingId>;
    readonly letterAt: (standpoint: number) => Letter | null;
    readonly show: (standpoint: number) => string;
  },
  speaking: Speaking,
): RangeTable {
  const chosen = TABLED_ROWS.filter(({ id }) => asked.readings.has(id));
  const [first] = asked.standpoints;
  const columns = asked.sitters.flatMap(({ name: sitter, at }) =>
    chosen.map((row) => ({
      sitter,
      row,
      name: first === undefined ? '' : readRow(row, at(first), speaking).name,
    })),
  );
  const rows = asked.standpoints.map((standpoint) => ({
    standpoint,
    shown: asked.show(standpoint),
    letter: asked.letterAt(standpoint),
    cells: asked.sitters.flatMap(({ at }) => {
      const measures = at(standpoint);
      return chosen.map((row) => readRow(row, measures, speaking));
    }),
  }));
  return { columns, rows };
}

/** The table's standpoints with the pictures' own among them. Metres, rising. */
export function withPictures(
  tabled: readonly number[],
  pictures: readonly { readonly standpoint: number }[],
): readonly number[] {
  const own = pictures
    .map(({ standpoint }) => standpoint)
    .filter((each) => !tabled.some((row) => isSamePlace(row, each)));
  return [...new Set([...tabled, ...own])].sort((a, b) => a - b);
}

/** At most so many of a list, the first and the last among them. */
export function evenlyChosen<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  return Array.from(
    { length: most },
    (_, i) => list[Math.round((i * (list.length - 1)) / (most - 1))] as T,
  );
}

/** What the table says besides its readings. */
export interface RangeWords {
  readonly standpoint: string;
  readonly picture: string;
  /** Head of a column of SI values. */
  readonly si: (name: string, unit: string) => string;
}

/** Units of the SI values, as a column's head names them. */
const SI: Readonly<Record<ReadingUnit, string>> = {
  m: 'm',
  mm: 'm',
  deg: 'rad',
  percent: 'share of 1',
  share: 'share of 1',
  ratio: 'ratio',
  stops: 'stops',
  'f-number': 'f-number',
  megapixels: 'megapixels',
  text: 'code',
  'yes-or-no': 'true or false',
};

const headOf = ({ sitter, name }: RangeColumn): string => `${sitter}: ${name}`;

/** Shown values, tab-separated, for a mail or a document. */
export function rangeText({ columns, rows }: RangeTable, words: RangeWords): string {
  return [
    [words.standpoint, words.picture, ...columns.map(headOf)],
    ...rows.map(({ shown, letter, cells }) => [
      shown,
      letter ?? '',
      ...cells.map((cell) => cell.shown),
    ]),
  ]
    .map((fields) => fields.map((field) => field.replace(/[\t\r\n]+/g, ' ')).join('\t'))
    .join('\n');
}

/** Exact SI values, each beside the shown one, for a spreadsheet. */
export function rangeCsv({ columns, rows }: RangeTable, words: RangeWords): string {
  return [
    csvLine([
      words.si(words.standpoint, 'm'),
      words.standpoint,
      words.picture,
      ...columns.flatMap((column) => [
        words.si(headOf(column), SI[column.row.unit]),
        headOf(column),
      ]),
    ]),
    ...rows.map(({ standpoint, shown, letter, cells }) =>
      csvLine([
        String(standpoint),
        shown,
        letter ?? '',
        ...cells.flatMap((cell) => [raw(cell), cell.shown]),
      ]),
    ),
  ].join('');
}
