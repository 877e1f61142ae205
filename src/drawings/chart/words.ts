/** What a chart says. */
import { formatLength } from '../../readings/quantities';
import type { Curve, CurvePoint, DistanceChart } from './types';

const NONE = 'no value';

/** A reading's name with its unit, for the axis. */
export const axisTitle = ({ reading: { name, axis } }: DistanceChart): string =>
  axis.symbol === '' ? name : `${name}, ${axis.symbol}`;

export const distanceTitle = ({ scale }: Pick<DistanceChart, 'scale'>): string =>
  scale === 'even' ? 'distance from the eyes' : 'distance from the eyes, even in 1/d';

/** The chart in words: where it runs from and to, each curve's ends, and the values at the pictures. */
export function chartSentences(chart: DistanceChart): string {
  const { units, reading, curves, marks } = chart;
  const far = (metres: number) => formatLength(metres, units, 'distance');
  const at = ({ value, distance }: CurvePoint) =>
    `${value === null ? NONE : reading.show(value)} at ${far(distance)}`;
  const told = ({ name, points }: Curve) => {
    const [first, last] = [points[0], points.at(-1)];
    return first && last ? [`${name}: ${at(first)}, ${at(last)}.`] : [];
  };
  const stands = marks.map(({ letter, standpoint }) => {
    const values = curves.map(({ points }) => {
      const value = points.find(({ distance }) => distance === standpoint)?.value ?? null;
      return value === null ? NONE : reading.show(value);
    });
    return `Picture ${letter}, ${far(standpoint)}: ${values.join(', ')}.`;
  });
  return [
    `${reading.name} over the distance from the eyes.`,
    ...curves.flatMap(told),
    ...stands,
  ].join(' ');
}
