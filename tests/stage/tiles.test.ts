import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partOfFrustum } from '../../src/optics/framing';
import { largestOf, planTiles, tilePart } from '../../src/stage/tiles';

const size = fc.integer({ min: 1, max: 16384 });

describe('tiles', () => {
  it('cover every pixel once, within the limits', () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: 512, max: 4096 }), (width, height, side) => {
        const limits = { side, rowArea: 8e6 };
        const rows = planTiles(width, height, limits);
        let y = 0;
        for (const row of rows) {
          let x = 0;
          const rowHeight = row[0]?.height ?? 0;
          expect(rowHeight * width).toBeLessThanOrEqual(limits.rowArea + width);
          for (const tile of row) {
            expect([tile.x, tile.y, tile.height]).toEqual([x, y, rowHeight]);
            expect(tile.width).toBeGreaterThan(0);
            expect(tile.height).toBeLessThanOrEqual(side);
            expect(tile.width).toBeLessThanOrEqual(4 * side);
            expect(tile.width * tile.height).toBeLessThanOrEqual(side ** 2);
            x += tile.width;
          }
          expect(x).toBe(width);
          y += rowHeight;
        }
        expect(y).toBe(height);
      }),
    );
  });

  it('stay as large, and their rows, however large the picture is', () => {
    const limits = { side: 512, rowArea: 2 ** 21 };
    const plans = [1400, 4000, 8000, 16384].map((side) => planTiles(side, side, limits));
    for (const rows of plans) {
      const { width, height } = largestOf(rows);
      expect(width * height).toBeGreaterThan(limits.side ** 2 / 2);
      expect(width * height).toBeLessThanOrEqual(limits.side ** 2);
    }
  });

  it('fit into the largest of them', () => {
    fc.assert(
      fc.property(size, size, (width, height) => {
        const rows = planTiles(width, height, { side: 512, rowArea: 2 ** 21 });
        const largest = largestOf(rows);
        for (const tile of rows.flat()) {
          expect(tile.width).toBeLessThanOrEqual(largest.width);
          expect(tile.height).toBeLessThanOrEqual(largest.height);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('join without seams: neighbours share their edge of the frustum', () => {
    const whole = { left: -0.31, right: 0.42, bottom: -0.5, top: 0.23 };
    const rows = planTiles(5000, 3700, { side: 2048, rowArea: 8e6 });
    const frusta = rows.map((row) =>
      row.map((tile) => partOfFrustum(whole, tilePart(tile, 5000, 3700))),
    );
    frusta.forEach((row, r) => {
      row.forEach((frustum, c) => {
        if (row[c + 1]) expect(frustum.right).toBe(row[c + 1]?.left);
        if (frusta[r + 1]) expect(frustum.bottom).toBe(frusta[r + 1]?.[c]?.top);
      });
    });
    expect(frusta[0]?.[0]).toMatchObject({ left: whole.left, top: whole.top });
    expect(frusta.at(-1)?.at(-1)?.right).toBeCloseTo(whole.right, 15);
  });

  it.each([0, -3, 2.5, Number.NaN])('refuse %s pixels', (bad) => {
    expect(() => planTiles(bad, 100, { side: 64, rowArea: 1e6 })).toThrow(RangeError);
  });
});
