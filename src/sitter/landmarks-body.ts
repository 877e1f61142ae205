import type { Vec3 } from '../optics/types';
import type { Dimensions } from './types';

/**
 * Where a standing body lies in depth and how its arms hang; no survey gives these, so all are a
 * sculptor's choice. Depths in mm from the tragion, after a neck that leans forward so that the
 * line from cervicale to tragion rises at about 50 degrees (from memory, the usual standing value).
 */
export const STANCE = {
  acromionBack: 57,
  cervicaleBack: 70,
  suprasternaleForward: 33,
  /** The widest point of the shoulder under the acromion, over upper-arm length. */
  deltoidDrop: 0.33,
  /** Arm at ease, unit steps (out, down, forward): acromion to elbow joint, and on to the wrist. */
  upperArm: direction(0.155, -1, -0.03),
  forearm: direction(0.105, -1, 0.24),
  /** Wrist to middle fingertip over hand length: fingers at ease bend towards the palm. */
  hand: [-0.32, -0.894, 0.092] as Vec3,
  /** Knee sideways over hip breadth, and its depth before the acromion, mm. */
  kneeOut: 0.28,
  kneeForward: 70,
} as const;

function direction(x: number, y: number, z: number): Vec3 {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}

const along = (from: Vec3, way: Vec3, length: number): Vec3 => [
  from[0] + way[0] * length,
  from[1] + way[1] * length,
  from[2] + way[2] * length,
];

/** Height above the floor to y in the sitter's frame, both mm. */
export const fromFloor = (d: Dimensions, height: number): number =>
  height - (d.stature - d.vertex_above_eyes);

/** Stature of the smallest adults, the 1st percentile of women (ANSUR II 2012), mm. */
const SMALL_ADULT = 1482.5;

/** What depths and thicknesses of the body are multiplied by: children are slighter than adults. */
export const slightness = (d: Pick<Dimensions, 'stature'>): number =>
  Math.min(1, d.stature / SMALL_ADULT);

const tragionZ = (d: Dimensions): number => d.nose_tip_to_eye_plane - d.nose_tip_to_tragion;

export function trunkLandmarks(d: Dimensions) {
  const z = tragionZ(d);
  const k = slightness(d);
  return {
    suprasternale: [0, fromFloor(d, d.suprasternale_height), z + k * STANCE.suprasternaleForward],
    cervicale: [0, fromFloor(d, d.cervicale_height), z - k * STANCE.cervicaleBack],
  } as const satisfies Record<string, Vec3>;
}

/**
 * An adult's, as all that follows: the survey measures both parts of the arm to the point of the bent elbow, which stands this far
 * beyond the joint's centre (mm, a usual value, from memory): a straight arm is shorter by both.
 */
export const ELBOW_POINT = 27;

/** From a joint's centre to the landmark on the surface, mm: elbow backwards, wrist forwards. */
export const ELBOW_SURFACE: Vec3 = [-1, 0, -47];
export const WRIST_SURFACE: Vec3 = [0, 0, 27];

/** a + k b */
const plus = (a: Vec3, b: Vec3, k: number): Vec3 => [
  a[0] + k * b[0],
  a[1] + k * b[1],
  a[2] + k * b[2],
];

/** Centres of the left elbow and wrist, mm, arm hanging at ease. */
function armJoints(d: Dimensions, acromion: Vec3): { elbow: Vec3; wrist: Vec3 } {
  const point = slightness(d) * ELBOW_POINT;
  const elbow = along(acromion, STANCE.upperArm, d.shoulder_elbow_length - point);
  const forearm = d.forearm_hand_length - d.hand_length - point;
  return { elbow, wrist: along(elbow, STANCE.forearm, forearm) };
}

/** Shoulder, arm and knee of the left side, mm. */
export function armLandmarks(d: Dimensions) {
  const k = slightness(d);
  const acromion: Vec3 = [
    d.biacromial_breadth / 2,
    fromFloor(d, d.acromial_height),
    tragionZ(d) - k * STANCE.acromionBack,
  ];
  const { elbow, wrist } = armJoints(d, acromion);
  return {
    acromion,
    deltoid: [
      d.bideltoid_breadth / 2,
      acromion[1] - STANCE.deltoidDrop * d.shoulder_elbow_length,
      acromion[2],
    ],
    elbow: plus(elbow, ELBOW_SURFACE, k),
    wrist: plus(wrist, WRIST_SURFACE, k),
    fingertip: along(wrist, STANCE.hand, d.hand_length),
    knee: [
      STANCE.kneeOut * d.hip_breadth_standing,
      fromFloor(d, d.knee_height_standing),
      acromion[2] + k * STANCE.kneeForward,
    ],
  } as const satisfies Record<string, Vec3>;
}
