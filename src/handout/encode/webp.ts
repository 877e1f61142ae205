/** A WebP by the browser's own encoder, which wants the whole picture on a canvas. */
import { type WebpChunk, withChunks } from '../webp';
import { MIME, RowCount, type RowWriter } from './types';

/** A side of the format is told in 14 bits (RFC 6386, 9.1). */
export const LONGEST_WEBP_SIDE = 16383;
/** Canvas and encoder hold all of it at once: 24 megapixels take some 200 MB. */
export const LARGEST_WEBP_AREA = 24e6;

export const fitsWebp = (width: number, height: number): boolean =>
  Math.max(width, height) <= LONGEST_WEBP_SIDE && width * height <= LARGEST_WEBP_AREA;

/** @param quality 1..100 */
export function webpWriter(
  width: number,
  height: number,
  quality: number,
  chunks: readonly WebpChunk[],
): RowWriter {
  if (!fitsWebp(width, height)) throw new RangeError('A WebP of that size does not fit in memory.');
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) throw new Error('The browser gives no canvas to encode with.');
  const rows = new RowCount(width, height);
  let y = 0;
  return {
    async write(rgba) {
      const count = rows.add(rgba);
      pen.putImageData(new ImageData(new Uint8ClampedArray(rgba.buffer), width), 0, y);
      y += count;
    },
    async finish() {
      rows.close();
      const image = await canvas.convertToBlob({ type: MIME.webp, quality: quality / 100 });
      if (image.type !== MIME.webp) throw new Error('this browser writes no WebP');
      return withChunks(image, width, height, chunks);
    },
    async abort() {
      canvas.width = 0;
    },
  };
}
