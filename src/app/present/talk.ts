/** The course of a talk: which slide, what of it is told, what the class answered. Pure. */
import type { Letter } from '../../session/types';
import type { Slide } from './slides';

/** A plain slide shows its pictures; a question is asked, then told. */
export type Part = 'plain' | 'question' | 'told';

export type Votes = Readonly<Partial<Record<Letter, number>>>;

export interface Talk {
  /** Place of the slide, from 0. */
  readonly at: number;
  readonly part: Part;
  /** Numbers are shown: asked for anew on each slide. */
  readonly numbers: boolean;
  readonly dark: boolean;
  /** Digits typed in a row, which name a slide. */
  readonly typed: string;
  /** What the class answered, by the slide's place. */
  readonly votes: Readonly<Record<number, Votes>>;
  /** The latest answers to the question that is asked, so that a slip of the finger is taken back. */
  readonly answers: readonly Letter[];
}

export type Act =
  | { readonly do: 'next' | 'back' | 'first' | 'last' | 'reveal' | 'numbers' | 'ask' | 'dark' }
  | { readonly do: 'unanswer' }
  | { readonly do: 'jump'; readonly digit: string }
  | { readonly do: 'answer'; readonly letter: Letter };

type Slides = readonly Slide[];

const open = (talk: Talk, at: number, part: Part): Talk => ({
  ...talk,
  at,
  part,
  numbers: false,
  answers: [],
});

/** A slide as it is first shown. */
const atStart = (talk: Talk, slides: Slides, at: number): Talk =>
  open(talk, at, slides[at]?.asks ? 'question' : 'plain');

export const begin = (slides: Slides): Talk =>
  atStart(
    { at: 0, part: 'plain', numbers: false, dark: false, typed: '', votes: {}, answers: [] },
    slides,
    0,
  );

function next(talk: Talk, slides: Slides): Talk {
  if (talk.part === 'question') return open(talk, talk.at, 'told');
  return talk.at + 1 < slides.length ? atStart(talk, slides, talk.at + 1) : talk;
}

function back(talk: Talk, slides: Slides): Talk {
  if (talk.part === 'told') return open(talk, talk.at, 'question');
  if (talk.at === 0) return talk;
  return open(talk, talk.at - 1, slides[talk.at - 1]?.asks ? 'told' : 'plain');
}

/** A further digit goes on with the number typed so far where there is such a slide, else it begins anew. */
function jump(talk: Talk, slides: Slides, digit: string): Talk {
  const typed = [talk.typed + digit, digit].find((each) => slides[Number(each) - 1]);
  return typed === undefined ? talk : { ...atStart(talk, slides, Number(typed) - 1), typed };
}

function count(talk: Talk, letter: Letter, by: 1 | -1): Talk {
  const own = talk.votes[talk.at] ?? {};
  const votes = { ...talk.votes, [talk.at]: { ...own, [letter]: (own[letter] ?? 0) + by } };
  const answers = by > 0 ? [...talk.answers, letter] : talk.answers.slice(0, -1);
  return { ...talk, votes, answers };
}

/** Whether pictures of the slide can be asked about. */
export const canAsk = ({ part }: Talk, slide: Slide): boolean =>
  part === 'plain' && slide.letters.length > 1;

function acted(talk: Talk, act: Act, slides: Slides): Talk {
  const slide = slides[talk.at];
  const last = talk.answers.at(-1);
  switch (act.do) {
    case 'next':
      return next(talk, slides);
    case 'back':
      return back(talk, slides);
    case 'first':
      return atStart(talk, slides, 0);
    case 'last':
      return atStart(talk, slides, slides.length - 1);
    case 'reveal':
      return talk.part === 'question' ? next(talk, slides) : { ...talk, numbers: !talk.numbers };
    case 'numbers':
      return talk.part === 'question' ? talk : { ...talk, numbers: !talk.numbers };
    case 'ask':
      return slide && canAsk(talk, slide) ? open(talk, talk.at, 'question') : talk;
    case 'dark':
      return { ...talk, dark: true };
    case 'jump':
      return jump(talk, slides, act.digit);
    case 'answer':
      return talk.part === 'question' && slide?.letters.includes(act.letter)
        ? count(talk, act.letter, 1)
        : talk;
    case 'unanswer':
      return talk.part === 'question' && last ? count(talk, last, -1) : talk;
  }
}

/** The talk after an act. On a dark screen any act brings the slide back and does nothing else. */
export function talkAfter(talk: Talk, act: Act, slides: Slides): Talk {
  if (talk.dark) return { ...talk, dark: false };
  const then = acted(talk, act, slides);
  return act.do === 'jump' || then.typed === '' ? then : { ...then, typed: '' };
}
