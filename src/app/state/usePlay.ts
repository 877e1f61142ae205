import { useCallback, useEffect, useRef, useState } from 'react';

export interface Play {
  /** Place in the move, 0..1, or null when no move is shown. */
  readonly at: number | null;
  readonly playing: boolean;
  start(): void;
  pause(): void;
  /** A place at a press, where motion is not wanted; after the last one it begins again. */
  step(): void;
  /** Shows a place in the move; null puts the pictures back. */
  scrub(at: number | null): void;
}

/** Steps of the move where motion is not wanted. */
const STEPS = 4;

/** Plays a move of the given length; it stops on the last picture. */
export function usePlay(seconds: number): Play {
  const [at, setAt] = useState<number | null>(null);
  const [playing, setPlaying] = useState(false);
  const begun = useRef({ time: 0, at: 0 });

  useEffect(() => {
    if (!playing) return;
    let frame = 0;
    const tick = (now: number) => {
      const next = begun.current.at + (now - begun.current.time) / (1000 * seconds);
      setAt(Math.min(1, next));
      if (next < 1) frame = requestAnimationFrame(tick);
      else setPlaying(false);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [playing, seconds]);

  const start = useCallback(() => {
    setAt((old) => {
      const from = old === null || old >= 1 ? 0 : old;
      begun.current = { time: performance.now(), at: from };
      return from;
    });
    setPlaying(true);
  }, []);
  const pause = useCallback(() => setPlaying(false), []);
  const scrub = useCallback((next: number | null) => {
    setPlaying(false);
    setAt(next);
  }, []);
  const step = useCallback(() => {
    setPlaying(false);
    setAt((old) => (old === null || old >= 1 ? 0 : Math.min(1, old + 1 / STEPS)));
  }, []);
  return { at, playing, start, pause, step, scrub };
}
