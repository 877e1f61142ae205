/** Margins and scale of a drawing of the room. */
import { METRES_PER } from '../../readings/quantities';
import type { Box, Point } from '../geometry';
import { HATCH } from '../rail/ground';
import { PRINT_REM, PX_PER_MM, printScale, pxPerMetreAt, roomSize } from './print';
import type { PlanContent, PlanSheet } from './types';

/** Heights and widths in rem. */
export const ROW = { dimension: 1.5, foot: 3.2, edge: 0.4 } as const;
export const TEXT = { note: 0.8125, dimension: 0.875, letter: 1.0625, bold: 650 } as const;
export const TAB = { width: 1.75, height: 1.5625, off: 2.7 } as const;

export interface Ground {
  readonly rem: number;
  readonly width: number;
  readonly height: number;
  /** The room's own rectangle on the sheet. */
  readonly room: Box;
  readonly pxPerMetre: number;
  /** The foot with the scale bar. */
  readonly foot: number;
  /** n of 1 : n on A4, or null. */
  readonly prints: number | null;
  readonly printed: number | null;
}

interface Rows {
  /** Rows of dimensions outside the walls. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Room for two rows on every side, for whichever drawing needs them, CSS pixels. */
const MARGINS = {
  width: 4 * ROW.dimension * PRINT_REM + 2 * HATCH,
  height: (4 * ROW.dimension + ROW.foot) * PRINT_REM + 2 * HATCH,
} as const;

/** n of 1 : n at which either drawing fits A4; null for a room that fits at none of the usual scales. */
export const paperScale = (content: PlanContent): number | null =>
  printScale(roomSize(content), MARGINS);

/** Free between two drawings side by side on a page, millimetres. */
const BESIDE_GAP = 3;

/**
 * The same for both drawings in what is free on a page (millimetres), and how they stand there: one below the
 * other, unless they are larger side by side. Null where neither fits.
 */
export function pageScale(
  content: PlanContent,
  space: { readonly width: number; readonly height: number },
): { readonly scale: number; readonly beside: boolean } | null {
  const { width, height } = roomSize(content);
  const both = content.room.width + content.room.ceiling;
  const below = printScale(
    { width, height: both },
    { ...MARGINS, height: 2 * MARGINS.height },
    space,
  );
  const beside = printScale(
    { width: 2 * width, height },
    { ...MARGINS, width: 2 * MARGINS.width + BESIDE_GAP * PX_PER_MM },
    space,
  );
  if (beside !== null && (below === null || beside < below)) return { scale: beside, beside: true };
  return below === null ? null : { scale: below, beside: false };
}

/** Fits a room of `length` by `height` metres on the sheet, with rows of dimensions round it. */
export function ground(
  content: PlanContent,
  sheet: PlanSheet,
  size: { readonly length: number; readonly height: number },
  rows: Rows,
): Ground {
  const { rem } = sheet;
  const row = ROW.dimension * rem;
  const left = rows.left * row + HATCH;
  const right = Math.max(rows.right * row, ROW.edge * rem) + HATCH;
  const top = Math.max(rows.top * row, ROW.edge * rem) + HATCH;
  const bottom = rows.bottom * row + HATCH + ROW.foot * rem;
  const prints = paperScale(content);
  const printed = sheet.printScale ?? null;
  const free = Math.max(1, sheet.width - left - right);
  const most = Math.max(1, (sheet.maxHeight ?? 1.25 * sheet.width) - top - bottom);
  const k =
    printed === null ? Math.min(free / size.length, most / size.height) : pxPerMetreAt(printed);
  const width = printed === null ? sheet.width : left + right + k * size.length;
  const spare = width - left - right - k * size.length;
  return {
    rem,
    width,
    height: top + bottom + k * size.height,
    room: { x: left + spare / 2, y: top, width: k * size.length, height: k * size.height },
    pxPerMetre: k,
    foot: top + k * size.height + HATCH + rows.bottom * row + 1.1 * rem,
    prints,
    printed,
  };
}

/** Of the room's length, at most: beside the bar stands at what scale the drawing prints. */
const BAR = 1 / 3;

/** Numbers of the scale bar: metres or feet. */
export function scaleBar(
  g: Ground,
  imperial: boolean,
): { readonly parts: readonly Point[]; readonly texts: readonly string[] } {
  const metre = imperial ? METRES_PER.ft : 1;
  const steps = imperial ? [1, 2, 5, 10] : [0.5, 1, 2, 5];
  const part =
    [...steps].reverse().find((s) => 2 * s * metre * g.pxPerMetre <= BAR * g.room.width) ??
    steps[0] ??
    1;
  const unit = imperial ? 'ft' : 'm';
  const parts = [0, 1, 2].map((i) => ({
    x: g.room.x + i * part * metre * g.pxPerMetre,
    y: g.foot,
  }));
  return {
    parts,
    texts: [0, 1, 2].map((i) => `${i * part}${i === 2 ? ` ${unit}` : ''}`),
  };
}
