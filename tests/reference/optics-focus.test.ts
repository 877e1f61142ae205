/** Sharpness against printed and derived tables; sources stand in tables/optics.json. */
import { describe, expect, it } from 'vitest';
import { backdropWidth } from '../../src/optics/background';
import { airyDisc, blurDisc, depthOfField, hyperfocal } from '../../src/optics/focus';
import { frameForFocal } from '../../src/optics/framing';
import { focusForMarkDistance, imageDistance } from '../../src/optics/lens';
import { viewingDistance } from '../../src/optics/print';
import { metres, mmToM, mToMm } from '../../src/optics/units';
import { value } from '../optics/value';
import tables from './tables/optics.json';

const FOOT = 0.3048;
const THIRTIETH = mmToM(1 / 30);

/** Limits on the tape of a thin lens focused at a distance on the tape, metres. */
function onTape(focalMm: number, fNumber: number, tape: number, circleOfConfusion = THIRTIETH) {
  const focal = mmToM(focalMm);
  const focus = value(focusForMarkDistance(focal, metres(tape)));
  const behind = value(imageDistance(focal, focus));
  const limits = value(depthOfField({ focal, fNumber, focus, circleOfConfusion }));
  return { near: limits.near + behind, far: limits.far + behind };
}

describe('depth of field (derived, from the lens)', () => {
  type Row = [number, number, number, number, number, number, number, number];
  it.each(tables.depth_of_field_derived.rows as Row[])('%f mm f/%f c %f at %i mm', (...row) => {
    const [f, fNumber, c, u, hyper, near, far, total] = row;
    const focal = mmToM(f);
    const circleOfConfusion = mmToM(c);
    const found = value(depthOfField({ focal, fNumber, focus: mmToM(u), circleOfConfusion }));
    expect(
      Math.abs(mToMm(value(hyperfocal(focal, fNumber, circleOfConfusion))) - hyper),
    ).toBeLessThan(0.51);
    expect(Math.abs(mToMm(found.near) - near)).toBeLessThan(0.51);
    expect(Math.abs(mToMm(found.far) - far)).toBeLessThan(0.51);
    expect(Math.abs(mToMm(found.far - found.near) - total)).toBeLessThan(0.51);
  });
});

describe('depth of field of a 70-200 mm zoom at 200 mm (printed manual, c = 1/30 mm)', () => {
  const cells = tables.depth_of_field_printed_200mm.rows.flatMap((row) =>
    Object.entries(row.near_far_m).map(
      ([n, limits]) =>
        [row.focus_m, Number(n), row.effective_focal_mm, limits as [number, number]] as const,
    ),
  );
  it.each(cells)('at %f m f/%f', (tape, fNumber, focal, [near, far]) => {
    const found = onTape(focal, fNumber, tape);
    const total = far - near;
    // Totals of 0.1 m and more hold within 0.03 m; the smaller ones are printed to 0.01 m at each end.
    expect(Math.abs(found.far - found.near - total)).toBeLessThanOrEqual(0.03);
    expect(Math.abs(found.near - near)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(found.far - far)).toBeLessThanOrEqual(0.03);
  });
});

describe('depth-of-field scales of 50 mm lenses (makers), 10 %', () => {
  type Row = [number, number, number, number | null, string, string];
  const rows = tables.depth_of_field_scales_50mm.rows as Row[];
  it.each(rows)('f/%i at %f: %f to %s %s (%s)', (fNumber, focus, near, far, unit) => {
    const metre = unit === 'ft' ? FOOT : 1;
    // Such lenses are really 50 to 51.6 mm and their scales drawn for 0.030 to 0.033 mm.
    const range = [50, 51.6].flatMap((focal) =>
      [mmToM(0.03), THIRTIETH].map((c) => onTape(focal, fNumber, focus * metre, c)),
    );
    const nears = range.map((limits) => limits.near / metre);
    const fars = range.map((limits) => limits.far / metre);
    expect(near).toBeGreaterThan(Math.min(...nears) * 0.9);
    expect(near).toBeLessThan(Math.max(...nears) * 1.1);
    if (far === null) {
      // A scale runs with 1/distance: on it the limit lies within 10 % of the way to infinity.
      expect(focus / Math.max(...fars)).toBeLessThan(0.1);
    } else {
      expect(far).toBeGreaterThan(Math.min(...fars) * 0.9);
      expect(far).toBeLessThan(Math.max(...fars) * 1.1);
    }
  });
});

describe('background blur (derived)', () => {
  type Row = [number, number, number, number | string, number, number];
  it.each(tables.background_blur.rows as Row[])(
    '%i mm f/%f',
    (f, fNumber, focus, x, disc, share) => {
      const at = x === 'inf' ? metres(Number.POSITIVE_INFINITY) : mmToM(Number(x));
      const found = mToMm(value(blurDisc({ focal: mmToM(f), fNumber, focus: mmToM(focus) }, at)));
      expect(Math.abs(found - disc)).toBeLessThan(0.00051);
      expect(Math.abs((found / 24) * 100 - share)).toBeLessThan(0.0051);
    },
  );
});

describe('diffraction (derived)', () => {
  it.each(tables.diffraction.rows as [number, number][])('f/%f', (fNumber, micrometres) => {
    expect(Math.abs(value(airyDisc(fNumber, 0)) * 1e6 - micrometres)).toBeLessThan(0.0051);
  });
});

describe('viewing distance of a print (published examples)', () => {
  const rows = tables.viewing_distance.rows as [number, number, number, string][];
  it.each(rows)('%i mm enlarged %i times (%s mm)', (focal, enlargement, distance) => {
    // Far away, so that the image distance is the focal length of the examples.
    const d = metres(1e6);
    const frame = value(frameForFocal(mmToM(focal), d, mmToM(24)));
    const print = metres(mmToM(24) * enlargement);
    expect(mToMm(value(viewingDistance(d, print, frame))) / distance).toBeCloseTo(1, 3);
  });
});

describe('backdrop coverage (derived)', () => {
  type Row = [number, number, number, number];
  it.each(tables.backdrop_coverage.rows as Row[])(
    '%f m wide at %f m',
    (frame, sitter, backdrop, needed) => {
      const width = value(backdropWidth(metres(frame), metres(sitter), metres(backdrop - sitter)));
      expect(Math.abs(width - needed)).toBeLessThan(0.0051);
    },
  );
});
