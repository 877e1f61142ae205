import { describe, expect, it } from 'vitest';
import * as actions from '../../src/session/actions/handout-page';
import { addOwnLens, removeOwnLens } from '../../src/session/actions/own-lens';
import { comparedOf, isKept, sessionWith } from '../../src/session/comparison';
import { demoSession } from '../../src/session/demo';
import { LIMITS, MOST } from '../../src/session/limits';
import type { Session } from '../../src/session/types';
import { context, must, resolve } from './fixtures';

const demo = demoSession();
const keep = (session: Session, name: string) =>
  actions.keepComparison.edit(session, { name }, context);

describe('kept comparisons', () => {
  const kept = keep(demo, ' Near and far ');

  it('hold what the pictures hang on, and hang again after changes', () => {
    const [one] = kept.comparisons;
    expect(one).toMatchObject({ id: 'comparison-1', name: 'Near and far', presented: true });
    const moved = actions.moveStandpoint.edit(kept, { letter: 'A', to: 1 }, context);
    expect(isKept(kept)).toBe(true);
    expect(isKept(moved)).toBe(false);
    const hung = actions.hangComparison.edit(moved, { id: 'comparison-1' }, context);
    expect(comparedOf(hung)).toEqual(comparedOf(demo));
    expect(sessionWith(moved, null)).toBe(moved);
    expect(sessionWith(moved, 'gone')).toBe(moved);
    const anew = actions.replaceComparison.edit(moved, { id: 'comparison-1' }, context);
    expect(anew.comparisons[0]?.pictures[0]?.standpoint).toBe(1);
  });

  it('stand in an order, and only so many', () => {
    const three = ['b', 'c'].reduce(keep, keep(demo, 'a'));
    const order = (session: Session) => session.comparisons.map(({ name }) => name).join('');
    const move = (id: string, by: number) =>
      order(actions.moveComparison.edit(three, { id, by }, context));
    expect(order(three)).toBe('abc');
    expect(move('comparison-1', 1)).toBe('bac');
    expect(move('comparison-3', -9)).toBe('cab');
    expect(move('comparison-3', 1)).toBe('abc');
    const many = Array.from({ length: MOST.comparisons + 3 }, (_, i) => `${i}`).reduce(keep, demo);
    expect(many.comparisons).toHaveLength(MOST.comparisons);
  });

  it('lose a lens that is gone from the kit, and show what they showed', () => {
    const own = addOwnLens.edit(
      demo,
      {
        name: 'Old 105 mm',
        focal: [0.105, 0.105],
        widest: [2.5, 2.5],
        smallest: 22,
        nearestFocus: [1, 1],
        length: 0.12,
      },
      context,
    );
    const named = actions.setLens.edit(own, { letter: 'B', lens: 'own-1' }, context);
    const before = keep(named, 'With the old lens');
    const after = removeOwnLens.edit(before, { lens: 'own-1' }, context);
    const shown = sessionWith(after, 'comparison-1');
    expect(shown.pictures.every(({ lens }) => lens === null)).toBe(true);
    expect(resolve(shown, 'B').camera.frustum).toEqual(resolve(named, 'B').camera.frustum);
  });
});

describe('the handout', () => {
  const paged = keep(demo, 'a');
  const { id } = must(demo.handout.pages[0]);
  const only = (session: Session) => must(session.handout.pages[0]);

  it('keeps words that were changed and gives back those that follow the pictures', () => {
    const edited = actions.setPageWords.edit(
      paged,
      { id, place: 'title', to: 'Why so far?' },
      context,
    );
    expect(only(edited).words).toEqual({ title: 'Why so far?' });
    const back = actions.setPageWords.edit(edited, { id, place: 'title', to: null }, context);
    expect(only(back).words).toEqual({});
  });

  it('shows and hides parts once each', () => {
    const parts = only(paged).parts;
    const twice = ['chart', 'chart'] as const;
    const shown = twice.reduce(
      (session, part) => actions.setPagePart.edit(session, { id, part, shown: true }, context),
      paged,
    );
    expect(only(shown).parts).toEqual([...parts, 'chart']);
    const hidden = actions.setPagePart.edit(shown, { id, part: 'rail', shown: false }, context);
    expect(only(hidden).parts).not.toContain('rail');
  });

  it('is about the comparison on the wall once the kept one is gone', () => {
    const about = actions.setPageComparison.edit(paged, { id, to: 'comparison-1' }, context);
    expect(only(about).comparison).toBe('comparison-1');
    const gone = actions.removeComparison.edit(about, { id: 'comparison-1', name: 'a' }, context);
    expect(only(gone).comparison).toBeNull();
  });

  it('takes the pages of a template, and pages in another order', () => {
    const two = actions.setTemplate.edit(demo, { template: 'lesson' }, context);
    expect(two.handout.pages.map((each) => each.id)).toEqual(['page-1', 'page-2']);
    const moved = actions.movePage.edit(two, { id: 'page-2', by: -1 }, context);
    expect(moved.handout.pages.map(({ kind }) => kind)).toEqual(['answers', 'lesson']);
    expect(actions.removePage.edit(moved, { id: 'page-2' }, context).handout.pages).toHaveLength(1);
  });
});

it('lists of standpoints are legal and rise', () => {
  const edited = actions.setSeries.edit(demo, { to: [4, 0.001, 1, 99, 2] }, context);
  expect(edited.series).toEqual([LIMITS.standpoint.least, 1, 2, 4, LIMITS.standpoint.most]);
});
