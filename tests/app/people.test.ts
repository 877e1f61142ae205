import { describe, expect, it } from 'vitest';
import { GROUPS } from '../../src/app/people/groups';
import { plainly } from '../../src/app/people/plainly';
import { sliderRange, standingOf } from '../../src/app/people/range';
import { nameOf, parseColour, SWATCHES } from '../../src/app/people/swatches';
import { loadModels } from '../../src/models/node';
import { impossibility } from '../../src/session/person';
import { type Colours, DIMENSIONS, LANDMARKS } from '../../src/sitter/types';

const models = loadModels();

describe('the groups of dimensions', () => {
  it('hold every dimension once', () => {
    expect(Object.values(GROUPS).flat().toSorted()).toEqual([...DIMENSIONS].toSorted());
  });
});

describe('a slider', () => {
  it('runs over the survey and holds the sitter’s own value, whoever sits', () => {
    for (const sitter of models.sitters.values())
      for (const name of DIMENSIONS) {
        const own = sitter.dimensions[name].mm;
        const { least, most } = sliderRange(models.dimensions[name], own, sitter);
        expect(least, `${sitter.id} ${name}`).toBeLessThanOrEqual(own);
        expect(most, `${sitter.id} ${name}`).toBeGreaterThanOrEqual(own);
        expect(most).toBeGreaterThan(least);
      }
    const woman = models.sitters.get('adult-woman');
    if (!woman) throw new Error('no woman');
    const nose = models.dimensions.nose_breadth;
    // NIOSH 2003, women: 1st and 99th percentile.
    expect(sliderRange(nose, woman.dimensions.nose_breadth.mm, woman)).toEqual({
      least: 27,
      most: 47,
    });
    expect(standingOf(nose, 47, woman)).toMatchObject({ survey: 'NIOSH 2003' });
  });

  it('tells no percentile of a child, whom the surveys leave out', () => {
    const child = { sculpture: 'female', forms: { child: 0.8 } } as const;
    const nose = models.dimensions.nose_breadth;
    expect(standingOf(nose, 30, child)).toBeNull();
    const { least, most } = sliderRange(nose, 28, child);
    expect(least).toBeLessThan(28);
    expect(most).toBeGreaterThan(28);
  });
});

describe('colours', () => {
  it('bear the names of their swatches', () => {
    for (const [part, swatches] of Object.entries(SWATCHES))
      for (const { name, colour } of swatches) {
        expect(colour).toMatch(/^#[0-9a-f]{6}$/);
        expect(nameOf(part as keyof Colours, colour)).toEqual({ name, exact: true });
      }
    expect(nameOf('skin', '#00ff00').exact).toBe(false);
  });

  it('are read with or without their mark, long or short', () => {
    expect(parseColour(' #6F7f8c ')).toBe('#6f7f8c');
    expect(parseColour('5b7')).toBe('#55bb77');
    for (const wrong of ['', '#12345', 'red', '#1234567']) expect(parseColour(wrong)).toBeNull();
  });
});

describe('a reason in plain words', () => {
  it('names no dimension and no landmark by its id', () => {
    const all = [...DIMENSIONS, ...LANDMARKS].filter((name) => name.includes('_'));
    const said = plainly(all.join('; '), models);
    for (const id of all) expect(said).not.toContain(id);
    const reason = impossibility(
      { model: 'adult-woman', changes: { vertex_above_eyes: 40 } },
      models,
    );
    expect(plainly(reason ?? '', models)).toMatch(/^top of head above the eyes 40 mm/);
  });
});
