/** What keys do in a talk: a keyboard's, and those that a presenter's remote sends. Pure. */
import type { Letter } from '../../session/types';
import type { Act } from './talk';

export type Command =
  | Act
  | { readonly do: 'play' }
  | { readonly do: 'measure' }
  | { readonly do: 'leave' };

/** Remotes send Page Up and Page Down, or arrows, and a full stop or B for a dark screen. */
const COMMANDS: Readonly<Record<string, Exclude<Command['do'], 'jump' | 'answer'>>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  Home: 'first',
  End: 'last',
  ' ': 'reveal',
  n: 'numbers',
  q: 'ask',
  '.': 'dark',
  b: 'dark',
  m: 'play',
  Enter: 'play',
  c: 'measure',
  Backspace: 'unanswer',
  Escape: 'leave',
};

/** Keys that press the button under the focus. */
const PRESSES: ReadonlySet<string> = new Set(['Enter', ' ']);

export interface Pressing {
  /** Pictures that the class may answer now: their letters count answers. */
  readonly asked: readonly Letter[];
  readonly onButton: boolean;
}

/** Null for a key that is none of the talk's. */
export function commandOf(key: string, { asked, onButton }: Pressing): Command | null {
  if (onButton && PRESSES.has(key)) return null;
  if (/^\d$/.test(key)) return { do: 'jump', digit: key };
  const letter = asked.find((each) => each === key.toUpperCase());
  if (letter) return { do: 'answer', letter };
  const command = COMMANDS[key.length === 1 ? key.toLowerCase() : key];
  return command === undefined ? null : { do: command };
}
