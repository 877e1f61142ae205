import type { Vec3 } from '../optics/types';
import { minus } from '../optics/vector';
import type { Motions } from './limbs';
import { rotate, times } from './quaternion';
import { BONES, type Skeleton } from './skeleton';

/**
 * Blended bone motions by dual quaternions (Kavan, Collins, Zara and O'Sullivan 2008, "Geometric
 * skinning with approximate dual quaternion blending"): a limb keeps its girth where it bends or
 * turns, as it would not with blended matrices.
 */
export interface Skin {
  /** Blends four bones into `result`: rotation (4 numbers), then translation (3). */
  blend(joints: ArrayLike<number>, weights: ArrayLike<number>, at: number): void;
  readonly result: Float64Array;
}

export function skinning(rest: Skeleton, motions: Motions): Skin {
  /** Real and dual part of each bone's motion. */
  const duals = new Float64Array(8 * BONES.length);
  BONES.forEach((bone, i) => {
    const { turn, to } = motions[bone];
    const t: Vec3 = minus(to, rotate(turn, rest[bone]));
    const d = times([t[0] / 2, t[1] / 2, t[2] / 2, 0], turn);
    duals.set([...turn, ...d], 8 * i);
  });
  const sum = new Float64Array(8);
  const result = new Float64Array(7);
  return {
    result,
    blend: (joints, weights, at) => {
      sum.fill(0);
      const first = 8 * (joints[at] as number);
      for (let k = 0; k < 4; k++) {
        const w = weights[at + k] as number;
        if (w === 0) continue;
        const o = 8 * (joints[at + k] as number);
        let same = 0;
        for (let j = 0; j < 4; j++) same += (duals[first + j] as number) * (duals[o + j] as number);
        const s = same < 0 ? -w : w;
        for (let j = 0; j < 8; j++) (sum[j] as number) += s * (duals[o + j] as number);
      }
      const [a, b, c, d, e, f, g, h] = sum as unknown as [
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      const l2 = a * a + b * b + c * c + d * d;
      const l = Math.sqrt(l2);
      result[0] = a / l;
      result[1] = b / l;
      result[2] = c / l;
      result[3] = d / l;
      // Translation: twice the dual part times the conjugate of the real part.
      result[4] = (2 * (-h * a + e * d - f * c + g * b)) / l2;
      result[5] = (2 * (-h * b + e * c + f * d - g * a)) / l2;
      result[6] = (2 * (-h * c - e * b + f * a + g * d)) / l2;
    },
  };
}
