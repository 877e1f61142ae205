/**
 * A lens measured with a tape: with the focus untouched the field is a pyramid whose tip is the
 * entrance pupil, so the frame grows in proportion to the distance from there: H = k (D - e). D is
 * taken from the sensor mark, e is the entrance pupil's place before it, k the frame's side over
 * the distance from the pupil. Source: the similar triangles of a central projection. Two frames
 * at two distances give both. Metres and radians.
 */
import { nearestFocusAt, widestApertureAt } from './real-lens';
import { andThen, mapResult } from './result';
import type { Lens, Result, SensorFormat } from './types';
import { type Metre, metres, type Radian, radians } from './units';

/** The side of the frame that lay against the ruler. */
export type MeasuredSide = 'long' | 'short';

/** One frame: what fills the side from edge to edge, and its distance on the tape. */
export interface FrameReading {
  readonly tape: Metre;
  readonly frame: Metre;
}

export interface LensReadings {
  readonly format: Pick<SensorFormat, 'longSide' | 'shortSide'>;
  readonly side: MeasuredSide;
  /** In either order. */
  readonly readings: readonly [FrameReading, FrameReading];
  /**
   * Distance on the tape at which the lens was focused; may be infinite. Absent: the nearer of the
   * two, where the frame is sharp and so is read first.
   */
  readonly focusedAt?: Metre;
  /** Exit pupil over entrance pupil; absent: 1. */
  readonly pupilMagnification?: number;
  /** Sensor mark to the lens's front, where it is known: no pupil is looked for before it. */
  readonly length?: Metre;
}

export interface LensMeasure {
  /** k: frame's side over distance from the entrance pupil. */
  readonly growth: number;
  /** e: from the sensor mark; negative behind it, as some long lenses have it. */
  readonly entrancePupil: Metre;
  /** 2 atan(k / 2), on the measured side. */
  readonly angle: Radian;
  /** side / k: entrance pupil to image plane, as `Camera.imageDistance`. */
  readonly imageDistance: Metre;
  /** The focal length as it acts at `focusedAt`: 1/f = 1/s' + 1/(p s). */
  readonly focal: Metre;
  /** The distance on the tape that the measure belongs to; at another the lens may breathe. */
  readonly focusedAt: Metre;
}

export type MeasureFault =
  | 'not-a-number'
  | 'not-positive'
  /** Both frames at one distance. */
  | 'equal-distances'
  /** The farther frame is not the larger: k is 0 or negative. */
  | 'frame-not-growing'
  /** The entrance pupil would lie before the lens's front. */
  | 'pupil-before-lens'
  /** Focused nearer than the entrance pupil. */
  | 'focus-behind-pupil';

/** `limit` and `asked` in metres. */
export type MeasureResult<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly reason: MeasureFault;
      readonly limit: number;
      readonly asked: number;
    };

const fault = (reason: MeasureFault, limit: number, asked: number) =>
  ({ ok: false, reason, limit, asked }) as const;

function unusable({ readings, focusedAt, pupilMagnification, format, length }: LensReadings) {
  const numbers = [
    ...readings.flatMap(({ tape, frame }) => [tape, frame]),
    format.longSide,
    format.shortSide,
    pupilMagnification ?? 1,
    length ?? 1,
  ];
  const focus = focusedAt === undefined || focusedAt === Number.POSITIVE_INFINITY ? 1 : focusedAt;
  const all = [...numbers, focus];
  const unreadable = all.find((number) => !Number.isFinite(number));
  if (unreadable !== undefined) return fault('not-a-number', 0, unreadable);
  const bad = all.find((number) => number <= 0);
  return bad === undefined ? null : fault('not-positive', 0, bad);
}

/**
 * The lens of two readings: k = (H2 - H1) / (D2 - D1), e = D1 - H1 / k. A pupil beyond the nearer
 * frame cannot come out, since that frame is larger than 0; one before the lens's front is refused
 * where the front's place is known.
 */
