import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { type Box, boxesOverlap } from '../../src/drawings/geometry';
import { type ChartContent, OneStandpointChart } from '../../src/drawings/plan';
import { layoutChart } from '../../src/drawings/plan/chart';
import { PLAN_WORDS } from '../../src/drawings/plan/words';
import { estimateText } from '../../src/drawings/text-width';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const span = fc
  .tuple(between(0, 8), between(0, 8))
  .map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }));

const contents: fc.Arbitrary<ChartContent> = fc
  .record({
    units: fc.constantFrom('metric' as const, 'imperial' as const),
    farthest: between(1.5, 7),
    framings: fc.array(
      fc.array(
        fc.record({ name: fc.constantFrom('85', '28–70', '100–500'), reach: fc.option(span) }),
        {
          minLength: 1,
          maxLength: 6,
        },
      ),
      { minLength: 1, maxLength: 8 },
    ),
    standpoints: fc.array(between(0.2, 1), { maxLength: 4 }),
    zones: fc.array(span, { maxLength: 3 }),
  })
  .map(({ units, farthest, framings, standpoints, zones }) => ({
    units,
    farthest,
    framings: framings.map((lenses, i) => ({
      id: `f${i}`,
      name: ['Headshot', 'Head and shoulders', 'Three-quarter length'][i % 3] ?? '',
      frameHeight: i % 4 === 3 ? null : 0.4 + 0.2 * i,
      lenses: lenses.map(({ name, reach }, j) => ({
        id: `l${j}`,
        name,
        reach: reach ? [reach] : [],
        works: reach ? [{ from: reach.from, to: (reach.from + reach.to) / 2 }] : [],
      })),
    })),
    zones: zones.map((zone, i) => ({
      id: `z${i}`,
      name: ['nose gains over 8 %', 'no room', 'within arm’s reach'][i] ?? '',
      spans: framings.map((_, f) => ({ framing: `f${f}`, ...zone })),
    })),
    pictures: standpoints.map((share, i) => ({
      letter: (['A', 'B', 'C', 'D'] as const)[i] ?? 'A',
      standpoint: share * farthest,
      move: { min: 0.15, max: farthest },
    })),
  }));

const layout = (content: ChartContent, width: number, rem: number) =>
  layoutChart(content, { width, rem, measure: estimateText }, PLAN_WORDS);

function expectApart(boxes: readonly Box[]): void {
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) expect(boxesOverlap(a, b, -0.01)).toBe(false);
  }
}

describe('the chart', () => {
  const every = (check: (found: ReturnType<typeof layout>, content: ChartContent) => void) =>
    fc.assert(
      fc.property(
        contents,
        fc.integer({ min: 328, max: 1600 }),
        fc.integer({ min: 14, max: 22 }),
        (content, width, rem) => check(layout(content, width, rem), content),
      ),
      { numRuns: 150 },
    );

  it('names of lenses cover neither bands nor each other', () => {
    every(({ rows }) => {
      for (const { bands } of rows) {
        expectApart(bands.map(({ name }) => name.box));
        for (const { name } of bands) {
          for (const box of bands.flatMap(({ reach, works }) => [...reach, ...works])) {
            expect(boxesOverlap(name.box, box, -0.01)).toBe(false);
          }
        }
      }
    });
  });

  it('tabs and their values lie apart', () => {
    every(({ tabs }) => expectApart(tabs.flatMap(({ tab, value }) => [tab, value.box])));
  });

  it('every zone is named, and no name covers another', () => {
    every(({ zones, zoneNames, ground }) => {
      expect(new Set(zoneNames.map(({ id }) => id))).toEqual(new Set(zones.map(({ id }) => id)));
      const height = ground.rem;
      expectApart(zoneNames.map(({ x, y, width }) => ({ x: x - width / 2, y, width, height })));
    });
  });
});

const SMALL: ChartContent = {
  units: 'metric',
  farthest: 4,
  framings: [
    {
      id: 'half',
      name: 'Half-length',
      frameHeight: 0.77,
      lenses: [
        {
          id: 'zoom',
          name: '70–300',
          reach: [{ from: 1.57, to: 6.7 }],
          works: [{ from: 1.57, to: 3.06 }],
        },
        { id: 'prime', name: '85', reach: [{ from: 1.9, to: 1.9 }], works: [] },
        { id: 'long', name: '400', reach: [{ from: 8.5, to: 8.5 }], works: [] },
      ],
    },
  ],
  zones: [
    { id: 'nose', name: 'nose gains over 8 %', spans: [{ framing: 'half', from: 0, to: 1.47 }] },
  ],
  pictures: [{ letter: 'B', standpoint: 2.5 }],
};

it('bands begin and end exactly at their distances, cut at the end of the chart', () => {
  const { rows, ground, tabs } = layout(SMALL, 900, 16);
  const [zoom, prime, long] = rows[0]?.bands ?? [];
  const metres = (x: number) => ground.scale.toDistance(x);
  const [reach] = zoom?.reach ?? [];
  const [works] = zoom?.works ?? [];
  if (!reach || !works) throw new Error('a band expected');
  expect(metres(reach.x)).toBeCloseTo(1.57, 9);
  expect(metres(reach.x + reach.width)).toBeCloseTo(4, 9);
  expect(metres(works.x + works.width)).toBeCloseTo(3.06, 9);
  const [single] = prime?.reach ?? [];
  expect(metres((single?.x ?? 0) + (single?.width ?? 0) / 2)).toBeCloseTo(1.9, 9);
  expect(long?.reach).toEqual([]);
  expect(long?.name.text).toBe('400: from 8.50 m');
  expect(metres(tabs[0]?.x ?? 0)).toBeCloseTo(2.5, 9);
});

it('the same stands in a table', () => {
  const html = renderToStaticMarkup(<OneStandpointChart content={SMALL} width={900} rem={16} />);
  expect(html).toContain(
    '<td>70–300</td><td>1.57 m to 6.70 m</td><td>1.57 m to 3.06 m</td><td>0.00 m to 1.47 m</td><td>everything met</td>',
  );
  expect(html).toContain('<td>85</td><td>1.90 m</td><td>nowhere</td>');
  expect(html).toContain('<th scope="col">standpoint B, 2.50 m</th>');
});
