/** Where pictures and captions lie in a clip's frame. Pure; whole pixels. */
import { type Box, CAPTION_LINES } from '../sheet';

export interface FrameSize {
  readonly width: number;
  readonly height: number;
}

export interface FrameLayout extends FrameSize {
  /** Height of one line of caption text. */
  readonly line: number;
  readonly mat: number;
  readonly pictures: readonly Box[];
  readonly captions: readonly Box[];
}

/** Least width of a caption beside its picture, lines: its three rows are read without being squeezed. */
const CAPTION_WIDTH = 16;
/** Lines of text in the frame's shorter side: read on a phone at arm's length. */
const LINES = 32;

interface Arrangement {
  readonly stacked: boolean;
  readonly caption: 'below' | 'beside' | 'none';
}

function arrange(
  size: FrameSize,
  aspects: readonly number[],
  { stacked, caption }: Arrangement,
): FrameLayout {
  const line = Math.round(Math.min(size.width, size.height) / LINES);
  const mat = Math.max(1, Math.round(0.25 * line));
  const gap = line;
  const count = aspects.length;
  const below = caption === 'below' ? Math.round(CAPTION_LINES * line) : 0;
  const beside = caption === 'beside' ? CAPTION_WIDTH * line : 0;
  const across = stacked ? 1 : count;
  const down = stacked ? count : 1;
  const wide = stacked ? Math.max(...aspects) : aspects.reduce((sum, each) => sum + each, 0);
  const roomAcross = size.width - (across + 1) * gap - across * (2 * mat + beside);
  const roomDown = size.height - (down + 1) * gap - down * (2 * mat + below);
  const height = Math.max(1, Math.floor(Math.min(roomDown / down, roomAcross / wide)));
  const widths = aspects.map((aspect) => Math.max(1, Math.round(aspect * height)));
  const cellWidth = (i: number) => (widths[i] as number) + 2 * mat + beside;
  const cellHeight = height + 2 * mat + below;
  const rowWidth = widths.reduce((sum, _, i) => sum + cellWidth(i), (count - 1) * gap);
  let x = Math.round((size.width - (stacked ? 0 : rowWidth)) / 2);
  let y = Math.round((size.height - down * cellHeight - (down - 1) * gap) / 2);
  const pictures: Box[] = [];
  const captions: Box[] = [];
  for (const [i, width] of widths.entries()) {
    const left = stacked ? Math.round((size.width - cellWidth(i)) / 2) : x;
    const box = { x: left + mat, y: y + mat, width, height };
    pictures.push(box);
    if (caption === 'below')
      captions.push({ x: left, y: box.y + height + mat, width: width + 2 * mat, height: below });
    if (caption === 'beside') {
      const tall = Math.min(Math.round(CAPTION_LINES * line), height);
      captions.push({
        x: box.x + width + mat,
        y: box.y + height + mat - tall,
        width: beside,
        height: tall,
      });
    }
    if (stacked) y += cellHeight + gap;
    else x += cellWidth(i) + gap;
  }
  return { ...size, line, mat, pictures, captions };
}

/**
 * Lays one or more pictures out in a frame of fixed size: beside each other or one above the other, captions
 * below or beside them, whichever leaves the pictures largest.
 * @param aspects width over height of each picture
 */
export function frameLayout(
  size: FrameSize,
  aspects: readonly number[],
  captioned: boolean,
): FrameLayout {
  const captions: readonly Arrangement['caption'][] = captioned ? ['below', 'beside'] : ['none'];
  const ways = captions.flatMap((caption) =>
    [false, true].map((stacked) => arrange(size, aspects, { stacked, caption })),
  );
  const tall = ({ pictures }: FrameLayout) => (pictures[0] as Box).height;
  return ways.reduce((best, way) => (tall(way) > tall(best) ? way : best));
}