export function measureLens(asked: LensReadings): MeasureResult<LensMeasure> {
  const bad = unusable(asked);
  if (bad) return bad;
  const [near, far] = inOrder(asked.readings);
  if (near.tape === far.tape) return fault('equal-distances', near.tape, far.tape);
  if (far.frame <= near.frame) return fault('frame-not-growing', near.frame, far.frame);

  const growth = (far.frame - near.frame) / (far.tape - near.tape);
  const entrancePupil = metres(near.tape - near.frame / growth);
  if (asked.length !== undefined && entrancePupil > asked.length)
    return fault('pupil-before-lens', asked.length, entrancePupil);
  const focusedAt = asked.focusedAt ?? near.tape;
  const focus = focusedAt - entrancePupil;
  if (focus <= 0) return fault('focus-behind-pupil', entrancePupil, focusedAt);

  const imageDistance = metres(sideOf(asked) / growth);
  const p = asked.pupilMagnification ?? 1;
  return {
    ok: true,
    value: {
      growth,
      entrancePupil,
      angle: radians(2 * Math.atan(growth / 2)),
      imageDistance,
      focal: metres(1 / (1 / imageDistance + 1 / (p * focus))),
      focusedAt,
    },
  };
}

const inOrder = ([a, b]: LensReadings['readings']): LensReadings['readings'] =>
  a.tape <= b.tape ? [a, b] : [b, a];

const sideOf = ({ format, side }: LensReadings): number =>
  side === 'long' ? format.longSide : format.shortSide;

/** Standard errors of one reading, alike at both distances; metres. */
export interface ReadingError {
  readonly tape: number;
  readonly frame: number;
}

/** Standard errors of the measure. */
export interface MeasureError {
  readonly entrancePupil: Metre;
  readonly angle: Radian;
  readonly imageDistance: Metre;
  readonly focal: Metre;
}

/**
 * How errors of reading carry over, first order, the four readings independent: each result's
 * slopes by D1, D2, H1, H2 are put together in quadrature (JCGM 100:2008, 5.1.2). The focus is
 * taken as exact. For e this is sqrt(H1^2 + H2^2) / (H2 - H1) times the hypotenuse of the tape's
 * error and the frame's over k: the farther the two distances are apart, the better.
 */
export function measureError(
  asked: LensReadings,
  error: ReadingError,
): MeasureResult<MeasureError> {
  const measured = measureLens(asked);
  if (!measured.ok) return measured;
  const errors = [error.tape, error.tape, error.frame, error.frame];
  const bad = errors.find((number) => !(number >= 0 && Number.isFinite(number)));
  if (bad !== undefined) return fault('not-a-number', 0, bad);

  const [near, far] = inOrder(asked.readings);
  const { growth: k, imageDistance, focal, focusedAt, entrancePupil } = measured.value;
  const apart = far.tape - near.tape;
  const grown = far.frame - near.frame;
  // Slopes by D1, D2, H1, H2.
  const bySlope = [k / apart, -k / apart, -1 / apart, 1 / apart];
  const byPlace = [
    far.frame / grown,
    -near.frame / grown,
    -far.frame / grown / k,
    near.frame / grown / k,
  ];
  const byImage = bySlope.map((slope) => (-imageDistance / k) * slope);
  const p = asked.pupilMagnification ?? 1;
  const focus = focusedAt - entrancePupil;
  const byFocal = byImage.map(
    (slope, i) => focal ** 2 * (slope / imageDistance ** 2 - (byPlace[i] ?? 0) / (p * focus ** 2)),
  );
  const together = (slopes: readonly number[]) =>
    Math.hypot(...slopes.map((slope, i) => slope * (errors[i] ?? 0)));
  return {
    ok: true,
    value: {
      entrancePupil: metres(together(byPlace)),
      angle: radians(together(bySlope) / (1 + k ** 2 / 4)),
      imageDistance: metres(together(byImage)),
      focal: metres(together(byFocal)),
    },
  };
}

/**
 * The lens as it is used once it was measured at `mark`: its entrance pupil where it was found,
 * and the focal length as it acted. It stands for that mark alone, and is exact at
 * `measure.focusedAt`; at other distances it is taken to keep its focal length, so what a data
 * sheet says of its breathing is left out.
 */
export function measuredLens(lens: Lens, mark: Metre, measure: LensMeasure): Result<Lens> {
  const { largestMagnification: _, ...known } = lens;
  return andThen(widestApertureAt(lens, mark), (widest) =>
    mapResult(nearestFocusAt(lens, mark), (nearest) => ({
      ...known,
      focal: [measure.focal, measure.focal],
      widest: [widest, widest],
      nearestFocus: [nearest, nearest],
      entrancePupil: measure.entrancePupil,
    })),
  );
}
