/** Lenses against published and derived tables; sources stand in tables/optics.json. */
import { describe, expect, it } from 'vitest';
import { angleOfView, diagonal, focusForFrame, frameForFocal } from '../../src/optics/framing';
import { imageDistance, magnification, markDistance } from '../../src/optics/lens';
import { effectiveFocalAt } from '../../src/optics/real-lens';
import type { Lens } from '../../src/optics/types';
import { metres, mmToM, mToMm, radToDeg } from '../../src/optics/units';
import { FULL_FRAME_LANDSCAPE, value } from '../optics/value';
import tables from './tables/optics.json';

/** A last printed digit may stand for half of itself either way. */
const printed = (found: number, row: number, halfDigit: number) =>
  expect(Math.abs(found - row), `${found} against ${row}`).toBeLessThanOrEqual(halfDigit);

type Row3 = [number, number, number];
type Row4 = [...Row3, number];
type Row9 = [...Row4, ...Row4, number];

describe('angle of view of rectilinear lenses, 36 x 24, far away (Claff 2006)', () => {
  const { rows, derived_rows } = tables.angle_of_view;
  it.each([...rows, ...derived_rows] as Row4[])('%i mm', (focal, across, up, corner) => {
    const angle = (side: number) => radToDeg(value(angleOfView(metres(side), mmToM(focal))));
    // 0.05 is the rounding; the printed table is off by up to 0.07 in single places.
    printed(angle(FULL_FRAME_LANDSCAPE.width), across, 0.07);
    printed(angle(FULL_FRAME_LANDSCAPE.height), up, 0.07);
    printed(angle(diagonal(FULL_FRAME_LANDSCAPE)), corner, 0.07);
  });
});

describe('sensor formats', () => {
  const full = diagonal(FULL_FRAME_LANDSCAPE);
  type Format = [string, number, number, number, number, number, string];
  it.each(tables.sensor_formats.rows as Format[])(
    '%s',
    (_name, width, height, diag, crop, byWidth) => {
      const own = diagonal({ width: mmToM(width), height: mmToM(height) });
      printed(mToMm(own), diag, 0.06);
      printed(full / own, crop, 0.001);
      printed(FULL_FRAME_LANDSCAPE.width / mmToM(width), byWidth, 0.001);
    },
  );

  // Diagonals of the film formats as the printed table implies them, millimetres.
  const implied = [43.27, 69.2, 78.8, 88.3, 152, 312];
  it.each(tables.equivalent_focal_by_diagonal.rows)(
    'equivalents of %i mm by diagonal, 2 %%',
    (...row) => {
      const [focal] = row as Row3;
      row.forEach((cell, column) => {
        const side = implied[column];
        if (cell === null || side === undefined) return;
        const equivalent = (focal * side) / mToMm(full);
        expect(Math.abs(equivalent / Number(cell) - 1)).toBeLessThanOrEqual(0.02);
      });
    },
  );
});

describe('thin lens (derived)', () => {
  it.each(tables.thin_lens.rows as Row9[])('%i mm at %i mm', (...row) => {
    const [f, u, v, m, field24, field36, total, focusedAngle, farAngle] = row;
    const focal = mmToM(f);
    const focus = mmToM(u);
    const image = value(imageDistance(focal, focus));
    printed(mToMm(image), v, 0.006);
    printed(value(magnification(focal, focus)), m, 0.000006);
    printed(mToMm(value(frameForFocal(focal, focus, mmToM(24)))), field24, 0.6);
    printed(mToMm(value(frameForFocal(focal, focus, mmToM(36)))), field36, 0.6);
    printed(mToMm(value(markDistance(focal, focus))), total, 0.06);
    printed(radToDeg(value(angleOfView(mmToM(36), image))), focusedAngle, 0.006);
    printed(radToDeg(value(angleOfView(mmToM(36), focal))), farAngle, 0.06);
  });

  const { columns, rows } = tables.standing_distance;
  it.each(rows)('where to stand for a frame of %i mm', (...row) => {
    const [frame] = row as Row3;
    columns.slice(1).forEach((focal, i) => {
      const u = value(focusForFrame(mmToM(frame), mmToM(Number(focal)), mmToM(36)));
      printed(u, row[i + 1] ?? Number.NaN, 0.0051);
    });
  });
});

describe('breathing of a 70-200 mm zoom (printed manual), within 2 %', () => {
  const [nearest] = tables.depth_of_field_printed_200mm.rows;
  if (!nearest) throw new Error('the table is empty');
  const zoom: Lens = {
    id: 'zoom',
    name: 'zoom',
    focal: [mmToM(70), mmToM(200)],
    widest: [4, 4],
    smallest: 32,
    nearestFocus: [metres(nearest.focus_m), metres(nearest.focus_m)],
    length: mmToM(200),
    largestMagnification: 1 / nearest.one_over_m,
  };
  it.each(tables.depth_of_field_printed_200mm.rows)('at $focus_m m', (row) => {
    const found = value(effectiveFocalAt(zoom, mmToM(200), metres(row.focus_m)));
    const ratio = mToMm(found) / row.effective_focal_mm;
    expect(Math.abs(ratio - 1), String(ratio)).toBeLessThanOrEqual(0.02);
  });
});

describe('the trade (common practice, no source)', () => {
  const from = (focal: number, frame: number) =>
    value(focusForFrame(metres(frame), mmToM(focal), mmToM(36)));

  it('takes a tight vertical headshot at 200 mm from roughly 1.8 to 2.4 m', () => {
    expect(from(200, 0.3)).toBeGreaterThan(1.8);
    expect(from(200, 0.39)).toBeLessThan(2.4);
  });

  it('brings the camera within about 0.2 m for the same frame at 16 mm', () => {
    expect(from(16, 0.3)).toBeLessThan(0.2);
    expect(from(16, 0.39)).toBeLessThan(0.2);
  });
});
