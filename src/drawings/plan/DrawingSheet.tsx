/** The sheet of a drawing, and a part of it that can be moved or not. */
import type { ReactNode, RefObject } from 'react';
import type { Units } from '../../readings/quantities';
import { Grip } from './Grip';
import type { GripPlace } from './grips';
import type { Note } from './label-wishes';
import { Notes } from './Parts';
import { PX_PER_MM } from './print';
import type { Ground } from './sheet';
import type { PlanActions, PlanContent, PlanSheet } from './types';
import type { PlanWords } from './words';

export interface DrawingProps extends PlanActions, Omit<PlanSheet, 'measure'> {
  readonly content: PlanContent;
  readonly words?: PlanWords;
}

interface SheetProps {
  readonly drawing: RefObject<SVGSVGElement | null>;
  readonly ground: Ground;
  readonly label: string;
  readonly notes: readonly Note[];
  readonly children: ReactNode;
}

export function DrawingSheet({ drawing, ground, label, notes, children }: SheetProps) {
  const { width, height, printed } = ground;
  const size =
    printed === null
      ? { width, height }
      : { width: `${width / PX_PER_MM}mm`, height: `${height / PX_PER_MM}mm` };
  return (
    <div className="plan-drawing" data-printed={printed ?? undefined}>
      <svg
        ref={drawing}
        {...size}
        viewBox={`0 0 ${width} ${height}`}
        role={printed === null ? 'group' : 'img'}
        aria-label={label}
      >
        {children}
      </svg>
      <Notes notes={notes} />
    </div>
  );
}

interface GripOfProps {
  readonly grips: readonly GripPlace[];
  readonly id: string;
  readonly units: Units;
  readonly actions: PlanActions;
  /** On paper nothing moves. */
  readonly still: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}

export function GripOf({ grips, id, units, actions, still, className, children }: GripOfProps) {
  const place = grips.find((grip) => grip.id === id);
  if (still || !place || !actions.onMove) {
    return (
      // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus
      <g aria-hidden="true" className={className}>
        {children}
      </g>
    );
  }
  return (
    <Grip
      place={place}
      units={units}
      actions={{ onMove: actions.onMove, ...(actions.onType && { onType: actions.onType }) }}
      {...(className && { className })}
    >
      {children}
    </Grip>
  );
}
