import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WITHOUT_SURVEY } from '../../src/app/people/range';
import { loadModels } from '../../src/models/node';
import type { Percentiles } from '../../src/models/types';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { measure } from '../../src/sitter/measure';
import type { Changes } from '../../src/sitter/resolve';
import type { Sculpture } from '../../src/sitter/sculpture';
import {
  DIMENSIONS,
  type DimensionName,
  SCULPTURE_NAMES,
  type SitterModel,
} from '../../src/sitter/types';
import { people, percentilesOf, SURVEYED } from './drawn';
import { modelOf, sculptureOf } from './people';
import { flipped } from './triangles';

/** What a measure of the mesh may differ from what was asked, mm. */
const TOLERANCE = 0.5;
const RUNS = 24;

const models = loadModels();

/** Bald, since hair has no dimension. */
async function adult(sex: SitterModel['sculpture']) {
  const model = modelOf(sex === 'female' ? 'adult-woman' : 'adult-man');
  return { model, sculpture: await sculptureOf(model, { ...model.looks, hair: 'bald' }) };
}

/** What is wrong with a sitter: dimensions off by more than the tolerance, triangles turned over. */
function faults(sculpture: Sculpture, sitter: BuiltSitter): string[] {
  const off = Object.entries(measure(sitter))
    .map(([name, mm]) => [name, mm - sitter.dimensions[name as DimensionName]] as const)
    .filter(([, by]) => !(Math.abs(by) <= TOLERANCE))
    .map(([name, by]) => `${name} ${by.toFixed(2)} mm`);
  // What the sculpture does not have, as glasses, was not warped.
  const over = sculpture.meshes.flatMap(({ name, positions: before, indices }, m) => {
    const count = flipped(before, sitter.meshes[m]?.positions as Float32Array, indices);
    return count ? [`${count} triangles of ${name} turned over`] : [];
  });
  return [...off, ...over];
}

describe('every person of models/', () => {
  it.each([...models.sitters.keys()])('%s is as its file says', async (id) => {
    const model = models.sitters.get(id) as SitterModel;
    const sculpture = await sculptureOf(model, model.looks);
    expect(faults(sculpture, buildSitter(sculpture, model))).toEqual([]);
  });
});

describe.each(SCULPTURE_NAMES)('every dimension of the %s sculpture', (sex) => {
  // Checked against: the percentiles of the surveys, asked for and measured by their definitions.
  it.each(['p1', 'p5', 'p95', 'p99'] as const)(
    'is exact at %s, and no triangle turns over',
    async (percentile: keyof Percentiles) => {
      const { model, sculpture } = await adult(sex);
      const found = SURVEYED.flatMap((name) => {
        const asked = percentilesOf(name, sex)?.[percentile] as number;
        const sitter = buildSitter(sculpture, model, { [name]: asked });
        expect(sitter.dimensions[name]).toBe(asked);
        const wrong = faults(sculpture, sitter);
        return wrong.length ? [`${name} ${asked}: ${wrong.join(', ')}`] : [];
      });
      expect(found).toEqual([]);
    },
    120_000,
  );

  // No survey to check against: the ends of the range that the page offers.
  it.each(['least', 'most'] as const)(
    'without a survey is exact at the %s that is offered',
    async (end) => {
      const { model, sculpture } = await adult(sex);
      const found = DIMENSIONS.filter((name) => !SURVEYED.includes(name)).flatMap((name) => {
        const asked = model.dimensions[name].mm * WITHOUT_SURVEY[end];
        const wrong = faults(sculpture, buildSitter(sculpture, model, { [name]: asked }));
        return wrong.length ? [`${name} ${asked}: ${wrong.join(', ')}`] : [];
      });
      expect(found).toEqual([]);
    },
    120_000,
  );

  it('is exact in people drawn with the correlations of the surveys', async () => {
    const { model, sculpture } = await adult(sex);
    fc.assert(
      fc.property(people(sex), (changes: Changes) => {
        expect(faults(sculpture, buildSitter(sculpture, model, changes))).toEqual([]);
      }),
      { numRuns: RUNS, seed: 1977, endOnFailure: true },
    );
  }, 120_000);
});
