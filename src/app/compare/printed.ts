/** How a picture's caption is printed below it in stills and clips. */
import type { PrintedCaption } from '../../handout/caption';
import { formatFNumber } from '../../readings/format';
import type { Letter, Session } from '../../session/types';
import { words } from '../words';
import { captionWords } from './captions';
import type { Shown } from './shown';

/** The light theme's accents and dash patterns (in caption lines): what is printed is read on white. */
export const PRINTED: Readonly<Record<Letter, Pick<PrintedCaption, 'accent' | 'dashes'>>> = {
  A: { accent: '#85280f', dashes: [] },
  B: { accent: '#17458a', dashes: [0.5, 0.3] },
  C: { accent: '#285519', dashes: [0.15, 0.25] },
  D: { accent: '#64308a', dashes: [0.65, 0.25, 0.15, 0.25] },
};

export const TYPEFACE = '"Literata Variable", Georgia, serif';

/** The letters' typeface, ready to be drawn on a canvas. */
export const fetchTypeface = (): Promise<unknown> => document.fonts.load(`500 40px ${TYPEFACE}`);

export function printedCaption(shown: Shown, { units }: Pick<Session, 'units'>): PrintedCaption {
  const caption = captionWords(shown, units);
  const { lens, frame, fromEyes } = words.compare;
  return {
    letter: shown.letter,
    ...PRINTED[shown.letter],
    title: `${caption.distance} ${fromEyes}`,
    details: [
      `${caption.who === null ? '' : `${caption.who}, `}${lens(caption.focal)}, ${frame(caption.frame)}, ${formatFNumber(shown.resolved.fNumber)}`,
      ...(caption.angle ? [caption.angle] : []),
    ],
  };
}
