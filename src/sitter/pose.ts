import type { Vec3 } from '../optics/types';
import { minus, plus, scaled, unit } from '../optics/vector';
import { carried, type Motion } from './limbs';
import { hangingShare, headShare, neckAxis } from './neck';
import { about, inverse, part, type Quaternion, rotate, times } from './quaternion';
import { hipOverSeat, hipsRise, type Seat } from './seat';
import { BONES, type Bone, HAND_LENGTH, skeletonOf } from './skeleton';
import { skinning } from './skinning';
import { girthOf, motionsOf } from './stance';
import type { Dimensions, Landmarks, Pose } from './types';

/** Where on the neck's axis the head turns, as a share of the way from its root to the jaw. */
const PIVOT = 0.5;

/** Bones that a point follows, four indices into BONES, and their shares, which add up to 255. */
export interface BoneShares {
  readonly joints: ArrayLike<number>;
  readonly weights: ArrayLike<number>;
}

const wholly = (bone: Bone): BoneShares => ({
  joints: [BONES.indexOf(bone), 0, 0, 0],
  weights: [255, 0, 0, 0],
});

/** What has no bones of its own hangs on the chest (and on the head, by its height). */
export const ON_CHEST = wholly('chest');

/**
 * A pose as one map: the bones carry trunk and limbs, the head turns about a point of the neck,
 * the neck takes a share that fades down to the trunk, the whole figure turns about the vertical,
 * and all is set so that the midpoint between the pupils is back at the origin. Landmarks and
 * vertices go through the same map, so a landmark stays on its vertex.
 */
export interface Posing {
  /** Where a point of the upright figure goes; without shares of its own it hangs on the chest. */
  point(p: Vec3, shares?: BoneShares): Vec3;
  /**
   * Poses positions and normals (xyz triples), in place; four joints and weights a vertex, and how
   * free of the skin it hangs, 0..255.
   */
  mesh(
    positions: Float32Array,
    normals: Float32Array,
    joints?: Uint8Array,
    weights?: Uint8Array,
    hang?: Uint8Array,
  ): void;
  /** Where a seated figure sits. */
  readonly seat?: Seat;
}

