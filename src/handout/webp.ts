/** The container of WebP (RFC 9649): the browser's own image data with metadata put around it. */

export interface WebpChunk {
  /** Four characters. */
  readonly type: string;
  readonly data: Uint8Array;
}

/** Bits of the VP8X chunk that announce others (RFC 9649, 2.7). */
const FLAGS: Readonly<Record<string, number>> = { ICCP: 0x20, EXIF: 0x08, 'XMP ': 0x04 };
/** Bits of the image itself. */
const IMAGE: ReadonlySet<string> = new Set(['VP8 ', 'VP8L']);
const HEADER = 12;
const CHUNK_HEADER = 8;

/** @throws RangeError when the bytes are no WebP. */
export function readChunks(bytes: Uint8Array): WebpChunk[] {
  const word = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (word(0) !== 'RIFF' || word(8) !== 'WEBP') throw new RangeError('This is no WebP.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const chunks: WebpChunk[] = [];
  for (let at = HEADER; at + CHUNK_HEADER <= bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    const data = bytes.subarray(at + CHUNK_HEADER, at + CHUNK_HEADER + length);
    chunks.push({ type: word(at), data });
    at += CHUNK_HEADER + length + (length % 2);
  }
  return chunks;
}

function written({ type, data }: WebpChunk): BlobPart[] {
  const header = new Uint8Array(CHUNK_HEADER);
  for (let i = 0; i < 4; i++) header[i] = type.charCodeAt(i);
  new DataView(header.buffer).setUint32(4, data.length, true);
  return [header, data as Uint8Array<ArrayBuffer>, new Uint8Array(data.length % 2)];
}

/** A still, opaque image of the given size with metadata chunks: ICCP before the image, the others behind. */
export async function withChunks(
  image: Blob,
  width: number,
  height: number,
  metadata: readonly WebpChunk[],
): Promise<Blob> {
  const bits = readChunks(new Uint8Array(await image.arrayBuffer())).filter(({ type }) =>
    IMAGE.has(type),
  );
  const size = (value: number) => [value & 0xff, (value >> 8) & 0xff, (value >> 16) & 0xff];
  const extended: WebpChunk = {
    type: 'VP8X',
    data: Uint8Array.of(
      metadata.reduce((flags, { type }) => flags | (FLAGS[type] ?? 0), 0),
      ...[0, 0, 0],
      ...size(width - 1),
      ...size(height - 1),
    ),
  };
  const before = metadata.filter(({ type }) => type === 'ICCP');
  const behind = metadata.filter(({ type }) => type !== 'ICCP');
  const body = new Blob([extended, ...before, ...bits, ...behind].flatMap(written));
  const header = new Uint8Array(HEADER);
  header.set(new TextEncoder().encode('RIFF'));
  new DataView(header.buffer).setUint32(4, 4 + body.size, true);
  header.set(new TextEncoder().encode('WEBP'), 8);
  return new Blob([header, body], { type: 'image/webp' });
}
