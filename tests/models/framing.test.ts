import { describe, expect, it } from 'vitest';
import { dimensionsOf, frameHeightOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';

const models = loadModels();
const sitter = (id: string) => {
  const found = models.sitters.get(id);
  if (!found) throw new Error(`no sitter ${id}`);
  return dimensionsOf(found);
};
const framing = (id: string) => {
  const found = models.framings.get(id);
  if (!found) throw new Error(`no framing ${id}`);
  return found;
};

describe('frame height of a framing', () => {
  // Heights worked out apart from this code from the ANSUR II means (female, male), 10 % headroom,
  // 15 % all round for full length; the framings' names and limits are common practice.
  it.each([
    ['close-up', 0.24, 0.26],
    ['head-and-shoulders', 0.5, 0.51],
    ['half-length', 0.71, 0.77],
    ['three-quarter', 1.11, 1.2],
    ['full-length', 1.87, 2.02],
  ])('%s is the usual one within 2 cm', (id, woman, man) => {
    expect(Math.abs(frameHeightOf(framing(id), sitter('adult-woman')).usual - woman)).toBeLessThan(
      0.0201,
    );
    expect(Math.abs(frameHeightOf(framing(id), sitter('adult-man')).usual - man)).toBeLessThan(
      0.0201,
    );
  });

  it('is 0.42 m for a headshot of the adult woman', () => {
    expect(frameHeightOf(framing('headshot'), sitter('adult-woman')).usual).toBeCloseTo(0.42, 10);
  });

  it('rises from least to most, and from framing to framing', () => {
    for (const id of models.sitters.keys()) {
      let last = 0;
      for (const each of models.framings.values()) {
        const { least, usual, most } = frameHeightOf(each, sitter(id));
        expect(least).toBeLessThan(usual);
        expect(usual).toBeLessThan(most);
        expect(usual).toBeGreaterThan(last);
        last = usual;
      }
    }
  });

  it('follows the sitter', () => {
    const woman = sitter('adult-woman');
    const tall = { ...woman, stature: woman.stature + 100 };
    const full = framing('full-length');
    expect(frameHeightOf(full, tall).usual - frameHeightOf(full, woman).usual).toBeCloseTo(
      0.115,
      1,
    );
  });

  it('keeps the crown in the picture, close-up apart, and the stated limit at the lower edge', () => {
    const woman = sitter('adult-woman');
    for (const each of models.framings.values()) {
      const height = frameHeightOf(each, woman).usual * 1000;
      const above = height * each.eyesAt - woman.vertex_above_eyes;
      const eyes = woman.stature - woman.vertex_above_eyes;
      const lowerEdge = eyes - height * (1 - each.eyesAt);
      if (each.id === 'close-up') expect(Math.abs(above)).toBeLessThan(20);
      else expect(above).toBeGreaterThan(0);
      if (each.id === 'full-length') expect(lowerEdge).toBeLessThan(0);
      if (each.id === 'half-length')
        expect(Math.abs(lowerEdge - woman.waist_height_navel)).toBeLessThan(30);
      if (each.id === 'headshot') expect(lowerEdge).toBeLessThan(woman.suprasternale_height);
    }
  });
});
