/** What picture files say of themselves, read by exifreader, a reader of its own. */
import { load } from 'exifreader';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { FORMATS } from '../../../src/handout/encode/types';
import { findState } from '../../../src/handout/metadata/find';
import { SRGB_PROFILE } from '../../../src/handout/metadata/icc';
import type { Metadata } from '../../../src/handout/metadata/types';
import { NAMESPACE, RENDERED, stateInPacket, xmpPacket } from '../../../src/handout/metadata/xmp';
import { file, HEIGHT, WIDTH } from './files';

const DESCRIPTION = 'A: 0.40 m, B: 2.40 m. Rendered <not> a "photograph" & so on, 5 × 7.';
const METADATA: Metadata = {
  description: DESCRIPTION,
  shot: { focal: 0.0853, fNumber: 5.6, distance: 2.4, equivalent: 0.0853 },
  state: { holds: 'pictures', packed: 'eJyrVkrLz1eyUkpKLFKqBQAeSgTo-_' },
};

const tagsOf = async (blob: Blob) => load(await blob.arrayBuffer(), { expanded: true });

describe.each(FORMATS)('a %s', (format) => {
  it('tells an independent reader every value', async () => {
    const tags = await tagsOf(await file(format, METADATA));
    const { exif, xmp } = tags;
    expect(exif?.ImageDescription?.description).toBe(DESCRIPTION);
    expect(exif?.Software?.description).toBe('Standpoint');
    expect(exif?.FocalLength?.value).toEqual([85300, 1000]);
    expect(exif?.FNumber?.value).toEqual([560, 100]);
    expect(exif?.SubjectDistance?.value).toEqual([24000, 10000]);
    expect(exif?.FocalLengthIn35mmFilm?.value).toBe(85);
    expect(exif?.ColorSpace?.description).toBe('sRGB');
    expect(exif?.ExifVersion?.description).toBe('0232');
    expect(exif?.XResolution?.value).toEqual([300, 1]);
    expect(exif?.PixelXDimension?.value).toBe(format === 'webp' ? 1 : WIDTH);
    expect(exif?.PixelYDimension?.value).toBe(format === 'webp' ? 1 : HEIGHT);
    expect(xmp?.description?.description).toBe(DESCRIPTION);
    expect(xmp?.DigitalSourceType?.value).toBe(RENDERED);
    expect(xmp?.State?.value).toBe(METADATA.state?.packed);
    expect(xmp?.Holds?.value).toBe('pictures');
  });

  it('says that its colours are sRGB', async () => {
    const blob = await file(format, METADATA);
    if (format === 'png') {
      const bytes = Buffer.from(await blob.arrayBuffer());
      expect(bytes.includes('sRGB')).toBe(true);
      // The decoder checks every chunk's checksum.
      expect(PNG.sync.read(bytes).width).toBe(WIDTH);
      return;
    }
    const { icc } = await tagsOf(blob);
    expect(icc?.['Profile Version']?.description).toBe('4.2.0');
    expect(icc?.['Color Space']?.description).toBe('RGB ');
    expect(icc?.['ICC Description']?.description).toBe('sRGB');
  });

  it('gives its state back, and leaves out what is not so', async () => {
    expect(await findState(await file(format, METADATA))).toEqual({
      is: 'state',
      state: METADATA.state,
    });
    const bare = await file(format, { description: 'x', shot: {}, state: null });
    expect(await findState(bare)).toEqual({ is: 'bare' });
    const { exif } = await tagsOf(bare);
    expect(exif?.FocalLength).toBeUndefined();
    expect(exif?.FNumber).toBeUndefined();
    expect(exif?.SubjectDistance).toBeUndefined();
  });

  it('is a state or a refusal, never an error, when it is cut short or a byte is another', async () => {
    const bytes = new Uint8Array(await (await file(format, METADATA)).arrayBuffer());
    for (let i = 0; i < bytes.length; i++) {
      const spoilt = bytes.slice();
      spoilt[i] = (spoilt[i] as number) ^ (1 << (i % 8));
      for (const each of [spoilt, bytes.slice(0, i)]) {
        const found = await findState(new Blob([each]));
        expect(['state', 'bare', 'damaged', 'no-picture']).toContain(found.is);
      }
    }
  });
});

describe('the profile', () => {
  // ICC.1:2010, 7.2: the size stands first and is a multiple of four, "acsp" at 36; D50 is 0.9642 1 0.8249.
  it('is as long as it says, and its colours add up to its white', () => {
    const view = new DataView(SRGB_PROFILE.buffer);
    expect(view.getUint32(0)).toBe(SRGB_PROFILE.length);
    expect(SRGB_PROFILE.length % 4).toBe(0);
    expect(Buffer.from(SRGB_PROFILE.subarray(36, 40)).toString()).toBe('acsp');
    const tags = new Map<string, number>();
    for (let i = 0; i < view.getUint32(128); i++)
      tags.set(
        Buffer.from(SRGB_PROFILE.subarray(132 + 12 * i, 136 + 12 * i)).toString(),
        view.getUint32(136 + 12 * i),
      );
    const xyz = (name: string) =>
      [8, 12, 16].map((at) => view.getInt32((tags.get(name) ?? 0) + at) / 65536);
    const [r, g, b] = ['rXYZ', 'gXYZ', 'bXYZ'].map(xyz);
    for (const [i, white] of [0.9642, 1, 0.8249].entries())
      expect((r?.[i] ?? 0) + (g?.[i] ?? 0) + (b?.[i] ?? 0)).toBeCloseTo(white, 3);
  });
});

describe('the packet', () => {
  it('is read however another program writes our properties', () => {
    const anew = `<rdf:Description xmlns:ns0='${NAMESPACE}' ns0:State="abc-_1" ns0:Holds='session'/>`;
    expect(stateInPacket(anew)).toEqual({ holds: 'session', packed: 'abc-_1' });
    expect(stateInPacket(xmpPacket(METADATA).replaceAll(NAMESPACE, 'urn:another#'))).toBeNull();
  });

  it('holds no character that XML forbids', () => {
    const packet = xmpPacket({ ...METADATA, description: 'a\u0000b\u000bc\n<' });
    expect(packet).toContain('abc\n&lt;');
  });
});
