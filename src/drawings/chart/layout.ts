/** Where everything of a chart lies. Pure; CSS pixels. */
import type { Letter } from '../../session/types';
import { type Box, chainPath, type Point } from '../geometry';
import { splitInTwo } from '../rail/words';
import { spread } from '../spread';
import { type ChartGround, type ChartSheet, chartGround, TAB, TEXT } from './ground';
import { besideWidth, type LegendEntry, legendBelow, legendBeside, legendBottom } from './legend';
import type { Curve, DistanceChart } from './types';
import { axisTitle, distanceTitle } from './words';

export interface CurvePlace {
  readonly id: string;
  readonly index: number;
  /** SVG path data; empty when nothing is drawn. */
  readonly path: string;
}

/** One picture's standpoint: its line, its letter and its points on the curves. */
export interface MarkPlace {
  readonly letter: Letter;
  readonly x: number;
  readonly tab: Box;
  readonly dots: readonly Point[];
  /** The value beside the dot, where there is one curve. */
  readonly value: (Point & { readonly text: string; readonly anchor: 'start' | 'end' }) | null;
}

export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  readonly ground: ChartGround;
  readonly title: readonly (Point & { readonly text: string })[];
  readonly below: Point & { readonly text: string };
  readonly curves: readonly CurvePlace[];
  readonly marks: readonly MarkPlace[];
  readonly legend: readonly LegendEntry[];
}

/** Rem. */
const TITLE_LINE = 1.25;
/** Right of the plot: half of the last number stands there. */
const PAD = 1.2;

/** A curve as pieces between its gaps. */
function pathOf({ points }: Curve, { toX, toY }: ChartGround): string {
  const pieces: Point[][] = [[]];
  for (const { distance, value } of points) {
    if (value === null) pieces.push([]);
    else pieces.at(-1)?.push({ x: toX(distance), y: toY(value) });
  }
  return pieces
    .filter((piece) => piece.length > 1)
    .map(chainPath)
    .join('');
}

function titleLines(text: string, { rem, width, measure }: ChartSheet): string[] {
  return measure(text, TEXT.name * rem, TEXT.bold) <= width ? [text] : splitInTwo(text);
}

/** Beside its dot and clear of the curve, above or below it as there is room. */
function valuePlace(
  { points }: Curve,
  at: number,
  chart: DistanceChart,
  { plot, rem, toX, toY }: ChartGround,
  measure: ChartSheet['measure'],
): MarkPlace['value'] {
  const value = points[at]?.value ?? null;
  if (value === null) return null;
  const text = chart.reading.show(value);
  const width = measure(text, TEXT.name * rem, TEXT.bold);
  const x = toX(points[at]?.distance ?? 0);
  const gap = 0.45 * rem;
  const height = 0.75 * TEXT.name * rem;
  const fits = x + gap + width <= plot.right;
  const [left, right] = fits ? [x, x + gap + width] : [x - gap - width, x];
  const beside = points.flatMap((point) => {
    const place = toX(point.distance);
    return point.value !== null && place >= left && place <= right ? [toY(point.value)] : [];
  });
  const above = Math.min(...beside) - gap;
  const below = Math.max(...beside) + gap + height;
  const isFalling = toY(points.at(-1)?.value ?? value) > toY(points[0]?.value ?? value);
  // The nearer side: right of a falling curve's dot the curve leaves the room above it free.
  const isAbove = isFalling === fits ? above - height >= plot.top : below > plot.bottom - 0.3 * rem;
  return {
    text,
    x: fits ? x + gap : x - gap,
    y: isAbove ? above : below,
    anchor: fits ? 'start' : 'end',
  };
}

function placeMarks(
  chart: DistanceChart,
  ground: ChartGround,
  { measure, width }: ChartSheet,
  top: number,
): MarkPlace[] {
  const { rem, plot, toX, toY } = ground;
  const marks = [...chart.marks].sort((a, b) => a.standpoint - b.standpoint);
  const half = (TAB.width / 2) * rem;
  const places = spread(
    marks.map(({ standpoint }) => ({ at: toX(standpoint), left: half, right: half })),
    0.2 * rem,
    0,
    width,
  );
  const [only, another] = chart.curves;
  return marks.map(({ letter, standpoint }, i) => {
    const x = toX(standpoint);
    const at = (curve: Curve) => curve.points.findIndex(({ distance }) => distance === standpoint);
    const dots = chart.curves.flatMap((curve) => {
      const value = curve.points[at(curve)]?.value ?? null;
      const y = value === null ? null : toY(value);
      return y !== null && y >= plot.top - 1 && y <= plot.bottom + 1 ? [{ x, y }] : [];
    });
    return {
      letter,
      x,
      tab: {
        x: (places[i] ?? x) - half,
        y: top,
        width: 2 * half,
        height: TAB.height * rem,
      },
      dots,
      value:
        only && !another && dots.length > 0
          ? valuePlace(only, at(only), chart, ground, measure)
          : null,
    };
  });
}

export function layoutChart(chart: DistanceChart, sheet: ChartSheet): ChartLayout {
  const { rem, width } = sheet;
  const lines = titleLines(axisTitle(chart), sheet);
  const tabsTop = (lines.length * TITLE_LINE + 0.2) * rem;
  const plotTop = tabsTop + (chart.marks.length > 0 ? TAB.height + 0.4 : 0.4) * rem;
  const beside = besideWidth(chart, sheet);
  const ground = chartGround(chart, sheet, plotTop, width - (beside ?? PAD * rem));
  const { plot } = ground;
  const below = { x: plot.right, y: plot.bottom + 2.7 * rem, text: distanceTitle(chart) };
  const under = below.y + 0.5 * rem;
  const rows = legendBelow(chart, sheet, under);
  const legend = beside === null ? rows.entries : legendBeside(chart, ground);
  return {
    width,
    height: beside === null ? rows.bottom : Math.max(under, legendBottom(legend, rem)),
    ground,
    title: lines.map((text, i) => ({ x: 0, y: (1 + i * TITLE_LINE) * rem, text })),
    below,
    curves: chart.curves.map((curve, index) => ({
      id: curve.id,
      index,
      path: pathOf(curve, ground),
    })),
    marks: placeMarks(chart, ground, sheet, tabsTop),
    legend,
  };
}
