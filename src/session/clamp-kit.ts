/** Kits and own lenses brought into the legal ranges. */
import { clamp, LIMITS, type Range } from './limits';
import type { Body, Kit, Measured, MeasuredFrame, OwnLens } from './types';

const clampBody = (body: Body): Body => ({
  ...body,
  megapixels: clamp(body.megapixels, LIMITS.megapixels),
});

/** A kit uses a body that it has, and holds each lens once. */
export function clampKit(kit: Kit): Kit {
  const [first, ...others] = kit.bodies;
  return {
    ...kit,
    bodies: [clampBody(first), ...others.map(clampBody)],
    body: kit.bodies.some(({ id }) => id === kit.body) ? kit.body : first.id,
    lenses: [...new Set(kit.lenses)],
  };
}

const both = (
  [short, long]: readonly [number, number],
  range: Range,
): readonly [number, number] => [clamp(short, range), clamp(long, range)];

const clampFrame = ({ tape, frame }: MeasuredFrame): MeasuredFrame => ({
  tape: clamp(tape, LIMITS.measuredTape),
  frame: clamp(frame, LIMITS.measuredFrame),
});

const clampMeasured = ({ near, far, focusedAt }: Measured): Measured => ({
  near: clampFrame(near),
  far: clampFrame(far),
  ...(focusedAt === undefined ? {} : { focusedAt: clamp(focusedAt, LIMITS.measuredTape) }),
});

/** The longer mark comes second, and no lens closes less than it opens. */
export function clampOwnLens(lens: OwnLens): OwnLens {
  const [a, b] = both(lens.focal, LIMITS.focal);
  const widest = both(lens.widest, LIMITS.fNumber);
  const { largestMagnification, entrancePupil, pupilMagnification, measured } = lens;
  const nearestFocus = both(lens.nearestFocus, LIMITS.nearestFocus);
  return {
    ...lens,
    focal: [Math.min(a, b), Math.max(a, b)],
    widest,
    smallest: clamp(lens.smallest, {
      least: Math.max(...widest),
      most: LIMITS.fNumber.most,
    }),
    nearestFocus,
    length: clamp(lens.length, LIMITS.lensLength),
    ...(largestMagnification === undefined
      ? {}
      : { largestMagnification: clamp(largestMagnification, LIMITS.largestMagnification) }),
    ...(entrancePupil === undefined
      ? {}
      : {
          // The plane in focus lies before it.
          entrancePupil: clamp(entrancePupil, {
            least: LIMITS.entrancePupil.least,
            most: Math.min(LIMITS.entrancePupil.most, 0.9 * Math.min(...nearestFocus)),
          }),
        }),
    ...(pupilMagnification === undefined
      ? {}
      : { pupilMagnification: clamp(pupilMagnification, LIMITS.pupilMagnification) }),
    ...(measured === undefined ? {} : { measured: clampMeasured(measured) }),
  };
}
