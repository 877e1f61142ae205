/** The writer of each format. */
import { jpegSegments, pngChunks, webpChunks } from '../metadata/embed';
import type { Metadata } from '../metadata/types';
import { pngWriter } from '../png';
import { jpegWriter } from './jpeg';
import type { Format, RowWriter } from './types';
import { webpWriter } from './webp';

export interface Encoding {
  readonly format: Format;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** 1..100, for JPEG and WebP. */
  readonly quality: number;
  readonly metadata: Metadata;
}

export function rowWriter({ format, width, height, quality, metadata }: Encoding): RowWriter {
  switch (format) {
    case 'png':
      return pngWriter(width, height, pngChunks(metadata, width, height));
    case 'jpeg':
      return jpegWriter(width, height, quality, jpegSegments(metadata, width, height));
    case 'webp':
      return webpWriter(width, height, quality, webpChunks(metadata, width, height));
  }
}
