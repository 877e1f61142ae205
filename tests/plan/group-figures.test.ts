/** Two rows of a group worked by hand. tests/reference/plan-group.test.ts holds them against the outside world. */
import { describe, expect, test } from 'vitest';
import { loadModels } from '../../src/models/node';
import type { SensorFormat } from '../../src/optics/types';
import type { PlanPerson } from '../../src/plan';
import {
  asideFor,
  depthForHeads,
  type GroupSeen,
  groupFigures,
  rowsApartFor,
} from '../../src/plan/group-figures';

const format = loadModels().formats.get('full-frame') as SensorFormat;

const at = (x: number, z: number, row = z < 0 ? 1 : 0): PlanPerson => ({
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
  row,
});

const seen = (
  straight: readonly PlanPerson[],
  change: Partial<GroupSeen> & { curved?: readonly PlanPerson[] } = {},
): GroupSeen => ({
  people: { straight, curved: change.curved ?? null },
  chosen: 'straight',
  s: 4,
  lens: 0,
  most: null,
  ...change,
});

describe('two rows, 4.00 m and 4.80 m before the lens', () => {
  const people = [at(0, 0), at(-1.2, 0), at(1.2, 0), at(-0.9, -0.8), at(0.9, -0.8)];
  const does = groupFigures(seen(people, { most: 0.1 }), format);
  if (!does) throw new Error('no figures');

  test('heads differ by 4.8 / 4.0 - 1 = 20 %', () => {
    expect(does.headDifference).toBeCloseTo(0.2, 12);
    expect([does.front, does.rowsApart]).toEqual([4, 0.8]);
    // 0.3 m for the back row's backs.
    expect(does.toBackdrop).toBeCloseTo(1.1, 12);
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

  test('end heads, 1.2 m aside of 4 m, are drawn sec t = 1.044 wider and no higher', () => {
    // tan t = 0.3: sec^2 t = 1.09.
    expect(does.ends.straight?.across).toBeCloseTo(Math.sqrt(1.09), 12);
    expect(does.ends.straight?.up).toBe(1);
    expect(does.ends.curved).toBe(null);
  });

  test('under 10 % stretch the ends stand within 4 sqrt(1.21 - 1) = 1.833 m', () => {
    expect(asideFor('straight', 4, 0, 0.1)).toBeCloseTo(4 * Math.sqrt(0.21), 12);
    // 1.833 / 1.2 is less than 4.8 sqrt(0.21) / 0.9 of the back row, so it is the front row's.
    expect(does.ends.straight?.limit?.row).toBe(0);
    expect(does.ends.straight?.limit?.aside).toBeCloseTo(1.833, 3);
    expect(does.ends.straight?.limit?.forward).toBe(0);
    // 1.2 m from head to head: three such ways in 3.67 m, so 4 people.
    expect(does.ends.straight?.limit?.people).toBe(4);
  });
});

describe('five in a curved row 4.00 m about the lens, 0.60 m from head to head', () => {
  // As the chord: 2 asin(0.3 / 4) = 0.150141 rad from one to the next; the ends at twice that, 0.300282 rad.
  const a = 2 * Math.asin(0.3 / 4);
  const curved = [0, -1, 1, -2, 2].map((i) => at(4 * Math.sin(i * a), 4 - 4 * Math.cos(i * a), 0));
  const straight = [0, -1, 1, -2, 2].map((i) => at(0.6 * i, 0));
  const does = groupFigures(seen(straight, { curved, chosen: 'curved', most: 0.1 }), format);

  test('its end heads are drawn sec^2 wider and sec higher, at the angle of the curve', () => {
    // cos 0.300282 = 0.955253: 1.09588 and 1.046843.
    expect(does?.ends.curved?.across).toBeCloseTo(1.09588, 5);
    expect(does?.ends.curved?.up).toBeCloseTo(1.046843, 5);
    expect(does?.ends.straight?.across).toBeCloseTo(Math.sqrt(1.09), 12);
  });

  test('heads at its ends are nearer: 4 cos 0.300282 = 3.821 m, drawn 4.7 % larger than the middle', () => {
    expect(does?.front).toBeCloseTo(3.821, 3);
    expect(does?.headDifference).toBeCloseTo(0.046843, 5);
  });

  test('under 10 % stretch they stand within 4 sin t = 1.667 m, 0.364 m before the middle', () => {
    // cos t = 1 / 1.1: t = 0.429700, sin t = 0.416598; 4 (1 - 1 / 1.1) = 0.363636.
    const limit = does?.ends.curved?.limit;
    expect(limit?.aside).toBeCloseTo(4 * 0.416598, 4);
    expect(limit?.forward).toBeCloseTo(0.363636, 5);
    // 2 x 0.4297 / 0.150141 = 5.72: six people. Straight: 2 x 1.833 / 0.6 = 6.11: seven.
    expect(limit?.people).toBe(6);
    expect(does?.ends.straight?.limit?.people).toBe(7);
  });
});

test('a row over or under the lens has less room aside', () => {
  // tan t = sqrt(0.21); 1 m over the lens: sqrt(16 x 0.21 - 1) = 1.536 m aside; curved sqrt((3.36 - 1) / 1.21).
  expect(asideFor('straight', 4, 1, 0.1)).toBeCloseTo(Math.sqrt(2.36), 12);
  expect(asideFor('curved', 4, 1, 0.1)).toBeCloseTo(Math.sqrt(2.36 / 1.21), 12);
  expect(asideFor('straight', 4, 2, 0.1)).toBe(null);
  const does = groupFigures(seen([at(-1, 0), at(1, 0)], { lens: 1, most: 0.1 }), format);
  expect(does?.ends.straight?.limit?.aside).toBeCloseTo(Math.sqrt(2.36), 12);
});

test('two people are told from the axis between them', () => {
  // 0.3 m aside each, the shoulder 0.55 m: 2 x 0.55 / 0.9 m.
  const does = groupFigures(seen([at(-0.3, 0), at(0.3, 0)]), format);
  expect(does?.width).toBeCloseTo(1.1 / 0.9, 12);
  expect(does?.ends.straight?.across).toBeCloseTo(Math.hypot(4, 0.3) / 4, 12);
});

test('a camera among the people, and nobody, give no figures', () => {
  expect(groupFigures(seen([at(0, 0)], { s: 0 }), format)).toBe(null);
  expect(groupFigures(seen([]), format)).toBe(null);
});
