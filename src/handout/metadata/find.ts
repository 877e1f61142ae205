/** The state of its pictures in a file: PNG, JPEG or WebP, read piece by piece up to where it stands. */
import { crc32, SIGNATURE } from '../png';
import { XMP_KEYWORD, XMP_SIGNATURE } from './embed';
import type { State } from './types';
import { stateInPacket } from './xmp';

export type Found =
  | { readonly is: 'state'; readonly state: State }
  /** A picture that carries none: of another origin, or its metadata were taken out. */
  | { readonly is: 'bare' }
  | { readonly is: 'damaged' }
  /** No PNG, JPEG or WebP at all. */
  | { readonly is: 'no-picture' };

/** More is no packet of ours. */
const LARGEST_PACKET = 1_000_000;
const JPEG_START = [0xff, 0xd8] as const;
const APP1 = 0xe1;
const SCAN = 0xda;
const JPEG_END = 0xd9;

/** A file read in pieces. */
class Pieces {
  constructor(private readonly blob: Blob) {}

  /** Fewer bytes where the file ends. */
  async at(offset: number, length: number): Promise<Uint8Array> {
    return new Uint8Array(await this.blob.slice(offset, offset + length).arrayBuffer());
  }
}

const latin = (bytes: Uint8Array): string => String.fromCharCode(...bytes);
const utf8 = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const view = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** The packet, null when there is none before the pixels. @throws RangeError when the file is damaged. */
async function packetInPng(file: Pieces): Promise<string | null> {
  const keyword = `${XMP_KEYWORD}\0`;
  for (let at = SIGNATURE.length; ; ) {
    const header = await file.at(at, 8);
    if (header.length < 8) throw new RangeError('The file ends before the picture.');
    const length = view(header).getUint32(0);
    const type = latin(header.subarray(4));
    if (type === 'IDAT' || type === 'IEND') return null;
    if (type === 'iTXt' && length <= LARGEST_PACKET) {
      const chunk = await file.at(at + 4, length + 8);
      if (chunk.length < length + 8) throw new RangeError('The file ends within its texts.');
      if (latin(chunk.subarray(4, 4 + keyword.length)) === keyword) {
        if (view(chunk).getUint32(length + 4) !== crc32(chunk.subarray(0, length + 4)))
          throw new RangeError('The checksum is another.');
        return utf8(chunk.subarray(4, length + 4));
      }
    }
    at += 12 + length;
  }
}

async function packetInJpeg(file: Pieces): Promise<string | null> {
  for (let at = JPEG_START.length; ; ) {
    const header = await file.at(at, 4);
    if (header.length < 4 || header[0] !== 0xff) throw new RangeError('There is no segment here.');
    const [, code] = header;
    if (code === SCAN || code === JPEG_END) return null;
    const length = view(header).getUint16(2);
    if (length < 2) throw new RangeError('There is no such segment.');
    if (code === APP1) {
      const content = await file.at(at + 4, length - 2);
      if (content.length < length - 2) throw new RangeError('The file ends within a segment.');
      if (latin(content.subarray(0, XMP_SIGNATURE.length)) === XMP_SIGNATURE)
        return utf8(content.subarray(XMP_SIGNATURE.length));
    }
    at += 2 + length;
  }
}

const RIFF_HEADER = 12;

async function packetInWebp(file: Pieces): Promise<string | null> {
  for (let at = RIFF_HEADER; ; ) {
    const header = await file.at(at, 8);
    if (header.length === 0) return null;
    if (header.length < 8) throw new RangeError('The file ends within a chunk.');
    const length = view(header).getUint32(4, true);
    if (latin(header.subarray(0, 4)) === 'XMP ') {
      if (length > LARGEST_PACKET) throw new RangeError('There is no such packet.');
      const content = await file.at(at + 8, length);
      if (content.length < length) throw new RangeError('The file ends within its texts.');
      return utf8(content);
    }
    at += 8 + length + (length % 2);
  }
}

function packetReader(start: Uint8Array): ((file: Pieces) => Promise<string | null>) | null {
  const begins = (signature: ArrayLike<number>) =>
    Array.from(signature).every((byte, i) => start[i] === byte);
  if (begins(SIGNATURE)) return packetInPng;
  if (begins(JPEG_START)) return packetInJpeg;
  if (latin(start.subarray(0, 4)) === 'RIFF' && latin(start.subarray(8, 12)) === 'WEBP')
    return packetInWebp;
  return null;
}

/** Never throws for what a file holds; a file that cannot be read at all rejects. */
export async function findState(blob: Blob): Promise<Found> {
  const file = new Pieces(blob);
  const read = packetReader(await file.at(0, RIFF_HEADER));
  if (!read) return { is: 'no-picture' };
  try {
    const packet = await read(file);
    const state = packet === null ? null : stateInPacket(packet);
    return state ? { is: 'state', state } : { is: 'bare' };
  } catch (error) {
    if (error instanceof RangeError) return { is: 'damaged' };
    throw error;
  }
}
