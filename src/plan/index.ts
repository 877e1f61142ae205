/** Kit, room, people and wanted framings -> standpoints, settings and reasons. */
import { oneStandpoint } from './one-standpoint';
import type { PlanRequest, PlanResult } from './types';
import { verdictsFor } from './verdict';

export { remediesFor } from './remedies';
export type * from './types';

/** Everything the plan finds; what would make a failing pair work, `remediesFor` tells. */
export function solvePlan(request: PlanRequest): PlanResult {
  const verdicts = verdictsFor(request);
  return { verdicts, oneStandpoint: oneStandpoint(request, verdicts) };
}
