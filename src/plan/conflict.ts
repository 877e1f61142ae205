/** What stands in the way of a pair that nothing works for. */
import type { Solved } from './conditions';
import { both, either, everywhere, type Interval, meet } from './intervals';
import { conditionsOf, type SolvedPiece } from './solve';
import type { Condition } from './types';

/** What each condition by itself leaves of all pieces: where it cuts nothing from one, that is left whole. */
function singly(pieces: readonly SolvedPiece[]): Solved[] {
  const [first] = pieces;
  // A frame of one height has no other piece.
  if (first && pieces.length === 1) return conditionsOf(first);
  const solved = pieces.map((piece) =>
    conditionsOf(piece).map(({ by, at }) => ({ by, at: both(at, [piece.scene.within]) })),
  );
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
      const x = conditions[i] as Solved;
      const y = conditions[j] as Solved;
      if (!meet(x.at, y.at)) return [x.by, y.by];
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
