import { type RefObject, useLayoutEffect, useState } from 'react';
import { paperSize } from '../../handout/paper';
import type { Orientation } from '../../optics/types';
import type { Paper } from '../../session/handout';

/** CSS fixes 96 pixels to the inch. */
const PX_PER_MM = 96 / 25.4;
/** A page is shown no larger than this, or the eye loses the line. */
const LARGEST = 1.25;

/** By how much pages are shown larger or smaller than they print, so that they fill what is beside the controls. */
export function usePaperZoom(
  around: RefObject<HTMLElement | null>,
  paper: Paper,
  orientation: Orientation,
): number {
  const [zoom, setZoom] = useState(1);
  useLayoutEffect(() => {
    const element = around.current;
    if (!element) return;
    const { width } = paperSize(paper, orientation);
    const measure = () => setZoom(Math.min(LARGEST, element.clientWidth / (width * PX_PER_MM)));
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [around, paper, orientation]);
  return zoom;
}
