import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBands } from '../../src/stage/bands';

/** Pieces of the numbers 0, 1, 2 ..., each in the one array that is used again. */
async function* pieces(lengths: readonly number[]): AsyncGenerator<Uint8Array> {
  const buffer = new Uint8Array(Math.max(0, ...lengths));
  let next = 0;
  for (const length of lengths) {
    for (let i = 0; i < length; i++) buffer[i] = next++ % 256;
    yield buffer.subarray(0, length);
  }
}

describe('bands', () => {
  it('hold all that came, in its order, in equal lengths but for the last', async () => {
    const length = fc.integer({ min: 1, max: 40 });
    await fc.assert(
      fc.asyncProperty(fc.array(length, { maxLength: 20 }), length, async (lengths, band) => {
        const total = lengths.reduce((sum, each) => sum + each, 0);
        const bands: Uint8Array[] = [];
        for await (const each of inBands(pieces(lengths), band)) bands.push(each);
        const sizes = bands.map((each) => each.length);
        expect(sizes.slice(0, -1).every((size) => size === band)).toBe(true);
        expect(bands.length).toBe(Math.ceil(total / band));
        const all = bands.flatMap((each) => [...each]);
        expect(all).toEqual(Array.from({ length: total }, (_, i) => i % 256));
      }),
    );
  });
});
