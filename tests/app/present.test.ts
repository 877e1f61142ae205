import { describe, expect, it } from 'vitest';
import { showPictures } from '../../src/app/compare/shown';
import {
  CARD,
  drawnWidth,
  keepPixel,
  keptPixel,
  pixelOfCard,
  pixelOfWidth,
  screenKey,
  seenFrom,
} from '../../src/app/present/calibration';
import { type Command, commandOf } from '../../src/app/present/keys';
import { offeredActs } from '../../src/app/present/offered';
import { sentenceOf, tallyOf } from '../../src/app/present/says';
import { type Slide, slidesOf } from '../../src/app/present/slides';
import { type Act, begin, type Talk, talkAfter } from '../../src/app/present/talk';
import { keepComparison, setComparison } from '../../src/session/actions/handout-page';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { context, models, sitter } from '../session/fixtures';

const demo = demoSession();
const cast = { '1': sitter };

/** The demo kept under each of the names. */
const kept = (...names: string[]): Session =>
  names.reduce((session, name) => keepComparison.edit(session, { name }, context), demo);

const slide = (change: Partial<Slide> = {}): Slide => ({
  id: 'comparison-1',
  name: null,
  letters: ['A', 'B'],
  asks: false,
  ...change,
});

describe('slides', () => {
  it('are the comparisons chosen for the talk, in their order', () => {
    let session = kept('Near and far', 'Left out', 'Third');
    session = setComparison.edit(session, { id: 'comparison-2', presented: false }, context);
    session = setComparison.edit(session, { id: 'comparison-3', asks: true }, context);
    expect(slidesOf(session)).toEqual([
      slide({ name: 'Near and far' }),
      slide({ id: 'comparison-3', name: 'Third', asks: true }),
    ]);
  });

  it('are the wall alone where none is chosen', () => {
    const wall = [slide({ id: null })];
    expect(slidesOf(demo)).toEqual(wall);
    const none = setComparison.edit(kept('One'), { id: 'comparison-1', presented: false }, context);
    expect(slidesOf(none)).toEqual(wall);
  });

  it('keep a name with a number in it to themselves', () => {
    const names = ['Headshot, A 0.40 m', 'Seat ٤', 'Near'];
    expect(slidesOf(kept(...names)).map(({ name }) => name)).toEqual([null, null, 'Near']);
  });

  it('ask nothing about one picture', () => {
    const session = setComparison.edit(kept('One'), { id: 'comparison-1', asks: true }, context);
    const comparisons = session.comparisons.map((each) => ({
      ...each,
      pictures: each.pictures.slice(0, 1),
    }));
    expect(slidesOf({ ...session, comparisons })[0].asks).toBe(false);
  });
});

/** Where a talk stands, in short: "2 told, numbers". */
const place = ({ at, part, numbers, dark }: Talk): string =>
  `${at + 1} ${part}${numbers ? ', numbers' : ''}${dark ? ', dark' : ''}`;

