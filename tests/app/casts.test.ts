import { expect, it } from 'vitest';
import { Casts } from '../../src/app/darkroom/casts';
import type { Wanted } from '../../src/app/state/sitter.worker';
import { addPerson } from '../../src/session/actions';
import { demoSession } from '../../src/session/demo';
import { context, models, sitter } from '../session/fixtures';

/** Builds at once and notes what it was asked for. */
function workshop(answer: (wanted: Wanted) => 'made' | 'impossible' = () => 'made') {
  const asked: Wanted[] = [];
  return {
    asked,
    build: async (wanted: Wanted) => {
      asked.push(wanted);
      return answer(wanted) === 'made'
        ? { sitter }
        : { failed: 'the nose passes the chin', impossible: true };
    },
  };
}

const demo = demoSession();
const two = addPerson.edit(demo, { model: 'child-8' }, context);

it('builds everybody once', async () => {
  const made = workshop();
  const casts = new Casts(made, models);
  expect(Object.keys(await casts.of(two))).toEqual(['1', '2']);
  await casts.of(demo);
  await casts.of(two);
  expect(made.asked).toHaveLength(2);
});

it('says why somebody cannot be built, and asks again the next time', async () => {
  const made = workshop(() => 'impossible');
  const casts = new Casts(made, models);
  await expect(casts.of(demo)).rejects.toThrow('the nose passes the chin');
  await expect(casts.of(demo)).rejects.toThrow();
  expect(made.asked).toHaveLength(2);
});
