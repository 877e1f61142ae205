import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LensReadings,
  measuredLens,
  measureError,
  measureLens,
} from '../../src/optics/measure-lens';
import { lensMarkDistance, lensStateAt } from '../../src/optics/real-lens';
import type { Lens } from '../../src/optics/types';
import { type Metre, metres, mmToM, radToDeg } from '../../src/optics/units';
import { always, length } from './value';

const FORMAT = { longSide: mmToM(36), shortSide: mmToM(24) };
const frames = (d1: number, h1: number, d2: number, h2: number): LensReadings => ({
  format: FORMAT,
  side: 'long',
  readings: [
    { tape: metres(d1), frame: metres(h1) },
    { tape: metres(d2), frame: metres(h2) },
  ],
});

function found<T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result)}`);
  return result.value;
}

describe('a lens measured with a tape', () => {
  /**
   * Worked by hand: k = (0.668 - 0.435) / (3 - 2) = 0.233; e = 2 - 0.435 / 0.233 = 0.13305;
   * angle = 2 atan(0.1165) = 2 x 6.6449 = 13.290 degrees; s' = 36 / 0.233 = 154.506 mm. Focused at
   * 2 m: s = 2 - 0.13305 = 1.86695 m, f = 1 / (1/154.506 + 1/1866.95) = 142.70 mm.
   */
  it('finds pupil, angle and focal length of the worked example', () => {
    const measure = found(measureLens(frames(2, 0.435, 3, 0.668)));
    expect(measure.growth).toBeCloseTo(0.233, 9);
    expect(measure.entrancePupil).toBeCloseTo(0.13305, 5);
    expect(radToDeg(measure.angle)).toBeCloseTo(13.29, 2);
    expect(measure.imageDistance * 1000).toBeCloseTo(154.506, 3);
    expect(measure.focal * 1000).toBeCloseTo(142.7, 2);
    expect(measure.focusedAt).toBe(2);
    // Focused far away the image distance is the focal length.
    const far = measureLens({ ...frames(2, 0.435, 3, 0.668), focusedAt: metres(Infinity) });
    expect(found(far).focal).toBeCloseTo(measure.imageDistance, 12);
  });

  it('takes the frames in either order, and the side that was measured', () => {
    const one = found(measureLens(frames(2, 0.435, 3, 0.668)));
    const other = frames(3, 0.668, 2, 0.435);
    expect(found(measureLens(other))).toEqual(one);
    const short = found(measureLens({ ...other, side: 'short' }));
    expect(short.imageDistance / one.imageDistance).toBeCloseTo(24 / 36, 12);
    expect(short.entrancePupil).toBe(one.entrancePupil);
  });

  it.each([
    ['equal-distances', frames(2, 0.4, 2, 0.5), 2, 2],
    ['frame-not-growing', frames(2, 0.5, 3, 0.5), 0.5, 0.5],
    ['frame-not-growing', frames(2, 0.6, 3, 0.5), 0.6, 0.5],
    ['pupil-before-lens', { ...frames(2, 0.435, 3, 0.668), length: metres(0.1) }, 0.1, 0.13305],
    [
      'focus-behind-pupil',
      { ...frames(2, 0.435, 3, 0.668), focusedAt: metres(0.13) },
      0.13305,
      0.13,
    ],
    ['not-positive', frames(-2, 0.5, 3, 0.6), 0, -2],
    ['not-positive', frames(2, 0, 3, 0.6), 0, 0],
    ['not-a-number', frames(2, Number.NaN, 3, 0.6), 0, Number.NaN],
    ['not-a-number', frames(2, 0.5, Infinity, 0.6), 0, Infinity],
  ] as const)('refuses %s', (reason, readings, limit, asked) => {
    const result = measureLens(readings);
    if (result.ok) throw new Error('not refused');
    expect(result.reason).toBe(reason);
    expect(result.limit).toBeCloseTo(limit, 5);
    if (Number.isFinite(asked)) expect(result.asked).toBeCloseTo(asked, 5);
  });

  /**
   * Worked by hand for 1 mm of the tape: e by sqrt(0.435^2 + 0.668^2) / 0.233 = 0.79715 / 0.233 =
   * 3.421 mm; k by 0.233 x sqrt(2) x 0.001 / 1 = 0.00032951, so the angle by 0.00032951 /
   * (1 + 0.233^2 / 4) = 0.00032511 rad = 0.01863 degrees.
   */
  it('carries the error of the tape over', () => {
    const error = found(measureError(frames(2, 0.435, 3, 0.668), { tape: 0.001, frame: 0 }));
    expect(error.entrancePupil * 1000).toBeCloseTo(3.421, 3);
    expect(radToDeg(error.angle)).toBeCloseTo(0.01863, 5);
  });

  it('carries errors over as many readings with such errors scatter', () => {
    const at = frames(1.5, 0.4, 3, 0.82);
    // Small against the readings, so that the first order is all there is.
    const sizes = { tape: 1e-5, frame: 2e-5 };
    const values = Array.from({ length: 20000 }, (_, i) => {
      const [a, b, c, d] = [1, 2, 3, 4].map((n) => scatter(i * 4 + n)) as [
        number,
        number,
        number,
        number,
      ];
      const once = frames(
        1.5 + a * sizes.tape,
        0.4 + b * sizes.frame,
        3 + c * sizes.tape,
        0.82 + d * sizes.frame,
      );
      return found(measureLens({ ...once, focusedAt: metres(1.5) }));
    });
    const error = found(measureError({ ...at, focusedAt: metres(1.5) }, sizes));
    for (const name of ['entrancePupil', 'angle', 'imageDistance', 'focal'] as const) {
      const mean = values.reduce((sum, value) => sum + value[name], 0) / values.length;
      const variance =
        values.reduce((sum, value) => sum + (value[name] - mean) ** 2, 0) / values.length;
      // Three standard errors of a standard deviation of 20000: 1.5 %.
      expect(Math.sqrt(variance) / error[name], name).toBeGreaterThan(0.985);
      expect(Math.sqrt(variance) / error[name], name).toBeLessThan(1.015);
    }
  });

  it('gives a lens that draws the frames it was measured by', () => {
    const lens: Lens = {
      id: 'zoom',
      name: 'Zoom',
      focal: [mmToM(70), mmToM(200)],
      widest: [4, 4],
      smallest: 22,
      nearestFocus: [metres(1), metres(1)],
      length: metres(0.22),
      largestMagnification: 0.2,
    };
    always(
      fc.property(
        length(0.05, 0.2),
        length(0.05, 0.3),
        length(1.2, 3),
        length(0.5, 4),
        fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        (pupil, image, near, apart, p) => {
          const frame = (tape: number) =>
            metres((FORMAT.longSide / image) * (tape - pupil)) as Metre;
          const far = near + apart;
          const measure = found(
            measureLens({ ...frames(near, frame(near), far, frame(far)), pupilMagnification: p }),
          );
          const own = found(measuredLens({ ...lens, pupilMagnification: p }, mmToM(135), measure));
          const state = found(lensStateAt(own, own.focal[0], measure.focusedAt));
          expect(state.imageDistance).toBeCloseTo(image, 9);
          expect(found(lensMarkDistance(own, own.focal[0], state.focus))).toBeCloseTo(near, 9);
          expect(own.largestMagnification).toBeUndefined();
        },
      ),
    );
  });
});

/** A standard normal number of a counter: Box and Muller on a small mixing of bits. */
function scatter(n: number): number {
  const share = (k: number) => {
    let h = Math.imul(k ^ 0x9e3779b9, 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    return (((h ^ (h >>> 16)) >>> 0) + 0.5) / 2 ** 32;
  };
  return Math.sqrt(-2 * Math.log(share(2 * n))) * Math.cos(2 * Math.PI * share(2 * n + 1));
}
