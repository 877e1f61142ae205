import { describe, expect, it } from 'vitest';
import type { Percentiles } from '../../src/models/types';
import { buildSitter } from '../../src/sitter/build';
import type { Changes } from '../../src/sitter/resolve';
import type { Sculpture } from '../../src/sitter/sculpture';
import {
  ARMS,
  type Pose,
  REGION,
  SCULPTURE_NAMES,
  type SculptureName,
  type SitterMesh,
  UPRIGHT,
} from '../../src/sitter/types';
import { percentilesOf, SURVEYED } from './drawn';
import { modelOf, sculptureOf } from './people';
import { type Solid, solid, trianglesOf } from './solid';

/**
 * How deep one part may enter another where they touch, metres: flesh and cloth give about as
 * much (a choice, from memory).
 */
const GIVES = 0.008;
/** How far skin that lies under cloth may come out of it in any pose, metres. */
const SHOWS = 0.0005;

/** The wrist's end of the hand, inside the cuff, metres from the end of the hand's mesh. */
const IN_CUFF = 0.06;
/** The sleeve's part that lies along the forearm, metres from the cuff. */
const FOREARM = 0.2;
/** Farther behind the nearest cloth than this is another part of the body, metres. */
const REACH = 0.05;
/** Every so-many-th vertex is held against the others. */
const EVERY = 3;

const sized = (sex: SculptureName, percentile: keyof Percentiles): Changes =>
  Object.fromEntries(SURVEYED.map((name) => [name, percentilesOf(name, sex)?.[percentile]]));

const poses: readonly Pose[] = (['standing', 'seated'] as const).flatMap((stance) =>
  ARMS.map((arms) => ({ ...UPRIGHT, stance, arms })),
);
const modelFor = (sex: SculptureName) => modelOf(sex === 'female' ? 'adult-woman' : 'adult-man');

const named = <T extends { readonly name: string }>(meshes: readonly T[], name: string): T => {
  const mesh = meshes.find((m) => m.name === name);
  if (!mesh) throw new Error(`no ${name}`);
  return mesh;
};

function eachVertex(
  { positions: P }: SitterMesh,
  visit: (v: number, x: number, y: number, z: number) => void,
): void {
  for (let v = 0; v < P.length / 3; v += EVERY)
    visit(v, P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number);
}

/** Deepest place of hands and forearms in what they rest on, metres. */
function deepest(sculpture: Sculpture, meshes: readonly SitterMesh[]): Record<string, number> {
  const [hands, top, trousers, skin] = ['hands', 'top', 'trousers', 'skin'].map((name) =>
    named(meshes, name),
  ) as [SitterMesh, SitterMesh, SitterMesh, SitterMesh];
  const handRest = named(sculpture.meshes, 'hands').positions;
  const topRest = named(sculpture.meshes, 'top').positions;
  const heights = (P: Float32Array): number[] => [...P.filter((_, i) => i % 3 === 1)];
  const cuff = Math.max(...heights(handRest)) - IN_CUFF;
  const onArm = (v: number): boolean => top.regions[v] === REGION.arm;
  const sleeveEnd = Math.min(...heights(topRest).filter((_, v) => onArm(v)));
  const body = solid(
    top.positions,
    trianglesOf(top.indices, (v) => !onArm(v)),
  );
  const whole = solid(top.positions, top.indices);
  const legs = solid(trousers.positions, trousers.indices);
  const face = solid(skin.positions, skin.indices);
  const right = solid(
    hands.positions,
    trianglesOf(hands.indices, (v) => (handRest[3 * v] as number) < 0),
  );
  const depth = { 'hand in top': 0, 'hand in trousers': 0, 'hand in hand': 0, 'hand in face': 0 };
  const found = { ...depth, 'forearm in trunk': 0 };
  const note = (name: keyof typeof found, d: number): void => {
    if (d < REACH) found[name] = Math.max(found[name], d);
  };
  const within = (s: Solid, x: number, y: number, z: number): number =>
    s.inside(x, y, z) ? s.distance(x, y, z) : 0;
  eachVertex(hands, (v, x, y, z) => {
    if ((handRest[3 * v + 1] as number) > cuff) return;
    note('hand in top', within(whole, x, y, z));
    note('hand in trousers', within(legs, x, y, z));
    if ((handRest[3 * v] as number) > 0) note('hand in hand', within(right, x, y, z));
    note('hand in face', within(face, x, y, z));
  });
  eachVertex(top, (v, x, y, z) => {
    if (!onArm(v) || (topRest[3 * v + 1] as number) > sleeveEnd + FOREARM) return;
    note('forearm in trunk', body.behind(x, y, z));
  });
  return found;
}

describe.each(SCULPTURE_NAMES)('hands and forearms of the %s sculpture', (sex) => {
  it.each(['p5', 'p50', 'p95'] as const)(
    'lie on what they touch, not in it: %s',
    async (p) => {
      const model = modelFor(sex);
      const sculpture = await sculptureOf(model, { ...model.looks, hair: 'bald', clothes: 'top' });
      for (const pose of poses) {
        const { meshes } = buildSitter(sculpture, model, sized(sex, p), pose);
        for (const [where, depth] of Object.entries(deepest(sculpture, meshes)))
          expect(depth, `${pose.stance}, ${pose.arms}: ${where}`).toBeLessThan(GIVES);
      }
    },
    120_000,
  );
});

describe.each(SCULPTURE_NAMES)('skin of the %s sculpture under cloth', (sex) => {
  it.each(['top', 'dress'] as const)(
    'stays under it: %s',
    async (clothes) => {
      const model = modelFor(sex);
      const sculpture = await sculptureOf(model, { ...model.looks, hair: 'bald', clothes });
      const skin = named(sculpture.meshes, 'skin');
      const drawn = new Set(skin.indices);
      const cloth = named(sculpture.meshes, clothes);
      const asSculpted = solid(cloth.positions, cloth.indices);
      const under = [...drawn].filter((v) => {
        const p = [...skin.positions.subarray(3 * v, 3 * v + 3)] as [number, number, number];
        return asSculpted.inside(...p);
      });
      expect(under.length).toBeGreaterThan(0);
      const turned: Pose[] = [
        { ...UPRIGHT, headTurn: 0.7 },
        { ...UPRIGHT, headNod: 0.3 },
        { ...UPRIGHT, headTilt: 0.25 },
        { ...UPRIGHT, lean: 0.35 },
      ];
      for (const percentile of ['p5', 'p50', 'p95'] as const)
        for (const pose of [...poses, ...turned]) {
          const { meshes } = buildSitter(sculpture, model, sized(sex, percentile), pose);
          const P = named(meshes, 'skin').positions;
          const worn = named(meshes, clothes);
          const over = solid(worn.positions, worn.indices);
          const out = under.map((v) => {
            const p = [...P.subarray(3 * v, 3 * v + 3)] as [number, number, number];
            return over.inside(...p) ? 0 : over.distance(...p);
          });
          expect(
            Math.max(...out),
            `${percentile} ${pose.stance} ${pose.arms} ${pose.headTurn}`,
          ).toBeLessThan(SHOWS);
        }
    },
    240_000,
  );
});
