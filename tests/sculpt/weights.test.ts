import { describe, expect, it } from 'vitest';
import { clothes, coveredBy } from '../../scripts/sculpt/body/clothes';
import { figure } from '../../scripts/sculpt/body/figure';
import { BODY_SHAPES } from '../../scripts/sculpt/body/shape';
import { skinWeights } from '../../scripts/sculpt/body/weights';
import { neckAndShoulders } from '../../scripts/sculpt/head/neck';
import { SHAPES } from '../../scripts/sculpt/head/shape';
import { BONES, type Bone } from '../../src/sitter/skeleton';
import { CLOTHES } from '../../src/sitter/types';

type Point = readonly [number, number, number];

describe.each(['female', 'male'] as const)('the bones of the %s body', (sex) => {
  const shape = BODY_SHAPES[sex];
  const f = figure(shape);
  const weights = skinWeights(shape);
  const { shoulder, elbow, wrist, hip, knee, ankle } = f.joints;
  const share = (part: string, p: Point, bone: Bone): number => {
    const { joints, weights: w } = weights(part, ...p);
    return joints.reduce((s, j, k) => s + (BONES[j] === bone ? (w[k] as number) : 0), 0) / 255;
  };
  const between = (a: Point, b: Point, t: number): Point =>
    a.map((c, j) => c + t * ((b[j] as number) - c)) as unknown as Point;

  it('give every point shares that add up, the same on both sides', () => {
    for (let y = f.y(0); y < f.acromion[1] + 30; y += 23)
      for (let x = 1; x < 290; x += 17)
        for (let z = -240; z < 40; z += 31) {
          const left = weights('top', x, y, z);
          const right = weights('top', -x, y, z);
          expect(left.weights.reduce((a, b) => a + b)).toBe(255);
          expect([...right.weights].sort()).toEqual([...left.weights].sort());
          for (const w of left.weights) expect(w).toBeGreaterThanOrEqual(0);
        }
  });

  it('bend each limb by its own bones', () => {
    const upper = between(shoulder, elbow, 0.6);
    const fore = between(elbow, wrist, 0.5);
    expect(share('top', upper, 'upper_arm_left') + share('top', upper, 'upper_arm_end_left')).toBe(
      1,
    );
    expect(share('top', fore, 'forearm_left') + share('top', fore, 'forearm_end_left')).toBe(1);
    expect(share('top', [0, f.y(shape.mm.chest_height), 20], 'chest_left' as Bone)).toBe(0);
    expect(share('top', [0, f.y(shape.mm.chest_height), 20], 'chest')).toBe(1);
    expect(share('trousers', between(hip, knee, 0.6), 'thigh_left')).toBeGreaterThan(0.95);
    expect(share('trousers', between(knee, ankle, 0.6), 'shin_left')).toBeGreaterThan(0.95);
    expect(share('shoes', ankle, 'foot_left')).toBe(1);
  });

  it('share a skirt between both legs in the middle', () => {
    const middle: Point = [0, f.y(shape.mm.crotch_height - 100), 10];
    expect(share('dress', middle, 'thigh_left')).toBeCloseTo(
      share('dress', middle, 'thigh_right'),
      2,
    );
  });

  it('leave no sleeve on the trunk and no trunk on the sleeve', () => {
    const arms = BONES.filter((bone) => /arm|hand|finger|thumb/.test(bone));
    const total = (p: Point): number => arms.reduce((s, bone) => s + share('top', p, bone), 0);
    const y = f.y(shape.mm.waist_height_navel);
    expect(total([shape.mm.waist_breadth / 2 + 6, y, -110])).toBe(0);
    expect(total([elbow[0] - 34, y, elbow[2]])).toBe(1);
  });
});

describe.each(['female', 'male'] as const)('the clothes of the %s body', (sex) => {
  const shape = BODY_SHAPES[sex];
  const f = figure(shape);
  const skin = neckAndShoulders(SHAPES[sex]);
  const covered = coveredBy(shape);
  const sets = clothes(shape);

  it('lie outside the skin that they cover, in the furrows of their folds too', () => {
    for (const set of CLOTHES) {
      const cloth = sets[set][0]?.field;
      if (!cloth) throw new Error(`no clothes ${set}`);
      let [seen, nearest] = [0, Number.POSITIVE_INFINITY];
      for (let x = 2; x < 150; x += 12)
        for (let y = f.suprasternale[1] - 110; y < f.suprasternale[1] + 60; y += 9)
          for (const [from, way] of [
            [140, -1],
            [-300, 1],
          ] as const) {
            let z = from;
            while (Math.abs(z - from) < 260 && skin(x, y, z) > 0) z += 0.5 * way;
            if (skin(x, y, z) > 0 || !covered[set](x, y, z)) continue;
            seen++;
            nearest = Math.min(nearest, -cloth(x, y, z));
          }
      expect(seen).toBeGreaterThan(100);
      expect(nearest).toBeGreaterThan(1);
    }
  });

  it('leave throat and notch bare', () => {
    const [, y, z] = f.suprasternale;
    for (const set of CLOTHES) {
      expect(covered[set](0, y, z)).toBe(false);
      expect(covered[set](0, y + 60, z - 20)).toBe(false);
    }
  });
});
