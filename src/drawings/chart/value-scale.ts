/** The upright axis: its ends, its ticks and their texts. */
import { nice, tickStep, ticks } from 'd3-array';
import { formatNumber } from '../../readings/quantities';
import type { DistanceChart } from './types';

export interface ValueTick {
  /** In the axis' unit. */
  readonly value: number;
  readonly text: string;
}

export interface ValueScale {
  /** In the axis' unit. */
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly ValueTick[];
}

/** Apart by less than this share, values are the same. */
const FLAT = 1e-9;
/** How far beyond most of its values a curve is followed that runs off without limit before a gap. */
const RUNS_OFF = 1.5;
const MOST_VALUES = 0.85;

/** Lowest and highest value to be drawn; a curve with a gap may run off beyond. */
function extentOf({ curves, reading: { axis } }: DistanceChart): readonly [number, number] {
  const points = curves.flatMap((curve) => curve.points);
  const values = points.flatMap(({ value }) => (value === null ? [] : [axis.of(value)]));
  if (values.length === 0) return [0, 1];
  const sorted = values.sort((a, b) => a - b);
  const [least, greatest] = [sorted[0] as number, sorted.at(-1) as number];
  const most = sorted[Math.floor(MOST_VALUES * (sorted.length - 1))] as number;
  const top =
    values.length < points.length
      ? Math.min(greatest, least + RUNS_OFF * (most - least))
      : greatest;
  const spare = FLAT * Math.max(1, Math.abs(least));
  if (top - least > spare) return [least, top];
  const around = Math.abs(least) > FLAT ? Math.abs(least) / 20 : 1;
  return [least - around, least + around];
}

/** @param count of ticks wished for */
export function valueScale(chart: DistanceChart, count: number): ValueScale {
  const [least, greatest] = extentOf(chart);
  const [from, to] = nice(least, greatest, count);
  const digits = Math.max(0, -Math.floor(Math.log10(tickStep(from, to, count)) + 1e-9));
  const { signed } = chart.reading.axis;
  return {
    from,
    to,
    ticks: ticks(from, to, count).map((value) => {
      const text = formatNumber(value, digits);
      return { value, text: signed && value > 0 ? `+${text}` : text };
    }),
  };
}
