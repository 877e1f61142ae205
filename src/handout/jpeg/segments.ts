/** The marker segments of a JPEG (ITU-T T.81, annex B). */
import { HUFFMAN, ZIGZAG } from './tables';

const MARKERS = { start: 0xd8, end: 0xd9 } as const;
const FRAME_BASELINE = 0xc0;
const HUFFMAN_TABLES = 0xc4;
const SCAN = 0xda;
const QUANTISATION_TABLES = 0xdb;
/** A segment's length is told in two bytes, which count themselves. */
export const LARGEST_SEGMENT = 0xffff - 2;

export const marker = (name: keyof typeof MARKERS): Uint8Array<ArrayBuffer> =>
  Uint8Array.of(0xff, MARKERS[name]);

/** @throws RangeError when the content does not fit. */
export function segment(code: number, content: ArrayLike<number>): Uint8Array<ArrayBuffer> {
  if (content.length > LARGEST_SEGMENT)
    throw new RangeError('A JPEG segment holds less than that.');
  const length = content.length + 2;
  const bytes = new Uint8Array(length + 2);
  bytes.set([0xff, code, length >> 8, length & 0xff]);
  bytes.set(content, 4);
  return bytes;
}

export const quantisationTables = (tables: readonly Uint8Array[]): Uint8Array<ArrayBuffer> =>
  segment(
    QUANTISATION_TABLES,
    tables.flatMap((table, id) => [id, ...Array.from(ZIGZAG, (i) => table[i] as number)]),
  );

/** Eight bits; three components of one sampling each, the first with table 0, the others with table 1. */
export const frameHeader = (width: number, height: number): Uint8Array<ArrayBuffer> =>
  segment(FRAME_BASELINE, [
    ...[8, height >> 8, height & 0xff, width >> 8, width & 0xff],
    ...[3, 1, 0x11, 0, 2, 0x11, 1, 3, 0x11, 1],
  ]);

export const huffmanTables = (): Uint8Array<ArrayBuffer> => {
  const { dcLuminance, acLuminance, dcChrominance, acChrominance } = HUFFMAN;
  const tables = [
    [0x00, dcLuminance],
    [0x10, acLuminance],
    [0x01, dcChrominance],
    [0x11, acChrominance],
  ] as const;
  return segment(
    HUFFMAN_TABLES,
    tables.flatMap(([id, { counts, values }]) => [id, ...counts, ...values]),
  );
};

export const scanHeader = (): Uint8Array<ArrayBuffer> =>
  segment(SCAN, [3, 1, 0x00, 2, 0x11, 3, 0x11, 0, 63, 0]);
