/**
 * The thin lens with both pupils at the lens. Source of the relations: the
 * Gaussian lens equation 1/f = 1/s + 1/s'. What a real lens does differently
 * stands in real-lens.ts.
 */
import { below, mapResult, notNegative, notPositive, ok, refuse } from './result';
import type { Refusal, Result } from './types';
import { type Metre, metres } from './units';

/** A focus that no lens of this focal length reaches, as a refusal. */
export function notFocusable(focal: Metre, focus: Metre): Refusal | null {
  const bad = notPositive(focal, focus);
  if (bad) return bad;
  return focus <= focal ? refuse('inside-focal-length', focal, focus) : null;
}

/** Image distance s' = f s / (s - f), metres. Refuses a focus at or inside the focal length. */
export function imageDistance(focal: Metre, focus: Metre): Result<Metre> {
  return notFocusable(focal, focus) ?? ok(metres((focal * focus) / (focus - focal)));
}

/** Magnification m = f / (s - f) = s'/s. Refuses a focus at or inside the focal length. */
export function magnification(focal: Metre, focus: Metre): Result<number> {
  return notFocusable(focal, focus) ?? ok(focal / (focus - focal));
}

/** Focal length f = s s' / (s + s') that draws the plane at `focus` sharp at `image`, metres. */
export function focalForImageDistance(image: Metre, focus: Metre): Result<Metre> {
  return notPositive(image, focus) ?? ok(metres((focus * image) / (focus + image)));
}

/** Distance on the tape, from the sensor mark: s + s', metres. */
export function markDistance(focal: Metre, focus: Metre): Result<Metre> {
  return mapResult(imageDistance(focal, focus), (image) => metres(focus + image));
}

/**
 * Focus distance s from the distance on the tape: the farther root of s + s' = D, metres.
 * (The nearer root is a picture larger than life.) Refuses D < 4f, where no root exists.
 */
export function focusForMarkDistance(focal: Metre, tape: Metre): Result<Metre> {
  const bad = notPositive(focal, tape);
  if (bad) return bad;
  const nearest = 4 * focal;
  if (below(tape, nearest)) return refuse('too-near-to-focus', nearest, tape);
  return ok(metres((tape + Math.sqrt(tape * Math.max(0, tape - nearest))) / 2));
}

/** Effective f-number N (1 + m/p), with pupil magnification p (1 for a thin lens). */
export function effectiveFNumber(fNumber: number, m: number, p = 1): Result<number> {
  return notPositive(fNumber, p) ?? notNegative(m) ?? ok(fNumber * (1 + m / p));
}

/** Light lost by focusing near, in stops: 2 log2(1 + m/p). */
export function exposureLossStops(m: number, p = 1): Result<number> {
  return notPositive(p) ?? notNegative(m) ?? ok(2 * Math.log2(1 + m / p));
}
