/** Tables of ITU-T T.81 (JPEG): the order of coefficients and those offered in its annex K. */

/** Figure A.6: natural index of each place in zigzag order. */
export const ZIGZAG = Uint8Array.of(
  ...[0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5],
  ...[12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21, 28],
  ...[35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51],
  ...[58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54, 47, 55, 62, 63],
);

/** Table K.1, natural order. */
const LUMINANCE = [
  ...[16, 11, 10, 16, 24, 40, 51, 61],
  ...[12, 12, 14, 19, 26, 58, 60, 55],
  ...[14, 13, 16, 24, 40, 57, 69, 56],
  ...[14, 17, 22, 29, 51, 87, 80, 62],
  ...[18, 22, 37, 56, 68, 109, 103, 77],
  ...[24, 35, 55, 64, 81, 104, 113, 92],
  ...[49, 64, 78, 87, 103, 121, 120, 101],
  ...[72, 92, 95, 98, 112, 100, 103, 99],
];

/** Table K.2. */
const CHROMINANCE = [
  ...[17, 18, 24, 47, 99, 99, 99, 99],
  ...[18, 21, 26, 66, 99, 99, 99, 99],
  ...[24, 26, 56, 99, 99, 99, 99, 99],
  ...[47, 66, 99, 99, 99, 99, 99, 99],
  ...Array<number>(32).fill(99),
];

/**
 * Both quantisation tables at a quality of 1..100: annex K's at 50, scaled for others as the Independent
 * JPEG Group's customary 5000 / q and 200 - 2 q percent (from memory; a decoder reads the tables themselves).
 */
export function quantisation(quality: number): readonly [Uint8Array, Uint8Array] {
  const percent = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const scaled = (table: readonly number[]) =>
    Uint8Array.from(table, (value) =>
      Math.min(255, Math.max(1, Math.floor((value * percent + 50) / 100))),
    );
  return [scaled(LUMINANCE), scaled(CHROMINANCE)];
}

/** How many codes there are of each length 1..16, and the values in the order of their codes. */
export interface HuffmanTable {
  readonly counts: readonly number[];
  readonly values: readonly number[];
}

/** The values of tables K.5 and K.6 are runs of zeros (high half) with a size (low half). */
const hex = (text: string): number[] =>
  text
    .split(/\s+/)
    .flatMap((row) => (row.match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16)));

const DC_VALUES = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

/** Tables K.3 to K.6. */
export const HUFFMAN: Readonly<
  Record<'dcLuminance' | 'dcChrominance' | 'acLuminance' | 'acChrominance', HuffmanTable>
> = {
  dcLuminance: { counts: [0, 1, 5, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0], values: DC_VALUES },
  dcChrominance: { counts: [0, 3, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0], values: DC_VALUES },
  acLuminance: {
    counts: [0, 2, 1, 3, 3, 2, 4, 3, 5, 5, 4, 4, 0, 0, 1, 125],
    values: hex(
      `01020300041105122131410613516107227114328191a1082342b1c11552d1f0
      2433627282090a161718191a25262728292a3435363738393a43444546474849
      4a535455565758595a636465666768696a737475767778797a83848586878889
      8a92939495969798999aa2a3a4a5a6a7a8a9aab2b3b4b5b6b7b8b9bac2c3c4c5
      c6c7c8c9cad2d3d4d5d6d7d8d9dae1e2e3e4e5e6e7e8e9eaf1f2f3f4f5f6f7f8
      f9fa`,
    ),
  },
  acChrominance: {
    counts: [0, 2, 1, 2, 4, 4, 3, 4, 7, 5, 4, 4, 0, 1, 2, 119],
    values: hex(
      `000102031104052131061241510761711322328108144291a1b1c109233352f0
      156272d10a162434e125f11718191a262728292a35363738393a434445464748
      494a535455565758595a636465666768696a737475767778797a828384858687
      88898a92939495969798999aa2a3a4a5a6a7a8a9aab2b3b4b5b6b7b8b9bac2c3
      c4c5c6c7c8c9cad2d3d4d5d6d7d8d9dae2e3e4e5e6e7e8e9eaf2f3f4f5f6f7f8
      f9fa`,
    ),
  },
};
