import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenScale, stretchedScale } from '../../src/drawings/scale';
import { numberedTicks, ticks } from '../../src/drawings/ticks';

const EXTENT = { from: -1.4, to: 3.8 };
const SCALES = [evenScale(370, 250), stretchedScale(EXTENT, 8, 1332)];
const distance = fc.double({ min: -1.4, max: 12, noNaN: true });

describe.each(SCALES)('the $kind scale', (scale) => {
  it('rises with the distance', () => {
    fc.assert(
      fc.property(distance, distance, (a, b) => {
        fc.pre(b - a > 1e-6);
        expect(scale.toX(a)).toBeLessThan(scale.toX(b));
      }),
    );
  });

  it('turns back to the distance it came from', () => {
    fc.assert(
      fc.property(distance, (d) => {
        expect(scale.toDistance(scale.toX(d))).toBeCloseTo(d, 9);
      }),
    );
  });

  it('has the stated slope on both sides of the eyes', () => {
    const h = 1e-6;
    expect((scale.toX(h) - scale.toX(0)) / h).toBeCloseTo(scale.pxPerMetreAtEyes, 1);
    expect((scale.toX(0) - scale.toX(-h)) / h).toBeCloseTo(scale.pxPerMetreAtEyes, 1);
  });

  it.each(['metric', 'imperial'] as const)(
    'carries %s ticks in order, apart and in the room',
    (units) => {
      const found = ticks(scale, EXTENT, units, { minGap: 6 });
      expect(found[0]?.distance).toBe(0);
      for (const [i, { distance: d }] of found.entries()) {
        const next = found[i + 1];
        expect(d).toBeLessThanOrEqual(EXTENT.to + 1e-9);
        if (next) expect(scale.toX(next.distance) - scale.toX(d)).toBeGreaterThanOrEqual(6 - 1e-6);
      }
    },
  );
});

it('the stretched scale fills its width and is widest at the eyes', () => {
  const scale = stretchedScale(EXTENT, 8, 1332);
  expect(scale.toX(EXTENT.from)).toBeCloseTo(8, 9);
  expect(scale.toX(EXTENT.to)).toBeCloseTo(1332, 9);
  const span = (from: number) => scale.toX(from + 0.1) - scale.toX(from);
  expect(span(0)).toBeGreaterThan(span(0.5));
  expect(span(0.5)).toBeGreaterThan(span(3));
});

describe('numbers', () => {
  it('of the even metric line stand at every half metre, the last with its unit', () => {
    const texts = numberedTicks(evenScale(370, 250), EXTENT, 'metric', 60).map(({ text }) => text);
    expect(texts).toEqual(['0', '0.5', '1.0', '1.5', '2.0', '2.5', '3.0', '3.5 m']);
  });

  it('of the imperial line are feet', () => {
    const texts = numberedTicks(evenScale(370, 250), EXTENT, 'imperial', 60).map(
      ({ text }) => text,
    );
    expect(texts.slice(0, 4)).toEqual(['0', '1 ft', '2 ft', '3 ft']);
    expect(texts.at(-1)).toBe('12 ft');
  });
});
