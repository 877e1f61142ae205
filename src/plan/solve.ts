/**
 * One framing with one camera: every condition, and the depths at which all of them hold. What hangs on the people
 * alone, on the sensor, on the smallest aperture and on the entrance pupil's place is solved once for each of these.
 */
import type { SensorSides } from '../optics/types';
import { type Case, type Quotient, type Scene, type Solved, sensorOf } from './conditions';
import { faceConditions } from './face-conditions';
import { framePieces } from './growth';
import { both, either, everywhere, type Interval } from './intervals';
import { lensConditions, tapeOf } from './lens-conditions';
import { obstacleInPicture } from './obstacles';
import {
  atCameraCondition,
  backdropConditions,
  clearanceCondition,
  type InTheWay,
  inTheWay,
  wallCondition,
} from './room-conditions';
import {
  beforeAll,
  sharpAndSoftConditions,
  sharpConditions,
  sharpFNumbers,
  softFNumber,
} from './sharpness';
import type { Asked, PlanCamera, PlanRequest, PlanRoom, Span, Wanted } from './types';

/** Everything about a framing that no camera changes. */
export interface Framed {
  readonly wanted: Wanted;
  readonly room: PlanRoom;
  readonly asked: Asked;
  readonly faces: readonly Solved[];
  readonly inTheWay: readonly InTheWay[];
}

export function framed(request: Omit<PlanRequest, 'cameras' | 'wanted'>, wanted: Wanted): Framed {
  const room = wanted.room ?? request.room;
  const { asked } = request;
  return {
    wanted,
    room,
    asked,
    faces: faceConditions(wanted, room, asked),
    inTheWay: inTheWay(room),
  };
}

/** Tape and wall for one place of the entrance pupil. */
interface Standing {
  readonly tape: Quotient;
  readonly wall: Solved;
}

/** What a lens allows, whoever is before it. */
interface LensSolved {
  readonly reach: readonly Solved[];
  readonly aperture: readonly Solved[];
  /** Depths that its reach leaves. */
  readonly reached: readonly Interval[];
}

/** What framings of one height on one sensor share: it hangs on nobody in them. */
export interface Shared {
  readonly lenses: Map<PlanCamera, LensSolved>;
  readonly standing: Map<number | undefined, Standing>;
}
export const newShared = (): Shared => ({ lenses: new Map(), standing: new Map() });

/**
 * Of which framings the lens's answers are the same: of one fixed frame height in one room on one format, where
 * nothing is asked of the backdrop's softness. Null: of no other.
 */
export function sharedKey({ wanted, room, asked }: Framed, camera: PlanCamera): string | null {
  if (wanted.frameHeight === null || asked.softness !== null || wanted.room) return null;
  return `${wanted.frameHeight} ${wanted.orientation} ${camera.format.id} ${room.wallBehindCamera}`;
}

/** A piece of the depths on one sensor. */
export interface ScenePiece extends Case {
  /** Conditions that no lens changes, each name once, those that always hold left out. */
  readonly shared: readonly Solved[];
  /** What they leave of the piece. */
  readonly left: readonly Interval[];
  /** Kept as they are asked for. */
  readonly sharpAt: Map<number, readonly Solved[]>;
  readonly common: Shared;
}

export interface OnSensor extends Framed {
  readonly sensor: SensorSides;
  readonly pieces: readonly ScenePiece[];
}

/** Demands of one name as one condition; those that always hold left out. */
export function merged(solved: readonly Solved[]): Solved[] {
  const found: Solved[] = [];
  for (const { by, at } of solved) {
    if (at === everywhere) continue;
    const i = found.findIndex((one) => one.by.name === by.name && one.by.of === by.of);
    if (i < 0) found.push({ by, at });
    else found[i] = { by, at: both(at, (found[i] as Solved).at) };
  }
  return found;
}

