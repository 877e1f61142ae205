/**
 * A prime that holds a framing stands at one place; so does everything that follows. The place is found here by
 * another way: by stepping the distance until the lens acts as the frame asks.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { focalForFrame, sensorSides } from '../../src/optics/framing';
import { lensMarkDistance, markedFocalFor } from '../../src/optics/real-lens';
import type { Lens } from '../../src/optics/types';
import { metres } from '../../src/optics/units';
import { type PlanCamera, type PlanRequest, solvePlan, type Wanted } from '../../src/plan';
import { holdsAt } from './grid';
import { request } from './random';

const RUNS = 4000;

/** The request with the zoom taped at its shortest mark and the frame held at one height. */
function withPrime(asked: PlanRequest, frameHeight: number): PlanRequest {
  const [wanted, camera] = [asked.wanted[0] as Wanted, asked.cameras[0] as PlanCamera];
  const { focal, widest, nearestFocus } = camera.lens;
  const lens: Lens = {
    ...camera.lens,
    focal: [focal[0], focal[0]],
    widest: [widest[0], widest[0]],
    nearestFocus: [nearestFocus[0], nearestFocus[0]],
  };
  return {
    ...asked,
    wanted: [{ ...wanted, frameHeight }],
    cameras: [{ ...camera, lens }],
  };
}

/** Depth at which the mark is the lens's own, by halving; the mark grows with the depth there. */
function depthOf(wanted: Wanted, { lens, format }: PlanCamera): number {
  const h = sensorSides(format, wanted.orientation).height;
  const markAt = (s: number): number => {
    const focal = focalForFrame(metres(wanted.frameHeight as number), metres(s), h);
    if (!focal.ok) throw new RangeError(focal.reason);
    const tape = lensMarkDistance(lens, focal.value, metres(s));
    if (!tape.ok) throw new RangeError(tape.reason);
    const mark = markedFocalFor(lens, focal.value, tape.value);
    if (!mark.ok) throw new RangeError(mark.reason);
    return mark.value;
  };
  let [near, far] = [0.02, 150];
  for (let i = 0; i < 80; i++) {
    const middle = (near + far) / 2;
    if (markAt(middle) < lens.focal[0]) near = middle;
    else far = middle;
  }
  return (near + far) / 2;
}

describe('a prime', () => {
  test(`works at the one place where it frames as wanted, or nowhere, over ${RUNS} requests`, () => {
    let found = 0;
    fc.assert(
      fc.property(request, fc.double({ min: 0.25, max: 2.2, noNaN: true }), (any, frame) => {
        const asked = withPrime(any, frame);
        const [wanted, camera] = [asked.wanted[0] as Wanted, asked.cameras[0] as PlanCamera];
        const verdict = solvePlan(asked).verdicts[0];
        const s = depthOf(wanted, camera);
        const works = holdsAt(asked, wanted, camera, s);
        if (works === null) return;
        const spans = verdict?.spans ?? [];
        expect(spans).toHaveLength(works ? 1 : 0);
        const [span] = spans;
        if (!span) return;
        found += 1;
        expect(span.to).toBe(span.from);
        expect(span.from / Math.hypot(s, wanted.cameraHeight)).toBeCloseTo(1, 9);
        expect([span.fromBy.name, span.toBy.name]).toEqual(['lens-shortest', 'lens-longest']);
        expect(verdict?.recommended?.mark).toBeCloseTo(camera.lens.focal[0], 9);
      }),
      { numRuns: RUNS, seed: 6, endOnFailure: true },
    );
    expect(found).toBeGreaterThan(RUNS / 50);
  }, 120_000);
});
