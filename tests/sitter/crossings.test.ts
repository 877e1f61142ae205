import { describe, expect, it } from 'vitest';
import type { Percentiles } from '../../src/models/types';
import { buildSitter } from '../../src/sitter/build';
import type { Changes } from '../../src/sitter/resolve';
import { SCULPTURE_NAMES, type SculptureName } from '../../src/sitter/types';
import { crossings } from './crossings';
import { percentilesOf, SURVEYED } from './drawn';
import { modelOf, sculptureOf } from './people';

const all = (sex: SculptureName, percentile: keyof Percentiles): Changes =>
  Object.fromEntries(SURVEYED.map((name) => [name, percentilesOf(name, sex)?.[percentile]]));

describe('the count of crossings', () => {
  it('finds two triangles through each other, and none where they lie apart', () => {
    const flat = [0, 0, 0, 2, 0, 0, 0, 2, 0];
    const indices = Uint32Array.of(0, 1, 2, 3, 4, 5);
    const upright = (z: number) => [0.5, 0.5, z - 1, 0.6, 0.5, z - 1, 0.5, 0.6, z + 1];
    expect(crossings(Float32Array.of(...flat, ...upright(0)), indices)).toBe(1);
    expect(crossings(Float32Array.of(...flat, ...upright(3)), indices)).toBe(0);
  });
});

describe.each(SCULPTURE_NAMES)('the %s sculpture', (sex) => {
  const model = modelOf(sex === 'female' ? 'adult-woman' : 'adult-man');

  it('cuts through itself no more than as sculpted, whatever its size', async () => {
    const sculpture = await sculptureOf(model, { ...model.looks, hair: 'bald' });
    const solid = sculpture.meshes.flatMap(({ name }, m) =>
      ['skin', 'top'].includes(name) ? [m] : [],
    );
    const count = (meshes: readonly { positions: Float32Array; indices: Uint32Array }[]) =>
      solid.map((m) => {
        const mesh = meshes[m] as (typeof meshes)[number];
        return crossings(mesh.positions, mesh.indices);
      });
    const sculpted = count(sculpture.meshes);
    for (const percentile of ['p5', 'p95'] as const) {
      const { meshes } = buildSitter(sculpture, model, all(sex, percentile));
      count(meshes).forEach((found, k) => {
        expect(
          found,
          `${sculpture.meshes[solid[k] as number]?.name} ${percentile}`,
        ).toBeLessThanOrEqual(sculpted[k] as number);
      });
    }
  }, 120_000);
});