/** `common`: that of another framing of the same `sharedKey`; a group's pieces have each their own. */
export function onSensor(of: Framed, camera: PlanCamera, common = newShared()): OnSensor {
  const { wanted, room, asked } = of;
  const sensor = sensorOf(camera, wanted);
  const { circleOfConfusion } = camera.format;
  const pieces = framePieces(wanted, sensor.width / sensor.height).map((piece): ScenePiece => {
    const scene: Scene = { ...piece, wanted, room, asked, sensor, circleOfConfusion };
    const sharpFrom = sharpFNumbers(scene);
    const softUpTo = softFNumber(scene);
    const shared = merged([
      ...of.faces,
      beforeAll(scene),
      ...backdropConditions(scene),
      ...sharpAndSoftConditions(sharpFrom, softUpTo),
      ...room.obstacles
        .filter(({ kind }) => kind === 'thing')
        .map((thing) => obstacleInPicture(scene, thing)),
    ]);
    const left = all(shared, [piece.within]);
    const kept = {
      sharpAt: new Map(),
      common: wanted.frameHeight === null ? newShared() : common,
    };
    return { ...scene, sharpFrom, softUpTo, shared, left, ...kept };
  });
  return { ...of, sensor, pieces };
}

function standingAt(piece: ScenePiece, pupil: number | undefined): Standing {
  const { standing } = piece.common;
  const known = standing.get(pupil);
  if (known) return known;
  const tape = tapeOf(piece, pupil);
  const found = { tape, wall: wallCondition(piece.room, tape) };
  standing.set(pupil, found);
  return found;
}

function lensAt(piece: ScenePiece, camera: PlanCamera, tape: Quotient): LensSolved {
  const { lenses } = piece.common;
  const known = lenses.get(camera);
  if (known) return known;
  const solved = lensConditions(piece, camera, tape);
  const found = { ...solved, reached: all(solved.reach, [piece.within]) };
  lenses.set(camera, found);
  return found;
}

function sharpWith(piece: ScenePiece, smallest: number): readonly Solved[] {
  const known = piece.sharpAt.get(smallest);
  if (known) return known;
  const found = merged(sharpConditions(piece.sharpFrom, smallest));
  piece.sharpAt.set(smallest, found);
  return found;
}

/** What each condition leaves, on one piece of the depths. */
export interface SolvedPiece {
  readonly scene: ScenePiece;
  readonly reach: readonly Solved[];
  readonly reached: readonly Interval[];
  /** What else hangs on the camera. */
  readonly own: readonly Solved[];
}

export function solvePieces(of: OnSensor, camera: PlanCamera): SolvedPiece[] {
  const { lens } = camera;
  const { behindCamera } = of.room;
  return of.pieces.map((scene) => {
    const { tape, wall } = standingAt(scene, lens.entrancePupil);
    const { reach, aperture, reached } = lensAt(scene, camera, tape);
    const own = [clearanceCondition(scene, tape, lens.length), wall, ...aperture];
    own.push(...sharpWith(scene, Math.min(of.asked.fNumber[1], lens.smallest)));
    for (const thing of of.inTheWay)
      own.push(atCameraCondition(thing, tape, lens.length, behindCamera));
    return { scene, reach, reached, own };
  });
}

function all(solved: readonly Solved[], start: readonly Interval[]): readonly Interval[] {
  let left = start;
  for (let i = 0; i < solved.length && left.length > 0; i++)
    left = both((solved[i] as Solved).at, left);
  return left;
}

/** Depths that satisfy the lens alone, and everything. */
export function allowed(pieces: readonly SolvedPiece[]): {
  readonly reach: readonly Interval[];
  readonly works: readonly Interval[];
} {
  let reach: readonly Interval[] = [];
  let works: readonly Interval[] = [];
  for (const { scene, reached, own } of pieces) {
    reach = pieces.length === 1 ? reached : either(reach, reached);
    const here = all(own, both(reached, scene.left));
    works = pieces.length === 1 ? here : either(works, here);
  }
  return { reach, works };
}

/** Depths -> standpoint distances: d^2 = s^2 + h^2. */
export const spansOf = (intervals: readonly Interval[], height: number): Span[] =>
  intervals.map(({ from, to, fromBy, toBy }) => ({
    from: Math.hypot(from, height),
    to: Math.hypot(to, height),
    fromBy: fromBy ?? { name: 'clearance' },
    toBy: toBy ?? { name: 'wall-behind-camera' },
  }));
