/** From the window's pixels to a page's points. */
import type { Ink, Matrix } from './types';

export const POINTS_PER_MM = 72 / 25.4;

/** A page on the screen, at whatever zoom. */
export interface Place {
  readonly left: number;
  readonly top: number;
  /** Points for a pixel of the window. */
  readonly scale: number;
}

export const multiply = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

const NUMBERS = /[\d.]+/g;

/** A computed colour, "rgb(26, 26, 26)" or "rgba(...)" or "color(srgb ...)"; null where nothing is seen of it. */
export function inkOf(colour: string, opacity = 1): Ink | null {
  if (colour === '' || colour === 'none' || colour === 'transparent') return null;
  const share = colour.startsWith('color(srgb');
  const [r, g, b, a = 1] = (colour.match(NUMBERS) ?? []).map(Number);
  if (r === undefined || g === undefined || b === undefined || a * opacity === 0) return null;
  const hex = [r, g, b]
    .map((value) =>
      Math.round(share ? 255 * value : value)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('');
  return { colour: `#${hex}`, opacity: a * opacity };
}

/** From this weight on a text is set in the bold face. */
const BOLD = 550;

export const isBold = ({ fontWeight }: Pick<CSSStyleDeclaration, 'fontWeight'>): boolean =>
  Number(fontWeight) >= BOLD;
