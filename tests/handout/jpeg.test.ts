/** The JPEG writer, read back by jpeg-js, an independent decoder. */
import fc from 'fast-check';
import { decode } from 'jpeg-js';
import { describe, expect, it } from 'vitest';
import { jpegWriter } from '../../src/handout/encode/jpeg';
import { forwardDct, quantisers } from '../../src/handout/jpeg/dct';
import { quantisation } from '../../src/handout/jpeg/tables';

type Paint = (x: number, y: number) => readonly [number, number, number];

function painted(width: number, height: number, paint: Paint): Uint8Array<ArrayBuffer> {
  const pixels = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) pixels.set([...paint(x, y), 255], 4 * (y * width + x));
  return pixels;
}

async function encoded(
  pixels: Uint8Array<ArrayBuffer>,
  width: number,
  height: number,
  quality: number,
  band = height,
): Promise<Buffer> {
  const writer = jpegWriter(width, height, quality);
  for (let y = 0; y < height; y += band)
    await writer.write(pixels.slice(4 * width * y, 4 * width * Math.min(height, y + band)));
  return Buffer.from(await (await writer.finish()).arrayBuffer());
}

/** Peak signal to noise, decibels. */
function likeness(a: Uint8Array, b: Uint8Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) if (i % 4 !== 3) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return 10 * Math.log10(255 ** 2 / (sum / ((3 * a.length) / 4)));
}

/** A soft ball on a ground with an edge and fine stripes: what a portrait asks of a coder. */
const scene: Paint = (x, y) => {
  const r = Math.hypot(x - 60, y - 50);
  if (r < 35) return [200 - r * 2, 150 - r, 130 - r];
  return x > 100 ? [60 + 60 * Math.sin(x / 2), 90, 40] : [160 + y / 4, 165, 175 - x / 5];
};

describe('the JPEG writer', () => {
  it('comes closer the higher the quality, and never strays', async () => {
    const pixels = painted(141, 107, scene);
    const at = async (quality: number) =>
      likeness(decode(await encoded(pixels, 141, 107, quality), { useTArray: true }).data, pixels);
    const [low, usual, high, best] = await Promise.all([50, 80, 92, 100].map(at));
    expect(low).toBeGreaterThan(30);
    expect(usual).toBeGreaterThan((low ?? 0) + 2);
    expect(high).toBeGreaterThan(38);
    expect(best).toBeGreaterThan(47);
  });

  it('gives one file however the rows are cut, of any size', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        async (width, height, band) => {
          const pixels = painted(
            width,
            height,
            (x, y) => [9 * x, 7 * y, 4 * (x + y)].map((v) => v & 255) as never,
          );
          const whole = await encoded(pixels, width, height, 92);
          expect(Buffer.compare(await encoded(pixels, width, height, 92, band), whole)).toBe(0);
          const read = decode(whole, { useTArray: true });
          expect([read.width, read.height]).toEqual([width, height]);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('keeps noise of full range, where runs and sizes are longest', async () => {
    let seed = 1;
    const next = () => {
      seed = (seed * 48271) % 0x7fffffff;
      return seed & 255;
    };
    const pixels = painted(64, 64, () => [next(), next(), next()]);
    const read = decode(await encoded(pixels, 64, 64, 100), { useTArray: true });
    expect(likeness(read.data, pixels)).toBeGreaterThan(44);
  });

  it('refuses to close a picture that lacks rows', async () => {
    const writer = jpegWriter(2, 2, 92);
    await writer.write(new Uint8Array(8));
    await expect(writer.finish()).rejects.toThrow('1 rows were written of 2');
    await writer.abort();
  });
});

describe('the forward transform', () => {
  // T.81 A.3.3, summed as it is written there.
  const bySum = (block: readonly number[], u: number, v: number): number => {
    let sum = 0;
    for (let y = 0; y < 8; y++)
      for (let x = 0; x < 8; x++)
        sum +=
          (block[8 * y + x] ?? 0) *
          Math.cos(((2 * x + 1) * u * Math.PI) / 16) *
          Math.cos(((2 * y + 1) * v * Math.PI) / 16);
    return (sum * (u === 0 ? Math.SQRT1_2 : 1) * (v === 0 ? Math.SQRT1_2 : 1)) / 4;
  };

  it('is the standard’s sum', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -128, max: 127 }), { minLength: 64, maxLength: 64 }),
        (samples) => {
          const block = Float64Array.from(samples);
          forwardDct(block);
          const scales = quantisers(new Uint8Array(64).fill(1));
          for (let i = 0; i < 64; i++)
            expect((block[i] ?? 0) * (scales[i] ?? 0)).toBeCloseTo(
              bySum(samples, i & 7, i >> 3),
              8,
            );
        },
      ),
      { numRuns: 20 },
    );
  });

  it('has annex K’s tables at quality 50', () => {
    const [luminance, chrominance] = quantisation(50);
    expect([...luminance.slice(0, 8)]).toEqual([16, 11, 10, 16, 24, 40, 51, 61]);
    expect([...chrominance.slice(0, 4)]).toEqual([17, 18, 24, 47]);
    expect(luminance[63]).toBe(99);
  });
});
