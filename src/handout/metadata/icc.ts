/**
 * The sRGB colour space as an ICC profile, version 4 (ICC.1:2010): primaries and white adapted to D50, and
 * the curve of IEC 61966-2-1. JPEG and WebP carry it; PNG says the same in its sRGB chunk.
 */

const bytes = (text: string): number[] => [...text].map((character) => character.charCodeAt(0));
const u32 = (value: number): number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);
/** Signed, 16 binary places. */
const fixed = (value: number): number[] => u32(Math.round(value * 65536));

const xyz = (x: number, y: number, z: number): number[] => [
  ...bytes('XYZ '),
  ...u32(0),
  ...[x, y, z].flatMap(fixed),
];

/** One text in English, UTF-16. */
const localised = (text: string): number[] => [
  ...bytes('mluc'),
  ...u32(0),
  ...u32(1),
  ...u32(12),
  ...bytes('enUS'),
  ...u32(2 * text.length),
  ...u32(28),
  ...bytes(text).flatMap((code) => [0, code]),
];

/** Parametric curve of type 3: power, slope and offset of the curve, slope and end of the straight part. */
const CURVE = [
  ...bytes('para'),
  ...u32(0),
  ...[0, 3, 0, 0],
  ...[2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045].flatMap(fixed),
];

/** From D65 to D50 (Bradford), rows of three. */
const ADAPTATION = [
  ...[1.04788, 0.02292, -0.0502],
  ...[0.02959, 0.99048, -0.01706],
  ...[-0.00923, 0.01508, 0.75168],
];

/** The illuminant D50 of the connection space. */
const D50 = [0.9642, 1, 0.8249] as const;

const TAGS: readonly (readonly [string, number[]])[] = [
  ['desc', localised('sRGB')],
  ['cprt', localised('No copyright, use freely')],
  ['wtpt', xyz(...D50)],
  ['chad', [...bytes('sf32'), ...u32(0), ...ADAPTATION.flatMap(fixed)]],
  ['rXYZ', xyz(0.43607, 0.22249, 0.01392)],
  ['gXYZ', xyz(0.38515, 0.71687, 0.09708)],
  ['bXYZ', xyz(0.14307, 0.06061, 0.7141)],
  ['rTRC', CURVE],
  ['gTRC', CURVE],
  ['bTRC', CURVE],
];

const HEADER = 128;

function profile(): Uint8Array<ArrayBuffer> {
  const table: number[] = u32(TAGS.length);
  const data: number[] = [];
  const places = new Map<number[], number>();
  const start = HEADER + 4 + 12 * TAGS.length;
  for (const [name, content] of TAGS) {
    const at = places.get(content) ?? start + data.length;
    if (!places.has(content)) {
      places.set(content, at);
      data.push(...content, ...Array<number>((4 - (content.length % 4)) % 4).fill(0));
    }
    table.push(...bytes(name), ...u32(at), ...u32(content.length));
  }
  const header = [
    ...u32(start + data.length),
    ...u32(0),
    ...[4, 0x20, 0, 0],
    ...bytes('mntrRGB XYZ '),
    ...[0x07, 0xea, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0], // 1 January 2026
    ...bytes('acsp'),
    ...Array<number>(28).fill(0),
    ...D50.flatMap(fixed),
    ...Array<number>(48).fill(0),
  ];
  return Uint8Array.of(...header, ...table, ...data);
}

export const SRGB_PROFILE = profile();