describe('a talk', () => {
  const slides = [slide(), slide({ asks: true }), slide()];
  const run = (...acts: (Act | Act['do'])[]): string[] => {
    let talk = begin(slides);
    return acts.map((act) => {
      talk = talkAfter(talk, typeof act === 'string' ? ({ do: act } as Act) : act, slides);
      return place(talk);
    });
  };

  it('goes through every slide and answer by the two keys of a remote alone', () => {
    expect(run('next', 'next', 'next', 'next', 'back', 'back', 'back', 'back')).toEqual([
      '2 question',
      '2 told',
      '3 plain',
      '3 plain',
      '2 told',
      '2 question',
      '1 plain',
      '1 plain',
    ]);
  });

  it('shows numbers when asked, on this slide, and never while it asks', () => {
    expect(run('numbers', 'next', 'numbers', 'reveal', 'numbers', 'reveal')).toEqual([
      '1 plain, numbers',
      '2 question',
      '2 question',
      '2 told',
      '2 told, numbers',
      '2 told',
    ]);
    expect(run('reveal', 'reveal', 'numbers', 'next', 'back')).toEqual([
      '1 plain, numbers',
      '1 plain',
      '1 plain, numbers',
      '2 question',
      '1 plain',
    ]);
  });

  it('asks about any slide of several pictures', () => {
    expect(run('numbers', 'ask', 'ask', 'reveal', 'ask')).toEqual([
      '1 plain, numbers',
      '1 question',
      '1 question',
      '1 told',
      '1 told',
    ]);
    const alone = [slide({ letters: ['A'] })];
    expect(talkAfter(begin(alone), { do: 'ask' }, alone).part).toBe('plain');
  });

  it('jumps to a slide by its number, and to the ends', () => {
    const jump = (digit: string): Act => ({ do: 'jump', digit });
    expect(run(jump('3'), jump('2'), jump('9'), 'last', 'first')).toEqual([
      '3 plain',
      '2 question',
      '2 question',
      '3 plain',
      '1 plain',
    ]);
    const twelve = Array.from({ length: 12 }, () => slide());
    const at = (...digits: string[]) =>
      digits.reduce((talk, digit) => talkAfter(talk, jump(digit), twelve), begin(twelve)).at;
    expect([at('1'), at('1', '2'), at('1', '3'), at('0')]).toEqual([0, 11, 2, 0]);
    const between = talkAfter(talkAfter(begin(twelve), jump('1'), twelve), { do: 'next' }, twelve);
    expect(talkAfter(between, jump('2'), twelve).at, 'another key ends the number').toBe(1);
  });

  it('is dark until any act, which then does nothing else', () => {
    expect(run('dark', 'next', 'next')).toEqual(['1 plain, dark', '1 plain', '2 question']);
    expect(run('dark', 'dark')).toEqual(['1 plain, dark', '1 plain']);
  });

  it('counts answers while it asks, and takes one back', () => {
    const answer = (letter: 'A' | 'B' | 'C'): Act => ({ do: 'answer', letter });
    const acts: Act[] = [
      answer('A'),
      { do: 'next' },
      ...(['A', 'B', 'A', 'C', 'B'] as const).map(answer),
      { do: 'unanswer' },
      { do: 'reveal' },
      answer('B'),
      { do: 'unanswer' },
    ];
    const talk = acts.reduce((now, act) => talkAfter(now, act, slides), begin(slides));
    expect(talk.votes).toEqual({ 1: { A: 2, B: 1 } });
    expect(tallyOf(talk, slide())).toBe('The class: A 2, B 1.');
    expect(tallyOf({ ...talk, at: 0 }, slide())).toBeNull();
  });

  it('offers the acts that do something', () => {
    const offered = (talk: Talk, moving: Parameters<typeof offeredActs>[2]) =>
      offeredActs(talk, slide(), moving).map(({ words }) => words[0]);
    const talk = begin(slides);
    expect(offered(talk, 'ready')).toContain('Play the move');
    expect(offered(talk, 'ready')).toContain('Ask');
    const asking = offered({ ...talk, part: 'question' }, 'none');
    expect(asking).toContain('Reveal');
    expect(asking.join()).not.toMatch(/numbers|move|Ask/);
  });
});

describe('keys', () => {
  const asking = { asked: ['A', 'B'] as const, onButton: false };
  const quiet = { asked: [], onButton: false };
  const done = (
    key: string,
    pressing: Parameters<typeof commandOf>[1] = quiet,
  ): Command['do'] | null => commandOf(key, pressing)?.do ?? null;

  it('are those of a keyboard and of a remote', () => {
    const keys = [
      'PageDown',
      'ArrowRight',
      'PageUp',
      'Home',
      'End',
      ' ',
      'N',
      'm',
      'Enter',
      '.',
      'b',
    ];
    expect(keys.map((key) => done(key))).toEqual([
      'next',
      'next',
      'back',
      'first',
      'last',
      'reveal',
      'numbers',
      'play',
      'play',
      'dark',
      'dark',
    ]);
    expect(['c', 'q', 'Escape', '7'].map((key) => done(key))).toEqual([
      'measure',
      'ask',
      'leave',
      'jump',
    ]);
    expect(['x', 'Tab', 'F5', 'Shift'].map((key) => done(key))).toEqual([null, null, null, null]);
  });

  it('of the pictures count answers while a question is asked', () => {
    expect(commandOf('a', asking)).toEqual({ do: 'answer', letter: 'A' });
    expect(commandOf('B', asking)).toEqual({ do: 'answer', letter: 'B' });
    expect(done('c', asking)).toBe('measure');
    expect(done('a')).toBeNull();
  });

  it('leave a button its own', () => {
    const onButton = { ...quiet, onButton: true };
    expect([done('Enter', onButton), done(' ', onButton)]).toEqual([null, null]);
    expect(done('PageDown', onButton)).toBe('next');
  });
});

