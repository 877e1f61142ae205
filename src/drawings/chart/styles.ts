/** How the sitters' curves are told apart without colour, which belongs to the pictures: dash, then weight. */

export interface CurveStyle {
  /** SVG dash pattern, pixels. */
  readonly dash: string;
  readonly width: number;
}

const DASHES = ['none', '9 4', '2 3.5', '13 4 2 4', '5 2.5', '13 3 2 3 2 3'] as const;
const WIDTHS = [1.8, 3.2, 0.9] as const;

export const curveStyle = (index: number): CurveStyle => ({
  dash: DASHES[index % DASHES.length] ?? 'none',
  width: WIDTHS[Math.floor(index / DASHES.length) % WIDTHS.length] ?? 1,
});
