/** Whatever it is given, a function answers with numbers or with a reason: never NaN, never a throw. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as background from '../../src/optics/background';
import { cameraAt, project } from '../../src/optics/camera';
import { cutFrom } from '../../src/optics/cut';
import * as focus from '../../src/optics/focus';
import * as framing from '../../src/optics/framing';
import * as lens from '../../src/optics/lens';
import * as offAxis from '../../src/optics/off-axis';
import * as perspective from '../../src/optics/perspective';
import * as print from '../../src/optics/print';
import * as realLens from '../../src/optics/real-lens';
import type { Lens, Result } from '../../src/optics/types';
import { type Metre, metres, type Radian } from '../../src/optics/units';
import * as visibility from '../../src/optics/visibility';
import { always, FULL_FRAME_PORTRAIT, value } from './value';

type M = Metre;
const sensor = FULL_FRAME_PORTRAIT;
const camera = value(cameraAt({ standpoint: metres(2), focal: metres(0.085), sensor }));
const zoom: Lens = {
  id: 'zoom',
  name: 'zoom',
  focal: [metres(0.07), metres(0.2)],
  widest: [2.8, 4],
  smallest: 32,
  nearestFocus: [metres(0.7), metres(1)],
  length: metres(0.2),
  largestMagnification: 0.25,
};
const plain = [
  lens.imageDistance,
  lens.magnification,
  lens.focalForImageDistance,
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
  (a: M, b: M, c: M, d: M) => framing.frustumFor(a, { width: b, height: c }, { u: d, v: a }),
  (a: M, b: M, c: M & Radian, d: M) =>
    cameraAt({ standpoint: a, height: b, tilt: c, focal: d, sensor, eyesAt: b, eyesAcross: c }),
  (a: M, b: M, c: M, d: M) => project(camera, [a, b, metres(c + d)]),
  (a: M, b: M, c: M, d: M) =>
    cutFrom({ focal: a, fNumber: b, focus: c, frameHeight: d, sensor, megapixels: b }),
  (a: M, b: M, c: M, d: M) =>
    realLens.lensStateAt({ ...zoom, entrancePupil: c, pupilMagnification: d }, a, b),
  (a: M, b: M) => realLens.lensStateAt(zoom, a, b),
  (a: M, b: M) => realLens.markedFocalFor(zoom, a, b),
  (a: M) => realLens.widestApertureAt(zoom, a),
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
