import type { Vec3 } from '../optics/types';
import { cross, minus, plus, scaled } from '../optics/vector';
import { slightness } from './landmarks-body';
import {
  armMotions,
  type Curl,
  carried,
  legMotions,
  type Motion,
  type Motions,
  type Reach,
} from './limbs';
import { about, aligning, part, type Quaternion, rotate, times } from './quaternion';
import { HAND_AXES, type Skeleton } from './skeleton';
import type { Dimensions, Landmarks, Pose, Side } from './types';

/*
 * Where hands rest and how far joints turn in each pose: a sculptor's choices, judged by eye.
 * Points are for the left side, x outwards.
 */

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const SIDES = ['left', 'right'] as const;

/** Share of a lean taken below the waist; the rest bends the back. */
const LEAN_AT_HIPS = 0.6;
/** Seated: thighs apart, and the pelvis a little tilted back. */
const SEAT = { apart: rad(5), shinsOut: rad(1) } as const;
/** Standing and leaning, the hips go back by this share of the lean. */
const HIPS_BACK = 0.16;

/** Cloth over the body, metres. */
const CLOTH = 0.006;

/** How thick the clothed figure is where hands come to rest, metres. */
export interface Girth {
  /** Radius of the thigh. */
  readonly thigh: number;
  /** Front of chest and belly in the sitter's frame. */
  readonly chestFront: number;
  readonly bellyFront: number;
  /** What an adult's offsets are multiplied by. */
  readonly scale: number;
}

/** @param over what is worn over the thighs besides trousers, metres */
export function girthOf(upright: Landmarks, d: Dimensions, over: number): Girth {
  const z = upright.acromion_left[2];
  return {
    scale: slightness(d),
    thigh: d.hip_breadth_standing / 4000 + over,
    chestFront: z + (0.68 * d.chest_depth) / 1000 + CLOTH,
    bellyFront: z + (0.745 * d.waist_depth) / 1000 + CLOTH,
  };
}

/**
 * Motions of every bone but the head's, in the figure's own frame (before it turns as a whole).
 * @param rise how much nearer the chest the hips come than in the upright figure, metres
 */
export function motionsOf(
  rest: Skeleton,
  girth: Girth,
  rise: number,
  pose: Pose,
  nearFace: (chest: Motion) => { readonly wrist: Vec3; readonly turn: Quaternion },
): Motions {
  const bend = about(0, pose.lean);
  const seated = pose.stance === 'seated';
  const pelvis: Motion = { turn: part(bend, LEAN_AT_HIPS), to: raised(rest.pelvis, rise) };
  const chest: Motion = {
    turn: bend,
    to: carried(rest.pelvis, pelvis, raised(rest.chest, -rise)),
  };
  const out: Partial<Motions> = { pelvis, chest };
  for (const side of SIDES) {
    const sign = side === 'left' ? 1 : -1;
    const thigh = seated ? level(rest, side) : about(0, -HIPS_BACK * pose.lean);
    Object.assign(
      out,
      legMotions(
        rest,
        side,
        raised(rest[`thigh_${side}`], rise),
        thigh,
        seated ? upright(rest, side) : thigh,
      ),
    );
    const placed = arms(rest, girth, pose, side, chest, out as Motions, nearFace);
    const axes = {
      a: mirror(HAND_AXES.a, sign),
      b: mirror(HAND_AXES.b, sign),
      c: mirror(HAND_AXES.c, sign),
    };
    Object.assign(out, armMotions(rest, side, placed.clavicle, placed.reach, axes, placed.curl));
  }
  return out as Motions;
}

const mirror = (v: Vec3, sign: number): Vec3 => [v[0] * sign, v[1], v[2]];
const raised = (v: Vec3, by: number): Vec3 => [v[0], v[1] + by, v[2]];

/** The thigh turned level, knee-cap up. */
function level(rest: Skeleton, side: Side): Quaternion {
  const sign = side === 'left' ? 1 : -1;
  const way = minus(rest[`shin_${side}`], rest[`thigh_${side}`]);
  const apart: Vec3 = [sign * Math.sin(SEAT.apart), 0, Math.cos(SEAT.apart)];
  return aligning(
    { along: way, beside: [1, 0, 0] },
    { along: apart, beside: cross([0, 1, 0], apart) },
  );
}

/** The shin upright, but for a little outwards. */
function upright(rest: Skeleton, side: Side): Quaternion {
  const sign = side === 'left' ? 1 : -1;
  const way = minus(rest[`foot_${side}`], rest[`shin_${side}`]);
  return aligning(
    { along: way, beside: [1, 0, 0] },
    { along: [sign * Math.sin(SEAT.shinsOut), -1, 0], beside: [1, 0, 0] },
  );
}

const AT_EASE: Curl = { knuckles: 0, joints: 0, thumb: 0 };
/** Fingers laid flat: less bent than those of the hanging hand. */
const FLAT: Curl = { knuckles: rad(-14), joints: rad(-18), thumb: rad(-4) };

interface Placed {
  readonly clavicle: Motion;
  readonly reach: Reach;
  readonly curl: Curl;
}

