/** How large this screen shows a picture, from a card held to it, and the place to see it from. */
import { viewingDistance } from '../../optics/print';
import { must } from '../../optics/result';
import { metres } from '../../optics/units';
import type { Measures } from '../../readings/measures';

/** A bank card, metres: ISO/IEC 7810, format ID-1; the corners' radius from memory. */
export const CARD = { width: 0.0856, height: 0.05398, corner: 0.00318 } as const;

/** Widths at which the card can be drawn, CSS pixels: from a hall's projection to a dense small screen. */
export const DRAWN = { least: 16, most: 800, step: 0.5 } as const;

/** CSS pixels of the style sheets' own inch, where the screen is not measured: a card to begin with. */
const PER_INCH = 96;
export const NOMINAL_PIXEL = 0.0254 / PER_INCH;

/** Size of a CSS pixel on the screen, metres, once the card is drawn as wide as the real one. */
export const pixelOfCard = (drawnWidth: number): number => CARD.width / drawnWidth;

/** The same where so many CSS pixels are so wide, metres. */
export const pixelOfWidth = (width: number, pixels: number): number => width / pixels;

/** How wide the card is drawn, CSS pixels, on the slider's steps. */
export const drawnWidth = (pixel: number): number =>
  DRAWN.step *
  Math.round(Math.min(DRAWN.most, Math.max(DRAWN.least, CARD.width / pixel)) / DRAWN.step);

/** Where a picture so many CSS pixels high shows the camera's own perspective from, metres. */
export const seenFrom = ({ lens }: Pick<Measures, 'lens'>, pixels: number, pixel: number): number =>
  must(viewingDistance(lens.eyeDepth, metres(pixels * pixel), lens.frame.height));

export interface Screen {
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** Device pixels per CSS pixel: another zoom is another screen. */
  readonly ratio: number;
}

export const screenKey = ({ width, height, ratio }: Screen): string =>
  `standpoint-pixel-${width}x${height}@${ratio}`;

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

/** The pixel size kept for a screen; null where none is, or the browser refuses to tell. */
export function keptPixel(memory: () => Memory, key: string): number | null {
  try {
    const pixel = Number(memory().getItem(key));
    return pixel > 0 && Number.isFinite(pixel) ? pixel : null;
  } catch {
    return null;
  }
}

/** A browser that refuses to keep it has it for this visit alone. */
export function keepPixel(memory: () => Memory, key: string, pixel: number): void {
  try {
    memory().setItem(key, String(pixel));
  } catch {
    // nothing is lost but a minute with a card
  }
}
