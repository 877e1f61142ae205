/**
 * One framing with one camera: every condition, and the depths at which all of them hold. What hangs on the people
 * alone, on the sensor, on the lens or on the smallest aperture is solved once for each of these, so that a pair
 * has its clearance left to solve, and little to intersect.
 */
import type { SensorSides } from '../optics/types';
import { type Case, type Quotient, type Scene, type Solved, sensorOf } from './conditions';
import { faceConditions } from './face-conditions';
import { framePieces } from './growth';
import { both, either, everywhere, type Interval } from './intervals';
import { lensConditions, type MarkPiece, tapeOf } from './lens-conditions';
import { type NoseAndEars, nosesAndEars } from './nose-gain';
import { obstacleInPicture } from './obstacles';
import {
  atCameraCondition,
  backdropConditions,
  clearanceCondition,
  frontFrom,
  type InTheWay,
  inTheWay,
  wallCondition,
} from './room-conditions';
import { sharpAndSoftConditions, sharpConditions, sharpFNumbers, softFNumber } from './sharpness';
import { spanOf } from './standpoint';
import type { Asked, PlanCamera, PlanRequest, PlanRoom, Span, Wanted } from './types';

/** Everything about a framing that no camera changes. */
export interface Framed {
  readonly wanted: Wanted;
  readonly room: PlanRoom;
  readonly asked: Asked;
  readonly noses: readonly NoseAndEars[];
  readonly faces: readonly Solved[];
  /** Before the eye plane, where the lens's front must not come nearer; metres. */
  readonly front: number;
  readonly inTheWay: readonly InTheWay[];
}

export function framed(request: Omit<PlanRequest, 'cameras' | 'wanted'>, wanted: Wanted): Framed {
  const room = wanted.room ?? request.room;
  const { asked } = request;
  const noses = nosesAndEars(wanted);
  return {
    wanted,
    room,
    asked,
    noses,
    faces: merged(faceConditions(wanted, noses, room, asked)),
    front: frontFrom(wanted, asked.clearance),
    inTheWay: inTheWay(room),
  };
}

/** Conditions, and what all of them leave. */
interface Together {
  readonly conditions: readonly Solved[];
  readonly left: readonly Interval[];
}

/** Those that always hold are left out, demands of one name are made one. */
function together(conditions: readonly Solved[], start: readonly Interval[]): Together {
  const found = merged(conditions);
  let left = start;
  for (let i = 0; i < found.length && left.length > 0; i++)
    left = both((found[i] as Solved).at, left);
  return { conditions: found, left };
}

/** What a lens allows, whoever is before it. */
interface LensSolved {
  readonly tape: Quotient;
  readonly marks: readonly MarkPiece[];
  readonly reach: Together;
  /** The same as standpoints. */
  readonly reachSpans: readonly Span[];
  /** With what stands behind the camera, and with the lens's apertures. */
  readonly allows: Together;
}

/** For one place of the entrance pupil. */
interface Standing {
  readonly tape: Quotient;
  readonly wall: Solved;
}

/** What pictures share that differ in nothing but who is in them. */
export interface Shared {
  readonly lenses: Map<PlanCamera, LensSolved>;
  readonly standing: Map<number | undefined, Standing>;
  surroundings: Together | null;
}
export const newShared = (): Shared => ({
  lenses: new Map(),
  standing: new Map(),
  surroundings: null,
});

/**
 * Equal for pictures that differ in nothing but who is in them. Null: shared with no other, since the frame grows
 * with the people, the backdrop's softness hangs on the plane in focus, or the room is told from other eyes.
 */
export function sharedKey({ wanted, asked }: Framed, { format }: PlanCamera): string | null {
  const { frameHeight, orientation, eyesAt, eyesAcross, cameraHeight } = wanted;
  if (frameHeight === null || asked.softness !== null || wanted.room) return null;
  return [format.id, frameHeight, orientation, eyesAt, eyesAcross, cameraHeight].join(' ');
}

/** A piece of the depths on one sensor. */
export interface ScenePiece extends Case {
  /** Conditions that no lens changes. */
  readonly noLens: Together;
  /** With how small an aperture must be, by the smallest that there is. */
  readonly sharpAt: Map<number, Together>;
  readonly common: Shared;
}

export interface OnSensor {
  readonly of: Framed;
  readonly sensor: SensorSides;
  readonly pieces: readonly ScenePiece[];
}

/** Demands of one name as one condition; those that always hold left out. */
function merged(solved: readonly Solved[]): Solved[] {
  const found: Solved[] = [];
  for (const { by, at } of solved) {
    if (at === everywhere) continue;
    const i = found.findIndex((one) => one.by.name === by.name && one.by.of === by.of);
    if (i < 0) found.push({ by, at });
    else found[i] = { by, at: both(at, (found[i] as Solved).at) };
  }
  return found;
}

/** Backdrop, ceiling and things in the picture; how soft the backdrop is, where that is asked. */
const surroundingsOf = (
  each: Scene,
  sharpFrom: Case['sharpFrom'],
  softUpTo: Case['softUpTo'],
): Together =>
  together(
    [
      ...backdropConditions(each),
      ...sharpAndSoftConditions(sharpFrom, softUpTo),
      ...each.room.obstacles
        .filter(({ kind }) => kind === 'thing')
        .map((thing) => obstacleInPicture(each, thing)),
    ],
    [each.within],
  );

