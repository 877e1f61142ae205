import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GREATEST_WIDTH, LEAST_WIDTH, sheetFor } from '../../src/handout/sheet';

const sheets = fc.record({
  width: fc.integer({ min: LEAST_WIDTH, max: GREATEST_WIDTH }),
  aspects: fc.array(fc.constantFrom(2 / 3, 3 / 2, 3 / 4, 4 / 3, 1), { minLength: 1, maxLength: 4 }),
  captioned: fc.boolean(),
});

describe('the side-by-side sheet', () => {
  it('keeps every box whole, inside the sheet and clear of the others', () => {
    fc.assert(
      fc.property(sheets, ({ width, aspects, captioned }) => {
        const sheet = sheetFor(width, aspects, captioned);
        const boxes = [...sheet.pictures, ...(captioned ? sheet.captions : [])];
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
      fc.property(sheets, ({ width, aspects, captioned }) => {
        for (const [i, box] of sheetFor(width, aspects, captioned).pictures.entries())
          expect(Math.abs(box.width - (aspects[i] as number) * box.height)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('refuses sizes that cannot be made', () => {
    expect(() => sheetFor(20000, [1], true)).toThrow('320 to 16384');
    expect(() => sheetFor(1000, [], true)).toThrow('needs a picture');
  });
});
