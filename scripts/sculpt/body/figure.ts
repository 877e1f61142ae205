import type { Vec3 } from '../../../src/optics/types';
import { landmarksFor } from '../../../src/sitter/landmarks';
import { armLandmarks, fromFloor, trunkLandmarks } from '../../../src/sitter/landmarks-body';
import { type LimbBone, skeletonOf } from '../../../src/sitter/skeleton';
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

/** Sets the joints of a person standing at ease from the dimensions. */
export function figure(shape: BodyShape): Figure {
  const { mm } = shape;
  const y = (height: number): number => fromFloor(mm, height);
  const by = <T>(female: T, male: T): T => (shape.sex === 'female' ? female : male);
  const { acromion } = armLandmarks(mm);
  const { cervicale, suprasternale } = trunkLandmarks(mm);
  const rest = skeletonOf(landmarksFor(mm), mm);
  const joint = (name: LimbBone): Vec3 => {
    const [px, py, pz] = rest[`${name}_left`];
    return [1000 * px, 1000 * py, 1000 * pz];
  };
  return {
    sex: shape.sex,
    mm,
    y,
    by,
    joints: {
      shoulder: joint('upper_arm'),
      elbow: joint('forearm'),
      wrist: joint('hand'),
      hip: joint('thigh'),
      knee: joint('shin'),
      ankle: joint('foot'),
    },
    acromion,
    cervicale,
    suprasternale,
    cloth: by(3.2, 3.4),
  };
}
