/** The standpoint to take out of those that work. */
import type { Interval } from './intervals';

/** Standpoints are told in these steps, metres: the coarsest that stays inside is taken. */
const STEPS = [0.05, 0.01] as const;

/** The nearest multiple of a step, free of the dust of binary fractions. */
export const toStep = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(6));

/** Depths whose standpoints differ by less are one. */
const POINT = 1e-6;

/**
 * In the longest interval (as a ratio, since perspective goes with 1/d), the place that is as many times
 * farther than its near end as its far end is farther than it, rounded where that stays inside.
 */
export function recommendedDepth(works: readonly Interval[], height: number): number | null {
  const [first, ...others] = works;
  if (!first) return null;
  const longest = others.reduce(
    (best, each) => (each.to / each.from > best.to / best.from ? each : best),
    first,
  );
  const { from, to } = longest;
  const middle = Math.sqrt(from * to);
  if (to - from < POINT) return from;
  for (const step of STEPS) {
    const standpoint = toStep(Math.hypot(middle, height), step);
    const depth = Math.sqrt(Math.max(0, standpoint ** 2 - height ** 2));
    if (depth >= from && depth <= to) return depth;
  }
  return middle;
}
