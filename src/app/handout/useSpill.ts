import { type RefObject, useEffect, useState } from 'react';

/** Rounding of the page's zoom, CSS pixels. */
const TOLERANCE = 1;

/** Whether what stands on a page runs beyond its body, which does not grow: paper has an end. */
export function useSpill(body: RefObject<HTMLElement | null>): boolean {
  const [spills, setSpills] = useState(false);
  useEffect(() => {
    const element = body.current;
    if (!element) return;
    const look = (): void => {
      const { bottom } = element.getBoundingClientRect();
      setSpills(
        [...element.children].some(
          (part) => part.getBoundingClientRect().bottom > bottom + TOLERANCE,
        ),
      );
    };
    const sizes = new ResizeObserver(look);
    const watch = (): void => {
      sizes.disconnect();
      for (const part of [element, ...element.children]) sizes.observe(part);
    };
    // Parts come and go; each tells its own size.
    const parts = new MutationObserver(watch);
    parts.observe(element, { childList: true });
    watch();
    return () => {
      sizes.disconnect();
      parts.disconnect();
    };
  }, [body]);
  return spills;
}
