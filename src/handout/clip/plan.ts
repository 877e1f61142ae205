/** When each frame of a clip is shown, and which place of the move it shows. Pure. */

/**
 * once: from the first standpoint to the last;
 * back: there and back, ending on the first picture;
 * loop: there and back without showing an end twice, so that it can be played on and on.
 */
export const WAYS = ['once', 'back', 'loop'] as const;
export type Way = (typeof WAYS)[number];

/**
 * Frames a second. A whole number of milliseconds each: MP4 counts in any fraction, WebM in milliseconds,
 * the encoders in microseconds, and all of them give these times back exactly.
 */
export const RATE = 25;

export interface ClipTiming {
  /** Length of the move one way. */
  readonly seconds: number;
  /** Rest at each end. */
  readonly rest: number;
  readonly way: Way;
}

export interface ClipFrame {
  /** Seconds from the beginning: the frame's number over the rate. */
  readonly time: number;
  /** Place in the move, 0..1. */
  readonly at: number;
}

/** A move has a beginning and an end. */
const FEWEST = 2;

/** All frames of a clip. The first and the last of each way lie on the ends of the move exactly. */
export function clipFrames({ seconds, rest, way }: ClipTiming): ClipFrame[] {
  const count = Math.max(FEWEST, Math.round(seconds * RATE));
  const there = Array.from({ length: count }, (_, i) => i / (count - 1));
  const back = [...there].reverse();
  const resting = (at: number) => new Array<number>(Math.round(rest * RATE)).fill(at);
  const places = {
    once: () => [...resting(0), ...there, ...resting(1)],
    back: () => [...resting(0), ...there, ...resting(1), ...back.slice(1), ...resting(0)],
    loop: () => [...there, ...resting(1), ...back.slice(1, -1), ...resting(0)],
  }[way]();
  return places.map((at, i) => ({ time: i / RATE, at }));
}
