import { type RefObject, useLayoutEffect, useState } from 'react';

/** Room kept under a picture for its mat and a caption without remarks, root font sizes. */
const USUAL = 7.9;
/** Between picture and caption, and below it, root font sizes. */
const AROUND = 1.9;
/** A room that exceeds what is needed by so much is given back, root font sizes. */
const SPARE = 1.5;

/**
 * The room that the longest caption takes below its picture, in root font sizes: where the page fits the
 * window, pictures are as high as this leaves. A narrower picture makes a longer caption, so the room grows
 * until all is in sight, and is given back only when a caption has become much shorter.
 */
export function useCaptionRoom(wall: RefObject<HTMLElement | null>, count: number): number {
  const [room, setRoom] = useState(USUAL);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another number of pictures is watched anew
  useLayoutEffect(() => {
    const captions = [...(wall.current?.querySelectorAll<HTMLElement>('figcaption') ?? [])];
    const measure = () => {
      const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      const tallest = Math.max(0, ...captions.map(({ offsetHeight }) => offsetHeight)) / rem;
      const needed = Math.max(USUAL, Math.ceil(10 * (tallest + AROUND)) / 10);
      setRoom((now) => (needed > now || needed < now - SPARE ? needed : now));
    };
    const observer = new ResizeObserver(measure);
    for (const caption of captions) observer.observe(caption);
    measure();
    return () => observer.disconnect();
  }, [wall, count]);
  return room;
}
