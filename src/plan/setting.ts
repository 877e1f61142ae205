/** Everything that is to be set at one standpoint, by the functions that the pictures themselves use. */
import { blurInPicture, depthOfField, focusForTwoPlanes } from '../optics/focus';
import { focalForFrame } from '../optics/framing';
import { depthBefore, gain } from '../optics/perspective';
import { lensMarkDistance, markedFocalFor, widestApertureAt } from '../optics/real-lens';
import { or } from '../optics/result';
import type { Vec3 } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import { minus } from '../optics/vector';
import type { Quotient } from './conditions';
import { frameHeightAt } from './growth';
import { valueAt } from './polynomial';
import { sharedRows } from './sharpness';
import type { OnSensor, ScenePiece } from './solve';
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

/** The marked aperture nearest to the usual one between two limits; a limit itself where none lies between. */
export function markedFNumber(least: number, most: number): number {
  const wanted = within(USUAL_F_NUMBER, least, most);
  const stops = (value: number) => Math.abs(Math.log(value / wanted));
  let best: number | null = null;
  for (const each of F_NUMBERS) {
    if (each < least * (1 - ROUNDING) || each > most * (1 + ROUNDING)) continue;
    if (best === null || stops(each) < stops(best)) best = each;
  }
  return best ?? wanted;
}

/** Sizes of nose tip over ear less 1, the larger of both ears. */
function gainOf({ eyes, noseTip, ears }: PlanPerson, camera: Vec3): number {
  const position = minus(camera, eyes);
  const distance = metres(Math.hypot(...position));
  const before = (p: Vec3) => or(depthBefore(minus(p, eyes), position), metres(Number.NaN));
  const nose = before(noseTip);
  return Math.max(...ears.map((ear) => or(gain(distance, nose, before(ear)), Number.NaN)));
}

/** The largest of anybody's nose-to-ear gains, seen from a place. */
export const noseGainFrom = (people: readonly PlanPerson[], camera: Vec3): number =>
  Math.max(...people.map((person) => gainOf(person, camera)));

/** The least way from the lens's front to a nose, negative where it would pass one (readings/measures). */
const clearanceFrom = (people: readonly PlanPerson[], front: Vec3): number =>
  Math.min(
    ...people.map(({ noseTip }) => {
      const gap = Math.hypot(...minus(front, noseTip));
      return front[2] < noseTip[2] ? -gap : gap;
    }),
  );

/** Least and largest f-number that the pair may use at a depth. */
function apertures(
  { asked, sharpFrom, softUpTo }: ScenePiece,
  depth: number,
  [widest, smallest]: readonly [number, number],
): { readonly least: number; readonly most: number } {
  const at = ({ over, under }: Quotient) => valueAt(over, depth) / valueAt(under, depth);
  const [first, last] = asked.fNumber;
  return {
    least: Math.max(first, widest, ...sharpFrom.map(at)),
    most: Math.min(last, smallest, softUpTo === null ? Number.POSITIVE_INFINITY : at(softUpTo)),
  };
}

/** Frame, focal length, tape and mark with the eye plane at `depth`. */
function lensAt({ sensor, pieces }: OnSensor, { lens }: PlanCamera, depth: number) {
  const eyes = metres(depth);
  const frameHeight = metres(frameHeightAt(pieces, depth));
  const focal = or(focalForFrame(frameHeight, eyes, sensor.height), metres(Number.NaN));
  const toEyes = or(lensMarkDistance(lens, focal, eyes), eyes);
  const mark = within(
    or(markedFocalFor(lens, focal, toEyes), focal),
    lens.focal[0],
    lens.focal[1],
  ) as Metre;
  return { eyes, frameHeight, focal, toEyes, mark };
}

/** Focal length to set on the lens with the eye plane at `depth`. */
export const markAt = (of: OnSensor, camera: PlanCamera, depth: number): number =>
  lensAt(of, camera, depth).mark;

/** The setting with the eye plane at `depth` along the axis. */
export function settingAt(of: OnSensor, camera: PlanCamera, depth: number): Setting {
  const { wanted, room, sensor, pieces } = of;
  const { lens, format } = camera;
  const { cameraHeight: height, people } = wanted;
  const { eyes, frameHeight, focal, toEyes, mark } = lensAt(of, camera, depth);
  const frameWidth = (frameHeight * sensor.width) / sensor.height;
  const piece = pieces.find((one) => depth >= one.within.from && depth <= one.within.to);
  const { least, most } = apertures(piece ?? (pieces[0] as ScenePiece), depth, [
    or(widestApertureAt(lens, mark), lens.widest[1]),
    lens.smallest,
  ]);
  const fNumber = markedFNumber(least, most);
  const rows = sharedRows(people, of.asked.sharp);
  const focus = rows
    ? or(focusForTwoPlanes(metres(depth - rows.near), metres(depth - rows.far)), eyes)
    : eyes;
  const focused = { focal, fNumber, focus };
  const sharp = depthOfField({ ...focused, circleOfConfusion: format.circleOfConfusion });
  const position: Vec3 = [0, height, depth];
  const depths = people.map(({ eyes: [, , z] }) => z);
  const { behind } = room.backdrop;
  const drawnTop = height + ((wanted.eyesAt * frameHeight - height) * (depth + behind)) / depth;
  return {
    standpoint: Math.hypot(depth, height),
    depth,
    frameHeight,
    frameWidth,
    focal,
    mark,
    fNumber,
    focus,
    tape: or(lensMarkDistance(lens, focal, focus), focus),
    lensHeight: height - room.floor,
    sharp: sharp.ok ? [sharp.value.near, sharp.value.far] : [Number.NaN, Number.NaN],
    noseGain: noseGainFrom(people, position),
    toWall: room.wallBehindCamera - toEyes,
    noseClearance: clearanceFrom(people, [0, height, toEyes - lens.length]),
    backdropUsed: {
      width: (frameWidth * (depth + behind)) / depth,
      top: drawnTop - room.floor,
    },
    softness: or(blurInPicture(focused, metres(depth + behind), sensor.height), Number.NaN),
    stretch: Math.max(
      ...people.map(
        ({ eyes: [x, y, z] }) => Math.hypot(x, y - height, depth - z) / (depth - z) - 1,
      ),
    ),
    rowDifference: (depth - Math.min(...depths)) / (depth - Math.max(...depths)) - 1,
  };
}
