/** Solves the plan off the page's own thread: verdicts first, then what would make the failing ones work. */
import { remediesFor, solvePlan } from '../../plan';
import type { PlanRequest, PlanResult, Remedy } from '../../plan/types';

export interface Ask {
  readonly id: number;
  readonly request: PlanRequest;
}

export interface Planned extends PlanResult {
  /**
   * What would make a failing pair work, best first, in the order of the verdicts. Null while it is looked for:
   * for a group that takes many times as long as the verdicts.
   */
  readonly remedies: readonly (readonly Remedy[])[] | null;
}

/** Two to each ask: without remedies, then with them. */
export interface Answer {
  readonly id: number;
  readonly planned: Planned;
}

let latest = 0;

/** A newer ask comes in meanwhile. */
const messages = (): Promise<void> => new Promise((resume) => setTimeout(resume));

self.onmessage = async ({ data: { id, request } }: MessageEvent<Ask>) => {
  latest = id;
  const result = solvePlan(request);
  const answer = (remedies: Planned['remedies']) =>
    self.postMessage({ id, planned: { ...result, remedies } } satisfies Answer);
  answer(null);
  const remedies: Remedy[][] = [];
  for (const verdict of result.verdicts) {
    if (verdict.spans.length > 0) {
      remedies.push([]);
      continue;
    }
    await messages();
    if (latest !== id) return;
    remedies.push(remediesFor(request, verdict));
  }
  answer(remedies);
};
