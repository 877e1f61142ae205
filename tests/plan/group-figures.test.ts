/** Two rows of a group worked by hand; end heads against the exact outline of a ball. */
import { describe, expect, test } from 'vitest';
import { loadModels } from '../../src/models/node';
import { sphereImage } from '../../src/optics/off-axis';
import type { SensorFormat } from '../../src/optics/types';
import { metres, radians } from '../../src/optics/units';
import type { PlanPerson } from '../../src/plan';
import {
  depthForHeads,
  groupFigures,
  halfWidthFor,
  rowsApartFor,
} from '../../src/plan/group-figures';

const format = loadModels().formats.get('full-frame') as SensorFormat;

const at = (x: number, z: number): PlanPerson => ({
  id: `${x} ${z}`,
  name: 'Somebody',
  eyes: [x, 0, z],
  pupils: [
    [x - 0.03, 0, z],
    [x + 0.03, 0, z],
  ],
  noseTip: [x, -0.03, z + 0.03],
  ears: [
    [x - 0.07, 0, z - 0.08],
    [x + 0.07, 0, z - 0.08],
  ],
  crown: [x, 0.12, z - 0.08],
  chin: [x, -0.12, z],
  halfBreadth: 0.25,
  row: z < 0 ? 1 : 0,
});

describe('two rows, 4.00 m and 4.80 m before the lens', () => {
  const people = [at(0, 0), at(-1.2, 0), at(1.2, 0), at(-0.9, -0.8), at(0.9, -0.8)];
  const does = groupFigures(people, 4, format, 0.1);
  if (!does) throw new Error('no figures');

  test('heads differ by 4.8 / 4.0 - 1 = 20 %', () => {
    expect(does.headDifference).toBeCloseTo(0.2, 12);
    expect([does.front, does.rowsApart]).toEqual([4, 0.8]);
    // The same the other way round: 0.8 m apart and 20 % ask for 4 m.
    expect(depthForHeads(0.8, 0.2)).toBeCloseTo(4, 12);
    expect(rowsApartFor(4, 0.2)).toBeCloseTo(0.8, 12);
  });

  test('both rows share the focus 2 · 4 · 4.8 / 8.8 = 4.364 m, not a third between them (4.267 m)', () => {
    expect(does.shared?.focus).toBeCloseTo(38.4 / 8.8, 12);
    // Frame 2.9 m wide / 0.9 = 3.222 m; 2.148 m high; f = 4 · 24 / (2148 + 24) = 44.2 mm. The disc at both
    // rows is f^2 (4.8 - 4.0) / ((4.8 + 4.0) N (4.364 - 0.0442)) = 0.03 mm at N = 1.37.
    const f = (4 * 0.024) / ((2 / 3) * (2.9 / 0.9) + 0.024);
    const n = (f ** 2 * 0.8) / (8.8 * 0.00003 * (38.4 / 8.8 - f));
    expect(does.width).toBeCloseTo(2.9 / 0.9, 12);
    expect(does.shared?.fNumber).toBeCloseTo(n, 9);
    expect(n).toBeCloseTo(1.37, 2);
  });

  test('end heads, 1.2 m aside of 4 m, are drawn sec t = 1.044 wider, curved sec^2 t = 1.09', () => {
    // tan t = 0.3: sec^2 t = 1.09.
    expect(does.ends.straight).toBeCloseTo(Math.sqrt(1.09), 12);
    expect(does.ends.curved).toBeCloseTo(1.09, 12);
  });

  test('under 10 % stretch the ends stand within 4 sqrt(1.21 - 1) = 1.833 m', () => {
    expect(halfWidthFor(4, 0.1)).toBeCloseTo(4 * Math.sqrt(0.21), 12);
    expect(does.limit?.half).toBeCloseTo(1.833, 3);
    // 1.2 m from head to head: three such ways in 3.67 m, so 4 people.
    expect(does.limit?.people).toBe(4);
  });
});

test('the stretch of a small ball is that of its exact outline', () => {
  const angle = radians(Math.atan(0.3));
  const radius = metres(0.001);
  // Equal distance 4 m, off and on the axis; sphereImage traces the cone that touches the ball.
  const off = sphereImage(radius, metres(4), angle);
  const on = sphereImage(radius, metres(4), radians(0));
  if (!off.ok || !on.ok) throw new Error('no image');
  const people = [at(0, 0), at(1.2, 0), at(-1.2, 0)];
  const does = groupFigures(people, 4, format, null);
  expect(off.value.radial / on.value.radial).toBeCloseTo(does?.ends.curved ?? 0, 5);
});

test('an even row is told from the axis through its first person, as the plan frames it', () => {
  // 0.6 m from head to head: the second stands 0.6 m aside, his shoulder 0.85 m. 2 · 0.85 / 0.9 m.
  const does = groupFigures([at(0, 0), at(0.6, 0)], 4, format, null);
  expect(does?.width).toBeCloseTo(1.7 / 0.9, 12);
  expect(does?.ends.straight).toBeCloseTo(Math.hypot(4, 0.6) / 4, 12);
});

test('a camera among the people, and nobody, give no figures', () => {
  expect(groupFigures([at(0, 0)], 0, format, null)).toBe(null);
  expect(groupFigures([], 4, format, null)).toBe(null);
});
