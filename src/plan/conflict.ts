/** What stands in the way of a pair that nothing works for. */
import type { Solved } from './conditions';
import { both, either, everywhere, type Interval } from './intervals';
import type { SolvedPiece } from './solve';
import type { Condition } from './types';

/** On one piece, what each condition by itself leaves; demands of one name hold together. */
function onPiece({ scene, reach, own }: SolvedPiece): Solved[] {
  const found: Solved[] = [];
  for (const list of [reach, own, scene.shared])
    for (const { by, at } of list) {
      if (at === everywhere) continue;
      const i = found.findIndex((one) => one.by.name === by.name && one.by.of === by.of);
      if (i < 0) found.push({ by, at: both(at, [scene.within]) });
      else found[i] = { by, at: both(at, (found[i] as Solved).at) };
    }
  return found;
}

/** The same over all pieces: where a condition cuts nothing from a piece, that is left whole. */
function singly(pieces: readonly SolvedPiece[]): Solved[] {
  const [first] = pieces;
  if (first && pieces.length === 1) return onPiece(first);
  const solved = pieces.map(onPiece);
  const named = new Map<string, Condition>();
  for (const { by } of solved.flat()) named.set(`${by.name} ${by.of ?? ''}`, by);
  return [...named.values()].map((by) => ({
    by,
    at: pieces.reduce<readonly Interval[]>((out, { scene }, i) => {
      const here = solved[i]?.find((one) => one.by.name === by.name && one.by.of === by.of);
      return either(out, here?.at ?? [scene.within]);
    }, []),
  }));
}

/**
 * A condition that never holds, else the first two that never hold together, else those that one after the other
 * cut away the rest.
 */
export function conflictOf(pieces: readonly SolvedPiece[]): Condition[] {
  const conditions = singly(pieces);
  const never = conditions.find(({ at }) => at.length === 0);
  if (never) return [never.by];
  for (let i = 0; i < conditions.length; i++)
    for (let j = i + 1; j < conditions.length; j++) {
      const [x, y] = [conditions[i] as Solved, conditions[j] as Solved];
      if (both(x.at, y.at).length === 0) return [x.by, y.by];
    }
  let left: readonly Interval[] = everywhere;
  const cut: Condition[] = [];
  for (const { by, at } of conditions) {
    const next = both(at, left);
    if (next.length !== left.length || next.some((each, i) => !same(each, left[i]))) cut.push(by);
    left = next;
    if (left.length === 0) break;
  }
  return cut;
}

const same = (a: Interval, b: Interval | undefined): boolean =>
  b !== undefined && a.from === b.from && a.to === b.to;
