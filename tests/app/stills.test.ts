import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleBar } from '../../src/app/stills/scaleBar';
import { readStandpoints, spaced } from '../../src/app/stills/standpoints';
import { formatLength } from '../../src/readings/format';

describe('the standpoints of a strip', () => {
  it('are spaced evenly in metres, or in 1/d', () => {
    expect(spaced(0.5, 2.5, 5, 'metres')).toEqual([0.5, 1, 1.5, 2, 2.5]);
    const look = spaced(0.25, 4, 6, 'look').map((d) => 1 / d);
    for (const [i, value] of look.entries()) expect(value).toBeCloseTo(4 - 0.75 * i, 10);
  });

  it('are read as typed, with either decimal mark, and sorted', () => {
    const expected = { ok: true, value: [0.3, 0.6, 1.2, 2.4, 4.8] };
    expect(readStandpoints('0.3, 0.6, 1.2, 2.4, 4.8', 'metric')).toEqual(expected);
    expect(readStandpoints('4,8; 2,4; 1,2; 60 cm; 0,3 m', 'metric')).toEqual(expected);
    expect(readStandpoints('1, 2, 3, 4, 5', 'imperial')).toMatchObject({ ok: true });
  });

  it('are refused with the reason', () => {
    const why = (text: string) => {
      const read = readStandpoints(text, 'metric');
      return read.ok ? null : read.why;
    };
    expect(why('1, 2')).toContain('5 to 12');
    expect(why('1, 1, 1, 1, 1')).toContain('5 to 12');
    expect(why('1, 2, 3, 4, here')).toContain('here');
    expect(why('0.01, 2, 3, 4, 5')).toContain('0.15 m');
    expect(why('1, 2, 3, 4, 500')).toContain('30.00 m');
  });

  it('come back as they are shown', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 16, max: 3000 }), { minLength: 5, maxLength: 12 }),
        (centimetres) => {
          const value = centimetres.map((each) => each / 100).sort((a, b) => a - b);
          const shown = value.map((each) => formatLength(each, 'metric', 'distance')).join(', ');
          expect(readStandpoints(shown, 'metric')).toEqual({ ok: true, value });
        },
      ),
    );
  });
});

describe('the bar of scale', () => {
  it('is a round length that fits below the picture', () => {
    expect(scaleBar(0.28, 'metric')).toEqual({ share: 0.1 / 0.28, label: '10 cm at the eyes' });
    expect(scaleBar(2, 'metric')?.label).toBe('50 cm at the eyes');
    expect(scaleBar(0.28, 'imperial')).toMatchObject({ label: '3 in at the eyes' });
    fc.assert(
      fc.property(fc.double({ min: 0.06, max: 6, noNaN: true }), (width) => {
        const share = scaleBar(width, 'metric')?.share ?? 0;
        expect(share).toBeLessThanOrEqual(0.45);
        expect(share).toBeGreaterThan(0.14);
      }),
    );
  });
});
