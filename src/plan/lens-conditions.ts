/**
 * Which depths a lens allows. With the frame's height H = P/Q held at the eye plane and sensor height h, the
 * focal length acts as f = s h / (H + h) and the tape reads T = s (H + h) / H for a thin lens, s + e where the
 * entrance pupil's place e is known (optics/framing, optics/real-lens). Lenses that breathe carry the mark
 * f / (1 - G / T) down to the nearest focus of the longest mark, G = (1 - ratio) times that focus, and
 * f / ratio nearer than it.
 */
import { nearestRatio, zoomPower } from '../optics/real-lens';
import type { Lens } from '../optics/types';
import { type Case, type Quotient, quotientAt, type Scene, type Solved } from './conditions';
import { both, either, everywhere, type Interval, where, whereProduct } from './intervals';
import { constant, less, lessTimes, linear, type Polynomial, product, times } from './polynomial';
import { frameAndSensor } from './sharpness';
import type { Condition, PlanCamera } from './types';

const S: Polynomial = [0, 1];

/** What the tape reads from the sensor mark to the eye plane. */
export function tapeOf(each: Scene, pupil: number | undefined): Quotient {
  return pupil === undefined
    ? { over: product(S, frameAndSensor(each)), under: each.upper }
    : { over: linear(pupil, 1), under: constant(1) };
}

/** The mark to set, piece by piece. */
export interface MarkPiece extends Quotient {
  readonly within: readonly Interval[];
}

function markPieces(each: Scene, lens: Lens, tape: Quotient): MarkPiece[] {
  const ratio = nearestRatio(lens);
  const acting = product(times(each.lower, each.sensor.height), S);
  const whole = frameAndSensor(each);
  if (ratio === 1) return [{ within: everywhere, over: acting, under: whole }];
  const [, nearest] = lens.nearestFocus;
  const lost = (1 - ratio) * nearest;
  const farther = lessTimes(tape.over, nearest, tape.under);
  const breathing = lessTimes(tape.over, lost, tape.under);
  return [
    {
      within: where(farther, null),
      // f T / (T - G); for a thin lens H + h stands above and below, and is left out.
      ...(lens.entrancePupil === undefined
        ? { over: product(acting, S), under: breathing }
        : { over: product(acting, tape.over), under: product(whole, breathing) }),
    },
    { within: where(times(farther, -1), null), over: acting, under: times(whole, ratio) },
  ];
}

/** The mark to set with the eye plane at a depth. */
export function markAt(pieces: readonly MarkPiece[], depth: number): number {
  for (const piece of pieces)
    for (const { from, to } of piece.within)
      if (depth >= from && depth <= to) return quotientAt(piece, depth);
  return Number.NaN;
}

/** Where the mark is at least (sign 1) or at most (sign -1) `mark`. */
function markAgainst(pieces: readonly MarkPiece[], mark: number, sign: 1 | -1, by: Condition) {
  return pieces.reduce<readonly Interval[]>(
    (out, { within, over, under }) =>
      either(
        out,
        both(
          where(sign > 0 ? lessTimes(over, mark, under) : less(times(under, mark), over), by),
          within,
        ),
      ),
    [],
  );
}

/** Where a figure is at least what runs along the zoom, `end` (mark / shortest)^power. Logarithms, since powers can be huge. */
function againstPower(
  pieces: readonly MarkPiece[],
  figure: Quotient,
  lens: Lens,
  end: number,
  power: number,
  by: Condition,
): readonly Interval[] {
  return pieces.reduce<readonly Interval[]>(
    (out, { within, over, under }) =>
      either(
        out,
        whereProduct(
          power * Math.log(lens.focal[0]) - Math.log(end),
          [
            { of: figure.over, power: 1 },
            { of: figure.under, power: -1 },
            { of: over, power: -power },
            { of: under, power },
          ],
          within,
          by,
        ),
      ),
    [],
  );
}

/** No lens is marked beyond these, metres. */
const [SHORTEST_MARK, LONGEST_MARK] = [1e-4, 100];

const SHORTEST: Condition = { name: 'lens-shortest' };
const LONGEST: Condition = { name: 'lens-longest' };
const NEAREST_FOCUS: Condition = { name: 'nearest-focus' };
const APERTURE: Condition = { name: 'aperture' };
const SOFTNESS: Condition = { name: 'softness' };

/** A lens's reach: its marks and its nearest focus, then what its widest aperture allows. */
export function lensConditions(
  each: Case,
  { lens, marks }: PlanCamera,
  tape: Quotient,
): { marks: MarkPiece[]; reach: Solved[]; aperture: Solved[] } {
  const pieces = markPieces(each, lens, tape);
  const [least, most] = marks ?? lens.focal;
  const long = markAgainst(pieces, least, 1, SHORTEST);
  const short = markAgainst(pieces, most, -1, LONGEST);
  const marked = both(long, short);
  const nearPower = zoomPower(lens, lens.nearestFocus);
  const [near] = lens.nearestFocus;
  const focused =
    nearPower === 0
      ? where(lessTimes(tape.over, near, tape.under), NEAREST_FOCUS)
      : againstPower(withinMarks(pieces, marked), tape, lens, near, nearPower, NEAREST_FOCUS);
  return {
    marks: pieces,
    reach: [
      { by: SHORTEST, at: long },
      { by: LONGEST, at: short },
      { by: NEAREST_FOCUS, at: focused },
    ],
    aperture: apertureConditions(each, lens, pieces, marked),
  };
}

/** A figure that runs along the zoom is known between its ends alone. */
const withinMarks = (pieces: readonly MarkPiece[], marked: readonly Interval[]): MarkPiece[] =>
  pieces.map((piece) => ({ ...piece, within: both(piece.within, marked) }));

/** The widest aperture is one that is allowed, and opens as far as softness asks. */
function apertureConditions(
  each: Case,
  lens: Lens,
  pieces: readonly MarkPiece[],
  marked: readonly Interval[],
): Solved[] {
  const [most, least] = [each.asked.fNumber[1], each.asked.fNumber[0]];
  const smallest = Math.min(most, lens.smallest);
  const power = zoomPower(lens, lens.widest);
  const [widest] = lens.widest;
  const [shortest] = lens.focal;
  const allowed = (): readonly Interval[] => {
    if (least > lens.smallest || least > most) return [];
    if (power === 0) return widest <= smallest ? everywhere : [];
    // widest (mark / shortest)^power <= smallest
    const limit = shortest * (smallest / widest) ** (1 / power);
    // A zoom that hardly closes down has its limit beyond every mark, or beyond every number.
    const mark = Math.min(LONGEST_MARK, Math.max(SHORTEST_MARK, limit));
    return markAgainst(pieces, mark, power > 0 ? -1 : 1, APERTURE);
  };
  const found: Solved[] = [{ by: APERTURE, at: allowed() }];
  const soft = each.softUpTo;
  if (soft !== null) {
    found.push({ by: SOFTNESS, at: where(lessTimes(soft.over, least, soft.under), SOFTNESS) });
    found.push({
      by: SOFTNESS,
      at:
        power === 0
          ? where(lessTimes(soft.over, widest, soft.under), SOFTNESS)
          : againstPower(withinMarks(pieces, marked), soft, lens, widest, power, SOFTNESS),
    });
  }
  return found;
}
