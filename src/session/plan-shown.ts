/** Which of the wanted pictures the drawings show. */
import { supportsOf } from '../plan/group';
import type { PlanRequest, Wanted } from '../plan/types';
import { hungRow } from './plan-request';
import type { Group, Session } from './types';

export interface ShownWanted extends Wanted {
  readonly isGroup: boolean;
}

/** The one that hangs; else, as while a camera is lifted, one of its framing; else the first. */
export function shownWanted(session: Session, request: PlanRequest): ShownWanted | null {
  const id =
    hungRow(session)?.wanted ??
    session.plan.wanted.find(({ framing }) => framing === session.crop.framing)?.id;
  const wanted = request.wanted.find((each) => each.id === id) ?? request.wanted[0];
  if (!wanted) return null;
  const asked = session.plan.wanted.find((each) => each.id === wanted.id);
  return { ...wanted, isGroup: asked?.of === 'group' && session.plan.group !== null };
}

/** The steps that rows stand on, above the floor; a seat is none. */
export const groupSteps = (group: Pick<Group, 'rows' | 'step'>): readonly number[] =>
  supportsOf(group).map((support, row) => (group.rows[row]?.place === 'seated' ? 0 : support));
