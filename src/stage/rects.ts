/** A rectangle in CSS pixels from the container's upper left corner. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A rectangle in whole buffer pixels from the lower left corner. */
export type Viewport = Rect;

export const sameRect = (a: Rect, b: Rect): boolean =>
  a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;

/**
 * The buffer pixels of a CSS rectangle. Each edge is rounded by itself, so that pictures that touch on
 * the page touch in the buffer.
 */
export function viewportOf(rect: Rect, scale: number, bufferHeight: number): Viewport {
  const left = Math.round(rect.x * scale);
  const right = Math.round((rect.x + rect.width) * scale);
  const top = Math.round(rect.y * scale);
  const bottom = Math.round((rect.y + rect.height) * scale);
  return {
    x: left,
    y: bufferHeight - bottom,
    width: Math.max(1, right - left),
    height: Math.max(1, bottom - top),
  };
}

export interface BufferLimits {
  /** Longest side the graphics processor takes. */
  readonly side: number;
  /** Pixels in all: four samples each of colour and depth must fit in its memory. */
  readonly area: number;
}

const SHARPEST = 2;

/** Buffer pixels per CSS pixel: the display's ratio, at most 2, less where a limit asks for it. */
export function bufferScale(
  width: number,
  height: number,
  displayRatio: number,
  limits: BufferLimits,
): number {
  const wanted = Math.min(SHARPEST, Math.max(displayRatio, 0.1));
  if (!(width > 0 && height > 0)) return wanted;
  return Math.min(
    wanted,
    limits.side / Math.max(width, height),
    Math.sqrt(limits.area / (width * height)),
  );
}
