/** A reading over distance as the chart draws it, measured closely enough to be smooth. */
import type { ChartContent, ChartScale } from '../drawings/chart';
import { axisUnit } from '../readings/axis';
import { readRow, type Speaking, speaking } from '../readings/read';
import type { ReadingId, Row } from '../readings/rows';
import { showValue } from '../readings/show';
import type { Picture } from '../session/types';
import { TABLED_ROWS, type Tabled } from './range-table';

/** Readings that have a number, and so a curve. */
export const CHARTED_ROWS = TABLED_ROWS.filter((row) => axisUnit(row, 'metric') !== null);

/** Points of a curve: the readings run nearly evenly in 1/d, so these keep within a third of a pixel of it. */
const POINTS = 65;

/** Standpoints from the nearest to the farthest of those given, even in 1/d, the given ones among them. Metres. */
export function curveStandpoints(standpoints: readonly number[]): number[] {
  if (standpoints.length === 0) return [];
  const nearest = Math.min(...standpoints);
  const farthest = Math.max(...standpoints);
  const between =
    farthest > nearest
      ? Array.from({ length: POINTS }, (_, i) => {
          const share = i / (POINTS - 1);
          return 1 / ((1 - share) / nearest + share / farthest);
        }).slice(1, -1)
      : [];
  return [...new Set([...standpoints, ...between])].sort((a, b) => a - b);
}

type Marked = readonly Pick<Picture, 'letter' | 'standpoint'>[];

/** All that a chart measures: the table's standpoints, the pictures' and what lies between. */
export const chartStandpoints = (tabled: readonly number[], pictures: Marked): number[] =>
  curveStandpoints([...tabled, ...pictures.map(({ standpoint }) => standpoint)]);

/** Null for a reading that is no number. */
export function rangeChart(
  asked: {
    readonly row: Row<ReadingId>;
    readonly sitters: readonly Tabled[];
    readonly tabled: readonly number[];
    readonly pictures: Marked;
    readonly scale: ChartScale;
  },
  options: Speaking,
): ChartContent | null {
  const { row, sitters, tabled, pictures, scale } = asked;
  const { say, words } = speaking(options);
  const axis = axisUnit(row, say.units);
  if (!axis) return null;
  const distances = chartStandpoints(tabled, pictures);
  const valueAt = (sitter: Tabled, distance: number): number | null => {
    const { value } = readRow(row, sitter.at(distance), options);
    return typeof value === 'number' ? value : null;
  };
  return {
    units: say.units,
    scale,
    reading: {
      name: words.rows[row.id].name(say),
      axis,
      show: (value) => showValue(value, row.show, say, words),
    },
    curves: sitters.map((sitter) => ({
      id: sitter.name,
      name: sitter.name,
      points: distances.map((distance) => ({ distance, value: valueAt(sitter, distance) })),
    })),
    marks: pictures.map(({ letter, standpoint }) => ({ letter, standpoint })),
  };
}
