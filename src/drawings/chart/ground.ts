/** The chart's frame: where it lies, its two scales and their marks. */
import { formatLength } from '../../readings/quantities';
import { evenScale } from '../scale';
import type { MeasureText } from '../text-width';
import { numberedTicks } from '../ticks';
import type { ChartScale, DistanceChart } from './types';
import { type ValueScale, valueScale } from './value-scale';

/** Sizes of texts, rem. */
export const TEXT = { tick: 0.75, name: 0.8125, letter: 0.9375, bold: 600 } as const;
/** A tab with a picture's letter, rem. */
export const TAB = { width: 1.3, height: 1.3 } as const;

/** Height of the plot over its width, and its bounds in rem. */
const SHAPE = 0.55;
const HEIGHT = { least: 9, most: 20 } as const;
/** Height for one upright tick, rem. */
const PER_TICK = 2.2;

/** Standpoints so near to each other are one place, metres. */
const SAME = 1e-6;

export interface ChartSheet {
  readonly width: number;
  /** Root font size in pixels. */
  readonly rem: number;
  readonly measure: MeasureText;
}

export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface ChartGround {
  readonly plot: Plot;
  readonly rem: number;
  /** Nearest and farthest standpoint, metres. */
  readonly nearest: number;
  readonly farthest: number;
  readonly toX: (distance: number) => number;
  /** From SI. */
  readonly toY: (value: number) => number;
  readonly across: readonly { readonly x: number; readonly text: string }[];
  readonly up: readonly { readonly y: number; readonly text: string }[];
}

/** Distance -> place on the screen. */
export function distanceToX(
  scale: ChartScale,
  nearest: number,
  farthest: number,
  { left, right }: Pick<Plot, 'left' | 'right'>,
): (distance: number) => number {
  if (!(farthest - nearest > SAME)) return () => (left + right) / 2;
  if (scale === 'even') {
    const perMetre = (right - left) / (farthest - nearest);
    return evenScale(left - nearest * perMetre, perMetre).toX;
  }
  const per = (right - left) / (1 / nearest - 1 / farthest);
  return (distance) => left + (1 / nearest - 1 / distance) * per;
}

/** Numbers under the plot; the two ends where no round distance lies between them. */
function acrossTicks(
  { units }: DistanceChart,
  toX: ChartGround['toX'],
  { nearest, farthest }: Pick<ChartGround, 'nearest' | 'farthest'>,
  { rem, measure }: ChartSheet,
) {
  const widest = units === 'metric' ? '30.0 m' : '10 ft 6 in';
  const gap = measure(widest, TEXT.tick * rem) + 0.5 * rem;
  const round = numberedTicks({ toX }, { to: farthest }, units, gap)
    .filter(({ distance }) => distance >= nearest - 1e-9)
    .map(({ distance, text }) => ({ x: toX(distance), text }));
  if (round.length > 1) return round;
  return [...new Set([nearest, farthest])].map((distance) => ({
    x: toX(distance),
    text: formatLength(distance, units, 'distance'),
  }));
}

/** @param top of the plot, pixels; @param right its right edge */
export function chartGround(
  chart: DistanceChart,
  sheet: ChartSheet,
  top: number,
  right: number,
): ChartGround {
  const { rem, measure } = sheet;
  const distances = chart.curves.flatMap(({ points }) => points.map(({ distance }) => distance));
  const [nearest, farthest] = [Math.min(...distances), Math.max(...distances)];
  const height = rem * Math.min(HEIGHT.most, Math.max(HEIGHT.least, (SHAPE * right) / rem));
  const values: ValueScale = valueScale(chart, Math.max(2, Math.round(height / (PER_TICK * rem))));
  const widest = Math.max(...values.ticks.map(({ text }) => measure(text, TEXT.tick * rem)), 0);
  const plot = { left: widest + 0.5 * rem, right, top, bottom: top + height };
  const perUnit = height / (values.to - values.from);
  const toY = (shown: number) => plot.bottom - (shown - values.from) * perUnit;
  const toX = distanceToX(chart.scale, nearest, farthest, plot);
  return {
    plot,
    rem,
    nearest,
    farthest,
    toX,
    toY: (value) => toY(chart.reading.axis.of(value)),
    across: acrossTicks(chart, toX, { nearest, farthest }, sheet),
    up: values.ticks.map(({ value, text }) => ({ y: toY(value), text })),
  };
}
