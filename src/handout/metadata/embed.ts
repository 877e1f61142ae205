/** Metadata as the parts that each format keeps it in. */
import { segment } from '../jpeg/segments';
import { internationalText, type PngChunk } from '../png';
import type { WebpChunk } from '../webp';
import { exifBlock } from './exif';
import { SRGB_PROFILE } from './icc';
import { type Metadata, SOFTWARE } from './types';
import { xmpPacket } from './xmp';

const APP1 = 0xe1;
const APP2 = 0xe2;

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const joined = (...parts: readonly ArrayLike<number>[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => Array.from(part)));

/** In PNG, XMP has a keyword of its own (XMP specification, part 3). */
export const XMP_KEYWORD = 'XML:com.adobe.xmp';
/** What an APP1 segment of JPEG begins with. */
export const XMP_SIGNATURE = 'http://ns.adobe.com/xap/1.0/\0';

/** The sRGB chunk is the writer's own. */
export const pngChunks = (metadata: Metadata, width: number, height: number): PngChunk[] => [
  { type: 'eXIf', data: exifBlock(metadata, width, height) },
  internationalText('Description', metadata.description),
  internationalText('Software', SOFTWARE),
  internationalText(XMP_KEYWORD, xmpPacket(metadata)),
];

/** @throws RangeError when the state is too large for a segment of 64 kB. */
export const jpegSegments = (
  metadata: Metadata,
  width: number,
  height: number,
): Uint8Array<ArrayBuffer>[] => [
  segment(APP1, joined(utf8('Exif\0\0'), exifBlock(metadata, width, height))),
  segment(APP1, joined(utf8(XMP_SIGNATURE), utf8(xmpPacket(metadata)))),
  segment(APP2, joined(utf8('ICC_PROFILE\0'), [1, 1], SRGB_PROFILE)),
];

export const webpChunks = (metadata: Metadata, width: number, height: number): WebpChunk[] => [
  { type: 'ICCP', data: SRGB_PROFILE },
  { type: 'EXIF', data: exifBlock(metadata, width, height) },
  { type: 'XMP ', data: utf8(xmpPacket(metadata)) },
];
