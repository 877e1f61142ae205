/** Where pictures and captions lie on a side-by-side sheet. Pure; whole pixels. */

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What stands below the pictures. */
export interface Below {
  readonly captions: boolean;
  readonly letters: boolean;
  /** A bar of a stated length below each picture. */
  readonly scale: boolean;
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Height of one line of caption text. */
  readonly line: number;
  readonly mat: number;
  readonly pictures: readonly Box[];
  /** For the bars; no height where there are none. */
  readonly scales: readonly Box[];
  readonly captions: readonly Box[];
}

/** Height of a caption in lines of its text, for two or three rows. */
export const CAPTION_LINES = 4.6;
/** Of one that is a letter alone. */
const LETTER_LINES = 3;
const SCALE_LINES = 1.7;
export const LEAST_WIDTH = 320;
/** Of the longer side, pixels. */
export const GREATEST_SIDE = 16384;

/**
 * Lays out pictures of equal height beside each other.
 * @param width of the whole sheet, pixels, LEAST_WIDTH..GREATEST_SIDE
 * @param aspects width over height of each picture
 * @throws RangeError outside that range, or without a picture
 */
export function sheetFor(width: number, aspects: readonly number[], below: Below): Sheet {
  if (!Number.isInteger(width) || width < LEAST_WIDTH || width > GREATEST_SIDE)
    throw new RangeError(`A still is ${LEAST_WIDTH} to ${GREATEST_SIDE} pixels wide.`);
  if (aspects.length === 0) throw new RangeError('A still needs a picture.');
  const unit = width / (100 * Math.sqrt(aspects.length));
  const margin = Math.round(2.2 * unit);
  const gap = Math.round(2.6 * unit);
  const mat = Math.max(1, Math.round(0.6 * unit));
  const line = Math.round(2.1 * unit);
  const across = width - 2 * margin - (aspects.length - 1) * gap - 2 * aspects.length * mat;
  const height = Math.floor(across / aspects.reduce((sum, aspect) => sum + aspect, 0));
  const lines = below.captions ? CAPTION_LINES : below.letters ? LETTER_LINES : 0;
  const space = Math.round(0.4 * line);
  let y = margin + 2 * mat + height;
  /** The next strip down, of so many lines of text. */
  const strip = (count: number): Pick<Box, 'y' | 'height'> => {
    const top = count > 0 ? y + space : y;
    const tall = Math.round(count * line);
    y = top + tall;
    return { y: top, height: tall };
  };
  const scale = strip(below.scale ? SCALE_LINES : 0);
  const caption = strip(lines);
  let x = margin;
  const columns = aspects.map((aspect) => {
    const own = { x, width: Math.floor(aspect * height) };
    x += own.width + 2 * mat + gap;
    return own;
  });
  const whole = (strip: Pick<Box, 'y' | 'height'>): Box[] =>
    columns.map((column) => ({ ...strip, x: column.x, width: column.width + 2 * mat }));
  return {
    width,
    height: y + margin,
    line,
    mat,
    pictures: columns.map((column) => ({
      x: column.x + mat,
      y: margin + mat,
      width: column.width,
      height,
    })),
    scales: whole(scale),
    captions: whole(caption),
  };
}

/** The greatest width at which no side is longer than it may be. */
export function greatestWidth(aspects: readonly number[], below: Below): number {
  let [fits, over] = [LEAST_WIDTH, GREATEST_SIDE + 1];
  while (over - fits > 1) {
    const width = Math.floor((fits + over) / 2);
    if (sheetFor(width, aspects, below).height <= GREATEST_SIDE) fits = width;
    else over = width;
  }
  return fits;
}
