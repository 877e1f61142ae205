/** The standpoints of a strip: spaced, or typed one after another. */

import { formatLength } from '../../readings/format';
import { parseLength } from '../../readings/parse';
import type { Units } from '../../readings/quantities';
import { LEAST_SERIES, LIMITS, MOST } from '../../session/limits';
import { type Pace, standpointAlong } from '../../session/play';
import { words } from '../words';
import { stills } from '../words/stills.en';

/** Evenly from one to the other, by the pace of the move. */
export const spaced = (from: number, to: number, count: number, pace: Pace): number[] =>
  Array.from({ length: count }, (_, i) => standpointAlong(from, to, i / (count - 1), pace));

export type Standpoints =
  | { readonly ok: true; readonly value: readonly number[] }
  | { readonly ok: false; readonly why: string };

/** A comma within a number is a decimal one; between two distances a space follows it. */
const BETWEEN = /\s*(?:;|,\s|\n)\s*/;

export function readStandpoints(text: string, units: Units): Standpoints {
  const show = (metres: number) => formatLength(metres, units, 'distance');
  const { least, most } = LIMITS.standpoint;
  const value: number[] = [];
  for (const part of text.trim().split(BETWEEN)) {
    const parsed = parseLength(part, { unit: units === 'metric' ? 'm' : 'ft' });
    if (!parsed.ok) return parsed;
    if (parsed.value < least) return { ok: false, why: words.controls.tooSmall(show(least)) };
    if (parsed.value > most) return { ok: false, why: words.controls.tooLarge(show(most)) };
    value.push(parsed.value);
  }
  const apart = [...new Set(value)].sort((a, b) => a - b);
  if (apart.length < LEAST_SERIES || apart.length > MOST.series)
    return { ok: false, why: stills.series.wrongCount(LEAST_SERIES, MOST.series) };
  return { ok: true, value: apart };
}
