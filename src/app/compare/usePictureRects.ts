import {
  type RefCallback,
  type RefObject,
  useCallback,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import type { Letter } from '../../session/types';
import type { Rect } from '../../stage';

export type Rects = Readonly<Partial<Record<Letter, Rect>>>;

const same = (a: Rect | undefined, b: Rect): boolean =>
  a !== undefined && a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;

/**
 * Where each picture lies inside the wall, CSS pixels from the wall's upper left corner, kept true while
 * the page is laid out anew.
 */
export function usePictureRects(wall: RefObject<HTMLElement | null>): {
  rects: Rects;
  hang: (letter: Letter) => RefCallback<HTMLElement>;
} {
  const [rects, setRects] = useState<Rects>({});
  const hung = useRef(new Map<Letter, HTMLElement>());
  const observer = useRef<ResizeObserver | null>(null);

  const measure = useCallback(() => {
    const corner = wall.current?.getBoundingClientRect();
    if (!corner) return;
    setRects((old) => {
      const now: Partial<Record<Letter, Rect>> = {};
      for (const [letter, element] of hung.current) {
        const box = element.getBoundingClientRect();
        const rect = {
          x: box.left - corner.left,
          y: box.top - corner.top,
          width: box.width,
          height: box.height,
        };
        now[letter] = same(old[letter], rect) ? (old[letter] as Rect) : rect;
      }
      const letters = Object.keys(now) as Letter[];
      const unchanged =
        letters.length === Object.keys(old).length &&
        letters.every((letter) => now[letter] === old[letter]);
      return unchanged ? old : now;
    });
  }, [wall]);

  useLayoutEffect(() => {
    const watching = new ResizeObserver(measure);
    observer.current = watching;
    if (wall.current) watching.observe(wall.current);
    for (const element of hung.current.values()) watching.observe(element);
    // A fallback face gives way to the page's own: captions change their height, pictures their place.
    void document.fonts.ready.then(measure);
    return () => watching.disconnect();
  }, [wall, measure]);

  const hang = useCallback(
    (letter: Letter): RefCallback<HTMLElement> =>
      (element) => {
        if (!element) return;
        hung.current.set(letter, element);
        observer.current?.observe(element);
        measure();
        return () => {
          hung.current.delete(letter);
          observer.current?.unobserve(element);
          measure();
        };
      },
    [measure],
  );
  return { rects, hang };
}
