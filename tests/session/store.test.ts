import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as actions from '../../src/session/actions/plan-page';
import { demoSession } from '../../src/session/demo';
import { createSessionStore, type SessionStore } from '../../src/session/store';
import { LETTERS } from '../../src/session/types';
import { context } from './fixtures';

const newStore = () => createSessionStore(demoSession(), () => context);
const now = (store: SessionStore) => store.getState();

describe('undo and redo', () => {
  it('say what they would do', () => {
    const store = newStore();
    expect(now(store)).toMatchObject({ undoLabel: null, redoLabel: null });
    store.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    store.act(actions.setFNumber, { to: 4 });
    expect(now(store).undoLabel).toBe('A and B set to f/4');
    store.undo();
    expect(now(store)).toMatchObject({
      undoLabel: 'A moved to 0.50 m',
      redoLabel: 'A and B set to f/4',
    });
    store.undo();
    expect(now(store)).toMatchObject({ undoLabel: null, redoLabel: 'A moved to 0.50 m' });
    store.undo();
    expect(now(store).session).toEqual(demoSession());
  });

  it('a change that changes nothing is no step', () => {
    const store = newStore();
    store.act(actions.moveStandpoint, { letter: 'A', to: 0.4 });
    store.act(actions.removePicture, { letter: 'D' });
    expect(now(store).undoLabel).toBeNull();
  });

  it('a new step ends what could be redone', () => {
    const store = newStore();
    store.act(actions.setUnits, { to: 'imperial' });
    store.undo();
    store.act(actions.setFNumber, { letter: 'A', to: 4 });
    expect(now(store).redoLabel).toBeNull();
  });

  it('opening another session is a step like any other', () => {
    const store = newStore();
    const other = { ...demoSession(), title: 'Another' };
    store.open(other, 'File opened');
    expect(now(store)).toMatchObject({ session: other, undoLabel: 'File opened' });
    store.undo();
    expect(now(store).session).toEqual(demoSession());
  });
});

describe('a drag', () => {
  it('is one step with the words of its end', () => {
    const store = newStore();
    const drag = store.drag();
    for (const to of [0.5, 0.6, 0.7]) drag.act(actions.moveStandpoint, { letter: 'A', to });
    expect(now(store).isDragging).toBe(true);
    drag.end();
    expect(now(store)).toMatchObject({ undoLabel: 'A moved to 0.70 m', isDragging: false });
    store.undo();
    expect(now(store).session).toEqual(demoSession());
    store.redo();
    expect(now(store).session.pictures[0]?.standpoint).toBe(0.7);
  });

  it('that is cancelled leaves no trace, not even for redo', () => {
    const store = newStore();
    store.act(actions.setFNumber, { to: 4 });
    store.undo();
    const drag = store.drag();
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    drag.cancel();
    expect(now(store)).toMatchObject({
      session: demoSession(),
      undoLabel: null,
      redoLabel: 'A and B set to f/4',
    });
  });

  it('that comes back to where it began is no step', () => {
    const store = newStore();
    const drag = store.drag();
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.4 });
    drag.end();
    expect(now(store).undoLabel).toBeNull();
  });

  it('ends when anything else happens, and is deaf afterwards', () => {
    const store = newStore();
    const drag = store.drag();
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    store.act(actions.setFNumber, { to: 4 });
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.9 });
    drag.end();
    expect(now(store).undoLabel).toBe('A and B set to f/4');
    store.undo();
    expect(now(store).undoLabel).toBe('A moved to 0.50 m');
  });
});

