import type { Vec3 } from '../optics/types';
import { cross, dot, minus, plus, scaled, unit } from '../optics/vector';
import { aligning, inverse, part, type Quaternion, rotate, times, twist } from './quaternion';
import type { Bone, LimbBone, Skeleton } from './skeleton';
import type { Side } from './types';

/** What a bone does: its joint goes to `to`, and all on it turns about that joint. */
export interface Motion {
  readonly turn: Quaternion;
  readonly to: Vec3;
}
export type Motions = Record<Bone, Motion>;

/** Where a bone takes a point of the upright figure. */
export const carried = (from: Vec3, { turn, to }: Motion, p: Vec3): Vec3 =>
  plus(to, rotate(turn, minus(p, from)));

/** A limb never straightens wholly: a share of its length that it may reach. */
const REACH = 0.999;

/**
 * Middle joint of a two-bone limb whose end reaches for `end`, bent towards `pole` (law of
 * cosines); an end out of reach is brought nearer along the same line.
 */
export function bentJoint(
  start: Vec3,
  end: Vec3,
  pole: Vec3,
  [first, second]: readonly [number, number],
): { readonly middle: Vec3; readonly end: Vec3 } {
  const line = minus(end, start);
  const way = unit(line);
  const d = Math.min(
    REACH * (first + second),
    Math.max(Math.abs(first - second) / REACH, Math.hypot(...line)),
  );
  const along = (first * first - second * second + d * d) / (2 * d);
  const out = Math.sqrt(Math.max(0, first * first - along * along));
  const side = unit(minus(pole, scaled(way, dot(pole, way))));
  return {
    middle: plus(start, plus(scaled(way, along), scaled(side, out))),
    end: plus(start, scaled(way, d)),
  };
}

/** Where a hand goes: its wrist, the way its fingers point and its palm faces, the elbow's side. */
export interface Reach {
  readonly wrist: Vec3;
  readonly fingers: Vec3;
  readonly palm: Vec3;
  readonly elbow: Vec3;
}

/** Extra bend of a hand at knuckles and finger joints, and of the thumb, radians. */
export interface Curl {
  readonly knuckles: number;
  readonly joints: number;
  readonly thumb: number;
}

/** The hanging hand's axes on one side. */
export interface HandAxes {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly c: Vec3;
}

/** Motions of one arm, from the collar bone on. */
export function armMotions(
  rest: Skeleton,
  side: Side,
  clavicle: Motion,
  reach: Reach,
  axes: HandAxes,
  curl: Curl,
): Partial<Motions> {
  const at = (name: LimbBone): Vec3 => rest[`${name}_${side}`];
  const [u, f] = [minus(at('forearm'), at('upper_arm')), minus(at('hand'), at('forearm'))];
  const shoulder = carried(at('clavicle'), clavicle, at('upper_arm'));
  const { middle, end } = bentJoint(shoulder, reach.wrist, reach.elbow, [
    Math.hypot(...u),
    Math.hypot(...f),
  ]);
  const hinge = cross(u, f);
  const [u1, f1] = [minus(middle, shoulder), minus(end, middle)];
  const hinge1 = cross(u1, f1);
  const upper = aligning({ along: u, beside: hinge }, { along: u1, beside: hinge1 });
  const fore = aligning({ along: f, beside: hinge }, { along: f1, beside: hinge1 });
  const hand = aligning(
    { along: axes.a, beside: axes.c },
    { along: reach.fingers, beside: reach.palm },
  );
  // What is turned about the arm's own length is spread along it, from none at its root.
  const rootTwist = twist(times(upper, inverse(clavicle.turn)), unit(u1));
  const endTwist = twist(times(hand, inverse(fore)), unit(f1));
  const fingers = bent(hand, axes, curl.knuckles);
  const knuckle = plus(end, rotate(hand, minus(at('fingers'), at('hand'))));
  return {
    [`clavicle_${side}`]: clavicle,
    [`upper_arm_${side}`]: {
      turn: times(inverse(part(rootTwist, 0.75)), upper),
      to: shoulder,
    },
    [`upper_arm_end_${side}`]: { turn: upper, to: shoulder },
    [`forearm_${side}`]: { turn: fore, to: middle },
    [`forearm_end_${side}`]: { turn: times(endTwist, fore), to: middle },
    [`hand_${side}`]: { turn: hand, to: end },
    [`thumb_${side}`]: {
      turn: bent(hand, axes, curl.thumb),
      to: plus(end, rotate(hand, minus(at('thumb'), at('hand')))),
    },
    [`fingers_${side}`]: { turn: fingers, to: knuckle },
    [`fingertips_${side}`]: {
      turn: bent(fingers, axes, curl.joints),
      to: plus(knuckle, rotate(fingers, minus(at('fingertips'), at('fingers')))),
    },
  };
}

/** A turn of the hand followed by a bend towards the palm, about the line of the knuckles. */
function bent(turn: Quaternion, { a, c }: HandAxes, angle: number): Quaternion {
  const axis = unit(cross(a, c));
  const s = Math.sin(angle / 2);
  return times(turn, [axis[0] * s, axis[1] * s, axis[2] * s, Math.cos(angle / 2)]);
}

/** Motions of one leg from the hip's new place; the foot keeps flat on the floor. */
export function legMotions(
  rest: Skeleton,
  side: Side,
  hip: Vec3,
  thigh: Quaternion,
  shin: Quaternion,
): Partial<Motions> {
  const at = (name: LimbBone): Vec3 => rest[`${name}_${side}`];
  const knee = plus(hip, rotate(thigh, minus(at('shin'), at('thigh'))));
  return {
    [`thigh_${side}`]: { turn: thigh, to: hip },
    [`shin_${side}`]: { turn: shin, to: knee },
    [`foot_${side}`]: {
      turn: [0, 0, 0, 1],
      to: plus(knee, rotate(shin, minus(at('foot'), at('shin')))),
    },
  };
}
