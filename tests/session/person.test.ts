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
  it('is the sitter with what follows a change: limbs keep their share of the stature', () => {
    const taller = setDimension.edit(demoSession(), { dimension: 'stature', to: 1788.6 }, context);
    const own = personDimensions(demoSession().people[0], models);
    const grown = personDimensions(taller.people[0], models);
    expect(grown.stature / own.stature).toBeCloseTo(1.1, 12);
    expect(grown.shoulder_elbow_length / own.shoulder_elbow_length).toBeCloseTo(1.1, 12);
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
        const places = landmarksFor(personDimensions(session.people[0], models));
        expect(Object.values(places).flat().every(Number.isFinite)).toBe(true);
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  it('names what contradicts itself, and such a file changes nothing', () => {
    const demo = demoSession();
    const own = personDimensions(demo.people[0], models);
    const changes = {
      acromial_height: 0.7 * own.acromial_height,
      waist_height_navel: 1.3 * own.waist_height_navel,
    };
    const person = { ...demo.people[0], changes };
    expect(impossibility(person, models)).toMatch(/_height/);
    const decoded = decodeFile(encodeFile({ ...demo, people: [person] }), models);
    expect(decoded).toMatchObject({ ok: false, fault: 'impossible-sitter' });
  });
});
