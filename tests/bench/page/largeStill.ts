/** Stills of growing size: what a megapixel costs, and what memory they take. */
import { WebGLRenderTarget } from 'three';
import { pngWriter } from '../../../src/handout/png';
import type { Line } from '../line';
import { summary } from '../pairs';
import type { BareSide } from './bareSide';
import type { StageSide } from './stageSide';
import type { Subject } from './subject';
import { targetBytes } from './targetBytes';

/** Of the picture's 2 x 3. */
export const MEGAPIXELS = [2, 16, 64] as const;
const ROUNDS = 2;
/** Rows that the plain side reads at once: a target of the whole picture's size is refused. */
const STRIP = 256;

const sizeOf = (megapixels: number) => {
  const width = Math.round(Math.sqrt((megapixels * 1e6 * 2) / 3));
  return { width, height: Math.round(1.5 * width) };
};

export interface LargeStill {
  readonly lines: () => Promise<Line[]>;
  /** Bytes of targets that a still of so many megapixels takes while it is made. */
  readonly targets: (megapixels: number) => Promise<number>;
}

export function largeStill(
  { states }: Subject,
  { handle }: StageSide,
  { renderer }: BareSide,
): LargeStill {
  const camera = states[0][0]?.camera;
  if (!camera) throw new Error('no picture');

  /** One view of the mask: the cheapest there is, so that what is not rendering shows. */
  const save = async (megapixels: number) => {
    const { width, height } = sizeOf(megapixels);
    const png = pngWriter(width, height);
    const bands = handle.renderPicture(camera, width, height, { look: 'mask', samples: 1 });
    for await (const band of bands) await png.write(band);
    return png.finish();
  };

  const readAndEncode = (megapixels: number) => {
    const { width, height } = sizeOf(megapixels);
    const strip = new WebGLRenderTarget(width, STRIP);
    renderer.setRenderTarget(strip);
    renderer.clear();
    const pixels = new Uint8ClampedArray(4 * width * STRIP);
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d', { alpha: false });
    for (let y = 0; y < height; y += STRIP) {
      renderer.readRenderTargetPixels(strip, 0, 0, width, STRIP, pixels);
      pen?.putImageData(new ImageData(pixels, width, STRIP), 0, y);
    }
    renderer.setRenderTarget(null);
    strip.dispose();
    return canvas.convertToBlob({ type: 'image/png' });
  };

  /** Seconds a megapixel. */
  const cost = async (work: (megapixels: number) => Promise<Blob>, megapixels: number) => {
    const start = performance.now();
    const { size } = await work(megapixels);
    if (size === 0) throw new Error('nothing was written');
    return (performance.now() - start) / 1000 / megapixels;
  };

  return {
    async lines() {
      await save(1);
      await readAndEncode(1);
      const rounds: { readonly own: number; readonly plain: number }[][] = [];
      for (let round = 0; round < ROUNDS; round++) {
        const row: { readonly own: number; readonly plain: number }[] = [];
        for (const size of MEGAPIXELS)
          row.push({ plain: await cost(readAndEncode, size), own: await cost(save, size) });
        rounds.push(row);
      }
      const of = (i: number) => rounds.map((row) => row[i] as { own: number; plain: number });
      const rate = (seconds: readonly number[]) => (1 / summary(seconds).median).toPrecision(2);
      return [
        ...MEGAPIXELS.map(
          (size, i): Line => ({
            name: `still of ${size} megapixels, one view of the mask`,
            ratio: summary(of(i).map(({ own, plain }) => own / plain)),
            sides: `${rate(of(i).map(({ own }) => own))} MP/s, render, read and write PNG / ${rate(of(i).map(({ plain }) => plain))} MP/s, read back and the browser’s PNG`,
          }),
        ),
        {
          name: 'the same, cost of a megapixel',
          ratio: summary(rounds.map((row) => (row[2]?.own ?? 0) / (row[0]?.own ?? 0))),
          aim: 1.1,
          sides: 'of 64 megapixels / of 2',
        },
      ];
    },
    async targets(megapixels) {
      const { now } = targetBytes();
      await save(megapixels);
      return targetBytes().most - now;
    },
  };
}