describe('the measured screen', () => {
  it('has pixels of the card drawn as wide as a real one', () => {
    // ISO/IEC 7810, format ID-1: 85.60 mm by 53.98 mm.
    expect([CARD.width, CARD.height]).toEqual([0.0856, 0.05398]);
    // A hall: 1920 pixels over 2.40 m are 1.25 mm each, a card is 68.48 of them.
    const pixel = pixelOfWidth(2.4, 1920);
    expect(pixel).toBeCloseTo(0.00125, 12);
    expect(drawnWidth(pixel)).toBe(68.5);
    expect(1920 * pixelOfCard(68.48)).toBeCloseTo(2.4, 9);
    expect([drawnWidth(1), drawnWidth(1e-9)]).toEqual([16, 800]);
  });

  it('shows the camera’s own perspective from d P / H', () => {
    const [, b] = showPictures(demo, models, cast, null);
    if (!b) throw new Error('no picture B');
    // By hand: d 2.40 m, H 0.42 m; 700 pixels of 1.25 mm make P 0.875 m: 2.40 · 0.875 / 0.42 = 5.00 m.
    expect(seenFrom(b.measures, 700, 0.00125)).toBeCloseTo(5, 6);
  });

  it('is kept by its size, and a browser that keeps nothing does no harm', () => {
    const store = new Map<string, string>();
    const memory = () => ({
      getItem: (key: string) => store.get(key) ?? null,
      setItem: (key: string, value: string) => void store.set(key, value),
    });
    const key = screenKey({ width: 1920, height: 1080, ratio: 1 });
    expect(keptPixel(memory, key)).toBeNull();
    keepPixel(memory, key, 0.00125);
    expect(keptPixel(memory, key)).toBe(0.00125);
    expect(keptPixel(memory, screenKey({ width: 1920, height: 1080, ratio: 2 }))).toBeNull();
    for (const wrong of ['', 'wide', '-1', 'Infinity']) {
      store.set(key, wrong);
      expect(keptPixel(memory, key)).toBeNull();
    }
    const refused = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    expect(keptPixel(refused, key)).toBeNull();
    expect(() => keepPixel(refused, key, 1)).not.toThrow();
  });
});

describe('what a slide says', () => {
  const says = (
    session: Session,
    part: Talk['part'],
    numbers = false,
    change: Partial<Slide> = {},
  ): string =>
    sentenceOf(
      { part, numbers },
      {
        slide: slide({ letters: session.pictures.map(({ letter }) => letter), ...change }),
        session,
        pictures: showPictures(session, models, cast, null),
        speaking: {},
      },
    );
  const [a, b] = demo.pictures;
  if (!a || !b) throw new Error('the demo has two pictures');
  const withPictures = (...pictures: Session['pictures']): Session => ({ ...demo, pictures });

  it('asks without a number, and answers by the nearest picture', () => {
    expect(says(demo, 'question')).toBe('Which picture was taken from nearer?');
    expect(says(demo, 'told')).toMatch(
      /^A\. The crop is equal, yet the nose is \d+ % larger against the ears\. Distance did that; the lens only kept the frame\.$/,
    );
    const swapped = withPictures({ ...a, standpoint: 2.4 }, { ...b, standpoint: 0.4 });
    expect(says(swapped, 'told')).toMatch(/^B\. The crop is equal/);
    expect(says(demo, 'plain')).toBe('The same crop from two standpoints.');
    expect(says(demo, 'plain', false, { name: 'Near and far' })).toBe('Near and far');
    expect(says(demo, 'plain', true)).toMatch(/^The crop is equal, yet in A the nose is \d+ %/);
  });

  it('gives the gain of the nose by the depths of the face', () => {
    const [near, far] = showPictures(demo, models, cast, null).map(({ measures }) => measures);
    if (!near || !far) throw new Error('two pictures');
    // By hand: (d − z ears) / (d − z nose) of the one over that of the other.
    const { nose, ears } = near.face.depth;
    const ratio = (d: number) => (d - ears) / (d - nose);
    const percent = Math.round(100 * (ratio(0.4) / ratio(2.4) - 1));
    expect(percent).toBeGreaterThan(10);
    expect(says(demo, 'told')).toContain(`the nose is ${percent} % larger`);
  });

  it('says so when nothing or not the distance alone differs', () => {
    const one = withPictures(a, { ...b, standpoint: a.standpoint });
    expect(says(one, 'told')).toBe(
      'Neither. Both were taken from 0.40 m. The lens changes the frame, not the face.',
    );
    expect(says(one, 'plain')).toBe('Two pictures, one standpoint.');
    const raised = withPictures(a, { ...b, cameraHeight: 0.3 });
    expect(says(raised, 'told')).toMatch(/^A\. The nose is .* Two things differ: /);
    expect(says(raised, 'told')).not.toContain('Distance did that');
    const cropped = withPictures(a, { ...b, view: { by: 'lens', focal: 0.05 } });
    expect(says(cropped, 'told')).toMatch(/^A\. The nose is .* the lens only set the frame\.$/);
  });

  it('tells of one picture, and of more than two', () => {
    expect(says(withPictures(a), 'plain')).toBe('');
    expect(says(withPictures(a), 'plain', true)).toMatch(/^From 0\.40 m the nose is drawn \d+ %/);
    const three = withPictures(a, b, { ...b, letter: 'C', standpoint: 1 });
    expect(says(three, 'question')).toBe('Which picture was taken from the nearest place?');
    expect(says(three, 'told')).toContain('larger against the ears than in B.');
    expect(says(three, 'plain')).toBe('The same crop from three standpoints.');
  });
});
