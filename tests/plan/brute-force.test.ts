/**
 * The exact intervals against a grid of depths, each asked point by point of the optics (grid.ts): another way
 * to the same answer, so that a wrong root, a lost root or a wrong side of one shows.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PlanRequest, solvePlan } from '../../src/plan';
import { holdsAt } from './grid';
import { request } from './random';

const RUNS = 20_000;
/** Depths of the grid, in equal ratios. */
const GRID = Array.from({ length: 32 }, (_, i) => 0.2 * 50 ** (i / 31));
/** A depth so near to an end of an interval is not asked, as a share. */
const EDGE = 1e-6;

function disagreement(asked: PlanRequest): string | null {
  const [wanted, camera] = [asked.wanted[0], asked.cameras[0]];
  if (!wanted || !camera) return null;
  const [verdict] = solvePlan(asked).verdicts;
  const spans = verdict?.spans ?? [];
  for (const s of GRID) {
    const d = Math.hypot(s, wanted.cameraHeight);
    if (spans.some(({ from, to }) => [from, to].some((end) => Math.abs(end / d - 1) < EDGE)))
      continue;
    const exact = spans.some(({ from, to }) => d >= from && d <= to);
    const point = holdsAt(asked, wanted, camera, s);
    if (point !== null && point !== exact)
      return `at ${s}: the grid says ${point}, the intervals ${JSON.stringify(spans)}, ${JSON.stringify(verdict?.conflict)}`;
  }
  return null;
}

describe('the exact intervals', () => {
  test(`agree with a grid of points over ${RUNS} random rooms, kits and requests`, () => {
    let works = 0;
    fc.assert(
      fc.property(request, (asked) => {
        if ((solvePlan(asked).verdicts[0]?.spans.length ?? 0) > 0) works += 1;
        expect(disagreement(asked)).toBe(null);
      }),
      { numRuns: RUNS, seed: 4, endOnFailure: true },
    );
    // Enough of them must be possible for the agreement to say something.
    expect(works).toBeGreaterThan(RUNS / 25);
  }, 300_000);
});
