/**
 * The side-by-side as one PNG, written band by band: each picture is rendered at its own final size by
 * the renderer handed in, laid on the sheet between mats, and its caption drawn below it.
 */
import { drawCaption, MAT, type PrintedCaption, WALL } from './caption';
import { type PngWriter, pngWriter } from './png';
import { type Box, type Sheet, sheetFor } from './sheet';

/** Renders one picture top down: bands of `bandHeight` rows (the last may be lower) of RGBA. */
export type RenderBands = (
  width: number,
  height: number,
  bandHeight: number,
  signal: AbortSignal,
) => AsyncIterable<Uint8Array>;

export interface StillPicture extends PrintedCaption {
  /** Width over height. */
  readonly aspect: number;
  readonly render: RenderBands;
}

export interface StillRequest {
  readonly pictures: readonly StillPicture[];
  readonly width: number;
  readonly captioned: boolean;
  readonly typeface: string;
  readonly description: string;
  readonly signal: AbortSignal;
  /** Share of the rows written, 0..1. */
  readonly onProgress: (share: number) => void;
}

const BAND = 256;

/**
 * Renders and encodes the sheet.
 * @throws DOMException AbortError when the signal is raised; nothing is kept then.
 */
export async function saveStill(request: StillRequest): Promise<Blob> {
  const { pictures, signal } = request;
  const sheet = sheetFor(
    request.width,
    pictures.map((picture) => picture.aspect),
    request.captioned,
  );
  const png = pngWriter(sheet.width, sheet.height, { Description: request.description });
  try {
    const top = sheet.pictures[0] as Box;
    await fill(png, sheet, 0, top.y, request.onProgress);
    await pictureRows(png, sheet, request);
    const below = top.y + top.height;
    if (request.captioned) await captionRows(png, sheet, pictures, request.typeface, below);
    else await fill(png, sheet, below, sheet.height - below, request.onProgress);
    signal.throwIfAborted();
    request.onProgress(1);
    return await png.finish();
  } catch (error) {
    await png.abort();
    throw error;
  }
}

/** Rows of bare wall with the mats' upper or lower edges. */
async function fill(
  png: PngWriter,
  sheet: Sheet,
  from: number,
  count: number,
  onProgress: (share: number) => void,
) {
  if (count > 0) await png.write(wallRows(sheet, from, count));
  onProgress((from + count) / sheet.height);
}

function wallRows(sheet: Sheet, from: number, count: number): Uint8Array {
  const rows = new Uint8Array(4 * sheet.width * count);
  for (let i = 0; i < rows.length; i += 4) rows.set(WALL, i);
  for (const box of sheet.pictures) {
    const first = Math.max(from, box.y - sheet.mat);
    const end = Math.min(from + count, box.y + box.height + sheet.mat);
    for (let y = first; y < end; y++)
      for (let x = box.x - sheet.mat; x < box.x + box.width + sheet.mat; x++)
        rows.set(MAT, 4 * ((y - from) * sheet.width + x));
  }
  return rows;
}

async function pictureRows(png: PngWriter, sheet: Sheet, request: StillRequest) {
  const top = sheet.pictures[0] as Box;
  const streams = request.pictures.map((picture, i) => {
    const box = sheet.pictures[i] as Box;
    return picture.render(box.width, box.height, BAND, request.signal)[Symbol.asyncIterator]();
  });
  try {
    for (let y = 0; y < top.height; y += BAND) {
      request.signal.throwIfAborted();
      const count = Math.min(BAND, top.height - y);
      const rows = wallRows(sheet, top.y + y, count);
      for (const [i, stream] of streams.entries()) {
        const band = await stream.next();
        const box = sheet.pictures[i] as Box;
        if (band.done || band.value.length !== 4 * box.width * count)
          throw new RangeError('The renderer gave a band of another size.');
        for (let row = 0; row < count; row++)
          rows.set(
            band.value.subarray(4 * box.width * row, 4 * box.width * (row + 1)),
            4 * (row * sheet.width + box.x),
          );
      }
      await png.write(rows);
      request.onProgress((top.y + y + count) / sheet.height);
    }
  } finally {
    await Promise.all(streams.map((stream) => stream.return?.()));
  }
}

async function captionRows(
  png: PngWriter,
  sheet: Sheet,
  pictures: readonly StillPicture[],
  typeface: string,
  from: number,
) {
  const canvas = new OffscreenCanvas(sheet.width, sheet.height - from);
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) throw new Error('The browser gives no canvas to draw the captions on.');
  pen.putImageData(
    new ImageData(
      new Uint8ClampedArray(wallRows(sheet, from, canvas.height).buffer as ArrayBuffer),
      sheet.width,
    ),
    0,
    0,
  );
  pen.translate(0, -from);
  for (const [i, picture] of pictures.entries())
    drawCaption(pen, picture, sheet.captions[i] as Box, sheet.line, typeface);
  const image = pen.getImageData(0, 0, canvas.width, canvas.height).data;
  await png.write(new Uint8Array(image.buffer));
}
