/** What stands below the pictures of a still: bars of scale and captions. */
import { drawCaption, INK, MAT, WALL } from './caption';
import type { Box, Sheet } from './sheet';
import type { ScaleBar, StillRequest } from './still';

type Pen = OffscreenCanvasRenderingContext2D;

const css = ([r, g, b]: readonly number[]): string => `rgb(${r} ${g} ${b})`;

/** A bar with ticks at its ends, and its length beside it. */
function drawScale(
  pen: Pen,
  bar: ScaleBar,
  picture: Box,
  box: Box,
  line: number,
  typeface: string,
): void {
  const length = bar.share * picture.width;
  const middle = box.y + box.height / 2;
  const thick = Math.max(1, Math.round(0.12 * line));
  const tick = 0.8 * line;
  pen.fillStyle = INK;
  pen.fillRect(picture.x, middle - thick / 2, length, thick);
  for (const x of [picture.x, picture.x + length - thick])
    pen.fillRect(x, middle - tick / 2, thick, tick);
  pen.textBaseline = 'middle';
  pen.font = `400 ${0.82 * line}px ${typeface}`;
  const x = picture.x + length + 0.5 * line;
  pen.fillText(bar.label, x, middle, box.x + box.width - x);
}

function draw(pen: Pen, sheet: Sheet, { pictures, below, typeface }: StillRequest): void {
  pen.fillStyle = css(WALL);
  pen.fillRect(0, 0, sheet.width, sheet.height);
  for (const [i, picture] of pictures.entries()) {
    const box = sheet.pictures[i] as Box;
    pen.fillStyle = css(MAT);
    pen.fillRect(
      box.x - sheet.mat,
      box.y - sheet.mat,
      box.width + 2 * sheet.mat,
      box.height + 2 * sheet.mat,
    );
    if (below.scale && picture.scale)
      drawScale(pen, picture.scale, box, sheet.scales[i] as Box, sheet.line, typeface);
    const caption = {
      ...picture,
      letter: below.letters ? picture.letter : '',
      ...(below.captions ? {} : { title: '', details: [] }),
    };
    if (below.captions || below.letters)
      drawCaption(pen, caption, sheet.captions[i] as Box, sheet.line, typeface);
  }
}

/** The rows from the pictures' lower edge to the end, in bands, so that no canvas is large. */
export function* rowsBelow(
  sheet: Sheet,
  request: StillRequest,
  from: number,
  bandHeight: number,
): Generator<Uint8Array<ArrayBuffer>> {
  for (let y = from; y < sheet.height; y += bandHeight) {
    const count = Math.min(bandHeight, sheet.height - y);
    const canvas = new OffscreenCanvas(sheet.width, count);
    const pen = canvas.getContext('2d', { alpha: false, willReadFrequently: true });
    if (!pen) throw new Error('The browser gives no canvas to draw the captions on.');
    pen.translate(0, -y);
    draw(pen, sheet, request);
    yield new Uint8Array(pen.getImageData(0, 0, sheet.width, count).data.buffer);
  }
}