/** `common`: that of another framing of the same `sharedKey`; a group's pieces have each their own. */
export function onSensor(of: Framed, camera: PlanCamera, common = newShared()): OnSensor {
  const { wanted, room, asked } = of;
  const sensor = sensorOf(camera, wanted);
  const { circleOfConfusion } = camera.format;
  const pieces = framePieces(wanted, sensor.width / sensor.height).map((piece): ScenePiece => {
    const { within, upper, lower } = piece;
    const scene: Scene = { within, upper, lower, wanted, room, asked, sensor, circleOfConfusion };
    const sharpFrom = sharpFNumbers(scene);
    const softUpTo = softFNumber(scene);
    const shared = wanted.frameHeight === null ? newShared() : common;
    shared.surroundings ??= surroundingsOf(scene, sharpFrom, softUpTo);
    const { conditions, left } = shared.surroundings;
    const noLens = {
      conditions: [...of.faces, ...conditions],
      left: together(of.faces, left).left,
    };
    // Field by field: the engine is slow at joining objects of many shapes.
    return {
      within,
      upper,
      lower,
      wanted,
      room,
      asked,
      sensor,
      circleOfConfusion,
      sharpFrom,
      softUpTo,
      noLens,
      sharpAt: new Map(),
      common: shared,
    };
  });
  return { of, sensor, pieces };
}

function standingAt(piece: ScenePiece, pupil: number | undefined): Standing {
  const tape = tapeOf(piece, pupil);
  const standing = { tape, wall: wallCondition(piece.room, tape) };
  piece.common.standing.set(pupil, standing);
  return standing;
}

function lensAt(piece: ScenePiece, things: readonly InTheWay[], camera: PlanCamera): LensSolved {
  const { common, within, room, wanted } = piece;
  const { entrancePupil, length } = camera.lens;
  const { tape, wall } = common.standing.get(entrancePupil) ?? standingAt(piece, entrancePupil);
  const { marks, reach, aperture } = lensConditions(piece, camera, tape);
  const reached = together(reach, [within]);
  const inWay = things.map((one) => atCameraCondition(one, tape, length, room.behindCamera));
  const allows = together([wall, ...aperture, ...inWay], reached.left);
  const reachSpans = reached.left.map((each) => spanOf(each, wanted.cameraHeight));
  const lens = { tape, marks, reach: reached, reachSpans, allows };
  common.lenses.set(camera, lens);
  return lens;
}

function sharpWith({ sharpFrom, sharpAt, noLens }: ScenePiece, smallest: number): Together {
  const sharp = together(sharpConditions(sharpFrom, smallest), noLens.left);
  sharpAt.set(smallest, sharp);
  return sharp;
}

/** What each condition leaves, on one piece of the depths. */
export interface SolvedPiece {
  readonly scene: ScenePiece;
  readonly lens: LensSolved;
  readonly clearance: Solved;
  readonly sharp: Together;
  /** Depths that satisfy everything. */
  readonly works: readonly Interval[];
}

function solvePiece(scene: ScenePiece, of: Framed, camera: PlanCamera): SolvedPiece {
  const smallest = Math.min(of.asked.fNumber[1], camera.lens.smallest);
  const lens = scene.common.lenses.get(camera) ?? lensAt(scene, of.inTheWay, camera);
  const sharp = scene.sharpAt.get(smallest) ?? sharpWith(scene, smallest);
  const clearance = clearanceCondition(of.front, lens.tape, camera.lens.length);
  const works = both(clearance.at, both(lens.allows.left, sharp.left));
  return { scene, lens, clearance, sharp, works };
}

/** A framing with a camera, over all pieces of the depths. */
export interface SolvedPair {
  readonly pieces: readonly SolvedPiece[];
  /** Standpoints that the lens reaches. */
  readonly reach: readonly Span[];
  /** Depths that satisfy everything. */
  readonly works: readonly Interval[];
}

const joined = (left: readonly (readonly Interval[])[]): readonly Interval[] =>
  left.reduce((all, next) => either(all, next), []);

export function solvePair({ of, pieces: scenes }: OnSensor, camera: PlanCamera): SolvedPair {
  const only = scenes[0];
  if (only && scenes.length === 1) {
    const piece = solvePiece(only, of, camera);
    return { pieces: [piece], reach: piece.lens.reachSpans, works: piece.works };
  }
  const pieces = scenes.map((scene) => solvePiece(scene, of, camera));
  const reach = joined(pieces.map(({ lens }) => lens.reach.left));
  return {
    pieces,
    reach: reach.map((each) => spanOf(each, of.wanted.cameraHeight)),
    works: joined(pieces.map(({ works }) => works)),
  };
}

/** What stands in each condition's way, by itself, on one piece of the depths: the lens's first. */
export const conditionsOf = ({ scene, lens, clearance, sharp }: SolvedPiece): Solved[] => [
  ...lens.reach.conditions,
  clearance,
  ...lens.allows.conditions,
  ...sharp.conditions,
  ...scene.noLens.conditions,
];
