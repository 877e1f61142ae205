/** Something that can be moved: one slider for each number that moves it. */
import { type KeyboardEvent, type ReactNode, useRef } from 'react';
import type { Units } from '../../readings/quantities';
import { useGrip } from '../useGrip';
import { afterCarry, afterKey, type GripAxis, type GripPlace, valuesOf } from './grips';
import type { Moved, PlanActions } from './types';

interface GripProps {
  readonly place: GripPlace;
  readonly units: Units;
  readonly actions: PlanActions;
  readonly className?: string;
  readonly children?: ReactNode;
}

export function Grip({ place, units, actions, className, children }: GripProps) {
  const { what, axes, targets, ring } = place;
  const taken = useRef<Moved>([0]);
  // The last that was asked for: the page may not have drawn it yet when the hand lets go.
  const asked = useRef<Moved>([0]);
  const focused = useRef<0 | 1>(0);
  const values = valuesOf(place);
  const moveTo = (to: Moved) => {
    if (to[0] === values[0] && to[1] === values[1]) return;
    asked.current = to;
    actions.onMove?.(what, to, 'move');
  };
  const { dragging, pointer, keys } = useGrip({
    onStart: () => {
      taken.current = values;
      asked.current = values;
      actions.onMove?.(what, values, 'start');
    },
    onCarry: (x, y) => moveTo(afterCarry(place, taken.current, { x, y }, units)),
    onGiveUp: () => moveTo(taken.current),
    onEnd: () => actions.onMove?.(what, asked.current, 'end'),
    keyStep: (event: KeyboardEvent) => {
      const next = afterKey(place, focused.current, event, units);
      return next && (() => moveTo(next));
    },
    onType: actions.onType && ((first) => actions.onType?.(what, focused.current, first)),
  });
  // Both numbers are told by either slider, for arrows move both.
  const said = axes.map(({ spoken }) => spoken).join(', ');
  const reasons = axes.flatMap(({ move: { reason } }) => (reason ? [reason] : []));
  return (
    <g
      {...pointer}
      className={`plan-grip ${className ?? ''}`}
      data-dragging={dragging || undefined}
      data-ways={axes.length === 2 ? 'both' : Math.abs(axes[0].way.y) > 0.7 ? 'upright' : 'level'}
    >
      {targets.map((target) => (
        <rect key={`${target.x} ${target.y}`} {...target} className="plan-target" />
      ))}
      {children}
      {axes.map((axis: GripAxis, i) => (
        <g
          key={axis.name}
          {...keys}
          onFocus={() => {
            focused.current = i === 1 ? 1 : 0;
          }}
          className="plan-slider"
          role="slider"
          tabIndex={0}
          aria-label={axis.name}
          aria-orientation={Math.abs(axis.way.y) > 0.7 ? 'vertical' : 'horizontal'}
          aria-valuemin={round(axis.move.min)}
          aria-valuemax={round(axis.move.max)}
          aria-valuenow={round(axis.value)}
          aria-valuetext={[said, ...reasons].join('. ')}
        >
          <rect className="plan-ring" {...ring} />
        </g>
      ))}
    </g>
  );
}

const round = (metres: number): number => Number(metres.toFixed(4));
