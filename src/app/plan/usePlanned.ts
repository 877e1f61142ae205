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

/** Asks the worker one thing at a time: of what changes meanwhile, only the last is asked. */
export function usePlanned(request: PlanRequest): PlanState {
  const [state, setState] = useState(NOTHING);
  const worker = useRef<{ ask: (request: PlanRequest) => void; end: () => void } | null>(null);
  useEffect(() => {
    const own = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
    let asked: Ask | null = null;
    let next: PlanRequest | null = null;
    let count = 0;
    const send = (wanted: PlanRequest) => {
      count += 1;
      asked = { id: count, request: wanted };
      own.postMessage(asked);
    };
    own.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (asked?.id !== data.id) return;
      const { request: answered } = asked;
      const following = next;
      asked = null;
      next = null;
      setState({ request: answered, planned: data.planned, isWorking: following !== null });
      if (following) send(following);
    };
    worker.current = {
      ask: (wanted) => {
        setState((before) => ({ ...before, isWorking: true }));
        if (asked) next = wanted;
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
