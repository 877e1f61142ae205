/** One framing with one camera: every condition, and the depths at which all of them hold. */
import type { SensorSides } from '../optics/types';
import { type Case, type Solved, sensorOf } from './conditions';
import { faceConditions } from './face-conditions';
import { type FramePiece, framePieces } from './growth';
import { both, either, FARTHEST, type Interval, NEAREST } from './intervals';
import { lensConditions } from './lens-conditions';
import {
  backdropConditions,
  clearanceCondition,
  obstacleConditions,
  wallCondition,
} from './room-conditions';
import { beforeAll, sharpnessConditions } from './sharpness';
import type { Asked, Condition, PlanCamera, PlanRequest, PlanRoom, Span, Wanted } from './types';

/** Everything about a framing that no camera changes. */
export interface Framed {
  readonly wanted: Wanted;
  readonly room: PlanRoom;
  readonly asked: Asked;
  readonly faces: readonly Solved[];
}

export function framed(request: Omit<PlanRequest, 'cameras' | 'wanted'>, wanted: Wanted): Framed {
  const room = wanted.room ?? request.room;
  const { asked } = request;
  return { wanted, room, asked, faces: faceConditions(wanted, room, asked) };
}

/** The same on one sensor: the frame's height, and what only hangs on it. */
export interface OnSensor extends Framed {
  readonly sensor: SensorSides;
  readonly pieces: readonly (FramePiece & { readonly backdrop: readonly Solved[] })[];
}

export function onSensor(of: Framed, camera: PlanCamera): OnSensor {
  const sensor = sensorOf(camera, of.wanted);
  const pieces = framePieces(of.wanted, sensor.width / sensor.height).map((piece) => ({
    ...piece,
    backdrop: backdropConditions({ ...of, ...piece, camera, sensor }),
  }));
  return { ...of, sensor, pieces };
}

/** What each condition leaves, on one piece of the depths. */
export interface SolvedPiece {
  readonly within: Interval;
  readonly reach: readonly Solved[];
  readonly others: readonly Solved[];
}

export function solvePieces(of: OnSensor, camera: PlanCamera): SolvedPiece[] {
  return of.pieces.map(({ backdrop, ...piece }) => {
    const each: Case = { ...of, ...piece, camera };
    const { reach, aperture } = lensConditions(each);
    return {
      within: piece.within,
      reach,
      others: [
        ...of.faces,
        beforeAll(each),
        clearanceCondition(each),
        wallCondition(each),
        ...backdrop,
        ...sharpnessConditions(each),
        ...aperture,
        ...obstacleConditions(each),
      ],
    };
  });
}

const all = (solved: readonly Solved[], start: readonly Interval[]): readonly Interval[] =>
  solved.reduce((left, { at }) => (left.length === 0 ? left : both(at, left)), start);

/** Depths that satisfy the lens alone, and everything. */
export function allowed(pieces: readonly SolvedPiece[]): {
  readonly reach: readonly Interval[];
  readonly works: readonly Interval[];
} {
  let reach: readonly Interval[] = [];
  let works: readonly Interval[] = [];
  for (const piece of pieces) {
    const reached = all(piece.reach, [piece.within]);
    reach = either(reach, reached);
    works = either(works, all(piece.others, reached));
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

/** What each condition by itself leaves, over all pieces; demands of one name hold together. */
function singly(pieces: readonly SolvedPiece[]): Solved[] {
  const found = new Map<string, Solved>();
  for (const { within, reach, others } of pieces) {
    const here = new Map<string, Solved>();
    for (const { by, at } of [...reach, ...others]) {
      const key = `${by.name} ${by.of ?? ''}`;
      here.set(key, { by, at: both(at, here.get(key)?.at ?? [within]) });
    }
    for (const [key, { by, at }] of here)
      found.set(key, { by, at: either(found.get(key)?.at ?? [], at) });
  }
  return [...found.values()];
}

/**
 * What stands in the way where nothing works: a condition that never holds, else the first two that never
 * hold together, else those that one after the other cut away the rest.
 */
export function conflictOf(pieces: readonly SolvedPiece[]): Condition[] {
  const conditions = singly(pieces);
  const never = conditions.find(({ at }) => at.length === 0);
  if (never) return [never.by];
  for (const [i, x] of conditions.entries())
    for (const y of conditions.slice(i + 1)) if (both(x.at, y.at).length === 0) return [x.by, y.by];
  let left: readonly Interval[] = [{ from: NEAREST, to: FARTHEST, fromBy: null, toBy: null }];
  const cut: Condition[] = [];
  for (const { by, at } of conditions) {
    const next = both(at, left);
    if (next.length !== left.length || next.some((each, i) => !same(each, left[i]))) cut.push(by);
    left = next;
    if (left.length === 0) break;
  }
  return cut;
}

const same = (a: Interval, b: Interval | undefined): boolean =>
  b !== undefined && a.from === b.from && a.to === b.to;
