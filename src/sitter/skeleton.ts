import type { Vec3 } from '../optics/types';
import { cross, dot, minus, plus, scaled, unit } from '../optics/vector';
import { ELBOW_SURFACE, fromFloor, slightness, WRIST_SURFACE } from './landmarks-body';
import type { Dimensions, Landmarks, Side } from './types';

/**
 * Bones of one side. The ends of upper arm and forearm are bones of their own, so that turning the
 * arm about its length is spread along it; the fingers move together, at their knuckles and at
 * their first joints.
 */
export const LIMB_BONES = [
  'clavicle',
  'upper_arm',
  'upper_arm_end',
  'forearm',
  'forearm_end',
  'hand',
  'thumb',
  'fingers',
  'fingertips',
  'thigh',
  'shin',
  'foot',
] as const;
export type LimbBone = (typeof LIMB_BONES)[number];
export type Bone = 'pelvis' | 'chest' | `${LimbBone}_${Side}`;

/** Bones in the order of the indices that meshes carry. The head moves as `headShare` says. */
export const BONES: readonly Bone[] = [
  'pelvis',
  'chest',
  ...LIMB_BONES.map((name): Bone => `${name}_left`),
  ...LIMB_BONES.map((name): Bone => `${name}_right`),
];

/** Where each bone turns, in the upright figure, metres. Offsets below are an adult's. */
export type Skeleton = Readonly<Record<Bone, Vec3>>;

/** Acromion to the centre of the humerus's head, mm (usual values, from memory). */
export const ACROMION_TO_JOINT: Vec3 = [-10, -40, 0];
/** Knee-cap's front to the knee's axis; the hip's centre behind the knee-cap's front, mm. */
export const KNEE_TO_JOINT: Vec3 = [0, 0, -70];
const HIP_BEHIND_KNEE = 50;
/** Hip joint over the crotch; share of the hip breadth between the midline and the joint. */
export const HIP_OVER_CROTCH = 70;
export const HIP_OUT = 0.25;
/** Ankle over the floor and behind the knee-cap's front, out from the knee, mm. */
const ANKLE: Vec3 = [9, 73, -88];
/** Inner end of the collar bone from the notch, mm. */
const CLAVICLE: Vec3 = [18, -4, -14];

/**
 * The hanging left hand's axes: `a` from the wrist to the fingers, `b` to the thumb's side,
 * `c` out of the palm: thumb forward, palm to the thigh and a little back. A sculptor's choice.
 */
export const HAND_AXES = handAxes(9, -3, 22);

function handAxes(pitch: number, lean: number, roll: number) {
  const [p, l, r] = [pitch, lean, roll].map((degrees) => (degrees * Math.PI) / 180) as [
    number,
    number,
    number,
  ];
  const a: Vec3 = [Math.sin(l), -Math.cos(l) * Math.cos(p), Math.cos(l) * Math.sin(p)];
  const forward: Vec3 = [-Math.sin(r), 0, Math.cos(r)];
  const b = unit(minus(forward, scaled(a, dot(forward, a))));
  return { a, b, c: cross(a, b) } as const;
}

/** Joints of the hand in its axes, mm at hand length 180. */
export const HAND_JOINTS = {
  thumb: [34, 30, 9],
  fingers: [91, 0, -4],
  fingertips: [133, 0, 12],
} as const satisfies Record<string, Vec3>;

export const HAND_LENGTH = 180;

const mirrored = ([x, y, z]: Vec3, side: Side): Vec3 => [side === 'left' ? x : -x, y, z];

/** Joints of an upright person, from the landmarks (metres) and dimensions (mm). */
export function skeletonOf(landmarks: Landmarks, d: Dimensions): Skeleton {
  const k = slightness(d) / 1000;
  const m = (v: Vec3): Vec3 => scaled(v, k);
  const limb = (side: Side): Readonly<Record<LimbBone, Vec3>> => {
    const from = (name: 'acromion' | 'elbow' | 'wrist' | 'knee', offset: Vec3): Vec3 =>
      plus(landmarks[`${name}_${side}`], mirrored(m(offset), side));
    const shoulder = from('acromion', ACROMION_TO_JOINT);
    const elbow = from('elbow', scaled(ELBOW_SURFACE, -1));
    const wrist = from('wrist', scaled(WRIST_SURFACE, -1));
    const knee = from('knee', KNEE_TO_JOINT);
    const front = landmarks[`knee_${side}`];
    const inHand = (name: keyof typeof HAND_JOINTS): Vec3 => {
      const p = HAND_JOINTS[name];
      const { a, b, c } = HAND_AXES;
      const out = plus(plus(scaled(a, p[0]), scaled(b, p[1])), scaled(c, p[2]));
      return plus(wrist, mirrored(scaled(out, d.hand_length / HAND_LENGTH / 1000), side));
    };
    return {
      clavicle: plus(landmarks.suprasternale, mirrored(m(CLAVICLE), side)),
      upper_arm: shoulder,
      upper_arm_end: shoulder,
      forearm: elbow,
      forearm_end: elbow,
      hand: wrist,
      thumb: inHand('thumb'),
      fingers: inHand('fingers'),
      fingertips: inHand('fingertips'),
      thigh: mirrored(
        [
          (HIP_OUT * d.hip_breadth_standing) / 1000,
          fromFloor(d, d.crotch_height) / 1000 + k * HIP_OVER_CROTCH,
          front[2] - k * HIP_BEHIND_KNEE,
        ],
        side,
      ),
      shin: knee,
      foot: plus([knee[0], fromFloor(d, 0) / 1000, front[2]], mirrored(m(ANKLE), side)),
    };
  };
  const [left, right] = [limb('left'), limb('right')];
  const pelvis: Vec3 = [0, left.thigh[1], left.thigh[2]];
  const out: Partial<Record<Bone, Vec3>> = {
    pelvis,
    chest: [0, fromFloor(d, d.waist_height_navel) / 1000, pelvis[2]],
  };
  for (const name of LIMB_BONES) {
    out[`${name}_left`] = left[name];
    out[`${name}_right`] = right[name];
  }
  return out as Skeleton;
}
