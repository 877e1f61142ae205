import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { showSeries } from '../../src/app/compare/series';
import { curveStandpoints, rangeChart } from '../../src/handout/range-chart';
import {
  evenlyChosen,
  rangeCsv,
  rangeTable,
  rangeText,
  TABLED_ROWS,
  withPictures,
} from '../../src/handout/range-table';
import { formatLength } from '../../src/readings/format';
import { readings } from '../../src/readings/read';
import type { ReadingId } from '../../src/readings/rows';
import { unsculpted } from '../../src/session/cast';
import { demoSession } from '../../src/session/demo';
import { inPlaceOf, measuredAlone } from '../../src/session/one-sitter';
import { personDimensions } from '../../src/session/person';
import { models, must, sitter } from '../session/fixtures';

const session = demoSession();
const [person] = session.people;
const child = inPlaceOf(person, 'child-8');
const childSitter = unsculpted(personDimensions(child, models));
const sitters = [
  { name: 'Woman, "A"', at: measuredAlone(session, models, person, sitter) },
  { name: 'Child', at: measuredAlone(session, models, child, childSitter) },
];
const standpoints = [0.3, 0.4, 1, 2.4, 4];
const chosen: readonly ReadingId[] = [
  'nose_to_ear_ratio',
  'depth_of_field_m.total',
  'in_focus.nose_tip',
  'focal_length_mm',
];
const words = {
  standpoint: 'Standpoint',
  picture: 'Picture',
  si: (name: string, unit: string) => `${name} (${unit})`,
};
const table = rangeTable(
  {
    standpoints,
    sitters,
    readings: new Set(chosen),
    letterAt: (standpoint) => (standpoint === 0.4 ? 'A' : null),
    show: (standpoint) => formatLength(standpoint, 'metric', 'distance'),
  },
  {},
);

describe('the table over a range of standpoints', () => {
  it('has the readings that pictures from those standpoints have', () => {
    const shown = showSeries(session, models, { '1': sitter }, standpoints);
    expect(shown).toHaveLength(standpoints.length);
    for (const [i, { measures }] of shown.entries()) {
      const row = must(table.rows[i]);
      const own = new Map(readings(measures).map((reading) => [reading.id, reading]));
      for (const id of chosen) {
        const cell = must(row.cells.find((each) => each.id === id));
        expect(cell.value).toEqual(own.get(id)?.value);
        expect(cell.shown).toBe(own.get(id)?.shown);
      }
    }
  });

  it('measures each sitter as that sitter', () => {
    const [woman, kid] = must(table.rows[0]).cells.filter(({ id }) => id === 'nose_to_ear_ratio');
    expect(kid?.value).not.toBe(woman?.value);
  });

  it('leaves out what hangs on rays or on a cut, and its own first column', () => {
    const ids = TABLED_ROWS.map(({ id }) => id as string);
    expect(ids.some((id) => /^(visible|cut)/.test(id))).toBe(false);
    expect(ids).not.toContain('standpoint_m');
  });

  it('comes back whole from another CSV reader', () => {
    const { data, errors } = Papa.parse<string[]>(rangeCsv(table, words), { skipEmptyLines: true });
    expect(errors).toEqual([]);
    const [head, ...rows] = data;
    expect(head?.slice(0, 5)).toEqual([
      'Standpoint (m)',
      'Standpoint',
      'Picture',
      'Woman, "A": Nose to ear (ratio)',
      'Woman, "A": Nose to ear',
    ]);
    expect(new Set(data.map((fields) => fields.length))).toEqual(
      new Set([3 + 2 * sitters.length * chosen.length]),
    );
    for (const [i, row] of table.rows.entries()) {
      const fields = must(rows[i]);
      expect(Number(fields[0])).toBe(row.standpoint);
      expect(fields[2]).toBe(row.letter ?? '');
      for (const [j, cell] of row.cells.entries()) {
        const raw = must(fields[3 + 2 * j]);
        if (typeof cell.value === 'number') expect(Number(raw)).toBe(cell.value);
        else expect(raw).toBe(cell.value === null ? '' : String(cell.value));
        expect(fields[4 + 2 * j]).toBe(cell.shown);
      }
    }
  });

  it('goes to the clipboard as tab-separated text', () => {
    const { data } = Papa.parse<string[]>(rangeText(table, words), { delimiter: '\t' });
    expect(data).toHaveLength(1 + standpoints.length);
    expect(data[2]?.slice(0, 2)).toEqual(['0.40 m', 'A']);
    expect(data[2]?.[2]).toBe(must(table.rows[1]).cells[0]?.shown);
  });

  it('has the pictures’ own standpoints once', () => {
    const at = (...all: number[]) => all.map((standpoint) => ({ standpoint }));
    expect(withPictures([0.3, 1, 4], at(0.4, 2.4, 1.001, 2.4))).toEqual([0.3, 0.4, 1, 2.4, 4]);
    expect(withPictures([], at(0.4))).toEqual([0.4]);
  });

  it('keeps both ends where it shows fewer', () => {
    const all = Array.from({ length: 61 }, (_, i) => i);
    const some = evenlyChosen(all, 20);
    expect([some.length, some[0], some.at(-1)]).toEqual([20, 0, 60]);
    expect(new Set(some).size).toBe(20);
    expect(evenlyChosen(all, 61)).toBe(all);
  });
});

describe('the curves', () => {
  it('pass through the table and are smooth between its rows', () => {
    const row = must(TABLED_ROWS.find(({ id }) => id === 'nose_to_ear_ratio'));
    const { pictures } = session;
    const chart = must(
      rangeChart({ row, sitters, tabled: standpoints, pictures, scale: 'even' }, {}),
    );
    for (const [s, curve] of chart.curves.entries()) {
      const at = new Map(curve.points.map(({ distance, value }) => [distance, value]));
      for (const each of table.rows)
        expect(at.get(each.standpoint)).toBe(each.cells[s * chosen.length]?.value);
      for (const { standpoint } of pictures) expect(at.has(standpoint)).toBe(true);
      const values = curve.points.map(({ value }) => must(value));
      for (let i = 1; i < values.length; i += 1)
        expect(values[i]).toBeLessThan(values[i - 1] as number);
    }
  });

  it('are measured from the nearest to the farthest, once each', () => {
    const found = curveStandpoints([4, 0.4, 0.3]);
    expect([found[0], found.at(-1)]).toEqual([0.3, 4]);
    expect(new Set(found).size).toBe(found.length);
    expect(curveStandpoints([])).toEqual([]);
    expect(curveStandpoints([1, 1])).toEqual([1]);
  });
});