/** @param over how much thicker than in trousers the thighs are that hands lie on, metres */
export function posing(upright: Landmarks, dimensions: Dimensions, pose: Pose, over = 0): Posing {
  const axis = neckAxis((name) => upright[name]);
  const t = PIVOT * axis.length;
  const pivot: Vec3 = [
    0,
    axis.root[1] + t * axis.direction[1],
    axis.root[2] + t * axis.direction[2],
  ];
  // Tilt first, then nod, then turn: the turn is about the vertical whatever the nod.
  const head = times(
    times(about(1, pose.headTurn), about(0, -pose.headNod)),
    about(2, -pose.headTilt),
  );
  const rest = skeletonOf(upright, dimensions);
  const seated = pose.stance === 'seated';
  const rise = seated ? hipsRise(rest, dimensions) : 0;
  const motions = motionsOf(
    rest,
    girthOf(upright, dimensions, over),
    rise,
    pose,
    (chest: Motion) => {
      const wrist = besideFace(upright, dimensions.hand_length);
      const neck = carried(rest.chest, chest, pivot);
      return { wrist: plus(neck, rotate(head, minus(wrist, pivot))), turn: head };
    },
  );
  const chest = motions.chest;
  const still = BONES.every((bone) => isStill(motions[bone].turn));
  const skin = skinning(rest, motions);
  /** The head's turn against the chest, which leans without it. */
  const onNeck = times(head, inverse(chest.turn));
  const neck = carried(rest.chest, chest, pivot);
  const straight = isStill(onNeck);
  const body = about(1, pose.bodyTurn);
  const out = new Float64Array(6);

  /** Share of the head's pose at a place that hangs free of the skin by 0..1. */
  const shareAt = (x: number, y: number, z: number, hang: number): number => {
    const onSkin = headShare(axis, x, y, z);
    return hang === 0 ? onSkin : onSkin + hang * (hangingShare(axis, y) - onSkin);
  };
  const bones = skin.result;
  /** Turns place and normal in `out` by a rotation. */
  const turn = (q: ArrayLike<number>): void => {
    const [x, y, z, w] = [q[0], q[1], q[2], q[3]] as [number, number, number, number];
    for (const o of [0, 3]) {
      const [a, b, c] = [out[o], out[o + 1], out[o + 2]] as [number, number, number];
      const [u, v, t] = [2 * (y * c - z * b), 2 * (z * a - x * c), 2 * (x * b - y * a)];
      out[o] = a + w * u + y * t - z * v;
      out[o + 1] = b + w * v + z * u - x * t;
      out[o + 2] = c + w * t + x * v - y * u;
    }
  };
  const shift3 = (x: number, y: number, z: number): void => {
    (out[0] as number) += x;
    (out[1] as number) += y;
    (out[2] as number) += z;
  };
  /** Poses place and normal in `out`, all but the final shift. */
  const move = (
    joints: ArrayLike<number>,
    weights: ArrayLike<number>,
    at: number,
    hang = 0,
  ): void => {
    const share = straight
      ? 0
      : shareAt(out[0] as number, out[1] as number, out[2] as number, hang);
    if (!still) {
      skin.blend(joints, weights, at);
      turn(bones);
      shift3(bones[4] as number, bones[5] as number, bones[6] as number);
    }
    if (share > 0) {
      shift3(-neck[0], -neck[1], -neck[2]);
      turn(share === 1 ? onNeck : part(onNeck, share));
      shift3(...neck);
    }
    if (pose.bodyTurn !== 0) turn(body);
  };
  const one = (p: Vec3, { joints, weights }: BoneShares): Vec3 => {
    out.set(p);
    move(joints, weights, 0);
    return [out[0] as number, out[1] as number, out[2] as number];
  };
  const [l, r] = [upright.pupil_left, upright.pupil_right];
  const shift = one([(l[0] + r[0]) / 2, (l[1] + r[1]) / 2, (l[2] + r[2]) / 2], ON_CHEST);
  const point: Posing['point'] = (p, shares = ON_CHEST) => minus(one(p, shares), shift);
  /** Where a joint of both legs stands in the middle. */
  const between = (joint: 'thigh' | 'shin'): Vec3 =>
    scaled(
      plus(
        point(rest[`${joint}_left`], wholly(`${joint}_left`)),
        point(rest[`${joint}_right`], wholly(`${joint}_right`)),
      ),
      0.5,
    );
  const seatOf = (): Seat => {
    const hips = between('thigh');
    const [x, , z] = minus(between('shin'), hips);
    return {
      hips,
      forward: unit([x, 0, z]),
      thigh: Math.hypot(x, z),
      height: hips[1] - hipOverSeat(dimensions),
    };
  };
  return {
    ...(seated && { seat: seatOf() }),
    point,
    mesh: (P, N, joints, weights, hang) => {
      const own = joints !== undefined && weights !== undefined;
      const [J, W] = own ? [joints, weights] : [ON_CHEST.joints, ON_CHEST.weights];
      for (let o = 0; o < P.length; o += 3) {
        for (let j = 0; j < 3; j++) {
          out[j] = P[o + j] as number;
          out[3 + j] = N[o + j] as number;
        }
        move(J, W, own ? (4 * o) / 3 : 0, (hang?.[o / 3] ?? 0) / 255);
        for (let j = 0; j < 3; j++) {
          P[o + j] = (out[j] as number) - (shift[j] as number);
          N[o + j] = out[3 + j] as number;
        }
      }
    },
  };
}

const isStill = (q: Quaternion): boolean => Math.abs(q[3]) > 1 - 1e-12;

/** The wrist of a hand held to the right side of the face: its fingers end beside the jaw. */
function besideFace(upright: Landmarks, handLength: number): Vec3 {
  const { menton, gonion_right: gonion } = upright;
  const k = handLength / HAND_LENGTH;
  return [gonion[0] - 0.053 * k, menton[1] - 0.114 * k, (menton[2] + gonion[2]) / 2 + 0.059 * k];
}

/** Landmarks posed, each with the bones of the vertex that it stands on. */
export const posedLandmarks = (
  upright: Landmarks,
  { point }: Posing,
  sharesAt: (name: keyof Landmarks) => BoneShares | undefined = () => undefined,
): Landmarks =>
  Object.fromEntries(
    Object.entries(upright).map(([name, p]) => [
      name,
      point(p, sharesAt(name as keyof Landmarks) ?? ON_CHEST),
    ]),
  ) as Landmarks;
