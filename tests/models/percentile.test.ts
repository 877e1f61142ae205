import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadModels } from '../../src/models/node';
import { percentileOf } from '../../src/models/percentile';

const models = loadModels();

describe('where a value stands in a survey', () => {
  const tables = Object.values(models.dimensions).flatMap(({ female, male }) =>
    [female, male].flatMap((table) => table ?? []),
  );

  it('is the table’s own at its percentiles, and beyond them no more than that', () => {
    expect(tables.length).toBeGreaterThan(50);
    for (const table of tables) {
      expect(percentileOf(table.p50, table)).toBeCloseTo(50, 2);
      expect(percentileOf(table.p1, table)).toBeCloseTo(1, 2);
      expect(percentileOf(table.p99, table)).toBeCloseTo(99, 2);
      expect(percentileOf(table.p1 - 0.1, table)).toBe(0);
      expect(percentileOf(table.p99 + 0.1, table)).toBe(100);
    }
  });

  it('follows a normal distribution between them', () => {
    // Percentiles of a normal distribution of mean 100 and deviation 10, from any table of its quantiles.
    const table = { p1: 76.74, p5: 83.55, p50: 100, p95: 116.45, p99: 123.26 };
    for (const [mm, percentile] of [
      [90, 15.87],
      [93.26, 25],
      [105, 69.15],
      [112.82, 90],
      [120, 97.72],
    ] as const)
      expect(percentileOf(mm, table)).toBeCloseTo(percentile, 1);
  });

  it('never falls as the value grows', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...tables),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (table, a, b) => {
          const at = (share: number) =>
            percentileOf(table.p1 + share * (table.p99 - table.p1), table);
          const [less, more] = a < b ? [a, b] : [b, a];
          expect(at(more)).toBeGreaterThanOrEqual(at(less) - 1e-6);
        },
      ),
      { seed: 5 },
    );
  });
});
