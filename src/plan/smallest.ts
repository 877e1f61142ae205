/** Looking for the smallest change that makes a failing pair work. */
import type { Asking } from './changes';
import type { Change, Remedy, Span } from './types';
import { pairSpans } from './verdict';

/** The longest interval of standpoints that works, or null. */
export const worksAt = ({ request, wanted, camera }: Asking): Span | null =>
  pairSpans(request, wanted, camera).reduce<Span | null>(
    (best, each) => (best === null || each.to / each.from > best.to / best.from ? each : best),
    null,
  );

const outward = (value: number, step: number, up: boolean): number => {
  const steps = value / step;
  // A value that lies on a step but for rounding stays there.
  return Number((step * (up ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6))).toFixed(6));
};

/** One direction in which a figure can be changed. */
export interface Way {
  readonly now: number;
  readonly to: number;
  readonly step: number;
  readonly with: (value: number) => Asking;
  readonly change: (value: number) => Change;
  /** Change over this is the effort. */
  readonly scale: number;
  /** Does more of it only ever loosen what is asked? */
  readonly moreHelps?: boolean;
}

/** How many places are looked at between now and the end of a way, to find one that works. */
const LOOKS = 48;

/**
 * The smallest change along a way. Where more always helps, bisection from the end of the way finds it, whatever
 * its size. Not every way is so (a sitter moved off the backdrop comes nearer to the camera's wall), so there a
 * first place that works is looked for in steps: what works between two of them alone is missed, and the change is
 * smallest to within one of them; from there on it is bisected too.
 */
export function smallest(way: Way): Remedy | null {
  const { now, to, step } = way;
  const up = to > now;
  const count = way.moreHelps ? 1 : LOOKS;
  const looks = Array.from({ length: count }, (_, i) => now + (to - now) * ((i + 1) / count) ** 2);
  const first = looks.findIndex((value) => worksAt(way.with(value)));
  if (first < 0) return null;
  let works = looks[first] as number;
  let fails = looks[first - 1] ?? now;
  while (Math.abs(works - fails) > step / 8) {
    const middle = (works + fails) / 2;
    if (worksAt(way.with(middle))) works = middle;
    else fails = middle;
  }
  for (const value of [outward(works, step, up), works]) {
    const span = worksAt(way.with(value));
    if (span) return { change: way.change(value), span, effort: Math.abs(value - now) / way.scale };
  }
  return null;
}

/** Of listed values, the first that works. */
export function firstOf(
  values: readonly number[],
  with_: (value: number) => Asking,
  change: (value: number) => Change,
  effort: (value: number) => number,
): Remedy[] {
  for (const value of values) {
    const span = worksAt(with_(value));
    if (span) return [{ change: change(value), span, effort: effort(value) }];
  }
  return [];
}
