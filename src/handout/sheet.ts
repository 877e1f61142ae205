/** Where pictures and captions lie on a side-by-side sheet. Pure; whole pixels. */

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Height of one line of caption text. */
  readonly line: number;
  readonly mat: number;
  readonly pictures: readonly Box[];
  readonly captions: readonly Box[];
}

/** Height of a caption in lines of its text, for two or three rows. */
export const CAPTION_LINES = 4.6;
export const LEAST_WIDTH = 320;
export const GREATEST_WIDTH = 16384;

/**
 * Lays out pictures of equal height beside each other.
 * @param width of the whole sheet, pixels, LEAST_WIDTH..GREATEST_WIDTH
 * @param aspects width over height of each picture
 * @throws RangeError outside that range, or without a picture
 */
export function sheetFor(width: number, aspects: readonly number[], captioned: boolean): Sheet {
  if (!Number.isInteger(width) || width < LEAST_WIDTH || width > GREATEST_WIDTH)
    throw new RangeError(`A still is ${LEAST_WIDTH} to ${GREATEST_WIDTH} pixels wide.`);
  if (aspects.length === 0) throw new RangeError('A still needs a picture.');
  const unit = width / (100 * Math.sqrt(aspects.length));
  const margin = Math.round(2.2 * unit);
  const gap = Math.round(2.6 * unit);
  const mat = Math.max(1, Math.round(0.6 * unit));
  const line = Math.round(2.1 * unit);
  const across = width - 2 * margin - (aspects.length - 1) * gap - 2 * aspects.length * mat;
  const height = Math.floor(across / aspects.reduce((sum, aspect) => sum + aspect, 0));
  const captionHeight = captioned ? Math.round(CAPTION_LINES * line) : 0;
  const pictures: Box[] = [];
  const captions: Box[] = [];
  let x = margin;
  for (const aspect of aspects) {
    const box = { x: x + mat, y: margin + mat, width: Math.floor(aspect * height), height };
    pictures.push(box);
    captions.push({
      x,
      y: box.y + height + mat + Math.round(0.4 * line),
      width: box.width + 2 * mat,
      height: captionHeight,
    });
    x += box.width + 2 * mat + gap;
  }
  const bottom = captioned ? (captions[0] as Box).y + captionHeight : margin + 2 * mat + height;
  return { width, height: bottom + margin, line, mat, pictures, captions };
}
