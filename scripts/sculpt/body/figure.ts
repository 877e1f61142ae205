import type { Vec3 } from '../../../src/optics/types';
import { armLandmarks, fromFloor, trunkLandmarks } from '../../../src/sitter/landmarks-body';
import type { Dimensions } from '../../../src/sitter/types';
import type { BodyShape } from './shape';

/** Joint centres of the left side, mm, standing at ease; the right side mirrors x. */
export interface Joints {
  readonly shoulder: Vec3;
  readonly elbow: Vec3;
  readonly wrist: Vec3;
  readonly hip: Vec3;
  readonly knee: Vec3;
  readonly ankle: Vec3;
}

/** A body standing at ease: its levels, and where its joints are. */
export interface Figure {
  readonly sex: BodyShape['sex'];
  readonly mm: Dimensions;
  /** Height above the floor (mm) to y in the sitter's frame. */
  readonly y: (height: number) => number;
  /** First value for a woman, second for a man. */
  readonly by: <T>(female: T, male: T) => T;
  readonly joints: Joints;
  readonly acromion: Vec3;
  readonly cervicale: Vec3;
  readonly suprasternale: Vec3;
  /** Thickness of the top's cloth, mm; under it the shoulder is that much smaller. */
  readonly cloth: number;
}

/** Point of the bent elbow to its joint centre, mm (a usual value, from memory). */
const ELBOW_POINT = 27;
/** Acromion down to the centre of the humerus's head, mm (a usual value, from memory). */
const ACROMION_TO_JOINT = 40;

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** Sets the joints of a person standing at ease from the dimensions. */
export function figure(shape: BodyShape): Figure {
  const { mm } = shape;
  const y = (height: number): number => fromFloor(mm, height);
  const by = <T>(female: T, male: T): T => (shape.sex === 'female' ? female : male);
  const { acromion, knee } = armLandmarks(mm);
  const { cervicale, suprasternale } = trunkLandmarks(mm);
  const upperArm = mm.shoulder_elbow_length - ELBOW_POINT - ACROMION_TO_JOINT;
  const forearm = mm.forearm_hand_length - mm.hand_length - ELBOW_POINT;
  // At ease: the upper arm a little away from the trunk, the forearm a little bent.
  const out = rad(by(9, 8.5));
  const bend = rad(14);
  const carry = rad(2);
  const shoulder: Vec3 = [acromion[0] - 10, acromion[1] - ACROMION_TO_JOINT, acromion[2]];
  const elbow: Vec3 = [
    shoulder[0] + upperArm * Math.sin(out),
    shoulder[1] - upperArm * Math.cos(out),
    shoulder[2] - 8,
  ];
  const wrist: Vec3 = [
    elbow[0] + forearm * Math.sin(carry),
    elbow[1] - forearm * Math.cos(carry) * Math.cos(bend),
    elbow[2] + forearm * Math.sin(bend),
  ];
  return {
    sex: shape.sex,
    mm,
    y,
    by,
    joints: {
      shoulder,
      elbow,
      wrist,
      hip: [by(86, 88), y(mm.crotch_height + 70), -120],
      knee: [knee[0], knee[1], knee[2] - by(66, 74)],
      ankle: [knee[0] + by(6, 12), y(by(68, 78)), -160],
    },
    acromion,
    cervicale,
    suprasternale,
    cloth: by(2.5, 3),
  };
}
