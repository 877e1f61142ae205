/** Which kind of video this browser can make. */
import { canEncodeVideo, Quality, type VideoCodec } from 'mediabunny';
import type { FrameSize } from './layout';
import { RATE } from './plan';

export interface Encoding {
  readonly codec: VideoCodec;
  readonly container: 'mp4' | 'webm';
  /** As people call it. */
  readonly name: string;
}

/** The one that plays everywhere first. */
const WANTED: readonly Encoding[] = [
  { codec: 'avc', container: 'mp4', name: 'MP4 with H.264' },
  { codec: 'vp9', container: 'webm', name: 'WebM with VP9' },
  { codec: 'av1', container: 'mp4', name: 'MP4 with AV1' },
];

/** Grey walls and skin band at less. */
export const QUALITY = new Quality('high');

/** The first of the wanted kinds that can be encoded at this size; null where none can, or without WebCodecs. */
export async function chooseEncoding(size: FrameSize): Promise<Encoding | null> {
  if (typeof VideoEncoder === 'undefined') return null;
  for (const encoding of WANTED) {
    if (await canEncodeVideo(encoding.codec, { ...size, quality: QUALITY, frameRate: RATE }))
      return encoding;
  }
  return null;
}
