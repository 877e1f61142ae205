import { type RefObject, useMemo, useRef } from 'react';
import { useTextWidth } from '../text-width';
import { layoutRail, type RailLayout } from './layout';
import type { RailContent, RailSheet } from './types';

/** The rail laid out, its texts measured in the face of the drawing that they are put in. */
export function useRailLayout(props: RailContent & Omit<RailSheet, 'measure'>): {
  readonly drawing: RefObject<SVGSVGElement | null>;
  readonly layout: RailLayout;
} {
  const { units, scale, figure, room, pictures, focus, width, rem, maxBand } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const layout = useMemo(
    () =>
      layoutRail({ units, scale, figure, room, pictures, focus }, { width, rem, maxBand, measure }),
    [units, scale, figure, room, pictures, focus, width, rem, maxBand, measure],
  );
  return { drawing, layout };
}
