/** Where a value stands among the people of a survey. */
import type { DimensionModel, Percentiles } from './types';

/** Standard normal deviates of the percentiles that the tables hold. */
const DEVIATES = [
  ['p1', -2.3263],
  ['p5', -1.6449],
  ['p50', 0],
  ['p95', 1.6449],
  ['p99', 2.3263],
] as const satisfies readonly (readonly [keyof Percentiles, number])[];

/** The normal distribution's cumulative share; error below 7.5e-8 (Abramowitz and Stegun 1964, 26.2.17). */
function shareBelow(deviate: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(deviate));
  const poly =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp(-(deviate ** 2) / 2) / Math.sqrt(2 * Math.PI)) * poly;
  return deviate > 0 ? 1 - tail : tail;
}

/**
 * Percentile of a value, 1..99; 0 below the first and 100 above the 99th, where the survey says no more.
 * Between the percentiles of the table the deviate runs evenly, as in a normal distribution.
 */
export function percentileOf(mm: number, table: Percentiles): number {
  if (mm < table.p1) return 0;
  if (mm > table.p99) return 100;
  const upper = Math.max(
    1,
    DEVIATES.findIndex(([name]) => mm <= table[name]),
  );
  const [low, fromDeviate] = DEVIATES[upper - 1] as (typeof DEVIATES)[number];
  const [high, toDeviate] = DEVIATES[upper] as (typeof DEVIATES)[number];
  const along = table[high] > table[low] ? (mm - table[low]) / (table[high] - table[low]) : 1;
  return 100 * shareBelow(fromDeviate + along * (toDeviate - fromDeviate));
}

/** The survey's table for people shaped from a sculpture; undefined without one. */
export const tableFor = (
  dimension: DimensionModel,
  sculpture: 'female' | 'male',
): Percentiles | undefined => dimension[sculpture];
