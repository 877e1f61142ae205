import { useCallback, useEffect, useRef, useState } from 'react';

/** Long work that is shown, can be stopped, and leaves nothing half done. */
export type WorkState<Result> =
  | { readonly is: 'idle' }
  | { readonly is: 'working'; readonly share: number; readonly seconds: number }
  | { readonly is: 'done'; readonly result: Result }
  | { readonly is: 'stopped' }
  | { readonly is: 'failed'; readonly why: string };

export interface Work<Result> {
  readonly state: WorkState<Result>;
  /** Starts the work unless some is going on. */
  start(work: (signal: AbortSignal, onProgress: (share: number) => void) => Promise<Result>): void;
  stop(): void;
}

/** One piece of work at a time; it is stopped when the part of the page that shows it goes. */
export function useWork<Result>(): Work<Result> {
  const [state, setState] = useState<WorkState<Result>>({ is: 'idle' });
  const controller = useRef<AbortController | null>(null);
  useEffect(() => () => controller.current?.abort(), []);
  const start = useCallback<Work<Result>['start']>((work) => {
    if (controller.current) return;
    const own = new AbortController();
    controller.current = own;
    const begun = performance.now();
    const progress = (share: number) =>
      setState({ is: 'working', share, seconds: (performance.now() - begun) / 1000 });
    progress(0);
    work(own.signal, progress)
      .then(
        (result) => setState({ is: 'done', result }),
        (error) =>
          setState(
            own.signal.aborted
              ? { is: 'stopped' }
              : { is: 'failed', why: error instanceof Error ? error.message : String(error) },
          ),
      )
      .finally(() => {
        controller.current = null;
      });
  }, []);
  const stop = useCallback(() => controller.current?.abort(), []);
  return { state, start, stop };
}
