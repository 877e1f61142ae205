import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setDimension } from '../../src/session/actions';
import { demoSession } from '../../src/session/demo';
import { LIMITS } from '../../src/session/limits';
import { personDimensions } from '../../src/session/person';
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

  it('is possible for every sitter and any legal changes together', () => {
    const { least, most } = LIMITS.dimensionChange;
    const shares = fc.array(fc.constantFrom(undefined, least, 1, most), {
      minLength: DIMENSIONS.length,
      maxLength: DIMENSIONS.length,
    });
    fc.assert(
      fc.property(fc.constantFrom(...models.sitters.values()), shares, (sitter, drawn) => {
        const changes = Object.fromEntries(
          DIMENSIONS.flatMap((name, i) => {
            const share = drawn[i];
            return share === undefined ? [] : [[name, sitter.dimensions[name].mm * share]];
          }),
        );
        const dimensions = personDimensions({ model: sitter.id, changes }, models);
        const places = Object.values(landmarksFor(dimensions)).flat();
        expect(places.every(Number.isFinite)).toBe(true);
      }),
      { seed: 11, numRuns: 500 },
    );
  });
});
