/** Everything that is to be set at one standpoint, by the functions that the pictures themselves use. */
import { blurInPicture, depthOfField, focusForTwoPlanes } from '../optics/focus';
import { focalForFrame } from '../optics/framing';
import { lensMarkDistance, markedFocalFor, widestApertureAt } from '../optics/real-lens';
import { or } from '../optics/result';
import { type Metre, metres } from '../optics/units';
import { quotientAt } from './conditions';
import { frameHeightAt } from './growth';
import { noseGainAt } from './nose-gain';
import { wallBehind } from './room-conditions';
import { sharedRows } from './sharpness';
import type { OnSensor, ScenePiece } from './solve';
import { standpointAt } from './standpoint';
import type { PlanCamera, PlanPerson, Setting } from './types';

/** Apertures as lenses and bodies are marked, thirds of a stop. Common practice, no source. */
export const F_NUMBERS = [
  1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11,
  13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64,
] as const;

/** What is set unless something asks otherwise. By eye, no source. */
const USUAL_F_NUMBER = 8;

/** Shares that two ways of computing one figure may differ by. */
const ROUNDING = 1e-9;

const within = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value));

/** A mark that is the lens's own but for rounding. */
export const onRing = ({ focal }: PlanCamera['lens'], mark: number): Metre =>
  metres(within(mark, focal[0], focal[1]));

/** The marked aperture nearest to the usual one between two limits; a limit itself where none lies between. */
export function markedFNumber(least: number, most: number): number {
  const wanted = within(USUAL_F_NUMBER, least, most);
  let best = wanted;
  let nearest = Number.POSITIVE_INFINITY;
  for (const each of F_NUMBERS) {
    if (each < least * (1 - ROUNDING) || each > most * (1 + ROUNDING)) continue;
    // As many stops apart as this factor has.
    const apart = each > wanted ? each / wanted : wanted / each;
    if (apart >= nearest) continue;
    best = each;
    nearest = apart;
  }
  return best;
}

/** The least way from the lens's front, `height` above the eyes, to a nose, negative where it would pass one (readings/measures). */
function clearanceFrom(people: readonly PlanPerson[], height: number, front: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { noseTip } of people) {
    const before = front - noseTip[2];
    const gap = Math.sqrt(noseTip[0] ** 2 + (height - noseTip[1]) ** 2 + before ** 2);
    least = Math.min(least, before < 0 ? -gap : gap);
  }
  return least;
}

/** The largest stretch of a face, sec t - 1. */
function stretchFrom(people: readonly PlanPerson[], height: number, depth: number): number {
  let largest = 0;
  for (const { eyes } of people) {
    const before = depth - eyes[2];
    const away = Math.sqrt(eyes[0] ** 2 + (eyes[1] - height) ** 2 + before ** 2);
    largest = Math.max(largest, away / before - 1);
  }
  return largest;
}

/** Difference in drawn size between the nearest and the farthest row. */
function rowDifferenceFrom(people: readonly PlanPerson[], depth: number): number {
  let [nearest, farthest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { eyes } of people) {
    nearest = Math.max(nearest, eyes[2]);
    farthest = Math.min(farthest, eyes[2]);
  }
  return (depth - farthest) / (depth - nearest) - 1;
}

/** The f-number to set at a depth: within what the lens, the photographer, sharpness and softness allow. */
function fNumberAt(
  { asked, sharpFrom, softUpTo }: ScenePiece,
  depth: number,
  widest: number,
  smallest: number,
): number {
  let least = Math.max(asked.fNumber[0], widest);
  for (const each of sharpFrom) least = Math.max(least, quotientAt(each, depth));
  const most = Math.min(asked.fNumber[1], smallest);
  const soft = softUpTo === null ? most : quotientAt(softUpTo, depth);
  return markedFNumber(least, Math.min(most, soft));
}

/** The setting with the eye plane at `depth` along the axis. */
export function settingAt(
  { of, sensor, pieces }: OnSensor,
  camera: PlanCamera,
  depth: number,
): Setting {
  const { wanted, room } = of;
  const { lens, format } = camera;
  const { cameraHeight: height, people } = wanted;
  const eyes = metres(depth);
  const frameHeight = metres(frameHeightAt(pieces, depth));
  const focal = or(focalForFrame(frameHeight, eyes, sensor.height), metres(Number.NaN));
  const toEyes = or(lensMarkDistance(lens, focal, eyes), eyes);
  const mark = onRing(lens, or(markedFocalFor(lens, focal, toEyes), focal));
  const frameWidth = (frameHeight * sensor.width) / sensor.height;
  const piece = pieces.find((one) => depth >= one.within.from && depth <= one.within.to);
  const widest = or(widestApertureAt(lens, mark), lens.widest[1]);
  const fNumber = fNumberAt(piece ?? (pieces[0] as ScenePiece), depth, widest, lens.smallest);
  const rows = sharedRows(people, of.asked.sharp);
  const focus = rows
    ? or(focusForTwoPlanes(metres(depth - rows.near), metres(depth - rows.far)), eyes)
    : eyes;
  const { circleOfConfusion } = format;
  const focused = { focal, fNumber, focus, circleOfConfusion };
  const sharp = depthOfField(focused);
  const { behind } = room.backdrop;
  const drawnTop = height + ((wanted.eyesAt * frameHeight - height) * (depth + behind)) / depth;
  return {
    standpoint: standpointAt(depth, height),
    depth,
    frameHeight,
    frameWidth,
    focal,
    mark,
    fNumber,
    focus,
    tape: focus === eyes ? toEyes : or(lensMarkDistance(lens, focal, focus), focus),
    lensHeight: height - room.floor,
    sharp: sharp.ok ? [sharp.value.near, sharp.value.far] : [Number.NaN, Number.NaN],
    noseGain: noseGainAt(of.noses, depth),
    toWall: wallBehind(room) - toEyes,
    noseClearance: clearanceFrom(people, height, toEyes - lens.length),
    backdropUsed: {
      width: (frameWidth * (depth + behind)) / depth,
      top: drawnTop - room.floor,
    },
    softness: or(blurInPicture(focused, metres(depth + behind), sensor.height), Number.NaN),
    stretch: stretchFrom(people, height, depth),
    rowDifference: rowDifferenceFrom(people, depth),
  };
}
