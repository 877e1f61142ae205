import type { Vec3 } from '../optics/types';
import type { Dimensions } from './types';

/**
 * Where a standing body lies in depth and how its arms hang; no survey gives these, so all are a
 * sculptor's choice. Depths in mm from the tragion, after a neck that leans forward so that the
 * line from cervicale to tragion rises at about 50 degrees (from memory, the usual standing value).
 */
const STANCE = {
  acromionBack: 57,
  cervicaleBack: 88,
  suprasternaleForward: 33,
  /** The widest point of the shoulder under the acromion, over upper-arm length. */
  deltoidDrop: 0.25,
  /** Arm at ease, unit steps (out, down, forward) of upper arm and of forearm with hand. */
  upperArm: direction(0.12, -1, -0.07),
  forearm: direction(0.02, -1, 0.22),
  /** Knee sideways over hip breadth, and its depth before the acromion, mm. */
  kneeOut: 0.28,
  kneeForward: 66,
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

const tragionZ = (d: Dimensions): number => d.nose_tip_to_eye_plane - d.nose_tip_to_tragion;

export function trunkLandmarks(d: Dimensions) {
  const z = tragionZ(d);
  return {
    suprasternale: [0, fromFloor(d, d.suprasternale_height), z + STANCE.suprasternaleForward],
    cervicale: [0, fromFloor(d, d.cervicale_height), z - STANCE.cervicaleBack],
  } as const satisfies Record<string, Vec3>;
}

/** Shoulder, arm and knee of the left side, mm. */
export function armLandmarks(d: Dimensions) {
  const acromion: Vec3 = [
    d.biacromial_breadth / 2,
    fromFloor(d, d.acromial_height),
    tragionZ(d) - STANCE.acromionBack,
  ];
  const elbow = along(acromion, STANCE.upperArm, d.shoulder_elbow_length);
  const forearm = d.forearm_hand_length - d.hand_length;
  return {
    acromion,
    deltoid: [
      d.bideltoid_breadth / 2,
      acromion[1] - STANCE.deltoidDrop * d.shoulder_elbow_length,
      acromion[2],
    ],
    elbow,
    wrist: along(elbow, STANCE.forearm, forearm),
    fingertip: along(elbow, STANCE.forearm, d.forearm_hand_length),
    knee: [
      STANCE.kneeOut * d.hip_breadth_standing,
      fromFloor(d, d.knee_height_standing),
      acromion[2] + STANCE.kneeForward,
    ],
  } as const satisfies Record<string, Vec3>;
}
