/** The standpoints of a strip: spaced, or typed one after another. */
import { PLAIN_UNIT } from '../../readings/parse';
import type { Units } from '../../readings/quantities';
import { LEAST_SERIES, MOST } from '../../session/limits';
import { type Pace, standpointAlong } from '../../session/play';
import { parseStandpointList } from '../../session/standpoint-list';
import { stills } from '../words/stills.en';
import { table } from '../words/table.en';

/** Evenly from one to the other, by the pace of the move. */
export const spaced = (from: number, to: number, count: number, pace: Pace): number[] =>
  Array.from({ length: count }, (_, i) => standpointAlong(from, to, i / (count - 1), pace));

export type Read =
  | { readonly ok: true; readonly value: readonly number[] }
  | { readonly ok: false; readonly why: string };

export function readStandpoints(text: string, units: Units): Read {
  const read = parseStandpointList(text, PLAIN_UNIT[units]);
  if (!read.ok) return { ok: false, why: table.refused(read.refused, units) };
  const { length } = read.value;
  return length < LEAST_SERIES || length > MOST.series
    ? { ok: false, why: stills.series.wrongCount(LEAST_SERIES, MOST.series) }
    : read;
}
