import { describe, expect, it } from 'vitest';
import { loadModels } from '../../src/models/node';
import type { Percentiles } from '../../src/models/types';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { measureSeated, SITTING_UPRIGHT } from '../../src/sitter/measure';
import { posing } from '../../src/sitter/pose';
import type { Changes } from '../../src/sitter/resolve';
import type { Sculpture } from '../../src/sitter/sculpture';
import { pressOf } from '../../src/sitter/seat';
import { skeletonOf } from '../../src/sitter/skeleton';
import { layOnThighs, SKIRT_OVER_TROUSERS, skirtOf } from '../../src/sitter/skirt';
import {
  CLOTHES,
  SCULPTURE_NAMES,
  type SculptureName,
  type SitterModel,
} from '../../src/sitter/types';
import { percentilesOf } from './drawn';
import { modelOf, sculptureOf } from './people';
import { solid } from './solid';
import { degenerate, flipped } from './triangles';

/** What the sitting height may differ from what was asked, mm. */
const TOLERANCE = 0.5;
const PERCENTILES = [
  'p1',
  'p5',
  'p50',
  'p95',
  'p99',
] as const satisfies readonly (keyof Percentiles)[];

const models = loadModels();
const adult = (sex: SculptureName): SitterModel =>
  modelOf(sex === 'female' ? 'adult-woman' : 'adult-man');
const bald = (model: SitterModel): Promise<Sculpture> =>
  sculptureOf(model, { ...model.looks, hair: 'bald' });

/** Height of the stool's top under the crown, mm. */
function overStool(seated: BuiltSitter): number {
  const stool = seated.meshes.find(({ name }) => name === 'stool');
  const top = Math.max(...(stool?.positions.filter((_, i) => i % 3 === 1) ?? []));
  return 1000 * (seated.landmarks.vertex[1] - top);
}

function expectHeight(seated: BuiltSitter, what: string): void {
  const asked = seated.dimensions.sitting_height;
  const off = measureSeated(seated).sitting_height - asked;
  expect(Math.abs(off), `${what}: cloth on the seat`).toBeLessThanOrEqual(TOLERANCE);
  expect(Math.abs(overStool(seated) - asked), `${what}: stool`).toBeLessThanOrEqual(TOLERANCE);
}

describe('sitting height', () => {
  it.each([...models.sitters.keys()])('of %s is as the file says', async (id) => {
    const model = models.sitters.get(id) as SitterModel;
    const sculpture = await sculptureOf(model, model.looks);
    expectHeight(buildSitter(sculpture, model, {}, SITTING_UPRIGHT), id);
  });

  // Checked against: the percentiles of the survey, with all else following and with the stature,
  // legs and hips of the smallest and largest.
  it.each(SCULPTURE_NAMES)(
    'is exact at every percentile of %ss',
    async (sex) => {
      const model = adult(sex);
      const sculpture = await bald(model);
      const at = (name: Parameters<typeof percentilesOf>[0], p: keyof Percentiles): number =>
        percentilesOf(name, sex)?.[p] as number;
      const others: readonly Changes[] = [
        {},
        { stature: at('stature', 'p50') },
        { crotch_height: at('crotch_height', 'p50') },
        { hip_breadth_standing: at('hip_breadth_standing', 'p1') },
        { hip_breadth_standing: at('hip_breadth_standing', 'p99') },
        { buttock_depth: at('buttock_depth', 'p1') },
        { buttock_depth: at('buttock_depth', 'p99') },
      ];
      for (const p of PERCENTILES)
        for (const other of others) {
          const changes = { ...other, sitting_height: at('sitting_height', p) };
          const seated = buildSitter(sculpture, model, changes, SITTING_UPRIGHT);
          expect(seated.dimensions.sitting_height).toBe(changes.sitting_height);
          expectHeight(seated, JSON.stringify(changes));
        }
    },
    240_000,
  );

  it('does not change as the body turns', async () => {
    const model = adult('female');
    const sculpture = await bald(model);
    for (const bodyTurn of [-2, 0.6])
      expectHeight(
        buildSitter(sculpture, model, {}, { ...SITTING_UPRIGHT, bodyTurn }),
        `turned by ${bodyTurn}`,
      );
  });
});

