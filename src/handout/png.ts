/**
 * PNG written as its rows arrive (PNG specification, third edition, W3C 2025; the zlib stream is the
 * browser's own CompressionStream), so that a still of any height needs the memory of one band.
 * Own code because the libraries at hand want the whole picture first. 8 bits, RGB, marked sRGB.
 */
import { BlobSink } from './encode/blobSink';
import { MIME, RowCount, type RowWriter } from './encode/types';

export const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** CRC-32 as PNG annex D gives it. */
export function crc32(bytes: Uint8Array, seed = 0): number {
  let c = ~seed;
  for (const byte of bytes) c = (CRC_TABLE[(c ^ byte) & 0xff] as number) ^ (c >>> 8);
  return ~c >>> 0;
}

function chunk(type: string, data: Uint8Array): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(12 + data.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i++) out[4 + i] = type.charCodeAt(i);
  out.set(data, 8);
  view.setUint32(8 + data.length, crc32(out.subarray(4, 8 + data.length)));
  return out;
}

function header(width: number, height: number): Uint8Array {
  const data = new Uint8Array(13);
  const view = new DataView(data.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  data.set([8, 2, 0, 0, 0], 8); // 8 bits, RGB, deflate, adaptive filters, not interlaced
  return data;
}

/** A chunk that stands before the pixels. */
export interface PngChunk {
  /** Four characters. */
  readonly type: string;
  readonly data: Uint8Array;
}

/**
 * An uncompressed international text chunk.
 * @param keyword Latin-1, at most 79 characters
 */
export const internationalText = (keyword: string, text: string): PngChunk => ({
  type: 'iTXt',
  data: new TextEncoder().encode(`${keyword}\0\0\0\0\0${text}`),
});

/**
 * Filters one RGBA row into `out` (filter byte, then RGB): Sub or Up, whichever has the smaller sum of
 * absolute differences, the heuristic of the PNG specification (12.7).
 */
function filterRow(row: Uint8Array, above: Uint8Array, width: number, out: Uint8Array): void {
  let sub = 0;
  let up = 0;
  for (let x = 0; x < width; x++) {
    for (let c = 0; c < 3; c++) {
      const i = 4 * x + c;
      const value = row[i] as number;
      sub += Math.abs(((value - (x > 0 ? (row[i - 4] as number) : 0)) << 24) >> 24);
      up += Math.abs(((value - (above[i] as number)) << 24) >> 24);
    }
  }
  const bySub = sub < up;
  out[0] = bySub ? 1 : 2;
  for (let x = 0, o = 1; x < width; x++) {
    for (let c = 0; c < 3; c++, o++) {
      const i = 4 * x + c;
      const left = x > 0 ? (row[i - 4] as number) : 0;
      out[o] = (row[i] as number) - (bySub ? left : (above[i] as number));
    }
  }
}

/** Starts a PNG of the given size in pixels, with chunks of metadata in their order. */
export function pngWriter(
  width: number,
  height: number,
  chunks: readonly PngChunk[] = [],
): RowWriter {
  const parts = new BlobSink();
  parts.push(
    SIGNATURE,
    chunk('IHDR', header(width, height)),
    chunk('sRGB', Uint8Array.of(0)), // perceptual intent
    ...chunks.map(({ type, data }) => chunk(type, data)),
  );
  const zlib = new CompressionStream('deflate');
  const sink = zlib.writable.getWriter();
  const drained = (async () => {
    const reader = zlib.readable.getReader();
    for (let r = await reader.read(); !r.done; r = await reader.read())
      parts.push(chunk('IDAT', r.value));
  })();
  drained.catch(() => {}); // an abort rejects it; finish() reports real failures
  let above = new Uint8Array(4 * width);
  const rows = new RowCount(width, height);
  return {
    async write(rgba) {
      const count = rows.add(rgba);
      const filtered = new Uint8Array(count * (3 * width + 1));
      for (let y = 0; y < count; y++) {
        const row = rgba.subarray(4 * width * y, 4 * width * (y + 1));
        filterRow(row, above, width, filtered.subarray(y * (3 * width + 1)));
        above = row as Uint8Array<ArrayBuffer>;
      }
      above = above.slice(); // the caller may reuse its buffer
      await sink.write(filtered);
    },
    async finish() {
      rows.close();
      await sink.close();
      await drained;
      parts.push(chunk('IEND', new Uint8Array()));
      return parts.blob(MIME.png);
    },
    async abort() {
      parts.clear();
      await sink.abort().catch(() => {});
    },
  };
}
