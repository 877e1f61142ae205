/** Sharpness from blur discs: nothing here is an approximation for far subjects. */
import { notFocusable } from './lens';
import {
  andThen,
  mapResult,
  notNegative,
  notPositive,
  notPositiveOrInfinite,
  ok,
  refuse,
} from './result';
import type { Refusal, Result } from './types';
import { type Metre, metres, type Radian } from './units';

/** A lens set to focal length, f-number and focus distance (all along the axis, from the lens). */
export interface FocusedLens {
  readonly focal: Metre;
  readonly fNumber: number;
  readonly focus: Metre;
}

/** Green light, to which eyes and sensors are most sensitive. */
export const GREEN_LIGHT = metres(550e-9);

function notFocused({ focal, fNumber, focus }: FocusedLens): Refusal | null {
  return notPositive(fNumber) ?? notFocusable(focal, focus);
}

/**
 * Diameter on the sensor of the disc that a point at depth `x` is drawn as, metres:
 * f^2 |x - s| / (N x (s - f)). `x` may be infinite.
 */
export function blurDisc(lens: FocusedLens, x: Metre): Result<Metre> {
  const bad = notFocused(lens) ?? notPositiveOrInfinite(x);
  if (bad) return bad;
  const { focal, fNumber, focus } = lens;
  return ok(metres((focal ** 2 * Math.abs(1 - focus / x)) / (fNumber * (focus - focal))));
}

/** The blur disc as a share of the picture's height. */
export function blurInPicture(lens: FocusedLens, x: Metre, sensorHeight: Metre): Result<number> {
  return notPositive(sensorHeight) ?? mapResult(blurDisc(lens, x), (disc) => disc / sensorHeight);
}

/**
 * The blur disc of a backdrop `behind` the plane in focus, as measured on the backdrop itself:
 * b h / (N (H + h)), metres. The standpoint has dropped out: equal crops share it.
 */
export function blurOnBackdrop(
  behind: Metre,
  sensorHeight: Metre,
  fNumber: number,
  frameHeight: Metre,
): Result<Metre> {
  return (
    notPositive(behind, sensorHeight, fNumber, frameHeight) ??
    ok(metres((behind * sensorHeight) / (fNumber * (frameHeight + sensorHeight))))
  );
}

export interface DepthOfField {
  readonly near: Metre;
  /** Infinite from the hyperfocal distance on. */
  readonly far: Metre;
}

/** Depths at which the blur disc has grown to the circle of confusion, metres. */
export function depthOfField(
  lens: FocusedLens & { readonly circleOfConfusion: Metre },
): Result<DepthOfField> {
  const bad = notFocused(lens) ?? notPositive(lens.circleOfConfusion);
  if (bad) return bad;
  const { focal, fNumber, focus } = lens;
  const spread = (fNumber * lens.circleOfConfusion * (focus - focal)) / focal ** 2;
  return ok({
    near: metres(focus / (1 + spread)),
    far: metres(spread >= 1 ? Number.POSITIVE_INFINITY : focus / (1 - spread)),
  });
}

/** Focus from which all beyond stays sharp: f^2 / (N c) + f, metres. */
export function hyperfocal(focal: Metre, fNumber: number, circleOfConfusion: Metre): Result<Metre> {
  return (
    notPositive(focal, fNumber, circleOfConfusion) ??
    ok(metres(focal ** 2 / (fNumber * circleOfConfusion) + focal))
  );
}

/** Focus that draws two planes with equal discs: 2 a b / (a + b), metres. */
export function focusForTwoPlanes(a: Metre, b: Metre): Result<Metre> {
  return notPositive(a, b) ?? ok(metres((2 * a * b) / (a + b)));
}

/**
 * Smallest f-number that holds two planes within the circle of confusion, focused between them
 * by `focusForTwoPlanes`; the disc there, set to c, is solved for N. 0 when they coincide.
 */
export function fNumberForDepth(
  focal: Metre,
  a: Metre,
  b: Metre,
  circleOfConfusion: Metre,
): Result<number> {
  return (
    notPositive(circleOfConfusion) ??
    andThen(focusForTwoPlanes(a, b), (focus) =>
      mapResult(blurDisc({ focal, fNumber: 1, focus }, a), (disc) => disc / circleOfConfusion),
    )
  );
}

/** Diameter of the Airy disc to its first dark ring: 2.44 lambda N (1 + m), metres. */
export function airyDisc(fNumber: number, m: number, wavelength = GREEN_LIGHT): Result<Metre> {
  return (
    notPositive(fNumber, wavelength) ??
    notNegative(m) ??
    ok(metres(2.44 * wavelength * fNumber * (1 + m)))
  );
}

/** Light lost off the axis by the cosine-fourth law, in stops; refuses 90 degrees and more. */
export function naturalVignettingStops(angle: Radian): Result<number> {
  const cosine = Math.cos(angle);
  if (Math.abs(angle) >= Math.PI / 2) return refuse('behind-camera', Math.PI / 2, angle);
  return notPositive(cosine) ?? ok(-4 * Math.log2(cosine));
}
