import { useMemo, useRef } from 'react';
import type { Drag } from '../../session/store';
import { useWorkbench, type Workbench } from './workbench';

export interface Dragging {
  readonly start: () => void;
  /** Part of the drag under way; without one, a step by itself. */
  readonly act: Workbench['act'];
  readonly end: () => void;
}

/** What a hand moves, from taking hold to letting go, is one step to undo. */
export function useDragging(): Dragging {
  const { store, act } = useWorkbench();
  const drag = useRef<Drag | null>(null);
  return useMemo(
    () => ({
      start: () => {
        drag.current ??= store.drag();
      },
      act: (action, args) => (drag.current ? drag.current.act(action, args) : act(action, args)),
      end: () => {
        drag.current?.end();
        drag.current = null;
      },
    }),
    [store, act],
  );
}
