/** A JPEG written as its rows arrive. */
import { JpegEncoder } from '../jpeg/encoder';
import { BlobSink } from './blobSink';
import { MIME, RowCount, type RowWriter } from './types';

/**
 * Starts a JPEG of the given size in pixels.
 * @param quality 1..100
 * @param segments application segments, whole, in their order
 */
export function jpegWriter(
  width: number,
  height: number,
  quality: number,
  segments: readonly Uint8Array<ArrayBuffer>[] = [],
): RowWriter {
  const encoder = new JpegEncoder(width, height, quality);
  const count = new RowCount(width, height);
  const sink = new BlobSink();
  sink.push(...encoder.begin(segments));
  return {
    async write(rgba) {
      count.add(rgba);
      sink.push(encoder.rows(rgba));
    },
    async finish() {
      count.close();
      sink.push(...encoder.end());
      return sink.blob(MIME.jpeg);
    },
    async abort() {
      sink.clear();
    },
  };
}
