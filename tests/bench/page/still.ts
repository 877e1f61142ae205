/** A still of one picture: what rendering and encoding it costs. */
import { HalfFloatType, SRGBColorSpace, WebGLRenderTarget } from 'three';
import { pngWriter } from '../../../src/handout/png';
import { SAMPLES } from '../../../src/stage/stillOptions';
import type { Line } from '../line';
import { compareCost, type Ratio } from '../pairs';
import type { BareSide } from './bareSide';
import type { StageSide } from './stageSide';
import type { Subject } from './subject';

const WIDTH = 600;
const HEIGHT = 900;
const PAIRS = 5;

const divided = (ratio: Ratio, by: number): Ratio => ({
  ...ratio,
  median: ratio.median / by,
  from: ratio.from / by,
  to: ratio.to / by,
});

export async function stillLines(
  { states }: Subject,
  { handle }: StageSide,
  bare: BareSide,
): Promise<Line[]> {
  const camera = states[0][0]?.camera;
  if (!camera) throw new Error('no picture');
  const { renderer } = bare;
  const pixel = new Uint8Array(4);
  const pixels = new Uint8ClampedArray(4 * WIDTH * HEIGHT);
  const byte = new WebGLRenderTarget(WIDTH, HEIGHT, { colorSpace: SRGBColorSpace });
  const half = new WebGLRenderTarget(WIDTH, HEIGHT, { type: HalfFloatType });
  bare.wear('studio');
  bare.drawInto(byte, camera);

  const save = async () => {
    const png = pngWriter(WIDTH, HEIGHT);
    for await (const band of handle.renderPicture(camera, WIDTH, HEIGHT)) await png.write(band);
    return png.finish();
  };
  const readAndEncode = () => {
    renderer.readRenderTargetPixels(byte, 0, 0, WIDTH, HEIGHT, pixels);
    const canvas = new OffscreenCanvas(WIDTH, HEIGHT);
    canvas.getContext('2d')?.putImageData(new ImageData(pixels, WIDTH, HEIGHT), 0, 0);
    return canvas.convertToBlob({ type: 'image/png' });
  };
  const render = async () => {
    for await (const band of handle.renderPicture(camera, WIDTH, HEIGHT)) pixel[0] = band[0] ?? 0;
  };
  const renderOnce = () => {
    bare.drawInto(half, camera);
    renderer.readRenderTargetPixels(byte, 0, 0, 1, 1, pixel);
  };
  return [
    {
      name: `still, time a megapixel at ${SAMPLES} samples`,
      ratio: await compareCost(save, readAndEncode, PAIRS),
      sides: 'render, read and write PNG / read back a finished picture, the browser’s PNG',
    },
    {
      name: 'still, time a megapixel and sample',
      ratio: divided(await compareCost(render, renderOnce, PAIRS), SAMPLES),
      sides: 'one sample, its share of tone curve and read-back / three.js drawing the same once',
    },
  ];
}
