/** A picture's caption as stills and clips draw it: a strip of paper with the letter and some rows of words. */
import type { Box } from './sheet';

/** What hangs around pictures in files, always in the light theme's neutral greys. */
export const WALL = [201, 201, 201, 255] as const;
export const MAT = [250, 250, 250, 255] as const;
const PAPER = '#f3f3f3';
export const INK = '#1a1a1a';
const INK_2 = '#414141';

export interface PrintedCaption {
  readonly letter: string;
  /** CSS colour and dash pattern (in caption lines) that tell the picture apart. */
  readonly accent: string;
  readonly dashes: readonly number[];
  readonly title: string;
  readonly details: readonly string[];
}

type Pen = OffscreenCanvasRenderingContext2D;

/** Digits in cells of one width, so that a number that runs does not push the words behind it about. */
function fillSteady(pen: Pen, text: string, x: number, y: number, room: number): void {
  const digit = Math.max(...[...'0123456789'].map((each) => pen.measureText(each).width));
  const parts = text.match(/\d|\D+/g) ?? [];
  const widths = parts.map((part) => (/\d/.test(part) ? digit : pen.measureText(part).width));
  const squeeze = Math.min(1, room / widths.reduce((sum, width) => sum + width, 0));
  pen.save();
  pen.translate(x, y);
  pen.scale(squeeze, 1);
  let at = 0;
  for (const [i, part] of parts.entries()) {
    const width = widths[i] as number;
    pen.fillText(part, at + (width - pen.measureText(part).width) / 2, 0);
    at += width;
  }
  pen.restore();
}

/** @param line height of one line of caption text, pixels */
export function drawCaption(
  pen: Pen,
  caption: PrintedCaption,
  box: Box,
  line: number,
  typeface: string,
): void {
  pen.fillStyle = PAPER;
  pen.fillRect(box.x, box.y, box.width, box.height);
  const mark = 0.22 * line;
  pen.strokeStyle = caption.accent;
  pen.lineWidth = mark;
  pen.setLineDash(caption.dashes.map((dash) => dash * line));
  pen.beginPath();
  pen.moveTo(box.x + mark / 2, box.y);
  pen.lineTo(box.x + mark / 2, box.y + box.height);
  pen.stroke();
  pen.textBaseline = 'middle';
  pen.fillStyle = caption.accent;
  // Several letters leave the words their room.
  pen.font = `500 ${(caption.letter.length > 1 ? 1.3 : 2.1) * line}px ${typeface}`;
  pen.fillText(caption.letter, box.x + 0.8 * line, box.y + box.height / 2);
  const x = box.x + 1.5 * line + pen.measureText(caption.letter).width;
  const room = box.x + box.width - 0.5 * line - x;
  const rows = [caption.title, ...caption.details];
  for (const [i, text] of rows.entries()) {
    pen.fillStyle = i === 0 ? INK : INK_2;
    pen.font = i === 0 ? `600 ${1.05 * line}px ${typeface}` : `400 ${0.82 * line}px ${typeface}`;
    const y = box.y + box.height / 2 + (i - (rows.length - 1) / 2) * 1.3 * line;
    fillSteady(pen, text, x, y, room);
  }
}
