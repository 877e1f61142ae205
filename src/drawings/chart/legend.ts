/** The names of the curves: beside their ends where there is room, else in rows below. */
import { spread } from '../spread';
import { type ChartGround, type ChartSheet, TEXT } from './ground';
import type { Curve, DistanceChart } from './types';

/** A piece of the curve, then its name. */
export interface LegendEntry {
  readonly id: string;
  readonly index: number;
  readonly name: string;
  /** The sample's left end, and the height of its line. */
  readonly x: number;
  readonly y: number;
  readonly sample: number;
  /** Where the curve ends, for the line that leads from it to its name. */
  readonly end: { readonly x: number; readonly y: number } | null;
}

/** Rem. */
const SAMPLE = 2.2;
const GAP = 0.4;
const LINE = 1.3;
const LEAD = 1.2;
/** Most of the sheet's width that names beside the plot may take. */
const BESIDE = 0.28;

const nameWidth = ({ measure, rem }: ChartSheet, name: string): number =>
  (SAMPLE + GAP) * rem + measure(name, TEXT.name * rem);

/** What names beside the plot need; null where they lie better below. */
export function besideWidth({ curves }: DistanceChart, sheet: ChartSheet): number | null {
  const width = LEAD * sheet.rem + Math.max(...curves.map(({ name }) => nameWidth(sheet, name)), 0);
  return width <= BESIDE * sheet.width ? width : null;
}

const lastValue = ({ points }: Curve): number | null => points.at(-1)?.value ?? null;

/** Each beside its curve's end, as near as the others let it. */
export function legendBeside({ curves }: DistanceChart, ground: ChartGround): LegendEntry[] {
  const { plot, rem, toY } = ground;
  const middle = (plot.top + plot.bottom) / 2;
  const ends = curves
    .map((curve, index) => {
      const value = lastValue(curve);
      const y = value === null ? null : toY(value);
      const inside = y !== null && y >= plot.top - 1 && y <= plot.bottom + 1;
      return { curve, index, y, at: inside ? y : middle, isEnd: inside };
    })
    .sort((a, b) => a.at - b.at);
  const half = (LINE / 2) * rem;
  const bottom = Math.max(plot.bottom, plot.top + ends.length * LINE * rem);
  const places = spread(
    ends.map(({ at }) => ({ at, left: half, right: half })),
    0,
    plot.top - half,
    bottom + half,
  );
  return ends.map(({ curve, index, y, isEnd }, i) => ({
    id: curve.id,
    index,
    name: curve.name,
    x: plot.right + LEAD * rem,
    y: places[i] ?? middle,
    sample: SAMPLE * rem,
    end: isEnd && y !== null ? { x: plot.right, y } : null,
  }));
}

/** In rows from the left; also tells where the last one ends. */
export function legendBelow(
  { curves }: DistanceChart,
  sheet: ChartSheet,
  top: number,
): { readonly entries: LegendEntry[]; readonly bottom: number } {
  const { rem, width } = sheet;
  const line = LINE * rem;
  let [x, y] = [0, top + line / 2];
  const entries = curves.map(({ id, name }, index) => {
    const own = nameWidth(sheet, name);
    if (x > 0 && x + own > width) {
      x = 0;
      y += line;
    }
    const entry = { id, index, name, x, y, sample: SAMPLE * rem, end: null };
    x += own + rem;
    return entry;
  });
  return { entries, bottom: y + line / 2 };
}

/** Where a name begins, from its sample. */
export const nameX = ({ x, sample }: LegendEntry, rem: number): number => x + sample + GAP * rem;

/** Lowest edge of names beside the plot. */
export const legendBottom = (entries: readonly LegendEntry[], rem: number): number =>
  Math.max(0, ...entries.map(({ y }) => y + (LINE / 2) * rem));
