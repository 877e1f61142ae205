/**
 * Pictures side by side as one file, written band by band: each is rendered at its own final size by the
 * renderer handed in and laid on the sheet between mats, with what stands below drawn under it.
 */
import type { PrintedCaption } from './caption';
import { writerInWorker } from './encode/inWorker';
import type { Encoding } from './encode/writer';
import { type Below, sheetFor } from './sheet';
import { rowsBelow } from './stillBelow';
import { pictureRows, wallRows } from './stillRows';

/** Renders one picture top down: bands of `bandHeight` rows (the last may be lower) of RGBA. */
export type RenderBands = (
  width: number,
  height: number,
  bandHeight: number,
  signal: AbortSignal,
  /** Share of this picture rendered, 0..1. */
  onProgress: (share: number) => void,
) => AsyncIterable<Uint8Array>;

/** A bar of a stated length. */
export interface ScaleBar {
  /** Of the picture's width. */
  readonly share: number;
  readonly label: string;
}

export interface StillPicture extends PrintedCaption {
  /** Width over height. */
  readonly aspect: number;
  readonly scale: ScaleBar | null;
  readonly render: RenderBands;
}

export interface StillRequest extends Omit<Encoding, 'height'> {
  readonly pictures: readonly StillPicture[];
  readonly below: Below;
  readonly typeface: string;
  readonly signal: AbortSignal;
  /** Share of the work done, 0..1. */
  readonly onProgress: (share: number) => void;
}

const BAND = 256;

/** All rows of the sheet, top down. */
async function* sheetRows(request: StillRequest): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  const { width, pictures, below } = request;
  const sheet = sheetFor(
    width,
    pictures.map(({ aspect }) => aspect),
    below,
  );
  const [{ y, height }] = sheet.pictures as [(typeof sheet.pictures)[0]];
  yield wallRows(sheet, 0, y);
  yield* pictureRows(sheet, request, BAND);
  yield* rowsBelow(sheet, request, y + height, BAND);
}

/**
 * Renders and encodes the sheet.
 * @throws DOMException AbortError when the signal is raised; nothing is kept then.
 */
export async function saveStill(request: StillRequest): Promise<Blob> {
  const { format, width, quality, metadata, pictures, below, signal, onProgress } = request;
  const { height } = sheetFor(
    width,
    pictures.map(({ aspect }) => aspect),
    below,
  );
  const writer = writerInWorker({ format, width, height, quality, metadata });
  try {
    for await (const rows of sheetRows(request)) {
      signal.throwIfAborted();
      await writer.write(rows);
    }
    const blob = await writer.finish();
    signal.throwIfAborted();
    onProgress(1);
    return blob;
  } catch (error) {
    await writer.abort();
    throw error;
  }
}
