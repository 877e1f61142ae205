import type { Vec3 } from '../../../src/optics/types';
import { armLandmarks } from '../../../src/sitter/landmarks-body';
import type { MidlineLandmark, PairedLandmark } from '../../../src/sitter/types';
import type { Field } from '../field';
import { figure } from './figure';
import { hands, middleFingertip } from './hand';
import { arm } from './limbs';
import type { BodyShape } from './shape';
import { top } from './top';
import { trousers } from './trousers';

export type BodyLandmark =
  | Extract<PairedLandmark, 'acromion' | 'deltoid' | 'elbow' | 'wrist' | 'knee' | 'fingertip'>
  | Extract<MidlineLandmark, 'suprasternale' | 'cervicale'>;

/** First point of a surface met from outside, going `way` from `from`. @throws when none is met. */
function meet(field: Field, from: Vec3, way: Vec3): Vec3 {
  const at = (t: number): Vec3 => [
    from[0] + way[0] * t,
    from[1] + way[1] * t,
    from[2] + way[2] * t,
  ];
  for (let t = 0; t < 400; t += 0.25) if (field(...at(t)) <= 0) return at(t);
  throw new Error(`no surface from ${from.map((c) => c.toFixed(0)).join(', ')}`);
}

/**
 * Where the body's landmarks lie on the parts as sculpted, mm, on the left side. Acromion and
 * deltoid lie on the top's cloth; the elbow on the back of the sleeve at its joint; the wrist on
 * the skin of its thumb side; the knee on the trousers; the fingertip at the end of the curled
 * middle finger. Suprasternale and cervicale are the surveyed points, which the head's skin holds.
 */
export function bodySeeds(shape: BodyShape): Readonly<Record<BodyLandmark, Vec3>> {
  const f = figure(shape);
  const { elbow, wrist, knee } = f.joints;
  const cloth = top(f);
  const bare = arm(f);
  const hand = hands(f);
  const skin: Field = (x, y, z) => Math.min(bare(x, y, z), hand(x, y, z));
  const { deltoid } = armLandmarks(shape.mm);
  return {
    acromion: meet(cloth, [f.acromion[0], f.acromion[1] + 60, f.acromion[2]], [0, -1, 0]),
    deltoid: meet(cloth, [deltoid[0] + 60, deltoid[1], deltoid[2]], [-1, 0, 0]),
    elbow: meet(cloth, [elbow[0], elbow[1], elbow[2] - 120], [0, 0, 1]),
    wrist: meet(skin, [wrist[0], wrist[1], wrist[2] + 80], [0, 0, -1]),
    knee: meet(trousers(f), [knee[0], knee[1], knee[2] + 200], [0, 0, -1]),
    fingertip: middleFingertip(f),
    suprasternale: f.suprasternale,
    cervicale: f.cervicale,
  };
}
