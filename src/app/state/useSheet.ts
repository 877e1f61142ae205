import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface SheetSize {
  /** CSS pixels; 0 until it is laid out. */
  readonly width: number;
  /** Root font size in CSS pixels. */
  readonly rem: number;
  readonly windowHeight: number;
}

/** Width of the element that a drawing lies on, and what its texts follow, kept true. */
export function useSheet(): SheetSize & { readonly ref: RefObject<HTMLDivElement | null> } {
  const ref = useRef<HTMLDivElement>(null);
  const [sheet, setSheet] = useState<SheetSize>({ width: 0, rem: 16, windowHeight: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () =>
      setSheet({
        width: element.clientWidth,
        rem: Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
        windowHeight: window.innerHeight,
      });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return { ref, ...sheet };
}
