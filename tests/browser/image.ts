/** Pictures as pixels: read from the page's canvas, from a screenshot or from a saved PNG. */
import { PNG } from 'pngjs';

export interface Image {
  readonly width: number;
  readonly height: number;
  /** RGBA, rows top down. */
  readonly data: Uint8Array;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const decodePng = (bytes: Buffer): Image => {
  const { width, height, data } = PNG.sync.read(bytes);
  return { width, height, data };
};

const at = (image: Image, x: number, y: number, channel: number): number =>
  image.data[4 * (y * image.width + x) + channel] ?? 0;

export function crop(image: Image, { x, y, width, height }: Box): Image {
  const data = new Uint8Array(4 * width * height);
  for (let row = 0; row < height; row++) {
    const from = 4 * ((y + row) * image.width + x);
    data.set(image.data.subarray(from, from + 4 * width), 4 * row * width);
  }
  return { width, height, data };
}

/** Standard deviation of the pixels' mean channel, 0..255: nought where nothing is drawn. */
export function contrast({ data }: Image): number {
  let sum = 0;
  let squares = 0;
  const count = data.length / 4;
  for (let i = 0; i < data.length; i += 4) {
    const value = ((data[i] ?? 0) + (data[i + 1] ?? 0) + (data[i + 2] ?? 0)) / 3;
    sum += value;
    squares += value * value;
  }
  return Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
}

/** The part from the upper left corner that both have: equal boxes may differ by a rounded pixel. */
export function inCommon(a: Image, b: Image): [Image, Image] {
  const width = Math.min(a.width, b.width);
  const height = Math.min(a.height, b.height);
  const box = { x: 0, y: 0, width, height };
  return [crop(a, box), crop(b, box)];
}

/** Root mean square difference of two images of one size, 0..255. */
export function difference(a: Image, b: Image): number {
  if (a.width !== b.width || a.height !== b.height)
    throw new RangeError(`${a.width} x ${a.height} against ${b.width} x ${b.height}`);
  let sum = 0;
  for (let i = 0; i < a.data.length; i++)
    if (i % 4 !== 3) sum += ((a.data[i] ?? 0) - (b.data[i] ?? 0)) ** 2;
  return Math.sqrt(sum / ((3 * a.data.length) / 4));
}

/** Made smaller by averaging: each new pixel is the mean of the area it covers. */
export function shrink(image: Image, width: number, height: number): Image {
  const data = new Uint8Array(4 * width * height);
  const [sx, sy] = [image.width / width, image.height / height];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      let area = 0;
      for (let v = Math.floor(y * sy); v < Math.min(image.height, (y + 1) * sy); v++) {
        const high = Math.min(v + 1, (y + 1) * sy) - Math.max(v, y * sy);
        for (let u = Math.floor(x * sx); u < Math.min(image.width, (x + 1) * sx); u++) {
          const part = high * (Math.min(u + 1, (x + 1) * sx) - Math.max(u, x * sx));
          area += part;
          for (let c = 0; c < 3; c++) sum[c] = (sum[c] ?? 0) + part * at(image, u, v, c);
        }
      }
      const to = 4 * (y * width + x);
      for (let c = 0; c < 3; c++) data[to + c] = Math.round((sum[c] ?? 0) / area);
      data[to + 3] = 255;
    }
  return { width, height, data };
}

/** Mean absolute step between each column and the one left of it (or row and the one above). */
export function steps(image: Image, across: boolean): number[] {
  const [long, short] = across ? [image.width, image.height] : [image.height, image.width];
  const out = [0];
  for (let i = 1; i < long; i++) {
    let sum = 0;
    for (let j = 0; j < short; j++)
      for (let c = 0; c < 3; c++)
        sum += across
          ? Math.abs(at(image, i, j, c) - at(image, i - 1, j, c))
          : Math.abs(at(image, j, i, c) - at(image, j, i - 1, c));
    out.push(sum / (3 * short));
  }
  return out;
}

/** Pixels within `tolerance` of a colour in every channel. */
export function countColour(
  { data }: Image,
  [r, g, b]: readonly [number, number, number],
  tolerance: number,
): number {
  let count = 0;
  for (let i = 0; i < data.length; i += 4)
    if (
      Math.abs((data[i] ?? 0) - r) <= tolerance &&
      Math.abs((data[i + 1] ?? 0) - g) <= tolerance &&
      Math.abs((data[i + 2] ?? 0) - b) <= tolerance
    )
      count += 1;
  return count;
}
