/** Frames, drawn one after another on one canvas -> a video file. */
import {
  BufferTarget,
  CanvasSource,
  Mp4OutputFormat,
  Output,
  StreamTarget,
  type StreamTargetChunk,
  WebMOutputFormat,
} from 'mediabunny';
import { type Encoding, QUALITY } from './encoding';
import type { FrameSize } from './layout';
import { type ClipFrame, RATE } from './plan';

/** Seconds between frames that are kept whole, from which a player can start. */
const KEY_FRAMES = 1;
/** Bytes that are written at a time. */
const CHUNK = 4 * 1024 * 1024;

export interface ClipRequest extends FrameSize {
  readonly frames: readonly ClipFrame[];
  readonly encoding: Encoding;
  /** What the file says of itself. */
  readonly title: string;
  readonly description: string;
  /** Draws the whole of a frame. */
  readonly draw: (frame: ClipFrame, pen: OffscreenCanvasRenderingContext2D) => Promise<void>;
  /** Where the file is written as it grows; without one it is kept in memory, encoded. */
  readonly into?: WritableStream<StreamTargetChunk>;
  readonly signal: AbortSignal;
  /** Share of the frames written, 0..1. */
  readonly onProgress: (share: number) => void;
}

const formatFor = ({ container }: Encoding) =>
  container === 'mp4'
    ? // The index stands before the pictures, where a player on the net looks first.
      new Mp4OutputFormat({ fastStart: 'reserve' })
    : new WebMOutputFormat();

/** A stream that hands all on to another and leaves it to the owner whether what was written is kept. */
const handingOn = (writer: WritableStreamDefaultWriter<StreamTargetChunk>) =>
  new WritableStream<StreamTargetChunk>({ write: (chunk) => writer.write(chunk) });

/**
 * Draws, encodes and writes every frame; one frame at a time is in memory.
 * @returns the file, or null when it was written into a stream.
 * @throws AbortError when the signal is raised; a stream written into is aborted whenever this throws.
 */
export async function writeClip(request: ClipRequest): Promise<Blob | null> {
  const { frames, encoding, signal, into } = request;
  const canvas = new OffscreenCanvas(request.width, request.height);
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) throw new Error('the browser gives no canvas');
  // The library closes its stream on cancelling too, which would keep half a file.
  const writer = into?.getWriter();
  const target = writer
    ? new StreamTarget(handingOn(writer), { chunked: true, chunkSize: CHUNK })
    : new BufferTarget();
  const output = new Output({ format: formatFor(encoding), target });
  const source = new CanvasSource(canvas, {
    codec: encoding.codec,
    quality: QUALITY,
    keyFrameInterval: KEY_FRAMES,
  });
  output.addVideoTrack(source, { frameRate: RATE, maximumPacketCount: frames.length });
  output.setMetadataTags({ title: request.title, comment: request.description });
  try {
    await output.start();
    let shown: number | null = null;
    for (const [i, frame] of frames.entries()) {
      signal.throwIfAborted();
      if (frame.at !== shown) await request.draw(frame, pen);
      shown = frame.at;
      await source.add(frame.time, 1 / RATE);
      request.onProgress((i + 1) / frames.length);
    }
    signal.throwIfAborted();
    await output.finalize();
    await writer?.close();
  } catch (error) {
    await output.cancel();
    await writer?.abort(error);
    throw error;
  }
  return target instanceof BufferTarget
    ? new Blob([target.buffer as ArrayBuffer], { type: await output.getMimeType() })
    : null;
}
