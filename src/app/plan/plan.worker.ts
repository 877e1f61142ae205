/** Solves the plan off the page's own thread: verdicts first, then what would make the failing ones work. */
import { remediesFor, solvePlan } from '../../plan';
import type { PlanRequest, PlanResult, Remedy } from '../../plan/types';

export interface Ask {
  readonly id: number;
  readonly request: PlanRequest;
}

export interface Planned extends PlanResult {
  /** What would make a failing pair work, best first, in the order of the verdicts. */
  readonly remedies: readonly (readonly Remedy[])[];
}

export interface Answer {
  readonly id: number;
  readonly planned: Planned;
}

self.onmessage = ({ data: { id, request } }: MessageEvent<Ask>) => {
  const result = solvePlan(request);
  const remedies = result.verdicts.map((verdict) =>
    verdict.spans.length > 0 ? [] : remediesFor(request, verdict),
  );
  self.postMessage({ id, planned: { ...result, remedies } } satisfies Answer);
};
