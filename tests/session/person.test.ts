import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setDimension, setSitter } from '../../src/session/actions';
import { demoSession } from '../../src/session/demo';
import { decodeFile, encodeFile } from '../../src/session/file';
import { LIMITS } from '../../src/session/limits';
import { impossibility, personDimensions } from '../../src/session/person';
import { landmarksFor } from '../../src/sitter/landmarks';
import { DIMENSIONS } from '../../src/sitter/types';
import { context, models } from './fixtures';

describe('the person of a session', () => {
  it('is the sitter with what follows a change: heights keep their share of the stature', () => {
    const taller = setDimension.edit(demoSession(), { dimension: 'stature', to: 1788.6 }, context);
    const own = personDimensions(demoSession().sitter, models);
    const grown = personDimensions(taller.sitter, models);
    expect(grown.stature / own.stature).toBeCloseTo(1.1, 12);
    expect(grown.chest_height / own.chest_height).toBeCloseTo(1.1, 12);
  });

  const { least, most } = LIMITS.dimensionChange;
  const drawnChanges = fc.array(
    fc.record({
      dimension: fc.constantFrom(...DIMENSIONS),
      share: fc.double({ min: least, max: most, noNaN: true }),
    }),
    { maxLength: 12 },
  );

  it('stays possible whatever dimensions are asked for one after the other', () => {
    fc.assert(
      fc.property(fc.constantFrom(...models.sitters.keys()), drawnChanges, (model, drawn) => {
        let session = setSitter.edit(demoSession(), { model }, context);
        const own = personDimensions({ model, changes: {} }, models);
        for (const { dimension, share } of drawn)
          session = setDimension.edit(session, { dimension, to: own[dimension] * share }, context);
        const places = landmarksFor(personDimensions(session.sitter, models));
        expect(Object.values(places).flat().every(Number.isFinite)).toBe(true);
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  it('names what contradicts itself, and such a file changes nothing', () => {
    const demo = demoSession();
    const own = personDimensions(demo.sitter, models);
    const sitter = { ...demo.sitter, changes: { crotch_height: own.waist_height_navel } };
    expect(impossibility(sitter, models)).toContain('crotch_height');
    const decoded = decodeFile(encodeFile({ ...demo, sitter }), models);
    expect(decoded).toMatchObject({ ok: false, fault: 'impossible-sitter' });
  });
});
