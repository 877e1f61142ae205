import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { crc32, internationalText, pngWriter } from '../../src/handout/png';

const read = async (blob: Blob) => PNG.sync.read(Buffer.from(await blob.arrayBuffer()));

describe('the PNG writer', () => {
  // Check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms: "123456789".
  it('has the published CRC-32 check value', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  // Read back by pngjs, an independent decoder.
  it('is read back by another decoder, pixel for pixel, however the rows are cut', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        fc.infiniteStream(fc.integer({ min: 0, max: 255 })),
        async (width, height, band, stream) => {
          const pixels = new Uint8Array(4 * width * height);
          for (let i = 0; i < pixels.length; i++)
            pixels[i] = i % 4 === 3 ? 255 : (stream.next().value as number);
          const writer = pngWriter(width, height, [
            internationalText('Description', 'Zwei Bilder, ein Ausschnitt: ½'),
          ]);
          for (let y = 0; y < height; y += band)
            await writer.write(pixels.slice(4 * width * y, 4 * width * Math.min(height, y + band)));
          const png = await read(await writer.finish());
          expect([png.width, png.height]).toEqual([width, height]);
          expect(Buffer.compare(png.data, Buffer.from(pixels))).toBe(0);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('refuses to close a picture that lacks rows', async () => {
    const writer = pngWriter(2, 2);
    await writer.write(new Uint8Array(8));
    await expect(writer.finish()).rejects.toThrow('1 rows were written of 2');
    await writer.abort();
  });
});
