import { describe, expect, it } from 'vitest';
import { loadModels } from '../../src/models/node';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import type { Changes } from '../../src/sitter/resolve';
import type { Sculpture } from '../../src/sitter/sculpture';
import { skeletonOf } from '../../src/sitter/skeleton';
import { layOnThighs, skirtOf } from '../../src/sitter/skirt';
import { ARMS, type SitterModel, UPRIGHT } from '../../src/sitter/types';
import { sculptureOf } from './people';
import { solid } from './solid';
import { degenerate, flipped } from './triangles';

const models = loadModels();

/** Over the hem, where legs leave the skirt, metres. */
const LEAVES = 0.06;
/** How far out of a skirt what is under it may come, metres: where it creases at the hips or is pressed on the seat. */
const SHOWS = 0.005;
/** How deep a hand may lie in a skirt, which gives between the thighs, metres (a choice, from memory). */
const GIVES = 0.035;

const WHO = [
  ['adult-woman', {}],
  ['adult-woman', { hip_breadth_standing: 423, buttock_depth: 290 }],
  ['adult-woman-95', {}],
  ['adult-man', {}],
  ['child-8', {}],
  ['older-woman', {}],
] as const satisfies readonly (readonly [string, Changes])[];

const inDress = async (id: string) => {
  const model = models.sitters.get(id) as SitterModel;
  const looks = { ...model.looks, hair: 'bald', clothes: 'dress' } as const;
  return { model: { ...model, looks }, sculpture: await sculptureOf(model, looks) };
};

const named = (sculpture: Sculpture, sitter: BuiltSitter, name: string) => {
  const m = sculpture.meshes.findIndex((mesh) => mesh.name === name);
  const mesh = sculpture.meshes[m];
  const built = sitter.meshes[m];
  if (!mesh || !built) throw new Error(`no ${name}`);
  return { ...built, m };
};

describe.each(WHO)('the skirt of %s %j', (id, changes) => {
  it('lies on the thighs, in order, and nothing comes out of it', async () => {
    const { model, sculpture } = await inDress(id);
    const upright = buildSitter(sculpture, model, changes);
    const rest = skeletonOf(upright.landmarks, upright.dimensions);
    const dress = named(sculpture, upright, 'dress');
    const skirt = skirtOf(
      sculpture.meshes,
      upright.meshes.map(({ positions }) => positions),
      rest,
    );
    if (!skirt) throw new Error('no skirt');
    expect(skirt.mesh).toBe(dress.m);
    const laid = dress.positions.slice();
    layOnThighs(skirt, rest, laid, dress.normals.slice());
    expect(flipped(dress.positions, laid, dress.indices)).toBe(0);
    expect(degenerate(laid, dress.indices)).toBe(0);

    const seated = buildSitter(sculpture, model, changes, { ...UPRIGHT, stance: 'seated' });
    const worn = named(sculpture, seated, 'dress');
    const cloth = solid(worn.positions, worn.indices);
    const under = named(sculpture, seated, 'tights');
    const hem = Math.min(...dress.positions.filter((_, i) => i % 3 === 1));
    const before = named(sculpture, upright, 'tights').positions;
    let out = 0;
    for (let o = 0; o < before.length; o += 3) {
      if ((before[o + 1] as number) < hem + LEAVES) continue;
      const p = [...under.positions.subarray(o, o + 3)] as [number, number, number];
      if (!cloth.inside(...p)) out = Math.max(out, cloth.distance(...p));
    }
    expect(out).toBeLessThan(SHOWS);
  }, 60_000);

  it.each(ARMS)(
    'carries the hands: %s',
    async (arms) => {
      const { model, sculpture } = await inDress(id);
      const seated = buildSitter(sculpture, model, changes, { ...UPRIGHT, stance: 'seated', arms });
      const worn = named(sculpture, seated, 'dress');
      const cloth = solid(worn.positions, worn.indices);
      const hands = named(sculpture, seated, 'hands');
      let deep = 0;
      for (let o = 0; o < hands.positions.length; o += 9) {
        const p = [...hands.positions.subarray(o, o + 3)] as [number, number, number];
        if (cloth.inside(...p)) deep = Math.max(deep, cloth.distance(...p));
      }
      expect(deep).toBeLessThan(GIVES);
    },
    60_000,
  );
});

describe('a top that ends at the hips', () => {
  it('is no skirt', async () => {
    const model = models.sitters.get('adult-woman') as SitterModel;
    const sculpture = await sculptureOf(model, { ...model.looks, hair: 'bald', clothes: 'top' });
    const { meshes, landmarks, dimensions } = buildSitter(sculpture, model);
    const positions = meshes.map((mesh) => mesh.positions);
    expect(skirtOf(sculpture.meshes, positions, skeletonOf(landmarks, dimensions))).toBeNull();
  });
});