describe('a press', () => {
  const [deepest, seat] = [0.112, 0.08];
  const { at, slope } = pressOf(deepest, seat);

  it('takes the deepest to the seat, leaves what is high, and keeps deeper deeper', () => {
    expect(at(deepest)).toBeCloseTo(seat, 9);
    expect(at(0)).toBe(0);
    expect(at(0.02)).toBeCloseTo(0.02, 3);
    for (let d = 0; d < 0.16; d += 0.001) {
      expect(at(d + 0.001)).toBeGreaterThan(at(d));
      // No crease: a millimetre on, the surface has turned by about a degree at most.
      expect(Math.abs(slope(d + 0.001) - slope(d))).toBeLessThan(0.02);
      expect(slope(d)).toBeCloseTo((at(d + 1e-6) - at(d - 1e-6)) / 2e-6, 5);
    }
  });
});

/** A seated figure's meshes before and after they were pressed. */
function pressed(sculpture: Sculpture, model: SitterModel, changes: Changes) {
  const upright = buildSitter(sculpture, model, changes);
  const rest = skeletonOf(upright.landmarks, upright.dimensions);
  const skirt = skirtOf(
    sculpture.meshes,
    upright.meshes.map(({ positions }) => positions),
    rest,
  );
  const over = skirt ? SKIRT_OVER_TROUSERS : 0;
  const { mesh } = posing(upright.landmarks, upright.dimensions, SITTING_UPRIGHT, over);
  const seated = buildSitter(sculpture, model, changes, SITTING_UPRIGHT);
  return sculpture.meshes.map(({ name, joints, weights, masks, indices }, m) => {
    const { positions, normals } = upright.meshes[m] as BuiltSitter['meshes'][number];
    if (skirt?.mesh === m) layOnThighs(skirt, rest, positions, normals);
    mesh(positions, normals, joints, weights, masks.hang);
    const after = seated.meshes[m] as BuiltSitter['meshes'][number];
    const moved = new Set<number>();
    for (let o = 1; o < positions.length; o += 3)
      if ((after.positions[o] as number) - (positions[o] as number) > 1e-4) moved.add((o - 1) / 3);
    return { name, indices, before: { positions, normals }, after, moved };
  });
}

const dressed = (model: SitterModel, clothes: (typeof CLOTHES)[number]): SitterModel => ({
  ...model,
  looks: { ...model.looks, clothes, smile: 0 },
});

const WHO = [
  ['adult-woman', {}],
  ['adult-woman', { hip_breadth_standing: 423, buttock_depth: 290 }],
  ['adult-man', { sitting_height: 835.8 }],
  ['child-4', {}],
  ['older-man', {}],
] as const satisfies readonly (readonly [string, Changes])[];

describe.each(WHO)('the pressed cloth of %s %j', (id, changes) => {
  it.each(CLOTHES)(
    'turns no triangle over and stays in its layers: %s',
    async (clothes) => {
      const model = dressed(models.sitters.get(id) as SitterModel, clothes);
      const meshes = pressed(await bald(model), model, changes);
      const inner = meshes.find(({ name }) => name === 'trousers' || name === 'tights');
      if (!inner) throw new Error('nothing on the legs');
      expect(inner.moved.size).toBeGreaterThan(50);
      const under = solid(inner.before.positions, inner.indices);
      const pressedUnder = solid(inner.after.positions, inner.indices);
      for (const { name, indices, before, after, moved } of meshes) {
        expect(flipped(before.positions, after.positions, indices), name).toBe(0);
        expect(degenerate(after.positions, indices), name).toBe(0);
        if (name === inner.name) continue;
        const at = (P: Float32Array, v: number): [number, number, number] =>
          [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number];
        let deepest = 0;
        for (const v of moved) {
          const [was, is] = [at(before.positions, v), at(after.positions, v)];
          if (!under.inside(...was) && pressedUnder.inside(...is))
            deepest = Math.max(deepest, pressedUnder.distance(...is));
        }
        expect(1000 * deepest, `${name} inside ${inner.name}, mm`).toBeLessThan(TOLERANCE);
      }
    },
    60_000,
  );
});
