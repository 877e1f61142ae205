/** Two pictures against each other. */
import { distanceToMatch } from '../optics/perspective';
import { formatAngle, formatChange, formatLength } from './format';
import { orNull } from './measure-lens';
import type { Measures } from './measures';
import { readRow, type Speaking, speaking } from './read';
import { type Comparing, type ReadingId, ROWS, type Row } from './rows';
import type { Reading } from './types';
import type { Difference, Lettered, PairId, Say, Words } from './words';

/** One row of picture A against picture B. */
export interface Comparison {
  readonly id: ReadingId;
  readonly a: Reading<ReadingId>;
  readonly b: Reading<ReadingId>;
  /** A against B in words: "25 % more"; empty where the row has no direction. */
  readonly change: string;
}

/** Every row of A against B. */
export function compare(a: Measures, b: Measures, options: Speaking = {}): Comparison[] {
  const { say, words } = speaking(options);
  return ROWS.map((row) => ({
    id: row.id,
    a: readRow(row, a, options),
    b: readRow(row, b, options),
    change: changeOf(row, a, b, say, words),
  }));
}

/** Shares apart by less than this are called nearly equal; by less than rounding, equal. */
const NEARLY = 0.01;
const ROUNDING = 1e-9;

/** Ways that are told as a length or an angle; the others as a share of the second value. */
const BY_DIFFERENCE: readonly Comparing[] = ['nearer', 'wider', 'higher'];

function changeOf(row: Row, a: Measures, b: Measures, say: Say, words: Words): string {
  const take = row.compared ?? row.value;
  const [one, other] = [take(a), take(b)];
  const { comparing } = row;
  if (comparing === 'none' || typeof one !== 'number' || typeof other !== 'number') return '';
  if (one === other) return words.equal;
  const by = one - other;
  if (!Number.isFinite(by)) return '';
  if (Math.abs(by) <= ROUNDING * Math.abs(other)) return words.equal;
  if (!BY_DIFFERENCE.includes(comparing)) {
    const share = by / Math.abs(other);
    if (Math.abs(share) < NEARLY) return words.nearlyEqual;
    return words.difference(comparing, { kind: 'share', by: share });
  }
  const show = (value: number): string =>
    row.unit === 'deg'
      ? formatAngle(value, words.locale)
      : formatLength(value, say.units, row.show === 'frame' ? 'frame' : 'distance', words.locale);
  const shown = show(Math.abs(by));
  if (shown === show(0)) return words.nearlyEqual;
  const difference: Difference = { kind: row.unit === 'deg' ? 'angle' : 'length', by, shown };
  return words.difference(comparing, difference);
}

/** How much larger A draws the nose, for the ears, than B does; null where one has no ratio. */
export function gainAgainst(a: Measures, b: Measures): number | null {
  const [one, other] = [a.face.noseToEar.mean, b.face.noseToEar.mean];
  return one === null || other === null ? null : one / other - 1;
}

/**
 * Standpoint from which A's sitter, seen from A's direction, shows the nose-to-ear ratio of B;
 * null where no standpoint does.
 */
export function matchTheLook(a: Measures, b: Measures): number | null {
  const pair = ({ face: { depth } }: Measures) => ({ zA: depth.nose, zB: depth.ears });
  return orNull(distanceToMatch(pair(a), pair(b), b.lens.standpoint));
}

/** The readings that exist only between two pictures, told of A. */
export function readPair(a: Lettered, b: Lettered, options: Speaking = {}): Reading<PairId>[] {
  const { say, words } = speaking(options);
  const reading = (
    id: PairId,
    unit: 'percent' | 'm',
    value: number | null,
    show: (value: number) => string,
  ): Reading<PairId> => {
    const own = words.pair[id];
    const name = own.name(a, b);
    const { formula, missing } = own;
    if (value === null) {
      return { id, unit, value, name, formula, missing, shown: words.none, meaning: missing };
    }
    const shown = show(value);
    return { id, unit, value, name, formula, shown, meaning: own.meaning(a, b, value, shown) };
  };
  return [
    reading(
      'nose_to_ear_gain_against_other_percent',
      'percent',
      gainAgainst(a.measures, b.measures),
      (value) => formatChange(1 + value, words.locale),
    ),
    reading('match_the_look_distance_m', 'm', matchTheLook(a.measures, b.measures), (value) =>
      formatLength(value, say.units, 'distance', words.locale),
    ),
  ];
}
