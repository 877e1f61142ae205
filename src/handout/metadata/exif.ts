/**
 * EXIF (CIPA DC-008, Exif 2.32) as a TIFF block, big-endian: what JPEG keeps in APP1, PNG in eXIf and WebP in
 * its EXIF chunk. Texts are UTF-8 in fields of type ASCII, as is common practice.
 */
import { type Metadata, SOFTWARE } from './types';

const ASCII = 2;
const SHORT = 3;
const LONG = 4;
const RATIONAL = 5;
const UNDEFINED = 7;

const HEADER = 8;
const ENTRY = 12;

interface Field {
  readonly tag: number;
  readonly type: number;
  readonly count: number;
  readonly data: Uint8Array;
}

function numbers(size: 2 | 4, values: readonly number[]): Uint8Array {
  const data = new Uint8Array(size * values.length);
  const view = new DataView(data.buffer);
  for (const [i, value] of values.entries())
    if (size === 2) view.setUint16(2 * i, value);
    else view.setUint32(4 * i, value);
  return data;
}

const text = (tag: number, value: string): Field => {
  const data = new TextEncoder().encode(`${value}\0`);
  return { tag, type: ASCII, count: data.length, data };
};
const short = (tag: number, value: number): Field => ({
  tag,
  type: SHORT,
  count: 1,
  data: numbers(2, [value]),
});
const long = (tag: number, value: number): Field => ({
  tag,
  type: LONG,
  count: 1,
  data: numbers(4, [value]),
});
const rational = (tag: number, value: number, denominator: number): Field => ({
  tag,
  type: RATIONAL,
  count: 1,
  data: numbers(4, [Math.round(value * denominator), denominator]),
});
const undefinedBytes = (tag: number, data: Uint8Array): Field => ({
  tag,
  type: UNDEFINED,
  count: data.length,
  data,
});

const directoryLength = (fields: readonly Field[]): number => 2 + ENTRY * fields.length + 4;

/** A directory at `offset`, with what does not fit into its entries behind it, at even places. */
function directory(fields: readonly Field[], offset: number): Uint8Array {
  const values: number[] = [];
  const entries = new Uint8Array(directoryLength(fields));
  const view = new DataView(entries.buffer);
  view.setUint16(0, fields.length);
  for (const [i, { tag, type, count, data }] of fields.entries()) {
    const at = 2 + ENTRY * i;
    view.setUint16(at, tag);
    view.setUint16(at + 2, type);
    view.setUint32(at + 4, count);
    if (data.length <= 4) {
      entries.set(data, at + 8);
      continue;
    }
    view.setUint32(at + 8, offset + entries.length + values.length);
    values.push(...data, ...(data.length % 2 === 1 ? [0] : []));
  }
  return Uint8Array.of(...entries, ...values);
}

const TAGS = {
  imageDescription: 0x010e,
  xResolution: 0x011a,
  yResolution: 0x011b,
  resolutionUnit: 0x0128,
  software: 0x0131,
  exif: 0x8769,
  fNumber: 0x829d,
  exifVersion: 0x9000,
  componentsConfiguration: 0x9101,
  subjectDistance: 0x9206,
  focalLength: 0x920a,
  flashpixVersion: 0xa000,
  colorSpace: 0xa001,
  pixelXDimension: 0xa002,
  pixelYDimension: 0xa003,
  focalLengthIn35mm: 0xa405,
} as const;

const DOTS_PER_INCH = 300;
const INCH = 2;
const SRGB = 1;

/** Fields of a directory stand in the order of their tags. */
function shotFields({ shot }: Metadata, width: number, height: number): Field[] {
  const { focal, fNumber, distance, equivalent } = shot;
  return [
    ...(fNumber === undefined ? [] : [rational(TAGS.fNumber, fNumber, 100)]),
    undefinedBytes(TAGS.exifVersion, new TextEncoder().encode('0232')),
    undefinedBytes(TAGS.componentsConfiguration, Uint8Array.of(1, 2, 3, 0)), // Y, Cb, Cr
    ...(distance === undefined ? [] : [rational(TAGS.subjectDistance, distance, 10000)]),
    ...(focal === undefined ? [] : [rational(TAGS.focalLength, 1000 * focal, 1000)]),
    undefinedBytes(TAGS.flashpixVersion, new TextEncoder().encode('0100')),
    short(TAGS.colorSpace, SRGB),
    long(TAGS.pixelXDimension, width),
    long(TAGS.pixelYDimension, height),
    ...(equivalent === undefined
      ? []
      : [short(TAGS.focalLengthIn35mm, Math.round(1000 * equivalent))]),
  ];
}

/** @param width of the image, pixels */
export function exifBlock(metadata: Metadata, width: number, height: number): Uint8Array {
  const main = (exifAt: number): Field[] => [
    text(TAGS.imageDescription, metadata.description),
    rational(TAGS.xResolution, DOTS_PER_INCH, 1),
    rational(TAGS.yResolution, DOTS_PER_INCH, 1),
    short(TAGS.resolutionUnit, INCH),
    text(TAGS.software, SOFTWARE),
    long(TAGS.exif, exifAt),
  ];
  const exifAt = HEADER + directory(main(0), HEADER).length;
  return Uint8Array.of(
    ...[0x4d, 0x4d, 0, 42, 0, 0, 0, HEADER],
    ...directory(main(exifAt), HEADER),
    ...directory(shotFields(metadata, width, height), exifAt),
  );
}
