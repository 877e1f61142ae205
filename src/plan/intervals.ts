/** Sets of depths as sorted, disjoint, closed intervals, each end with the condition that makes it. */
import {
  bracketed,
  derivative,
  type Polynomial,
  product,
  rootsIn,
  sum,
  times,
  trimmed,
  valueAt,
} from './polynomial';
import type { Condition } from './types';

/** An end without a condition is an end of what is looked at. */
export interface Interval {
  readonly from: number;
  readonly to: number;
  readonly fromBy: Condition | null;
  readonly toBy: Condition | null;
}

/** Nearer no lens is put before a face, farther no room reaches, metres. */
export const NEAREST = 0.01;
export const FARTHEST = 200;

export const everywhere: readonly Interval[] = [
  { from: NEAREST, to: FARTHEST, fromBy: null, toBy: null },
];

/** What lies in both of two intervals; null where nothing does. */
function overlap(x: Interval, y: Interval): Interval | null {
  const first = x.from >= y.from && !(x.from === y.from && x.fromBy === null) ? x : y;
  const last = x.to <= y.to && !(x.to === y.to && x.toBy === null) ? x : y;
  if (first.from > last.to) return null;
  return { from: first.from, to: last.to, fromBy: first.fromBy, toBy: last.toBy };
}

/** What lies in both. Where both end at one place, the first one's condition is named. */
export function both(a: readonly Interval[], b: readonly Interval[]): readonly Interval[] {
  if (b === everywhere) return a;
  if (a === everywhere) return b;
  if (a.length === 1 && b.length === 1) {
    // Nearly always; an array that grows takes room for many.
    const common = overlap(a[0] as Interval, b[0] as Interval);
    return common ? [common] : [];
  }
  const out: Interval[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const [x, y] = [a[i] as Interval, b[j] as Interval];
    const common = overlap(x, y);
    if (common) out.push(common);
    if (x.to < y.to) i++;
    else j++;
  }
  return out;
}

/** Does anything lie in both? */
export function meet(a: readonly Interval[], b: readonly Interval[]): boolean {
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const x = a[i] as Interval;
    const y = b[j] as Interval;
    if (Math.max(x.from, y.from) <= Math.min(x.to, y.to)) return true;
    if (x.to < y.to) i++;
    else j++;
  }
  return false;
}

/** What lies in either; intervals that touch become one. */
export function either(a: readonly Interval[], b: readonly Interval[]): readonly Interval[] {
  if (b.length === 0 && a.length <= 1) return a;
  if (a.length === 0 && b.length <= 1) return b;
  const out: Interval[] = [];
  for (const next of [...a, ...b].sort((x, y) => x.from - y.from || x.to - y.to)) {
    const last = out.at(-1);
    if (!last || next.from > last.to) out.push(next);
    else if (next.to > last.to) out[out.length - 1] = { ...last, to: next.to, toBy: next.toBy };
  }
  return out;
}

/** What lies in none, each end by the condition. */
export function outside(blocked: readonly Interval[], by: Condition): readonly Interval[] {
  let from = NEAREST;
  let fromBy: Condition | null = null;
  const out: Interval[] = [];
  for (const each of either(blocked, [])) {
    if (each.from > from) out.push({ from, to: each.from, fromBy, toBy: by });
    from = each.to;
    fromBy = by;
  }
  if (from < FARTHEST) out.push({ from, to: FARTHEST, fromBy, toBy: null });
  return out;
}

/** The part between two depths. */
export const between = (from: number, to: number): readonly Interval[] =>
  from <= to ? [{ from, to, fromBy: null, toBy: null }] : [];

/**
 * Where a function is not negative, given all its roots between two depths, smallest first: between two of
 * them its sign is that of their middle.
 */
export function whereSigned(
  f: (s: number) => number,
  roots: readonly number[],
  by: Condition | null,
  nearest = NEAREST,
  farthest = FARTHEST,
): readonly Interval[] {
  const marks = [nearest, ...roots, farthest];
  let out: readonly Interval[] = [];
  for (let i = 0; i + 1 < marks.length; i++) {
    const [from, to] = [marks[i] as number, marks[i + 1] as number];
    if (f((from + to) / 2) < 0) continue;
    const next = {
      from,
      to,
      fromBy: i === 0 ? null : by,
      toBy: i + 2 === marks.length ? null : by,
    };
    out = either(out, [next]);
  }
  return out;
}

/** Where a + b s >= 0: most conditions are of the first degree. */
function whereLinear(a: number, b: number, by: Condition | null): readonly Interval[] {
  const root = -a / b;
  if (!(root > NEAREST && root < FARTHEST)) return a + b >= 0 ? everywhere : [];
  return b > 0
    ? [{ from: root, to: FARTHEST, fromBy: by, toBy: null }]
    : [{ from: NEAREST, to: root, fromBy: null, toBy: by }];
}

/** Where p(s) >= 0. */
export function where(poly: Polynomial, by: Condition | null): readonly Interval[] {
  const p = trimmed(poly);
  if (p.length <= 1) return (p[0] ?? 0) >= 0 ? everywhere : [];
  if (p.length === 2) return whereLinear(p[0] as number, p[1] as number, by);
  const roots = rootsIn(p, NEAREST, FARTHEST);
  const found = whereSigned((s) => valueAt(p, s), roots, by);
  const [all] = found;
  return found.length === 1 && all?.from === NEAREST && all.to === FARTHEST ? everywhere : found;
}

/** A polynomial that is positive where it is looked at, to a power. */
export interface Factor {
  readonly of: Polynomial;
  readonly power: number;
}

/**
 * Where a product of powers, its logarithm raised by `offset`, is at least 1, inside `within`. It rises and falls
 * between the roots of sum(power p' times the other p), so each change of sign is bracketed by them.
 */
export function whereProduct(
  offset: number,
  factors: readonly Factor[],
  within: readonly Interval[],
  by: Condition,
): readonly Interval[] {
  const slope = sum(
    ...factors.map(({ of, power }, i) =>
      times(
        factors.reduce<Polynomial>(
          (all, other, j) => (j === i ? all : product(all, other.of)),
          derivative(of),
        ),
        power,
      ),
    ),
  );
  const log = (s: number) =>
    factors.reduce((all, { of, power }) => all + power * Math.log(valueAt(of, s)), offset);
  return within.reduce<readonly Interval[]>((out, { from, to }) => {
    const marks = [from, ...rootsIn(slope, from, to), to];
    const roots: number[] = [];
    for (let i = 0; i + 1 < marks.length; i++) {
      const [x, y] = [marks[i] as number, marks[i + 1] as number];
      if (log(x) * log(y) < 0) roots.push(bracketed(log, x, y));
    }
    return either(out, whereSigned(log, roots, by, from, to));
  }, []);
}
