/** Kept comparisons, lists of standpoints and pages, brought into the legal ranges. */
import type { Handout } from './handout';
import { clamp, LIMITS } from './limits';

/** Standpoints within the legal range, rising. */
export const clampStandpoints = (standpoints: readonly number[]): readonly number[] =>
  standpoints.map((each) => clamp(each, LIMITS.standpoint)).sort((a, b) => a - b);

/** A page about a comparison that is gone is about the one on the wall. */
export const clampHandout = (handout: Handout, comparisons: ReadonlySet<string>): Handout => ({
  ...handout,
  pages: handout.pages.map((page) =>
    page.comparison === null || comparisons.has(page.comparison)
      ? page
      : { ...page, comparison: null },
  ),
});