function arms(
  rest: Skeleton,
  girth: Girth,
  pose: Pose,
  side: Side,
  chest: Motion,
  done: Motions,
  nearFace: (chest: Motion) => { readonly wrist: Vec3; readonly turn: Quaternion },
): Placed {
  const sign = side === 'left' ? 1 : -1;
  const m = (x: number, y: number, z: number): Vec3 => [sign * x, y, z];
  const k = girth.scale;
  /** Collar bone raised and brought forward, radians. */
  const shrug = (raise: number, forward: number): Motion => ({
    turn: times(chest.turn, times(about(2, sign * raise), about(1, -sign * forward))),
    to: carried(rest.chest, chest, rest[`clavicle_${side}`]),
  });
  const onChest = (p: Vec3): Vec3 => carried(rest.chest, chest, p);
  const turned = (v: Vec3): Vec3 => rotate(chest.turn, v);
  const shoulder = rest[`upper_arm_${side}`];
  const seated = pose.stance === 'seated';

  /** On the thigh, a share of the way to the knee. */
  const onThigh = (share: number, inwards: number, palm: Vec3, fingers: Vec3): Reach => {
    const hip = done[`thigh_${side}`];
    const knee = done[`shin_${side}`];
    const p = plus(hip.to, scaled(minus(knee.to, hip.to), share));
    return {
      wrist: [p[0] - sign * k * inwards, p[1] + girth.thigh + k * 0.032, p[2]],
      fingers,
      palm,
      elbow: m(1.05, 0.2, -0.3),
    };
  };

  if (pose.arms === 'folded') {
    const right = side === 'right';
    const front = girth.chestFront;
    const y = (rest.forearm_left[1] + rest.upper_arm_left[1]) / 2 - k * 0.075;
    return {
      clavicle: shrug(0, rad(15)),
      reach: {
        wrist: onChest(
          m(-0.024 * k, y + k * (right ? -0.024 : 0.059), front + k * (right ? 0.053 : 0.084)),
        ),
        fingers: turned(m(-1, right ? 0.42 : 0.54, right ? -0.2 : -0.15)),
        palm: turned(right ? m(-0.3, 0, -1) : m(0, 0.1, -1)),
        elbow: turned(m(1.23, -1, 1.25)),
      },
      curl: { knuckles: rad(right ? 4 : 0), joints: rad(4), thumb: rad(-4) },
    };
  }
  if (pose.arms === 'lap') {
    const over = side === 'left';
    if (seated)
      return {
        clavicle: shrug(0, rad(3)),
        reach: {
          wrist: [
            sign * k * 0.091,
            done.thigh_left.to[1] + girth.thigh + k * (over ? 0.067 : 0.034),
            girth.bellyFront + k * (over ? 0.105 : 0.074),
          ],
          fingers: m(-1, over ? 0.1 : -0.13, 0.89),
          palm: m(-0.1, -1, 0.1),
          elbow: m(1.5, -0.1, -1.05),
        },
        curl: over ? FLAT : AT_EASE,
      };
    return {
      clavicle: shrug(0, rad(4)),
      reach: {
        wrist: [
          sign * k * 0.088,
          rest.thigh_left[1] + k * 0.058,
          girth.bellyFront + k * (over ? 0.1 : 0.055),
        ],
        fingers: m(-1, -0.75, 0.02),
        palm: m(-0.25, -0.1, -1),
        elbow: m(1, 0.02, 0.73),
      },
      curl: over ? FLAT : AT_EASE,
    };
  }
  if (pose.arms === 'near-face' && side === 'right') {
    const { wrist, turn } = nearFace(chest);
    return {
      clavicle: shrug(rad(4), rad(6)),
      reach: {
        wrist,
        fingers: rotate(turn, [0.17, 1, -0.21]),
        palm: rotate(turn, [0.91, 0.1, -0.68]),
        elbow: turned([-0.55, -1, 0.2]),
      },
      curl: { knuckles: rad(8), joints: rad(12), thumb: rad(-6) },
    };
  }
  if (seated)
    return {
      clavicle: shrug(0, 0),
      reach: onThigh(0.48, 0.003, m(0.08, -1, 0.12), m(-0.22, 0.01, 1)),
      curl: FLAT,
    };
  // Hanging: the arm keeps its own direction from wherever the shoulder is.
  const clavicle = shrug(0, 0);
  const moved = carried(rest[`clavicle_${side}`], clavicle, shoulder);
  return {
    clavicle,
    reach: {
      wrist: plus(moved, minus(rest[`hand_${side}`], shoulder)),
      fingers: mirror(HAND_AXES.a, sign),
      palm: mirror(HAND_AXES.c, sign),
      elbow: elbowSide(rest, side),
    },
    curl: AT_EASE,
  };
}

/** The way the hanging arm's elbow stands out of the line from shoulder to wrist. */
const elbowSide = (rest: Skeleton, side: Side): Vec3 =>
  minus(
    rest[`forearm_${side}`],
    scaled(plus(rest[`upper_arm_${side}`], rest[`hand_${side}`]), 0.5),
  );
