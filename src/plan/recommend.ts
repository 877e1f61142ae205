/** The standpoint to take out of those that work. */
import type { Interval } from './intervals';
import { depthAt, standpointAt } from './standpoint';

/** Standpoints are told in steps of 5 cm or 1 cm, so many to the metre: the coarsest that stays inside is taken. */
const STEPS = [20, 100] as const;

/** The nearest step; a quotient of whole numbers is free of the dust of binary fractions. */
export const toStep = (metres: number, steps: number): number => Math.round(metres * steps) / steps;

/** Depths whose standpoints differ by less are one. */
const POINT = 1e-6;

/**
 * In the longest interval (as a ratio, since perspective goes with 1/d), the place that is as many times
 * farther than its near end as its far end is farther than it, rounded where that stays inside.
 */
export function recommendedDepth(works: readonly Interval[], height: number): number | null {
  const [first] = works;
  if (!first) return null;
  let longest = first;
  for (const each of works) if (each.to / each.from > longest.to / longest.from) longest = each;
  const { from, to } = longest;
  const middle = Math.sqrt(from * to);
  if (to - from < POINT) return from;
  for (const steps of STEPS) {
    const depth = depthAt(toStep(standpointAt(middle, height), steps), height);
    if (depth >= from && depth <= to) return depth;
  }
  return middle;
}
