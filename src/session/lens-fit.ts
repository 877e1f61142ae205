/** Which lens of the kit can take a picture, and by what limit the others cannot. */
import { focusForFrame, frameForFocal } from '../optics/framing';
import { markDistance } from '../optics/lens';
import {
  lensFocusForMarkDistance,
  lensMarkDistance,
  lensRefusal,
  markedFocalFor,
} from '../optics/real-lens';
import { or } from '../optics/result';
import type { Lens, Refusal } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import { type Limit, limitFrom, type Remedy } from './limit';

/** What a picture asks of a lens. */
export interface Asked {
  /** Focal length as it must act, metres. */
  readonly focal: Metre;
  /** Entrance pupil to the plane in focus. */
  readonly focus: Metre;
  readonly fNumber: number;
  /** In the plane of focus. */
  readonly frameHeight: Metre;
  readonly sensorHeight: Metre;
  /** The lens is locked, so the frame follows; else the frame is held and the focal length follows. */
  readonly isFocalFixed: boolean;
  /** Standpoint distance over focus distance: not 1 when the axis misses the eyes. */
  readonly standpointPerFocus: number;
}

export interface Fit {
  readonly lens: Lens;
  /** Focal length to set on it. */
  readonly mark: Metre;
  /** Distance on the tape, from the sensor mark. */
  readonly tape: Metre;
  readonly limit: Limit | null;
}

/** Marks are nominal, and the breathing formula follows a printed table within this share. */
const MARK_TOLERANCE = 0.02;

/** Distance on the tape with a lens, or with a thin one. */
export const tapeFor = (lens: Lens | null, focal: Metre, focus: Metre): Metre =>
  or(lens ? lensMarkDistance(lens, focal, focus) : markDistance(focal, focus), focus);

/** Steps of the fixed points below; each gains at least a decimal place. */
const ROUNDS = 30;

/** Focal length as which a lens set to `mark` acts when focused at `focus` from its entrance pupil. */
export function actingFocal(lens: Lens, mark: Metre, focus: Metre): Metre {
  let focal = mark;
  for (let i = 0; i < ROUNDS; i++) {
    const tape = tapeFor(lens, focal, focus);
    focal = metres((mark * focal) / or(markedFocalFor(lens, focal, tape), mark));
  }
  return focal;
}

/** The end of the lens's marks, when a mark misses it by no more than the tolerance. */
function snapped(lens: Lens, mark: Metre): Metre {
  const [shortest, longest] = lens.focal;
  const end = mark < shortest ? shortest : longest;
  const misses = mark < shortest || mark > longest;
  return misses && Math.abs(mark / end - 1) <= MARK_TOLERANCE ? end : mark;
}

export function fitLens(lens: Lens, asked: Asked): Fit {
  const tape = tapeFor(lens, asked.focal, asked.focus);
  const mark = snapped(lens, or(markedFocalFor(lens, asked.focal, tape), asked.focal));
  const refusal = lensRefusal(lens, mark, tape, asked.fNumber);
  return { lens, mark, tape, limit: refusal && lensLimit(lens, asked, refusal) };
}

/** Focus distance from which a lens set to `mark` frames as asked. */
function focusForMark(lens: Lens, mark: Metre, asked: Asked): Metre {
  let focus = asked.focus;
  for (let i = 0; i < ROUNDS; i++) {
    const focal = actingFocal(lens, mark, focus);
    focus = or(focusForFrame(asked.frameHeight, focal, asked.sensorHeight), focus);
  }
  return focus;
}

/** Frame height in the plane of focus with a lens set to `mark`. */
const frameForMark = (lens: Lens, mark: Metre, asked: Asked): Metre =>
  or(
    frameForFocal(actingFocal(lens, mark, asked.focus), asked.focus, asked.sensorHeight),
    metres(0),
  );

const standAt = (focus: number, atLeast: boolean, asked: Asked): Remedy => ({
  change: 'standpoint',
  value: focus * asked.standpointPerFocus,
  atLeast,
});

/** The wanted focal length lies beyond one end of the lens. */
function endRemedies(lens: Lens, end: Metre, asked: Asked, isTooShort: boolean): Remedy[] {
  if (asked.isFocalFixed) return [{ change: 'focal', value: end, atLeast: !isTooShort }];
  const stand = standAt(focusForMark(lens, end, asked), !isTooShort, asked);
  const frame = frameForMark(lens, end, asked);
  return frame > 0
    ? [stand, { change: 'frame-height', value: frame, atLeast: isTooShort }]
    : [stand];
}

/** Focus distance that reads `tape` on the tape, with the same lens or else the same frame. */
function focusForTape(lens: Lens, tape: Metre, asked: Asked): number {
  if (asked.isFocalFixed) return or(lensFocusForMarkDistance(lens, asked.focal, tape), tape);
  if (lens.entrancePupil !== undefined) return tape - lens.entrancePupil;
  return tape / (1 + asked.sensorHeight / asked.frameHeight);
}

function lensLimit(lens: Lens, asked: Asked, refusal: Refusal): Limit {
  const [shortest, longest] = lens.focal;
  const { reason, limit } = refusal;
  switch (reason) {
    case 'lens-too-short':
      return limitFrom(refusal, lens, endRemedies(lens, longest, asked, true));
    case 'lens-too-long':
      return limitFrom(refusal, lens, endRemedies(lens, shortest, asked, false));
    case 'too-near-to-focus':
      return limitFrom(refusal, lens, [
        standAt(focusForTape(lens, metres(limit), asked), true, asked),
      ]);
    case 'aperture-too-wide':
    case 'aperture-too-small':
      return limitFrom(refusal, lens, [
        { change: 'f-number', value: limit, atLeast: reason === 'aperture-too-wide' },
      ]);
    default:
      return limitFrom(refusal, lens, []);
  }
}

/** How far a limit is passed, as a ratio above 1. */
const missedBy = ({ limit }: Fit): number =>
  limit === null ? 1 : Math.max(limit.asked / limit.limit, limit.limit / limit.asked);

/** An aperture is one turn of a ring away; a focal length or a focus the lens does not have. */
const asksAnotherLens = ({ limit }: Fit): number =>
  limit === null || limit.reason === 'aperture-too-wide' || limit.reason === 'aperture-too-small'
    ? 0
    : 1;

const zoomRange = ({ lens }: Fit): number => lens.focal[1] / lens.focal[0];

/**
 * The kit's lenses for one picture, best first: those that can take it before those that cannot,
 * a prime before a zoom and a short range before a long one, then the wider aperture; of those
 * that cannot, those that miss by aperture alone, then the nearest miss first.
 */
export const rankLenses = (kit: readonly Lens[], asked: Asked): Fit[] =>
  kit
    .map((lens) => fitLens(lens, asked))
    .sort(
      (a, b) =>
        asksAnotherLens(a) - asksAnotherLens(b) ||
        missedBy(a) - missedBy(b) ||
        zoomRange(a) - zoomRange(b) ||
        a.lens.widest[0] - b.lens.widest[0],
    );