describe('another document', () => {
  it('has a number of its own, and undo goes back to the former one', () => {
    const store = newStore();
    expect(now(store).document).toBe(0);
    store.open({ ...demoSession(), title: 'Other' }, 'File opened');
    expect(now(store).document).toBe(1);
    store.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    expect(now(store).document).toBe(1);
    store.undo();
    store.undo();
    expect(now(store).document).toBe(0);
    store.redo();
    expect(now(store).document).toBe(1);
  });

  it('is opened only when it differs, unless it is asked for by itself', () => {
    const store = newStore();
    store.open(structuredClone(demoSession()), 'File opened');
    expect(now(store)).toMatchObject({ document: 0, undoLabel: null });
    expect(store.openAnother(structuredClone(demoSession()), 'Opened')).toBe(1);
    expect(now(store)).toMatchObject({ document: 1, undoLabel: 'Opened' });
  });
});

describe('any sequence of actions', () => {
  const letter = fc.constantFrom(...LETTERS);
  const metres = fc.double({ min: -1, max: 40, noNaN: true });
  type Step = (store: SessionStore) => void;
  const step: fc.Arbitrary<Step> = fc.oneof(
    fc.tuple(letter, metres).map<Step>(
      ([which, to]) =>
        (store) =>
          store.act(actions.moveStandpoint, { letter: which, to }),
    ),
    fc.tuple(letter, fc.array(metres, { maxLength: 5 })).map<Step>(([which, way]) => (store) => {
      const drag = store.drag();
      for (const to of way) drag.act(actions.moveStandpoint, { letter: which, to });
      drag.end();
    }),
    fc.tuple(letter, fc.double({ min: 0, max: 2, noNaN: true })).map<Step>(
      ([which, to]) =>
        (store) =>
          store.act(actions.setFocal, { letter: which, to }),
    ),
    metres.map<Step>((to) => (store) => store.act(actions.setFrameHeight, { to })),
    fc
      .constantFrom('crop', 'lens', 'standpoint')
      .map<Step>((to) => (store) => store.act(actions.setKept, { to: to as 'crop' })),
    fc
      .constantFrom('frame-height', 'head-height', 'pupil-distance')
      .map<Step>((to) => (store) => store.act(actions.setHold, { to: to as 'frame-height' })),
    fc
      .constantFrom('adult-man', 'adult-woman')
      .map<Step>((model) => (store) => store.act(actions.setSitter, { model })),
    fc
      .constantFrom('headshot', 'full-length', 'close-up')
      .map<Step>((framing) => (store) => store.act(actions.setFraming, { framing })),
    fc.tuple(letter, fc.constantFrom(null, '35-f2', '70-300-f4-5-6-zoom')).map<Step>(
      ([which, lens]) =>
        (store) =>
          store.act(actions.setLens, { letter: which, lens }),
    ),
    fc.tuple(letter, fc.double({ min: 0.02, max: 0.3, noNaN: true })).map<Step>(
      ([which, focal]) =>
        (store) =>
          store.act(actions.cutFromLens, { letter: which, focal }),
    ),
    fc.tuple(letter, letter).map<Step>(
      ([which, other]) =>
        (store) =>
          store.act(actions.matchLook, { letter: which, other }),
    ),
    fc.constant<Step>((store) => store.act(actions.addPicture, {})),
    letter.map<Step>((which) => (store) => store.act(actions.removePicture, { letter: which })),
    fc.constant<Step>((store) => store.act(actions.resetToDemo, {})),
    fc.constant<Step>((store) => store.undo()),
    fc.constant<Step>((store) => store.redo()),
  );

  it('is taken back to the start and brought again to the end', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const store = newStore();
        for (const each of steps) each(store);
        while (now(store).redoLabel !== null) store.redo();
        const end = now(store).session;
        const way = [];
        while (now(store).undoLabel !== null) {
          way.push(now(store).session);
          store.undo();
        }
        expect(now(store).session).toEqual(demoSession());
        for (const session of way.reverse()) {
          store.redo();
          expect(now(store).session).toBe(session);
          expect(now(store).undoLabel).toEqual(expect.any(String));
        }
        expect(now(store).session).toBe(end);
      }),
      { seed: 5, numRuns: 150 },
    );
  });
});
