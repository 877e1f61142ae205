/**
 * Cuts bytes that arrive in pieces into bands of one length; the last may be shorter. Each band is new; a
 * piece is not kept.
 */
export async function* inBands(
  pieces: AsyncIterable<Uint8Array>,
  length: number,
): AsyncGenerator<Uint8Array<ArrayBuffer>, void, undefined> {
  let band: Uint8Array<ArrayBuffer> | null = null;
  let filled = 0;
  for await (const piece of pieces) {
    for (let from = 0; from < piece.length; ) {
      band ??= new Uint8Array(length);
      const taken = piece.subarray(from, from + length - filled);
      band.set(taken, filled);
      from += taken.length;
      filled += taken.length;
      if (filled < length) continue;
      yield band;
      band = null;
      filled = 0;
    }
  }
  if (band) yield band.slice(0, filled);
}
