import { describe, expect, it } from 'vitest';
import { hands as bareHands, clothes } from '../../scripts/sculpt/body/clothes';
import { figure } from '../../scripts/sculpt/body/figure';
import { handFrame, hands } from '../../scripts/sculpt/body/hand';
import { bodySeeds } from '../../scripts/sculpt/body/seeds';
import { BODY_SHAPES } from '../../scripts/sculpt/body/shape';
import { shoes } from '../../scripts/sculpt/body/shoes';
import { top } from '../../scripts/sculpt/body/top';
import { trunk } from '../../scripts/sculpt/body/trunk';
import type { Field } from '../../scripts/sculpt/field';
import { polygonise } from '../../scripts/sculpt/nets';

/*
 * Sizes against the medians of the 2012 survey of US Army personnel (ANSUR II, NATICK/TR-15/007),
 * as models/sitters states them. The fields are measured as the survey measured people: with a
 * caliper, the greatest distance at the named height.
 */

/** Half the greatest breadth at a height. */
function halfBreadth(field: Field, y: number): number {
  let widest = 0;
  for (let z = -260; z < 60; z += 4) {
    let x = 330;
    while (x > widest && field(x, y, z) > 0) x -= 0.25;
    widest = Math.max(widest, x);
  }
  return widest;
}

/** Front and back of the trunk at a height, over the middle 200 mm. */
function frontAndBack(field: Field, y: number): readonly [number, number] {
  let front = -300;
  let back = 100;
  for (let x = 0; x <= 100; x += 5) {
    let z = 120;
    while (z > front && field(x, y, z) > 0) z -= 0.25;
    front = Math.max(front, z);
    z = -320;
    while (z < back && field(x, y, z) > 0) z += 0.25;
    back = Math.min(back, z);
  }
  return [front, back];
}

const greatest = (from: number, to: number, at: (y: number) => number): number => {
  let best = -Infinity;
  for (let y = from; y <= to; y += 6) best = Math.max(best, at(y));
  return best;
};

describe.each(['female', 'male'] as const)('the %s body', (sex) => {
  const shape = BODY_SHAPES[sex];
  const { mm } = shape;
  const f = figure(shape);
  const bare = trunk(f);
  const cloth = top(f);

  it('has the surveyed breadths and depths of the naked trunk', () => {
    const y = { chest: f.y(mm.chest_height), waist: f.y(mm.waist_height_navel) };
    const depth = (at: number) => {
      const [front, back] = frontAndBack(bare, at);
      return front - back;
    };
    const seat: readonly [number, number] = [
      f.y(mm.crotch_height + 20),
      f.y(mm.crotch_height + 110),
    ];
    const near = (got: number, wanted: number) => expect(Math.abs(got - wanted)).toBeLessThan(3);
    near(2 * halfBreadth(bare, y.chest), mm.chest_breadth);
    near(depth(y.chest), mm.chest_depth);
    near(2 * halfBreadth(bare, y.waist), mm.waist_breadth);
    near(depth(y.waist), mm.waist_depth);
    near(2 * greatest(...seat, (at) => halfBreadth(bare, at)), mm.hip_breadth_standing);
    near(greatest(...seat, depth), mm.buttock_depth);
  });

  it('has the surveyed shoulders, measured over the cloth', () => {
    const { acromion, deltoid } = bodySeeds(shape);
    expect(Math.abs(acromion[1] - f.y(mm.acromial_height))).toBeLessThan(3);
    expect(acromion[0]).toBeCloseTo(mm.biacromial_breadth / 2, 6);
    expect(Math.abs(2 * deltoid[0] - mm.bideltoid_breadth)).toBeLessThan(4);
    // Above the deltoid's height nothing is broader.
    const above = greatest(deltoid[1], f.acromion[1], (at) => halfBreadth(cloth, at));
    expect(above).toBeLessThan(deltoid[0] + 2);
  });

  it('hangs its hands where the survey finds the wrist', () => {
    // Wrist height (stylion, arm hanging), ANSUR II medians: women 794, men 847 mm.
    const wristHeight = sex === 'female' ? 794 : 847;
    // A bent elbow and an arm held off the body raise the wrist by about a centimetre.
    const raised = f.joints.wrist[1] - f.y(wristHeight);
    expect(raised).toBeGreaterThan(0);
    expect(raised).toBeLessThan(20);
  });

  it('has hands as broad as surveyed', () => {
    const hand = hands(f);
    const axes = handFrame(f);
    const { wrist } = axes;
    // Across the knuckles without the thumb, which stands out of the palm.
    let [low, high] = [Infinity, -Infinity];
    for (let b = -70; b < 70; b += 0.25)
      for (let c = -30; c < 3; c += 1) {
        const at = ([0, 1, 2] as const).map(
          (j) => wrist[j] + axes.scale * (88 * axes.a[j] + c * axes.c[j]) + b * axes.b[j],
        ) as [number, number, number];
        if (hand(...at) < 0) {
          low = Math.min(low, b);
          high = Math.max(high, b);
        }
      }
    expect(Math.abs(high - low - mm.hand_breadth)).toBeLessThan(3);
  });

  it('stands on the floor in shoes longer than the foot', () => {
    const pair = shoes(f);
    let [low, high] = [Infinity, -Infinity];
    for (let x = 40; x < 220; x += 2)
      for (let z = -260; z < 120; z += 2)
        if (pair(x, f.y(8), z) < 0) {
          low = Math.min(low, z);
          high = Math.max(high, z);
        }
    expect(high - low).toBeGreaterThan(mm.foot_length);
    expect(high - low).toBeLessThan(mm.foot_length + 30);
    expect(pair(110, f.y(0) - 1, -100)).toBeGreaterThan(0);
    expect(pair(110, f.y(0) + 3, -100)).toBeLessThan(0);
  });

  it('is closed, mirrored and the same every time', () => {
    const worn = new Map(
      Object.values(clothes(shape)).flatMap((set) => set.map((p) => [p.name, p])),
    );
    for (const part of [...worn.values(), ...bareHands(shape)]) {
      // A coarse cut: every third plane of the part's own grid.
      const options = { relax: 0 };
      const thin = (a: Float64Array) => a.filter((_, i) => i % 3 === 0 || i === a.length - 1);
      const grid = { x: thin(part.grid.x), y: thin(part.grid.y), z: thin(part.grid.z) };
      const mesh = polygonise(part.field, grid, options);
      expect(polygonise(part.field, grid, options)).toEqual(mesh);
      const edges = new Map<string, number>();
      for (let t = 0; t < mesh.indices.length; t += 3)
        for (let e = 0; e < 3; e++) {
          const a = mesh.indices[t + e] as number;
          const b = mesh.indices[t + ((e + 1) % 3)] as number;
          const key = a < b ? `${a},${b}` : `${b},${a}`;
          edges.set(key, (edges.get(key) ?? 0) + (a < b ? 1 : -1));
        }
      expect([...edges.values()].filter((n) => n !== 0)).toEqual([]);
      const corner = (v: number) => [0, 1, 2].map((j) => mesh.positions[3 * v + j] as number);
      const places = new Set<string>();
      const count = mesh.positions.length / 3;
      for (let v = 0; v < count; v++) places.add(corner(v).join());
      for (let v = 0; v < count; v++) {
        const [x, y, z] = corner(v) as [number, number, number];
        expect(places.has([x === 0 ? 0 : -x, y, z].join())).toBe(true);
      }
    }
  }, 120_000);
});
