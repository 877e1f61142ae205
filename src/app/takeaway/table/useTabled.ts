import { useEffect, useState } from 'react';
import { chartStandpoints } from '../../../handout/range-chart';
import type { Tabled } from '../../../handout/range-table';
import type { Session } from '../../../session/types';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { useWorkbench } from '../../state/workbench';
import { measureTabled, type TabledChoice } from './sitters';

/** What the table and the chart are drawn from, all of it measured. */
export interface Measured {
  readonly session: Session;
  readonly sitters: readonly Tabled[];
}

/** The chosen ones, measured from all standpoints; while others are being measured, the last ones stay. */
export function useTabled(
  darkroom: Darkroom,
  session: Session,
  chosen: readonly TabledChoice[],
): {
  readonly measured: Measured | null;
  readonly isWaiting: boolean;
  readonly why: string | null;
} {
  const { models } = useWorkbench();
  const [measured, setMeasured] = useState<Measured | null>(null);
  const [isWaiting, setWaiting] = useState(true);
  const [why, setWhy] = useState<string | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const standpoints = chartStandpoints(session.tabled, session.pictures);
    setWaiting(true);
    measureTabled({ session, models, darkroom, chosen, standpoints }, signal)
      .then(
        (sitters) => {
          if (signal.aborted) return;
          setMeasured({ session, sitters });
          setWhy(null);
        },
        (error) => !signal.aborted && setWhy(String((error as Error).message)),
      )
      .finally(() => !signal.aborted && setWaiting(false));
    return () => controller.abort();
  }, [session, models, darkroom, chosen]);
  return { measured, isWaiting, why };
}
