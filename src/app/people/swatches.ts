/** Colours offered under a neutral light, sRGB. By eye, within the ranges seen in people and cloth. */
import type { Colours } from '../../sitter/types';

export interface Swatch {
  readonly name: string;
  readonly colour: string;
}

const swatches = (list: Readonly<Record<string, string>>): readonly Swatch[] =>
  Object.entries(list).map(([name, colour]) => ({ name, colour }));

const CLOTH = swatches({
  'slate blue': '#6f7f8c',
  navy: '#2c3850',
  teal: '#3f6b6b',
  moss: '#5d6748',
  burgundy: '#6b2f3a',
  rust: '#8f5238',
  sand: '#b5a48a',
  'off-white': '#dcd8cf',
  grey: '#8a8a8a',
  charcoal: '#3f444c',
});

export const SWATCHES: Readonly<Record<keyof Colours, readonly Swatch[]>> = {
  skin: swatches({
    porcelain: '#ecd0bf',
    fair: '#d9b29c',
    'light olive': '#cda382',
    tan: '#b98a66',
    olive: '#a67a55',
    brown: '#8b5e41',
    'deep brown': '#6a4530',
    ebony: '#4a3024',
  }),
  hair: swatches({
    black: '#1d1815',
    'dark brown': '#33241b',
    brown: '#4a3428',
    chestnut: '#5f3b26',
    'light brown': '#7a5a3e',
    blond: '#a98658',
    'light blond': '#c9ae82',
    red: '#84431f',
    grey: '#8d8983',
    white: '#d3d0ca',
  }),
  eyes: swatches({
    'dark brown': '#3b2618',
    brown: '#6b5236',
    hazel: '#7d6a3e',
    green: '#68754f',
    grey: '#75818a',
    blue: '#5b7d9c',
  }),
  top: CLOTH,
  outer: CLOTH,
  trousers: CLOTH,
};

const channels = (hex: string): readonly number[] =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** Colours nearer than this, in 8-bit steps, bear the same name. */
const ALIKE = 14;

/** The name of a colour, or the nearest name told as such. */
export function nameOf(part: keyof Colours, colour: string): { name: string; exact: boolean } {
  const own = channels(colour);
  const far = ({ colour: other }: Swatch) =>
    Math.hypot(...channels(other).map((value, i) => value - (own[i] ?? 0)));
  const [nearest] = [...SWATCHES[part]].sort((a, b) => far(a) - far(b));
  return nearest
    ? { name: nearest.name, exact: far(nearest) <= ALIKE }
    : { name: colour, exact: false };
}

/** "#6f7f8c" from what is typed: six or three hexadecimal digits, with or without the mark. */
export function parseColour(text: string): string | null {
  const digits = /^\s*#?([0-9a-f]{6}|[0-9a-f]{3})\s*$/i.exec(text)?.[1]?.toLowerCase();
  if (digits === undefined) return null;
  return `#${digits.length === 6 ? digits : [...digits].map((digit) => digit + digit).join('')}`;
}
