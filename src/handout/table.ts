/** The readings as a table that leaves the page: tab-separated text, and CSV (RFC 4180). */
import type { Reading } from '../readings/types';

export interface TableRow {
  readonly id: string;
  readonly name: string;
  /** One cell a picture; null where a reading belongs to the pair. */
  readonly cells: readonly (Reading | null)[];
  readonly change: string;
  readonly says: string;
  readonly formula: string;
}

/** Quoted where RFC 4180 wants it. */
const csvField = (text: string): string =>
  /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** One record, its line's end included. */
export const csvLine = (fields: readonly string[]): string =>
  `${fields.map(csvField).join(',')}\r\n`;

/** Below this a number is rounding, not a reading. */
const NOTHING = 1e-12;

/** A reading's SI value as a field; empty where there is none. */
export function raw(cell: Reading | null): string {
  if (cell?.value == null) return '';
  return String(typeof cell.value === 'number' && Math.abs(cell.value) < NOTHING ? 0 : cell.value);
}

/** Names and shown values, tab-separated, for a mail or a document. */
export function tableText(letters: readonly string[], rows: readonly TableRow[]): string {
  const head = ['', ...letters, ''].join('\t').trimEnd();
  const lines = rows.map(({ name, cells, change, says }) =>
    [name, ...cells.map((cell) => cell?.shown ?? ''), change, says].join('\t'),
  );
  return [head, ...lines].join('\n');
}

/** Exact SI values beside the shown ones, for a spreadsheet. */
export function tableCsv(letters: readonly string[], rows: readonly TableRow[]): string {
  const head = [
    'id',
    'reading',
    ...letters.flatMap((letter) => [`${letter} (SI)`, letter]),
    'change',
    'meaning',
    'formula',
  ];
  return [
    csvLine(head),
    ...rows.map((row) =>
      csvLine([
        row.id,
        row.name,
        ...row.cells.flatMap((cell) => [raw(cell), cell?.shown ?? '']),
        row.change,
        row.says,
        row.formula,
      ]),
    ),
  ].join('');
}
