/** Sizes of sheets, millimetres: ISO 216 A4; ANSI/ASME Y14.1 A, "Letter". */
import type { Orientation } from '../optics/types';
import type { Paper } from '../session/handout';

const UPRIGHT: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
};

export function paperSize(
  paper: Paper,
  orientation: Orientation,
): { readonly width: number; readonly height: number } {
  const [short, long] = UPRIGHT[paper];
  return orientation === 'portrait'
    ? { width: short, height: long }
    : { width: long, height: short };
}
