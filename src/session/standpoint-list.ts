/** Standpoints of a table as they are typed: a range in steps, or a list. Metres. */
import { type LengthUnit, parseLength } from '../readings/parse';
import { LIMITS, MOST } from './limits';

/** Nearer to each other than this, metres, two standpoints are shown as the same text. */
const SAME = 0.005;
export const isSamePlace = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

export type StandpointsRefused =
  | { readonly kind: 'unreadable'; readonly why: string }
  | { readonly kind: 'outside'; readonly metres: number }
  | { readonly kind: 'step' }
  | { readonly kind: 'none' }
  | { readonly kind: 'many'; readonly count: number };

export type Standpoints =
  | { readonly ok: true; readonly value: readonly number[] }
  | { readonly ok: false; readonly refused: StandpointsRefused };

const refuse = (refused: StandpointsRefused): Standpoints => ({ ok: false, refused });

/** What steps add up to is kept to a nanometre: 0.1 three times is 0.3. */
const clean = (metres: number): number => Number(metres.toFixed(9));

const isLegal = (metres: number): boolean =>
  metres >= LIMITS.standpoint.least && metres <= LIMITS.standpoint.most;

/** A step that ends so near to the end, as a share of itself, has reached it. */
const REACHED = 1e-6;

/** Every `step` from `start` on, not beyond `end`; which of the two is the nearer one does not matter. */
export function standpointsBetween(start: number, end: number, step: number): Standpoints {
  const outside = [start, end].find((each) => !isLegal(each));
  if (outside !== undefined) return refuse({ kind: 'outside', metres: outside });
  if (!(step > 0 && step < Number.POSITIVE_INFINITY)) return refuse({ kind: 'step' });
  const nearest = Math.min(start, end);
  const count = Math.floor((Math.max(start, end) - nearest) / step + REACHED) + 1;
  if (count > MOST.tabled) return refuse({ kind: 'many', count });
  return {
    ok: true,
    value: Array.from({ length: count }, (_, i) => clean(nearest + i * step)),
  };
}

/** The same from three texts. */
export function parseStandpointRange(
  texts: { readonly start: string; readonly end: string; readonly step: string },
  unit: LengthUnit,
): Standpoints {
  const [start, end, step] = [texts.start, texts.end, texts.step].map((text) =>
    parseLength(text, { unit }),
  );
  if (!start?.ok) return refuse({ kind: 'unreadable', why: start?.why ?? '' });
  if (!end?.ok) return refuse({ kind: 'unreadable', why: end?.why ?? '' });
  if (!step?.ok) return refuse({ kind: 'unreadable', why: step?.why ?? '' });
  return standpointsBetween(start.value, end.value, step.value);
}

/** Longer than any list of `MOST.tabled` lengths, and than any one length. */
const LONGEST_TEXT = 20_000;
const LONGEST_LENGTH = 60;

/** What is too long to be a length is cut, so that the refusal can show it. */
const short = (part: string): string =>
  part.length > LONGEST_LENGTH ? `${part.slice(0, LONGEST_LENGTH)}…` : part;

/** "0.4, 60 cm, 2 ft", "0,4; 0,6": rising, each once. A comma before a digit is a decimal comma where it can be. */
export function parseStandpointList(text: string, unit: LengthUnit): Standpoints {
  const parts = text
    .slice(0, LONGEST_TEXT)
    .split(/[;\n\r\t]|,(?=\s|$)/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .flatMap((part) => (parseLength(part, { unit }).ok ? [part] : part.split(',')));
  if (parts.length === 0) return refuse({ kind: 'none' });
  const found = new Set<number>();
  for (const part of parts) {
    const parsed = parseLength(short(part), { unit });
    if (!parsed.ok) return refuse({ kind: 'unreadable', why: parsed.why });
    if (!isLegal(parsed.value)) return refuse({ kind: 'outside', metres: parsed.value });
    found.add(clean(parsed.value));
  }
  if (found.size > MOST.tabled) return refuse({ kind: 'many', count: found.size });
  return { ok: true, value: [...found].sort((a, b) => a - b) };
}
