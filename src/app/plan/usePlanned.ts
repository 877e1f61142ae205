import { useEffect, useRef, useState } from 'react';
import type { PlanRequest } from '../../plan/types';
import type { Answer, Ask, Planned } from './plan.worker';

/** The answer to the latest request; while it is worked out, the last one stays. */
export interface PlanState {
  readonly request: PlanRequest | null;
  readonly planned: Planned | null;
  readonly isWorking: boolean;
}

const NOTHING: PlanState = { request: null, planned: null, isWorking: true };

/**
 * Asks the worker for one answer at a time: of what changes until its verdicts are there, only the last is asked,
 * and then its remedies are waited for no longer.
 */
export function usePlanned(request: PlanRequest): PlanState {
  const [state, setState] = useState(NOTHING);
  const worker = useRef<{ ask: (request: PlanRequest) => void; end: () => void } | null>(null);
  useEffect(() => {
    const own = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
    let asked: Ask | null = null;
    let isSolving = false;
    let next: PlanRequest | null = null;
    let count = 0;
    const send = (wanted: PlanRequest) => {
      count += 1;
      asked = { id: count, request: wanted };
      isSolving = true;
      own.postMessage(asked);
    };
    own.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (asked?.id !== data.id) return;
      const { planned } = data;
      const following = next;
      next = null;
      isSolving = false;
      setState({
        request: asked.request,
        planned,
        isWorking: following !== null || planned.remedies === null,
      });
      if (following) send(following);
    };
    worker.current = {
      ask: (wanted) => {
        setState((before) => ({ ...before, isWorking: true }));
        if (isSolving) next = wanted;
        else send(wanted);
      },
      end: () => own.terminate(),
    };
    return () => {
      worker.current?.end();
      worker.current = null;
    };
  }, []);
  useEffect(() => worker.current?.ask(request), [request]);
  return state;
}
