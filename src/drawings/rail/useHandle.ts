/** A picture's handle as a slider along the rail. */
import { useRef } from 'react';
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import { distanceAfterKey, type Limits, snap } from '../steps';
import { useGrip } from '../useGrip';

export interface RailActions {
  /** A change begins: one drag, or one run of a held key, is one step to undo. */
  onMoveStart?(letter: Letter): void;
  onMove(letter: Letter, metres: number): void;
  onMoveEnd?(letter: Letter): void;
  /** A distance is to be typed; `first` is the character that began it, or empty. */
  onType?(letter: Letter, first: string): void;
}

interface HandleState extends Limits, RailActions {
  readonly letter: Letter;
  readonly standpoint: number;
  readonly units: Units;
  /** The handle's exact place, and the inverse of the scale. */
  readonly x: number;
  toDistance(x: number): number;
}

export function useHandle(state: HandleState) {
  const { letter, standpoint, units, onType } = state;
  // Where it was taken, so that the handle does not jump to the finger.
  const taken = useRef({ x: 0, standpoint: 0 });
  const moveTo = (distance: number) => {
    if (distance !== standpoint) state.onMove(letter, distance);
  };
  const { dragging, pointer, keys } = useGrip({
    onStart: () => {
      taken.current = { x: state.x, standpoint };
      state.onMoveStart?.(letter);
    },
    onCarry: (dx) => moveTo(snap(state.toDistance(taken.current.x + dx), units, state)),
    onGiveUp: () => moveTo(taken.current.standpoint),
    onEnd: () => state.onMoveEnd?.(letter),
    keyStep: (event) => {
      const next = distanceAfterKey(event, standpoint, units, state);
      return next === null ? null : () => moveTo(next);
    },
    onType: onType && ((first) => onType(letter, first)),
  });
  return { dragging, handlers: { ...pointer, ...keys } };
}
