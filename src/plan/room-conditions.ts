/** What the room leaves: backdrop and ceiling round the frame, walls and things round the camera. */
import { PHOTOGRAPHER_WIDTH, type Quotient, type Scene, type Solved } from './conditions';
import { both, either, everywhere, type Interval, where } from './intervals';
import { crossings } from './polygon';
import { less, lessTimes, linear, type Polynomial, product, sum, times } from './polynomial';
import type { Condition, PlanObstacle, PlanRoom, Wanted } from './types';

const S: Polynomial = [0, 1];
const BACKDROP_SIDES: Condition = { name: 'backdrop-sides' };
const BACKDROP_TOP: Condition = { name: 'backdrop-top' };
const CEILING: Condition = { name: 'ceiling' };
const WALL: Condition = { name: 'wall-behind-camera' };

/** Where the frame's sides and upper edge stay on the backdrop, and below the ceiling there. */
export function backdropConditions(each: Scene): Solved[] {
  const { wanted, room, asked, sensor, upper, lower } = each;
  const { behind, left, right, top } = room.backdrop;
  const { eyesAcross, eyesAt, cameraHeight: h } = wanted;
  const width = times(upper, sensor.width / sensor.height);
  const farther = linear(behind, 1);
  // An edge x at the eye plane lies at x (s + b) / s on the backdrop.
  const spans = (share: number, room: number) =>
    where(
      less(times(product(lower, S), room), times(product(width, farther), share)),
      BACKDROP_SIDES,
    );
  const below = (limit: number, by: Condition) =>
    where(
      less(
        times(product(lower, S), limit - h),
        product(sum(times(upper, eyesAt), times(lower, -h)), farther),
      ),
      by,
    );
  const ceiling: Solved = { by: CEILING, at: below(room.ceiling, CEILING) };
  if (asked.backdropMargin === null) return [ceiling];
  return [
    {
      by: BACKDROP_SIDES,
      at: both(
        spans(1 - eyesAcross, left - asked.backdropMargin),
        spans(eyesAcross, -right - asked.backdropMargin),
      ),
    },
    { by: BACKDROP_TOP, at: below(top, BACKDROP_TOP) },
    ceiling,
  ];
}

/**
 * How far before the eye plane the lens's front must stay, so that it is before every nose and at least so far from
 * each. The way to a nose off the axis is longer than along it: before^2 + aside^2 >= clearance^2.
 */
export function frontFrom({ people, cameraHeight }: Wanted, clearance: number | null): number {
  const least = (clearance ?? 0) ** 2;
  let needed = Number.NEGATIVE_INFINITY;
  for (const { noseTip } of people) {
    const [x, y, z] = noseTip;
    const before = Math.sqrt(Math.max(0, least - x * x - (y - cameraHeight) ** 2));
    needed = Math.max(needed, z + before);
  }
  return needed;
}

const CLEARANCE: Condition = { name: 'clearance' };

/** The lens's front stays so far; the sensor stands at the tape's reading. */
export const clearanceCondition = (front: number, tape: Quotient, lensLength: number): Solved => ({
  by: CLEARANCE,
  at: where(lessTimes(tape.over, front + lensLength, tape.under), CLEARANCE),
});

/** The photographer's back, shoulders across, stays inside every wall. */
export function wallCondition({ walls, behindCamera }: PlanRoom, tape: Quotient): Solved {
  let at: readonly Interval[] = everywhere;
  const inwards = Math.sign(signedArea(walls));
  for (const [i, [x1, z1]] of walls.entries()) {
    const [x2, z2] = walls[(i + 1) % walls.length] as readonly [number, number];
    // (x, z) lies inside where this is not negative.
    const [nx, nz] = [-(z2 - z1) * inwards, (x2 - x1) * inwards];
    for (const shoulder of [-PHOTOGRAPHER_WIDTH / 2, PHOTOGRAPHER_WIDTH / 2]) {
      const offset = nx * (shoulder - x1) + nz * (behindCamera - z1);
      at = both(at, where(sum(times(tape.over, nz), times(tape.under, offset)), WALL));
    }
  }
  return { by: WALL, at };
}

/** How far from the eyes, along the axis, shoulders on it meet a wall, metres: nearer than the axis does in a corner. */
export function wallBehind({ walls }: Pick<PlanRoom, 'walls'>): number {
  const shoulders = [-PHOTOGRAPHER_WIDTH / 2, PHOTOGRAPHER_WIDTH / 2];
  return Math.min(...shoulders.map((x) => Math.max(...crossings(walls, 0, x))));
}

function signedArea(outline: readonly (readonly [number, number])[]): number {
  return outline.reduce((area, [x1, z1], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length] as readonly [number, number];
    return area + x1 * z2 - x2 * z1;
  }, 0);
}

/** The part of an outline that the photographer's width runs over: its nearest and farthest z, or none. */
function underPhotographer({ outline }: PlanObstacle): readonly [number, number] | null {
  const half = PHOTOGRAPHER_WIDTH / 2;
  const depths: number[] = [];
  for (const [i, [x1, z1]] of outline.entries()) {
    const [x2, z2] = outline[(i + 1) % outline.length] as readonly [number, number];
    if (Math.abs(x1) < half) depths.push(z1);
    for (const edge of [-half, half]) {
      const t = (edge - x1) / (x2 - x1);
      if (t > 0 && t < 1) depths.push(z1 + t * (z2 - z1));
    }
  }
  return depths.length < 2 ? null : [Math.min(...depths), Math.max(...depths)];
}

/** Things and doors in the photographer's way along the axis. */
export interface InTheWay {
  readonly by: Condition;
  readonly near: number;
  readonly far: number;
}
export const inTheWay = ({ obstacles }: PlanRoom): InTheWay[] =>
  obstacles.flatMap((obstacle) => {
    const span = underPhotographer(obstacle);
    const by: Condition = { name: 'obstacle-at-camera', of: obstacle.id };
    return span === null ? [] : [{ by, near: span[0], far: span[1] }];
  });

/** Camera and photographer, from the lens's front to the back, do not stand in it. */
export function atCameraCondition(
  { by, near, far }: InTheWay,
  tape: Quotient,
  lensLength: number,
  behindCamera: number,
): Solved {
  const beyond = where(lessTimes(tape.over, far + lensLength, tape.under), by);
  const before = where(sum(times(tape.over, -1), times(tape.under, near - behindCamera)), by);
  return { by, at: either(before, beyond) };
}
