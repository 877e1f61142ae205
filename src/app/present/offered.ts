/** The acts that the talk offers at this point, each with its key. Pure. */
import { present } from '../words/present.en';
import type { Command } from './keys';
import type { Slide } from './slides';
import { canAsk, type Talk } from './talk';

/** How far the move from one picture to the other has come. */
export type Moving = 'none' | 'ready' | 'running' | 'stopped' | 'done';

export interface Offered {
  readonly words: readonly [what: string, key: string];
  readonly command: Command;
}

const said = present.acts;
const MOVES = {
  ready: said.play,
  running: said.pause,
  stopped: said.play,
  done: said.putBack,
} as const;

export function offeredActs(talk: Talk, slide: Slide, moving: Moving): readonly Offered[] {
  const numbers = talk.numbers ? said.hideNumbers : said.showNumbers;
  return [
    { words: said.back, command: { do: 'back' } },
    { words: said.next, command: { do: 'next' } },
    talk.part === 'question'
      ? { words: said.reveal, command: { do: 'reveal' } }
      : { words: numbers, command: { do: 'numbers' } },
    ...(canAsk(talk, slide) ? [{ words: said.ask, command: { do: 'ask' } } as const] : []),
    ...(moving === 'none' ? [] : [{ words: MOVES[moving], command: { do: 'play' } } as const]),
    { words: said.dark, command: { do: 'dark' } },
    { words: said.measure, command: { do: 'measure' } },
    { words: said.leave, command: { do: 'leave' } },
  ];
}
