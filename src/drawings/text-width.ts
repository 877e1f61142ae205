/** Widths of texts: measured where there is a page, estimated where there is none. */
import { type RefObject, useEffect, useMemo, useState } from 'react';

/** Width in pixels of a text of the given size and weight. */
export type MeasureText = (text: string, px: number, weight?: number) => number;

/** Width over height of characters of a book face; generous, so that an estimate keeps texts apart. */
const ESTIMATE: readonly (readonly [RegExp, number])[] = [
  [/[ilj.,:;'|!]/, 0.33],
  [/[ frt()]/, 0.4],
  [/[mwMW@%]/, 0.95],
  [/[A-Z]/, 0.74],
];
const ORDINARY = 0.6;

export const estimateText: MeasureText = (text, px) =>
  [...text].reduce(
    (sum, character) =>
      sum + (ESTIMATE.find(([kind]) => kind.test(character))?.[1] ?? ORDINARY) * px,
    0,
  );

/** Room for tabular figures and optical sizes, which the canvas does not measure. */
const MARGIN = 1.04;

function canvasMeasure(family: string): MeasureText {
  const context = document.createElement('canvas').getContext('2d');
  if (!context) return estimateText;
  const known = new Map<string, number>();
  return (text, px, weight = 400) => {
    const key = `${weight} ${px} ${text}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    context.font = `${weight} ${px}px ${family}`;
    const width = context.measureText(text).width * MARGIN;
    known.set(key, width);
    return width;
  };
}

/** Measures in the face of the given element; again when the page's fonts have come. */
export function useTextWidth(element: RefObject<Element | null>): MeasureText {
  const [family, setFamily] = useState<string | null>(null);
  const [fonts, setFonts] = useState(0);
  useEffect(() => {
    if (element.current) setFamily(getComputedStyle(element.current).fontFamily);
    let gone = false;
    void document.fonts.ready.then(() => {
      if (!gone) setFonts((count) => count + 1);
    });
    return () => {
      gone = true;
    };
  }, [element]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: fonts that came late change the widths of the same family
  return useMemo(() => (family ? canvasMeasure(family) : estimateText), [family, fonts]);
}
