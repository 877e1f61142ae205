/** Whatever it is given, a function answers with numbers or with a reason: never NaN, never a throw. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as background from '../../src/optics/background';
import * as focus from '../../src/optics/focus';
import * as framing from '../../src/optics/framing';
import * as lens from '../../src/optics/lens';
import * as offAxis from '../../src/optics/off-axis';
import * as perspective from '../../src/optics/perspective';
import * as print from '../../src/optics/print';
import type { Result } from '../../src/optics/types';
import type { Metre, Radian } from '../../src/optics/units';
import * as visibility from '../../src/optics/visibility';
import { always } from './value';

type M = Metre;
const plain = [
  lens.imageDistance,
  lens.magnification,
  lens.focalForImageDistance,
  lens.focusForImageDistance,
  lens.markDistance,
  lens.focusForMarkDistance,
  lens.effectiveFNumber,
  lens.exposureLossStops,
  framing.focalForFrame,
  framing.frameForFocal,
  framing.focusForFrame,
  framing.imageDistanceForAngles,
  framing.angleOfView,
  perspective.sizeAtDepth,
  perspective.ratioOf,
  perspective.gain,
  perspective.gainPerStep,
  perspective.distanceForGain,
  (a: M, b: M, c: M, d: M) => perspective.distanceToMatch({ zA: a, zB: b }, { zA: b, zB: c }, d),
  (a: M, b: M, c: M, d: M) => perspective.depthBefore([a, b, c], [b, c, d]),
  offAxis.offAxisStretch,
  offAxis.sphereImage,
  background.backgroundSize,
  background.backdropWidth,
  (a: M, b: M, c: M, d: M) => focus.blurDisc({ focal: a, fNumber: b, focus: c }, d),
  (a: M, b: M, c: M, d: M) => focus.blurInPicture({ focal: a, fNumber: b, focus: c }, d, a),
  (a: M, b: M, c: M, d: M) =>
    focus.depthOfField({ focal: a, fNumber: b, focus: c, circleOfConfusion: d }),
  focus.blurOnBackdrop,
  focus.hyperfocal,
  focus.focusForTwoPlanes,
  focus.fNumberForDepth,
  focus.airyDisc,
  focus.naturalVignettingStops,
  print.viewingDistance,
  visibility.sphereVisibility,
  visibility.ellipsoidOutline,
] as readonly ((...values: (M & Radian)[]) => Result<unknown>)[];

const anything = fc.oneof(
  // Below a picometre is 0: products of what is smaller still would leave the range of doubles.
  fc.double({ min: -10, max: 10 }).map((value) => (Math.abs(value) < 1e-12 ? 0 : value)),
  fc.constantFrom(0, 0.05, 1, -1, 2, Number.NaN, Number.POSITIVE_INFINITY, -Infinity),
) as fc.Arbitrary<M & Radian>;

function holdsNaN(found: unknown): boolean {
  if (typeof found === 'number') return Number.isNaN(found);
  return typeof found === 'object' && found !== null && Object.values(found).some(holdsNaN);
}

describe('domains', () => {
  it('of every function end in a reason', () => {
    always(
      fc.property(fc.tuple(anything, anything, anything, anything), (values) => {
        for (const calculate of plain) {
          const result = calculate(...values);
          if (result.ok) expect(holdsNaN(result.value), String(calculate)).toBe(false);
        }
      }),
      3000,
    );
  });
});
