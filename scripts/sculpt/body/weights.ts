import type { Vec3 } from '../../../src/optics/types';
import { BONES, type Bone, HAND_JOINTS, type LimbBone } from '../../../src/sitter/skeleton';
import { clamp, step } from '../field';
import { figure } from './figure';
import { handFrame, inHand } from './hand';
import { arm } from './limbs';
import type { BodyShape } from './shape';
import { ribsAndPelvis } from './trunk';

/** Four bones (indices into BONES) and their shares, which add up to 255. */
export interface SkinShares {
  readonly joints: readonly [number, number, number, number];
  readonly weights: readonly [number, number, number, number];
}

/** Skirts: both legs carry them, and they meet in the middle. */
export const isSkirt = (part: string): boolean => part === 'dress';

/**
 * Which bones bend a point of the body as sculpted, mm: the limb it belongs to, and beside each
 * joint a smooth share of both bones, over about the limb's radius.
 */
export function skinWeights(shape: BodyShape): (part: string, ...p: Vec3) => SkinShares {
  const f = figure(shape);
  const { shoulder, elbow, wrist, hip, knee, ankle } = f.joints;
  const limb = arm(f);
  const ribs = ribsAndPelvis(f);
  const hand = handFrame(f);
  const pit = shoulder[1] - 52;
  const waist = f.y(f.mm.waist_height_navel);

  /** Share of the arm against the trunk: sharp where it hangs beside it, wide over the shoulder. */
  const armShare = (x: number, y: number, z: number): number => {
    if (y < wrist[1] - 5) return 0;
    const wide = 5 + 20 * step(pit - 130, pit - 20, y) + 35 * step(pit - 30, shoulder[1] + 5, y);
    const toTrunk = ribs(x, y, z);
    const toArm = limb(x, y, z);
    // The shoulder's cap follows the arm only in part, as the deltoid slides under the skin.
    const cap = 1 - 0.55 * step(shoulder[1] - 70, shoulder[1] + 45, y);
    return cap * step(-wide, wide, toTrunk - toArm - 6 * step(pit - 30, shoulder[1], y));
  };

  /** Signed distance past a joint, along the middle of both bones' directions. */
  const past = (joint: Vec3, before: Vec3, after: Vec3) => {
    const unit = (a: Vec3, b: Vec3): Vec3 => {
      const l = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
      return [(b[0] - a[0]) / l, (b[1] - a[1]) / l, (b[2] - a[2]) / l];
    };
    const [u, v] = [unit(before, joint), unit(joint, after)];
    const m: Vec3 = [u[0] + v[0], u[1] + v[1], u[2] + v[2]];
    const l = Math.hypot(...m);
    return (x: number, y: number, z: number): number =>
      ((x - joint[0]) * m[0] + (y - joint[1]) * m[1] + (z - joint[2]) * m[2]) / l;
  };
  const pastElbow = past(elbow, shoulder, wrist);
  const fingertip: Vec3 = [
    wrist[0] + hand.a[0] * 100,
    wrist[1] + hand.a[1] * 100,
    wrist[2] + hand.a[2] * 100,
  ];
  const pastWrist = past(wrist, elbow, fingertip);
  const pastKnee = past(knee, hip, ankle);
  const upperLength = Math.hypot(...shoulder.map((c, j) => c - (elbow[j] as number)));
  const foreLength = Math.hypot(...elbow.map((c, j) => c - (wrist[j] as number)));
  const elbowReach = f.by(40, 46);

  type Shares = Partial<Record<LimbBone | 'pelvis' | 'chest', number>>;

  const armShares = (x: number, y: number, z: number, out: Shares, share: number): void => {
    const e = pastElbow(x, y, z);
    const w = pastWrist(x, y, z);
    const beyondElbow = step(-elbowReach, elbowReach, e);
    const beyondWrist = step(-24, 20, w);
    const upper = share * (1 - beyondElbow);
    const turned = clamp((e + upperLength) / upperLength);
    out.upper_arm = upper * (1 - turned);
    out.upper_arm_end = upper * turned;
    const fore = share * beyondElbow * (1 - beyondWrist);
    const rolled = clamp(e / (foreLength - 20));
    out.forearm = fore * (1 - rolled);
    out.forearm_end = fore * rolled;
    let palm = share * beyondElbow * beyondWrist;
    if (palm > 0) {
      const [a, b, c] = inHand(hand, x, y, z);
      const [ta, tb, tc] = HAND_JOINTS.thumb;
      // The thumb: beside the palm, along a line from its root forwards.
      const along = 0.78 * (a - ta) + 0.53 * (b - tb) + 0.33 * (c - tc);
      const thumb = step(-14, 16, along) * step(25, 33, b + 0.42 * (c - 4)) * step(124, 112, a);
      out.thumb = palm * thumb;
      palm -= out.thumb;
      const [k, , kc] = HAND_JOINTS.fingers;
      const fingers = step(-11, 13, a - k + 0.22 * (c - kc));
      const [t, , tipC] = HAND_JOINTS.fingertips;
      const tips = step(-8, 9, 0.85 * (a - t) + 0.5 * (c - tipC));
      out.hand = palm * (1 - fingers);
      out.fingers = palm * fingers * (1 - tips);
      out.fingertips = palm * fingers * tips;
    }
  };

  const legShares = (x: number, y: number, z: number, out: Shares, share: number): void => {
    const beyondKnee = step(-58, 58, pastKnee(x, y, z));
    const beyondAnkle = step(ankle[1] + 34, ankle[1] - 16, y);
    out.thigh = share * (1 - beyondKnee);
    out.shin = share * beyondKnee * (1 - beyondAnkle);
    out.foot = share * beyondKnee * beyondAnkle;
  };

  const upperBody = (ax: number, y: number, z: number): Shares => {
    const out: Shares = {};
    const arms = armShare(ax, y, z);
    if (arms > 0) armShares(ax, y, z, out, arms);
    const rest = 1 - arms;
    // The shoulder's top goes with the collar bone.
    const collar =
      rest * step(0.25 * shoulder[0], 0.8 * shoulder[0], ax) * step(pit - 20, shoulder[1] + 20, y);
    const trunk = rest - collar;
    const low = step(waist + 70, waist - 70, y);
    out.clavicle = collar;
    out.chest = trunk * (1 - low);
    const seat = trunk * low;
    // The crease of the hip rises outwards in front; the seat goes with the pelvis.
    const crease = hip[1] - 18 + 0.35 * (ax - hip[0]) + 0.16 * (hip[2] - z);
    const leg = step(crease + 62, crease - 62, y);
    out.pelvis = seat * (1 - leg);
    if (leg > 0) legShares(ax, y, z, out, seat * leg);
    return out;
  };

  return (part, x, y, z) => {
    const ax = Math.abs(x);
    const shares =
      part === 'shoes' ? { foot: 1 } : part === 'hands' ? handsOnly(ax, y, z) : upperBody(ax, y, z);
    const side = x >= 0 ? 'left' : 'right';
    const other = side === 'left' ? 'right' : 'left';
    // Near the midline both legs share what hangs between them.
    const half = isSkirt(part) ? 70 : 14;
    const own = 0.5 + 0.5 * step(0, half, ax);
    const all: [Bone, number][] = [];
    for (const [name, share] of Object.entries(shares) as [keyof Shares, number][]) {
      if (name === 'pelvis' || name === 'chest') all.push([name, share]);
      else if (name === 'thigh' || name === 'shin' || name === 'foot') {
        all.push([`${name}_${side}`, share * own], [`${name}_${other}`, share * (1 - own)]);
      } else all.push([`${name}_${side}`, share]);
    }
    return quantised(all);
  };

  function handsOnly(ax: number, y: number, z: number): Shares {
    const out: Shares = {};
    armShares(ax, y, z, out, 1);
    return out;
  }
}

/** The four largest shares as bytes that add up to 255. */
function quantised(all: [Bone, number][]): SkinShares {
  const best = all
    .filter(([, share]) => share > 1e-4)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 4);
  const sum = best.reduce((s, [, share]) => s + share, 0);
  const joints = [0, 0, 0, 0] as [number, number, number, number];
  const weights = [0, 0, 0, 0] as [number, number, number, number];
  best.forEach(([bone, share], k) => {
    joints[k] = BONES.indexOf(bone);
    weights[k] = Math.round((255 * share) / sum);
  });
  weights[0] += 255 - weights.reduce((s, w) => s + w, 0);
  return { joints, weights };
}
