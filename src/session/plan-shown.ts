/** Which of the wanted pictures the drawings show. */
import type { PlanRequest, Wanted } from '../plan/types';
import { hungRow } from './plan-request';
import type { Group, Session } from './types';

export interface ShownWanted extends Wanted {
  readonly isGroup: boolean;
}

/** The one that hangs, else the first. */
export function shownWanted(session: Session, request: PlanRequest): ShownWanted | null {
  const id = hungRow(session)?.wanted;
  const wanted = request.wanted.find((each) => each.id === id) ?? request.wanted[0];
  if (!wanted) return null;
  const asked = session.plan.wanted.find((each) => each.id === wanted.id);
  return { ...wanted, isGroup: asked?.of === 'group' && session.plan.group !== null };
}

/** What each row stands on above the floor: the first row on steps on one, the next on two. */
export function groupSteps({ rows, step }: Pick<Group, 'rows' | 'step'>): readonly number[] {
  let steps = 0;
  return rows.map(({ place }) => {
    if (place === 'step') steps += 1;
    return place === 'step' ? steps * step : 0;
  });
}
