/** Small files of every format, as the still makes them; WebP around an image that a browser made. */

import type { Format } from '../../../src/handout/encode/types';
import { rowWriter } from '../../../src/handout/encode/writer';
import { webpChunks } from '../../../src/handout/metadata/embed';
import type { Metadata } from '../../../src/handout/metadata/types';
import { withChunks } from '../../../src/handout/webp';

export const WIDTH = 12;
export const HEIGHT = 8;

/** Lossless WebP of one black pixel (RFC 9649), 26 bytes: its size is told again by the container. */
const WEBP = Buffer.from('UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==', 'base64');

export async function file(format: Format, metadata: Metadata): Promise<Blob> {
  if (format === 'webp') return withChunks(new Blob([WEBP]), 1, 1, webpChunks(metadata, 1, 1));
  const writer = rowWriter({ format, width: WIDTH, height: HEIGHT, quality: 92, metadata });
  await writer.write(new Uint8Array(4 * WIDTH * HEIGHT).fill(128));
  return writer.finish();
}
