/** Finds the coloured squares of the landmarks view in the pixels of a picture. */
import { LANDMARKS, type LandmarkName } from '../../src/sitter/types';
import { landmarkColour } from '../../src/stage/landmarkColours';
import type { Image } from './image';

export interface Found {
  readonly x: number;
  readonly y: number;
}

type Colour = readonly [number, number, number];

/** 8-bit rounding of a blend with black. */
const ROUNDING = 3;
/** A whole square fills its bounding box but for the blended rim. */
const LEAST_FILL = 0.6;

const NAMES = new Map(LANDMARKS.map((name) => [landmarkColour(name).join(), name]));

const pixel = ({ data }: Image, i: number): Colour => [
  data[4 * i] ?? 0,
  data[4 * i + 1] ?? 0,
  data[4 * i + 2] ?? 0,
];

const brightest = ([r, g, b]: Colour): number => Math.max(r, g, b);

/** Pixels that hang together with `start`, black apart. */
function blobFrom(image: Image, start: number, seen: Uint8Array): number[] {
  const blob = [start];
  seen[start] = 1;
  for (const i of blob) {
    const x = i % image.width;
    const y = (i - x) / image.width;
    for (let v = Math.max(0, y - 1); v <= Math.min(image.height - 1, y + 1); v++)
      for (let u = Math.max(0, x - 1); u <= Math.min(image.width - 1, x + 1); u++) {
        const next = v * image.width + u;
        if (seen[next] || brightest(pixel(image, next)) === 0) continue;
        seen[next] = 1;
        blob.push(next);
      }
  }
  return blob;
}

/** The landmark whose square a blob is, and the square's middle; null for a cut or overlaid one. */
function squareOf(image: Image, blob: readonly number[]): [LandmarkName, Found] | null {
  const colours = blob.map((i) => pixel(image, i));
  const full = colours.reduce((best, colour) =>
    brightest(colour) > brightest(best) ? colour : best,
  );
  const name = NAMES.get(full.join());
  if (!name) return null;
  const channel = full.indexOf(brightest(full));
  let [sum, sumX, sumY] = [0, 0, 0];
  let [left, right, top, bottom] = [image.width, 0, image.height, 0];
  for (const [k, i] of blob.entries()) {
    const colour = colours[k] as Colour;
    // The share of the pixel that the square covers: over black the blend is in proportion to it.
    const share = colour[channel as 0 | 1 | 2] / full[channel as 0 | 1 | 2];
    if (colour.some((value, c) => Math.abs(value - share * (full[c] as number)) > ROUNDING))
      return null;
    const x = i % image.width;
    const y = (i - x) / image.width;
    sum += share;
    sumX += share * (x + 0.5);
    sumY += share * (y + 0.5);
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  const atEdge =
    left === 0 || top === 0 || right === image.width - 1 || bottom === image.height - 1;
  const boxed = (right - left + 1) * (bottom - top + 1);
  if (atEdge || sum < LEAST_FILL * boxed) return null;
  return [name, { x: sumX / sum, y: sumY / sum }];
}

/** Middles of all whole, separate squares, pixels from the picture's upper left corner. */
export function findSquares(image: Image): Map<LandmarkName, Found> {
  const seen = new Uint8Array(image.width * image.height);
  const found = new Map<LandmarkName, Found>();
  for (let i = 0; i < seen.length; i++) {
    if (seen[i] || brightest(pixel(image, i)) === 0) continue;
    const square = squareOf(image, blobFrom(image, i, seen));
    if (!square) continue;
    const [name, middle] = square;
    if (found.has(name)) throw new Error(`${name} is drawn twice`);
    found.set(name, middle);
  }
  return found;
}
