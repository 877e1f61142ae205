/** A handle as a slider: mouse, touch, pen and keyboard. */
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import { beginsTyping, distanceAfterKey, type Limits, snap } from './steps';

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

interface Grab {
  readonly pointer: number;
  /** Handle minus pointer at the start, so that the handle does not jump to the finger. */
  readonly offset: number;
  readonly startX: number;
  readonly startDistance: number;
  moved: boolean;
}

/** A press that travels less than this is a click, CSS pixels. */
const CLICK = 2;

export function useHandle(state: HandleState) {
  const { letter, standpoint, units } = state;
  const grab = useRef<Grab | null>(null);
  const keyed = useRef(false);
  const element = useRef<SVGGElement>(null);
  const [dragging, setDragging] = useState(false);

  // Some browsers ignore touch-action inside SVG; there the page would scroll under the finger.
  useEffect(() => {
    const handle = element.current;
    const hold = (event: TouchEvent) => event.preventDefault();
    handle?.addEventListener('touchmove', hold, { passive: false });
    return () => handle?.removeEventListener('touchmove', hold);
  }, []);

  const moveTo = (distance: number) => {
    if (distance !== standpoint) state.onMove(letter, distance);
  };
  const release = () => {
    const moved = grab.current?.moved ?? false;
    grab.current = null;
    setDragging(false);
    if (moved) state.onMoveEnd?.(letter);
  };
  const endKeys = () => {
    if (!keyed.current) return;
    keyed.current = false;
    state.onMoveEnd?.(letter);
  };

  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0 || grab.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus({ preventScroll: true });
    grab.current = {
      pointer: event.pointerId,
      offset: state.x - event.clientX,
      startX: event.clientX,
      startDistance: standpoint,
      moved: false,
    };
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    const held = grab.current;
    if (!held || held.pointer !== event.pointerId) return;
    if (!held.moved) {
      if (Math.abs(event.clientX - held.startX) < CLICK) return;
      held.moved = true;
      setDragging(true);
      state.onMoveStart?.(letter);
    }
    moveTo(snap(state.toDistance(event.clientX + held.offset), units, state));
  };
  const onPointerEnd = (event: PointerEvent<SVGGElement>) => {
    if (grab.current?.pointer === event.pointerId) release();
  };

  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape' && grab.current?.moved) {
      event.preventDefault();
      moveTo(grab.current.startDistance);
      release();
      return;
    }
    const next = distanceAfterKey(event, standpoint, units, state);
    if (next !== null) {
      event.preventDefault();
      if (!keyed.current) {
        keyed.current = true;
        state.onMoveStart?.(letter);
      }
      moveTo(next);
    } else if (state.onType && beginsTyping(event.key)) {
      event.preventDefault();
      endKeys();
      state.onType(letter, event.key === 'Enter' ? '' : event.key);
    }
  };

  return {
    dragging,
    handlers: {
      ref: element,
      onPointerDown,
      onPointerMove,
      onPointerUp: onPointerEnd,
      onPointerCancel: onPointerEnd,
      onLostPointerCapture: onPointerEnd,
      onDoubleClick: () => state.onType?.(letter, ''),
      onKeyDown,
      onKeyUp: endKeys,
      onBlur: endKeys,
    },
  };
}
