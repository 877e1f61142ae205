/** The rows of a still down to the pictures' lower edge. */
import { MAT, WALL } from './caption';
import type { Box, Sheet } from './sheet';
import type { StillRequest } from './still';

/** One colour as the four bytes lie in memory. */
const packed = (colour: readonly [number, number, number, number]): number =>
  new Uint32Array(Uint8Array.of(...colour).buffer)[0] as number;

/** Rows of bare wall with the mats of the pictures. */
export function wallRows(sheet: Sheet, from: number, count: number): Uint8Array<ArrayBuffer> {
  const pixels = new Uint32Array(sheet.width * count).fill(packed(WALL));
  const mat = packed(MAT);
  for (const box of sheet.pictures) {
    const first = Math.max(from, box.y - sheet.mat);
    const end = Math.min(from + count, box.y + box.height + sheet.mat);
    for (let y = first; y < end; y++) {
      const start = (y - from) * sheet.width + box.x - sheet.mat;
      pixels.fill(mat, start, start + box.width + 2 * sheet.mat);
    }
  }
  return new Uint8Array(pixels.buffer);
}

/** The rows that hold the pictures, in bands. */
export async function* pictureRows(
  sheet: Sheet,
  { pictures, signal, onProgress }: StillRequest,
  bandHeight: number,
): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  const top = sheet.pictures[0] as Box;
  const shares = pictures.map(() => 0);
  const streams = pictures.map(({ render }, i) => {
    const { width, height } = sheet.pictures[i] as Box;
    const progress = (share: number) => {
      shares[i] = share;
      onProgress(shares.reduce((sum, each) => sum + each, 0) / shares.length);
    };
    return render(width, height, bandHeight, signal, progress)[Symbol.asyncIterator]();
  });
  try {
    for (let y = 0; y < top.height; y += bandHeight) {
      signal.throwIfAborted();
      const count = Math.min(bandHeight, top.height - y);
      const rows = wallRows(sheet, top.y + y, count);
      for (const [i, stream] of streams.entries()) {
        const band = await stream.next();
        const box = sheet.pictures[i] as Box;
        if (band.done || band.value.length !== 4 * box.width * count)
          throw new RangeError('The renderer gave a band of another size.');
        for (let row = 0; row < count; row++)
          rows.set(
            band.value.subarray(4 * box.width * row, 4 * box.width * (row + 1)),
            4 * (row * sheet.width + box.x),
          );
      }
      yield rows;
    }
  } finally {
    await Promise.all(streams.map((stream) => stream.return?.()));
  }
}
