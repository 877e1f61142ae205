import type { SculptureMesh } from './sculpture';
import type { Colours } from './types';

type Rgb = readonly [number, number, number];

/** sRGB hex (#rrggbb) to linear reflectance, 0..1 (IEC 61966-2-1). */
export function linearRgb(hex: string): Rgb {
  const n = Number.parseInt(hex.slice(1), 16);
  const channel = (shift: number): number => {
    const c = ((n >> shift) & 255) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [channel(16), channel(8), channel(0)];
}

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
const blend = (a: Rgb, b: Rgb, t: number): Rgb => [
  mix(a[0], b[0], t),
  mix(a[1], b[1], t),
  mix(a[2], b[2], t),
];
const scaled = (c: Rgb, r: number, g: number, b: number): Rgb => [c[0] * r, c[1] * g, c[2] * b];

const LIPS = linearRgb('#b57266');
const WHITE_OF_EYE = linearRgb('#d8cec3');
const PARTING: Rgb = [0.09, 0.035, 0.028];
const LASH: Rgb = [0.03, 0.02, 0.018];
/** Shoes are no choice of the sitter's. */
const SHOES = linearRgb('#2b2826');
const FRAME = linearRgb('#3a322c');

type Share = (mask: string) => number;

function skinColour(colours: Painted, share: Share): Rgb {
  // Lips keep their distance from the skin's own colour.
  const lips = blend(LIPS, colours.skin, 0.25);
  let c = blend(colours.skin, lips, 0.72 * share('lips'));
  c = blend(c, scaled(c, 0.95, 0.62, 0.58), 0.7 * share('lidRim'));
  c = blend(c, colours.hair, 0.42 * share('brow') + (colours.bald ? 0 : 0.75 * share('scalp')));
  c = blend(c, PARTING, 0.6 * share('parting'));
  c = blend(c, LASH, 0.75 * share('lash'));
  c = blend(c, scaled(c, 0.3, 0.2, 0.18), share('hollow'));
  return scaled(c, 1, 1 - 0.2 * share('blush'), 1 - 0.22 * share('blush'));
}

/** The white, and inside the limbus the iris' own colour: its fibres and the pupil are the stage's to draw. */
function eyeColour(colours: Painted, share: Share): Rgb {
  const white = blend(WHITE_OF_EYE, scaled(WHITE_OF_EYE, 0.92, 0.66, 0.6), 0.55 * share('blush'));
  return blend(white, colours.eyes, share('iris'));
}

interface Painted {
  readonly skin: Rgb;
  readonly hair: Rgb;
  readonly eyes: Rgb;
  readonly top: Rgb;
  readonly outer: Rgb;
  readonly trousers: Rgb;
  readonly bald: boolean;
}

/** Linear reflectance, 0..255, one triple a vertex. */
export function colourMesh(mesh: SculptureMesh, colours: Colours, bald: boolean): Uint8Array {
  const painted: Painted = {
    skin: linearRgb(colours.skin),
    hair: linearRgb(colours.hair),
    eyes: linearRgb(colours.eyes),
    top: linearRgb(colours.top),
    outer: linearRgb(colours.outer),
    trousers: linearRgb(colours.trousers),
    bald,
  };
  const count = mesh.openness.length;
  const out = new Uint8Array(3 * count);
  let v = 0;
  const share: Share = (mask) => (mesh.masks[mask]?.[v] ?? 0) / 255;
  const paint = PAINT[mesh.substance];
  for (; v < count; v++) {
    const c = paint(painted, share);
    for (let j = 0; j < 3; j++) out[3 * v + j] = Math.round(255 * Math.min(1, c[j] as number));
  }
  return out;
}

/** A hair's own lightness: its mask holds half of it. */
const lock = (c: Rgb, share: Share): Rgb => {
  const s = 2 * share('shade');
  return scaled(c, s, s, s);
};

const PAINT: Readonly<Record<SculptureMesh['substance'], (c: Painted, share: Share) => Rgb>> = {
  skin: skinColour,
  eye: eyeColour,
  hair: (c, share) => lock(c.hair, share),
  brows: (c, share) => scaled(lock(c.hair, share), 0.8, 0.8, 0.8),
  top: (c) => c.top,
  outer: (c) => c.outer,
  trousers: (c) => c.trousers,
  frame: () => FRAME,
  glass: () => [1, 1, 1],
  shoes: () => SHOES,
};
