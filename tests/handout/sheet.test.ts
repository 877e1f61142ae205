import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GREATEST_SIDE, greatestWidth, LEAST_WIDTH, sheetFor } from '../../src/handout/sheet';

const sheets = fc.record({
  width: fc.integer({ min: LEAST_WIDTH, max: GREATEST_SIDE }),
  aspects: fc.array(fc.constantFrom(2 / 3, 3 / 2, 3 / 4, 4 / 3, 1), {
    minLength: 1,
    maxLength: 12,
  }),
  below: fc.record({ captions: fc.boolean(), letters: fc.boolean(), scale: fc.boolean() }),
});

const ALL = { captions: true, letters: true, scale: true };

describe('the side-by-side sheet', () => {
  it('keeps every box whole, inside the sheet and clear of the others', () => {
    fc.assert(
      fc.property(sheets, ({ width, aspects, below }) => {
        const sheet = sheetFor(width, aspects, below);
        const boxes = [...sheet.pictures, ...sheet.scales, ...sheet.captions].filter(
          ({ height }) => height > 0,
        );
        expect(boxes.length).toBe(
          aspects.length * (1 + Number(below.scale) + Number(below.captions || below.letters)),
        );
        for (const [i, a] of boxes.entries()) {
          expect(Object.values(a).every(Number.isInteger)).toBe(true);
          expect(a.x >= 0 && a.y >= 0).toBe(true);
          expect(a.x + a.width <= sheet.width && a.y + a.height <= sheet.height).toBe(true);
          for (const b of boxes.slice(i + 1))
            expect(a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y).toBe(
              true,
            );
        }
      }),
    );
  });

  it('gives pictures the aspect asked for to within a pixel', () => {
    fc.assert(
      fc.property(sheets, ({ width, aspects, below }) => {
        for (const [i, box] of sheetFor(width, aspects, below).pictures.entries())
          expect(Math.abs(box.width - (aspects[i] as number) * box.height)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('is as wide as the longer side allows, and no wider', () => {
    fc.assert(
      fc.property(sheets, ({ aspects, below }) => {
        const width = greatestWidth(aspects, below);
        const sheet = sheetFor(width, aspects, below);
        expect(sheet.height).toBeLessThanOrEqual(GREATEST_SIDE);
        if (width < GREATEST_SIDE)
          expect(sheetFor(width + 1, aspects, below).height).toBeGreaterThan(GREATEST_SIDE);
      }),
    );
    expect(greatestWidth([2 / 3, 2 / 3], ALL)).toBe(GREATEST_SIDE);
  });

  it('refuses sizes that cannot be made', () => {
    expect(() => sheetFor(20000, [1], ALL)).toThrow('320 to 16384');
    expect(() => sheetFor(1000, [], ALL)).toThrow('needs a picture');
  });
});
