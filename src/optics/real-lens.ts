/**
 * A lens with data: it breathes (its focal length shortens as it focuses near),
 * its entrance pupil has a place, its pupils may differ in size. Where a figure
 * is missing the thin lens stands in for it.
 */
import { focusForMarkDistance, markDistance } from './lens';
import { above, andThen, below, mapResult, notPositive, ok, refuse } from './result';
import type { Lens, Refusal, Result } from './types';
import { type Metre, metres } from './units';

/** What a lens does when focused at one distance on the tape. */
export interface LensState {
  /** Focal length as it acts there, metres. */
  readonly focal: Metre;
  /** Entrance pupil to the plane in focus, metres. */
  readonly focus: Metre;
  readonly magnification: number;
  /** m s: the distance that, with the sensor's side, gives the angle of view, metres. */
  readonly imageDistance: Metre;
}

/**
 * A figure known at both ends of a zoom, at a mark between them: its logarithm runs linearly
 * in the logarithm of the focal length (so an aperture closes by equal stops for equal zoom
 * factors). Makers print the ends only; what lies between is this assumption.
 */
function alongZoom(lens: Lens, marked: Metre, [wide, long]: readonly [number, number]): number {
  const [shortest, longest] = lens.focal;
  if (shortest === longest || wide === long) return wide;
  // In this form both ends come out exactly.
  return wide * (long / wide) ** (Math.log(marked / shortest) / Math.log(longest / shortest));
}

/** The power q of the mark with which such a figure runs: wide (mark / shortest)^q. */
export function zoomPower({ focal }: Lens, [wide, long]: readonly [number, number]): number {
  const [shortest, longest] = focal;
  if (shortest === longest || wide === long) return 0;
  return Math.log(long / wide) / Math.log(longest / shortest);
}

function notOnLens(lens: Lens, marked: Metre): Refusal | null {
  const bad = notPositive(marked);
  if (bad) return bad;
  const [shortest, longest] = lens.focal;
  if (below(marked, shortest)) return refuse('lens-too-long', shortest, marked);
  if (above(marked, longest)) return refuse('lens-too-short', longest, marked);
  return null;
}

/** Smallest f-number at a marked focal length; between a zoom's ends see `alongZoom`. */
export function widestApertureAt(lens: Lens, marked: Metre): Result<number> {
  return notOnLens(lens, marked) ?? ok(alongZoom(lens, marked, lens.widest));
}

/** Nearest focus from the sensor mark at a marked focal length, metres. */
export function nearestFocusAt(lens: Lens, marked: Metre): Result<Metre> {
  return notOnLens(lens, marked) ?? ok(metres(alongZoom(lens, marked, lens.nearestFocus)));
}

/** Entrance pupil to the plane in focus for magnification m: s = f (1/m + 1/p), metres. */
export function focusForMagnification(focal: Metre, m: number, p = 1): Result<Metre> {
  return notPositive(focal, m, p) ?? ok(metres(focal * (1 / m + 1 / p)));
}

/** Magnification at focus distance s: the inverse of `focusForMagnification`. */
export function magnificationWithPupils(focal: Metre, focus: Metre, p = 1): Result<number> {
  const bad = notPositive(focal, focus, p);
  if (bad) return bad;
  const inverse = focus / focal - 1 / p;
  return inverse > 0 ? ok(1 / inverse) : refuse('inside-focal-length', focal / p, focus);
}

/**
 * Focal length as it acts over focal length as marked, focused at `tape`. At the near limit of
 * the longest mark it follows from the largest magnification: f = D / (2 + m + 1/m), or
 * s / (1/m + 1/p) where the entrance pupil is known. From there it runs to 1 linearly in 1/D
 * (within 2 % of the printed table of a 70-200 mm zoom). The same ratio holds at every mark: so
 * it is for a zoom focused by its front group. Nearer than that limit the ratio is kept.
 */
function breathing(lens: Lens, tape: Metre): number {
  const [, nearest] = lens.nearestFocus;
  return 1 - (1 - nearestRatio(lens)) * Math.min(1, nearest / tape);
}

/** That ratio at the near limit of the longest mark; 1 for a lens without data. */
export function nearestRatio(lens: Lens): number {
  const m = lens.largestMagnification;
  if (m === undefined) return 1;
  const [, longest] = lens.focal;
  const [, nearest] = lens.nearestFocus;
  const near =
    lens.entrancePupil === undefined
      ? nearest / (2 + m + 1 / m)
      : (nearest - lens.entrancePupil) / (1 / m + 1 / (lens.pupilMagnification ?? 1));
  return near / longest;
}

/** Focal length as it acts when focused at `tape` (from the sensor mark), metres. */
export function effectiveFocalAt(lens: Lens, marked: Metre, tape: Metre): Result<Metre> {
  const bad = notPositive(tape);
  if (bad) return bad;
  return andThen(nearestFocusAt(lens, marked), (nearest) =>
    below(tape, nearest)
      ? refuse('too-near-to-focus', nearest, tape)
      : ok(metres(marked * breathing(lens, tape))),
  );
}

/**
 * The mark to which a lens must be set to act as `focal` when focused at `tape`, metres: the
 * inverse of `effectiveFocalAt`. It may lie beyond the lens's ends; `lensRefusal` says so.
 */
export function markedFocalFor(lens: Lens, focal: Metre, tape: Metre): Result<Metre> {
  return notPositive(focal, tape) ?? ok(metres(focal / breathing(lens, tape)));
}

/**
 * All that a lens does focused at `tape`, up to life size; refuses what its marks or its near
 * limit do not allow.
 */
export function lensStateAt(lens: Lens, marked: Metre, tape: Metre): Result<LensState> {
  return andThen(effectiveFocalAt(lens, marked, tape), (focal) => {
    const p = lens.pupilMagnification ?? 1;
    const focus = lensFocusForMarkDistance(lens, focal, tape);
    return andThen(focus, (s) =>
      mapResult(magnificationWithPupils(focal, s, p), (m) => ({
        focal,
        focus: s,
        magnification: m,
        imageDistance: metres(m * s),
      })),
    );
  });
}

/** Focus distance from the tape: D - e where the entrance pupil's place e is known, else thin. */
export function lensFocusForMarkDistance(lens: Lens, focal: Metre, tape: Metre): Result<Metre> {
  if (lens.entrancePupil === undefined) return focusForMarkDistance(focal, tape);
  const bad = notPositive(focal, tape);
  if (bad) return bad;
  const focus = tape - lens.entrancePupil;
  return focus > focal ? ok(metres(focus)) : refuse('inside-focal-length', focal, focus);
}

/** Distance on the tape: s + e where the entrance pupil's place e is known, else s + s', metres. */
export function lensMarkDistance(lens: Lens, focal: Metre, focus: Metre): Result<Metre> {
  if (lens.entrancePupil === undefined) return markDistance(focal, focus);
  return notPositive(focal, focus) ?? ok(metres(focus + lens.entrancePupil));
}

/** The first limit of the lens that a request passes, or null when the lens can do it. */
export function lensRefusal(
  lens: Lens,
  marked: Metre,
  tape: Metre,
  fNumber: number,
): Refusal | null {
  const bad = notPositive(marked, tape, fNumber);
  if (bad) return bad;
  const acting = effectiveFocalAt(lens, marked, tape);
  if (!acting.ok) return acting;
  const widest = alongZoom(lens, marked, lens.widest);
  if (below(fNumber, widest)) return refuse('aperture-too-wide', widest, fNumber);
  if (above(fNumber, lens.smallest)) return refuse('aperture-too-small', lens.smallest, fNumber);
  return null;
}
