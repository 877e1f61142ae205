/** Something that is taken hold of in a drawing: mouse, touch, pen and keyboard. */
import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  useEffect,
  useRef,
  useState,
} from 'react';
import { beginsTyping } from './steps';

export interface GripActions {
  /** A change begins: one drag, or one run of a held key, is one step to undo. */
  onStart(): void;
  /** The hand has carried it so far since it was taken, CSS pixels, y down. */
  onCarry(dx: number, dy: number): void;
  /** Escape during a drag: it goes back to where it was taken. */
  onGiveUp(): void;
  onEnd(): void;
  /** What a key does, or null when it is none of the slider's. */
  keyStep(event: KeyboardEvent): (() => void) | null;
  /** A value is to be typed; `first` is the character that began it, or empty. */
  onType?: ((first: string) => void) | undefined;
}

interface Hold {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  moved: boolean;
}

/** A press that travels less than this is a click, CSS pixels. */
const CLICK = 2;

/**
 * Handlers for the part that is dragged and, where they differ, for the sliders inside it that take
 * the keys. The first slider inside takes the focus when the part itself is none.
 */
export function useGrip(actions: GripActions) {
  const hold = useRef<Hold | null>(null);
  const keyed = useRef(false);
  const element = useRef<SVGGElement>(null);
  const [dragging, setDragging] = useState(false);

  // Some browsers ignore touch-action inside SVG; there the page would scroll under the finger.
  useEffect(() => {
    const grip = element.current;
    const still = (event: TouchEvent) => event.preventDefault();
    grip?.addEventListener('touchmove', still, { passive: false });
    return () => grip?.removeEventListener('touchmove', still);
  }, []);

  const release = () => {
    const moved = hold.current?.moved ?? false;
    hold.current = null;
    setDragging(false);
    if (moved) actions.onEnd();
  };
  const endKeys = () => {
    if (!keyed.current) return;
    keyed.current = false;
    actions.onEnd();
  };

  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0 || hold.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const inner = event.currentTarget.querySelector<SVGElement>('[role=slider]');
    (inner ?? event.currentTarget).focus({ preventScroll: true });
    hold.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, moved: false };
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    const held = hold.current;
    if (!held || held.pointer !== event.pointerId) return;
    const dx = event.clientX - held.x;
    const dy = event.clientY - held.y;
    if (!held.moved) {
      if (Math.hypot(dx, dy) < CLICK) return;
      held.moved = true;
      setDragging(true);
      actions.onStart();
    }
    actions.onCarry(dx, dy);
  };
  const onPointerEnd = (event: PointerEvent<SVGGElement>) => {
    if (hold.current?.pointer === event.pointerId) release();
  };

  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape' && hold.current?.moved) {
      event.preventDefault();
      actions.onGiveUp();
      release();
      return;
    }
    const step = actions.keyStep(event);
    if (step) {
      event.preventDefault();
      if (!keyed.current) {
        keyed.current = true;
        actions.onStart();
      }
      step();
    } else if (actions.onType && beginsTyping(event.key)) {
      event.preventDefault();
      endKeys();
      actions.onType(event.key === 'Enter' ? '' : event.key);
    }
  };

  return {
    dragging,
    pointer: {
      ref: element,
      onPointerDown,
      // The press would else give the focus to the page, past the slider inside.
      onMouseDown: (event: MouseEvent<SVGGElement>) => event.preventDefault(),
      onPointerMove,
      onPointerUp: onPointerEnd,
      onPointerCancel: onPointerEnd,
      onLostPointerCapture: onPointerEnd,
      onDoubleClick: () => actions.onType?.(''),
    },
    keys: { onKeyDown, onKeyUp: endKeys, onBlur: endKeys },
  };
}
