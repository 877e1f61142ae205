/** Printing at a stated scale: on A4, upright. */
import type { PlanContent } from './types';

/** Those of ISO 5455, and those that stand beside them on scale rules (common practice, no source). */
export const PRINT_SCALES = [10, 20, 25, 40, 50, 75, 100, 125, 150, 200, 250, 500, 1000] as const;
/** A4 with 12 mm left free on every side, millimetres. */
export const A4_FREE = { width: 186, height: 273 } as const;
/** CSS fixes 96 pixels to the inch. */
export const PX_PER_MM = 96 / 25.4;
/** Text size of the printed drawing: one root font size, CSS pixels. */
export const PRINT_REM = 12.5;

export const pxPerMetreAt = (scale: number): number => (1000 / scale) * PX_PER_MM;

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The largest of the scales at which a drawing of that many metres and margins (CSS pixels) fits what is
 * free (millimetres).
 */
export function printScale(metres: Size, margins: Size, space: Size = A4_FREE): number | null {
  const fits = (scale: number, length: number, margin: number, free: number) =>
    (length * 1000) / scale + margin / PX_PER_MM <= free;
  return (
    PRINT_SCALES.find(
      (scale) =>
        fits(scale, metres.width, margins.width, space.width) &&
        fits(scale, metres.height, margins.height, space.height),
    ) ?? null
  );
}

/** The longest way across the room that either drawing shows, so that both print at one scale. */
export const roomSize = ({ room }: PlanContent) => ({
  width:
    room.axis === 'diagonal'
      ? Math.hypot(room.length, room.width)
      : Math.max(room.length, room.axis === 'across' ? room.width : 0),
  height: Math.max(room.width, room.ceiling),
});
