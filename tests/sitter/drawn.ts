import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { loadModels } from '../../src/models/node';
import type { Percentiles } from '../../src/models/types';
import { DIMENSIONS, type DimensionName, type SculptureName } from '../../src/sitter/types';

/** Random adults whose dimensions go together as in the surveys. */

interface Correlations {
  readonly surveys: Readonly<
    Record<
      string,
      { readonly dimensions: readonly DimensionName[] } & Readonly<
        Record<SculptureName, readonly (readonly number[])[]>
      >
    >
  >;
}
const { surveys } = JSON.parse(
  readFileSync(new URL('tables/correlations.json', import.meta.url), 'utf8'),
) as Correlations;

const { dimensions } = loadModels();
export const percentilesOf = (name: DimensionName, sex: SculptureName): Percentiles | undefined =>
  dimensions[name][sex];

/** Dimensions that a survey gives percentiles of. */
export const SURVEYED = DIMENSIONS.filter((name) => dimensions[name].female);

const DEVIATES = [-2.3263, -1.6449, 0, 1.6449, 2.3263] as const;

/** Value at a standard normal deviate, between the 1st and the 99th percentile. */
function valueAt(p: Percentiles, deviate: number): number {
  const marks = [p.p1, p.p5, p.p50, p.p95, p.p99];
  const z = Math.min(DEVIATES[4], Math.max(DEVIATES[0], deviate));
  const i = Math.max(
    1,
    DEVIATES.findIndex((mark) => z <= mark),
  );
  const [from, to] = [DEVIATES[i - 1] as number, DEVIATES[i] as number];
  const [low, high] = [marks[i - 1] as number, marks[i] as number];
  return low + ((high - low) * (z - from)) / (to - from);
}

/** Square root of a correlation matrix given by its rows before the diagonal (Cholesky). */
function root(rows: readonly (readonly number[])[]): number[][] {
  const L: number[][] = [];
  rows.forEach((row, i) => {
    const own: number[] = [];
    for (let j = 0; j <= i; j++) {
      const sum = own.slice(0, j).reduce((s, c, k) => s + c * (L[j]?.[k] ?? 0), 0);
      const rest = (j === i ? 1 : (row[j] as number)) - sum;
      own.push(j === i ? Math.sqrt(Math.max(rest, 1e-9)) : rest / (L[j]?.[j] as number));
    }
    L.push(own);
  });
  return L;
}

/** Breadths and depths of the trunk, which grow together; here with a correlation of 0.7 (memory). */
const TRUNK = [
  'biacromial_breadth',
  'bideltoid_breadth',
  'chest_breadth',
  'chest_depth',
  'waist_breadth',
  'waist_depth',
  'hip_breadth_standing',
  'buttock_depth',
] as const satisfies readonly DimensionName[];

/** Sum of twelve even draws less six: nearly normal, mean 0, deviation 1. */
const normal = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 })
  .map((draws) => draws.reduce((a, b) => a + b, -6));
const normals = (n: number) => fc.array(normal, { minLength: n, maxLength: n });

type Changes = Partial<Record<DimensionName, number>>;

export function people(sex: SculptureName): fc.Arbitrary<Changes> {
  const tables = Object.values(surveys).map((survey) => ({
    names: survey.dimensions,
    root: root(survey[sex]),
  }));
  const most = Math.max(TRUNK.length + 1, ...tables.map(({ names }) => names.length));
  return fc.array(normals(most), { minLength: 3, maxLength: 3 }).map((draws) => {
    const changes: Changes = {};
    const set = (name: DimensionName, deviate: number): void => {
      const table = percentilesOf(name, sex);
      if (table) changes[name] ??= valueAt(table, deviate);
    };
    tables.forEach(({ names, root: L }, t) => {
      L.forEach((row, i) => {
        set(
          names[i] as DimensionName,
          row.reduce((sum, c, j) => sum + c * (draws[t]?.[j] as number), 0),
        );
      });
    });
    const [build = 0, ...own] = draws[2] as number[];
    TRUNK.forEach((name, i) => {
      set(name, Math.sqrt(0.7) * build + Math.sqrt(0.3) * (own[i] as number));
    });
    return changes;
  });
}
