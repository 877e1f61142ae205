import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { type ChartContent, DistanceChart } from '../../src/drawings/chart';
import { layoutChart } from '../../src/drawings/chart/layout';
import { curveStyle } from '../../src/drawings/chart/styles';
import { boxesOverlap } from '../../src/drawings/geometry';
import { estimateText } from '../../src/drawings/text-width';
import { formatRatio } from '../../src/readings/format';
import { must } from '../session/fixtures';

const PLAIN = { symbol: '', of: (value: number) => value, signed: false };

/** Curves of 1 + k / d, which are straight lines in 1/d. */
const chartOf = (v: {
  factors: readonly number[];
  distances: readonly number[];
  marks?: ChartContent['marks'];
  scale?: ChartContent['scale'];
  units?: ChartContent['units'];
}): ChartContent => ({
  units: v.units ?? 'metric',
  scale: v.scale ?? 'even',
  reading: { name: 'Nose to ear', axis: PLAIN, show: (value) => formatRatio(value) },
  curves: v.factors.map((factor, i) => ({
    id: `c${i}`,
    name: ['Woman', 'Child of 8', 'Adult man, 5th percentile'][i % 3] ?? '',
    points: v.distances.map((distance) => ({ distance, value: 1 + factor / distance })),
  })),
  marks: v.marks ?? [],
});
const sheet = (width = 700) => ({ width, rem: 16, measure: estimateText });
const pathPoints = (d: string) =>
  [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
const DISTANCES = Array.from({ length: 50 }, (_, i) => 0.3 + (3.7 * i) / 49);

describe('the chart', () => {
  it('draws each point where the scales say, to a tenth of a pixel', () => {
    const chart = chartOf({ factors: [0.1], distances: DISTANCES });
    const layout = layoutChart(chart, sheet());
    const { plot, up } = layout.ground;
    const points = pathPoints(must(layout.curves[0]).path);
    expect(points).toHaveLength(DISTANCES.length);
    // Two ticks tell what a pixel of height is worth; the ends of the plot what one of width is.
    const [low, high] = [must(up[0]), must(up.at(-1))];
    const perValue = (high.y - low.y) / (Number(high.text) - Number(low.text));
    for (const [i, distance] of DISTANCES.entries()) {
      const x = plot.left + ((distance - 0.3) / 3.7) * (plot.right - plot.left);
      const y = low.y + (1 + 0.1 / distance - Number(low.text)) * perValue;
      expect(Math.abs(must(points[i]).x - x)).toBeLessThan(0.06);
      expect(Math.abs(must(points[i]).y - y)).toBeLessThan(0.06);
    }
  });

  it('falls where the reading falls', () => {
    const chart = chartOf({ factors: [0.1], distances: DISTANCES });
    const points = pathPoints(must(layoutChart(chart, sheet()).curves[0]).path);
    for (let i = 1; i < points.length; i += 1) {
      expect(must(points[i]).x).toBeGreaterThan(must(points[i - 1]).x);
      expect(must(points[i]).y).toBeGreaterThanOrEqual(must(points[i - 1]).y);
    }
  });

  it('makes a straight line of 1 + k/d on the scale of 1/d', () => {
    const chart = chartOf({ factors: [0.1], distances: DISTANCES, scale: 'inverse' });
    const points = pathPoints(must(layoutChart(chart, sheet()).curves[0]).path);
    const [first, last] = [must(points[0]), must(points.at(-1))];
    for (const { x, y } of points) {
      const share = (x - first.x) / (last.x - first.x);
      expect(Math.abs(y - (first.y + share * (last.y - first.y)))).toBeLessThan(0.15);
    }
  });

  it('leaves a gap where there is no value, and keeps what runs off before it in bounds', () => {
    const chart = chartOf({ factors: [0.1], distances: DISTANCES });
    const points = must(chart.curves[0]).points.map(({ distance }) => ({
      distance,
      value: distance < 2.5 ? 1 / (2.5 - distance) : null,
    }));
    const layout = layoutChart(
      { ...chart, curves: [{ ...must(chart.curves[0]), points }] },
      sheet(),
    );
    const { path } = must(layout.curves[0]);
    expect(path.match(/M/g)).toHaveLength(1);
    expect(pathPoints(path).every(({ x }) => x <= layout.ground.toX(2.5))).toBe(true);
    // What comes before it is told apart, not pressed flat by what runs off.
    const { top, bottom } = layout.ground.plot;
    const inside = pathPoints(path).filter(({ y }) => y < bottom - (bottom - top) / 10);
    expect(inside.length).toBeGreaterThan(5);
  });

  it('marks each picture at its distance and on every curve', () => {
    const at = [0.4, 2.4];
    const chart = chartOf({
      factors: [0.1, 0.2],
      distances: [...DISTANCES, ...at].sort((a, b) => a - b),
      marks: [
        { letter: 'A', standpoint: 0.4 },
        { letter: 'B', standpoint: 2.4 },
      ],
    });
    const { marks, ground } = layoutChart(chart, sheet());
    expect(marks.map(({ letter }) => letter)).toEqual(['A', 'B']);
    for (const [i, mark] of marks.entries()) {
      expect(mark.x).toBe(ground.toX(must(at[i])));
      expect(mark.dots.map(({ y }) => y)).toEqual(
        [0.1, 0.2].map((factor) => ground.toY(1 + factor / must(at[i]))),
      );
    }
  });

  it('writes the values of a lone curve clear of it, at its ends too', () => {
    for (const factor of [0.1, -0.1])
      for (const standpoint of [0.3, 0.4, 2, 4]) {
        const distances = [...new Set([...DISTANCES, standpoint])].sort((a, b) => a - b);
        const marks = [{ letter: 'A' as const, standpoint }];
        const layout = layoutChart(chartOf({ factors: [factor], distances, marks }), sheet());
        const value = must(must(layout.marks[0]).value);
        const width = estimateText(value.text, 13, 600);
        const left = value.anchor === 'start' ? value.x : value.x - width;
        for (const { x, y } of pathPoints(must(layout.curves[0]).path))
          if (x >= left && x <= left + width)
            expect(y < value.y - 9 || y > value.y, `${factor} ${standpoint}`).toBe(true);
      }
  });

  it('keeps everything inside the sheet and its tabs apart, whatever it shows', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          width: fc.integer({ min: 300, max: 1600 }),
          factors: fc.array(between(-1, 1), { minLength: 1, maxLength: 19 }),
          ends: fc.tuple(between(0.15, 30), between(0.15, 30)),
          standpoints: fc.array(between(0.15, 30), { maxLength: 4 }),
          scale: fc.constantFrom('even' as const, 'inverse' as const),
          units: fc.constantFrom('metric' as const, 'imperial' as const),
        }),
        ({ width, factors, ends, standpoints, scale, units }) => {
          const distances = [...new Set([...ends, ...standpoints])].sort((a, b) => a - b);
          const marks = standpoints.map((standpoint, i) => ({
            letter: (['A', 'B', 'C', 'D'] as const)[i] ?? 'A',
            standpoint,
          }));
          const layout = layoutChart(chartOf({ factors, distances, marks, scale, units }), {
            ...sheet(),
            width,
          });
          const { plot, up, across } = layout.ground;
          expect(plot.left).toBeGreaterThan(0);
          expect(plot.right).toBeGreaterThan(plot.left);
          expect(up.length).toBeGreaterThan(0);
          expect(across.length).toBeGreaterThan(0);
          for (const { path } of layout.curves)
            for (const { x, y } of pathPoints(path)) {
              expect(x >= plot.left - 0.1 && x <= plot.right + 0.1).toBe(true);
              expect(y >= plot.top - 0.1 && y <= plot.bottom + 0.1).toBe(true);
            }
          for (const { y } of layout.legend) expect(y).toBeLessThan(layout.height);
          for (const [i, { tab }] of layout.marks.entries()) {
            expect(tab.x >= -0.1 && tab.x + tab.width <= width + 0.1).toBe(true);
            for (const other of layout.marks.slice(i + 1))
              expect(boxesOverlap(tab, other.tab)).toBe(false);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('tells its values in words, with plain shapes and texts alone', () => {
    const chart = chartOf({
      factors: [0.1],
      distances: [0.3, 0.4, 5],
      marks: [{ letter: 'A', standpoint: 0.4 }],
    });
    const markup = renderToStaticMarkup(<DistanceChart content={chart} width={600} rem={16} />);
    expect(markup).toContain('role="img"');
    expect(markup).toContain(
      'Nose to ear over the distance from the eyes. Woman: 1.33 at 0.30 m, 1.02 at 5.00 m. Picture A, 0.40 m: 1.25.',
    );
    expect(markup).not.toMatch(/foreignObject|<mask|NaN|Infinity/);
  });

  it('has a line style of its own for each of eighteen curves', () => {
    const styles = Array.from({ length: 18 }, (_, i) => JSON.stringify(curveStyle(i)));
    expect(new Set(styles).size).toBe(18);
  });
});
