/** Places of a group worked by hand: eyes in the frame of the front row's middle, metres. */
import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import {
  type GroupAsked,
  type GroupMember,
  type GroupPlaces,
  memberOf,
  personAt,
  placeGroup,
  type RowAsked,
  spacingOf,
  supportsOf,
  USUAL_GROUP,
} from '../../src/plan/group';
import { landmarksFor } from '../../src/sitter/landmarks';

/** Eyes 1.60 m up standing, 0.75 m over a seat; 0.46 m across the shoulders. */
const member = (id: string, change: Partial<GroupMember> = {}): GroupMember => ({
  id,
  name: 'Somebody',
  standingEyes: 1.6,
  seatedEyes: 0.75,
  shoulders: 0.46,
  headBreadth: 0.15,
  crown: 0.12,
  ...change,
});

const row = (count: number, change: Partial<RowAsked> = {}): RowAsked => ({
  place: 'standing',
  spacing: 0.6,
  members: Array.from({ length: count }, (_, i) => member(`${i}`)),
  ...change,
});

const group = (rows: readonly RowAsked[], change: Partial<GroupAsked> = {}): GroupPlaces => {
  const asked: GroupAsked = {
    rows,
    rowSpacing: 0.7,
    step: 0.2,
    curve: 'straight',
    depth: 4,
    ...change,
  };
  const placed = placeGroup(asked);
  if (!placed.ok) throw new Error(placed.reason);
  return placed.value;
};

/** One coordinate of a row's eyes, from the picture's left. */
const eyesOf = ({ members }: GroupPlaces, of: number, axis: 0 | 1 | 2): number[] =>
  members
    .filter((place) => place.row === of)
    .toSorted((a, b) => a.across - b.across)
    .map(({ eyes }) => eyes[axis]);

const expectAll = (found: readonly number[], expected: readonly number[], digits = 12): void => {
  expect(found).toHaveLength(expected.length);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] as number, digits);
  });
};

describe('rows', () => {
  test('stand about the axis, odd and even, one behind the other', () => {
    const placed = group([row(5), row(4), row(3)]);
    // Four ways of 0.6 m are 2.4 m: from -1.2. Three: 1.8 m, from -0.9. Two: from -0.6.
    expectAll(eyesOf(placed, 0, 0), [-1.2, -0.6, 0, 0.6, 1.2]);
    expectAll(eyesOf(placed, 1, 0), [-0.9, -0.3, 0.3, 0.9]);
    expectAll(eyesOf(placed, 2, 0), [-0.6, 0, 0.6]);
    expectAll(eyesOf(placed, 0, 2), [0, 0, 0, 0, 0]);
    expectAll(eyesOf(placed, 1, 2), [-0.7, -0.7, -0.7, -0.7]);
    expectAll(eyesOf(placed, 2, 2), [-1.4, -1.4, -1.4]);
    expect(placed.members.every(({ turn }) => turn === 0)).toBe(true);
  });

  test('stand as their shoulders need it where no spacing is told', () => {
    const broad = member('broad', { shoulders: 0.54 });
    // (0.46 + 0.54) / 2 and the usual 0.05 m between them.
    expect(USUAL_GROUP.shoulderGap.value).toBe(0.05);
    expect(spacingOf(member('a'), broad, null)).toBeCloseTo(0.55, 12);
    // 0.46 + 0.05 between the first two, 0.55 to the broad one: 1.06 m in all.
    const placed = group([row(0, { members: [member('a'), member('b'), broad], spacing: null })]);
    expectAll(eyesOf(placed, 0, 0), [-0.53, -0.02, 0.53]);
    // Nearest to the middle, 0.02 m beside it, is the second.
    expect(placed.members[0].member.id).toBe('b');
  });

  test('tell heights from whoever is nearest to the front row’s middle', () => {
    const small = member('small', { standingEyes: 1.2 });
    const placed = group([row(0, { members: [member('a'), small, member('c')] })]);
    expect(placed.members[0].member.id).toBe('small');
    expectAll(eyesOf(placed, 0, 1), [0.4, 0, 0.4]);
    expect(placed.floor).toBeCloseTo(-1.2, 12);
  });

  test('sit on chairs in front, and rise by steps behind', () => {
    const rows = [row(2, { place: 'seated' }), row(2), row(2, { place: 'step' })];
    const placed = group([...rows, row(2, { place: 'step' })]);
    // A chair of 0.45 m and 0.75 m up from it: 1.20 m. Standing 1.60 m, on one step 1.80 m, on two 2.00 m.
    expect(supportsOf({ rows: [...rows, row(2, { place: 'step' })], step: 0.2 })).toEqual([
      0.45, 0, 0.2, 0.4,
    ]);
    for (const [i, up] of [0, 0.4, 0.6, 0.8].entries()) expectAll(eyesOf(placed, i, 1), [up, up]);
    expect(placed.floor).toBeCloseTo(-1.2, 12);
    expect(placed.members[0].support).toBeCloseTo(0.45 - 1.2, 12);
  });

  test('of ten and ten and ten, thirty in all, keep 0.6 m and reach 2.70 m to each side', () => {
    const placed = group([row(10, { place: 'seated' }), row(10), row(10, { place: 'step' })]);
    expect(placed.members).toHaveLength(30);
    expect(new Set(placed.members.map(({ eyes }) => eyes.join())).size).toBe(30);
    for (const i of [0, 1, 2]) {
      const across = eyesOf(placed, i, 0);
      expectAll(across, [-2.7, -2.1, -1.5, -0.9, -0.3, 0.3, 0.9, 1.5, 2.1, 2.7]);
    }
  });
});

describe('a curved row', () => {
  // From one to the next 2 asin(0.3 / 4) = 0.150141 rad as the lens sees it.
  const step = 2 * Math.asin(0.3 / 4);

  test('keeps everybody equally far from the lens, and neighbours as far apart as told', () => {
    const placed = group([row(5), row(6)], { curve: 'curved' });
    for (const [i, radius] of [4, 4.7].entries()) {
      const [x, z] = [eyesOf(placed, i, 0), eyesOf(placed, i, 2)];
      for (const [j, across] of x.entries()) {
        expect(Math.hypot(across, 4 - (z[j] as number))).toBeCloseTo(radius, 12);
        if (j > 0)
          expect(
            Math.hypot(across - (x[j - 1] as number), (z[j] as number) - (z[j - 1] as number)),
          ).toBeCloseTo(0.6, 12);
      }
    }
  });

  test('has its ends at 1.183 m aside, 0.179 m forward, turned 17.2 degrees to the lens', () => {
    const placed = group([row(5)], { curve: 'curved' });
    // sin 0.300282 = 0.295790, x 4 = 1.183158; 4 (1 - 0.955253) = 0.178988.
    expectAll(eyesOf(placed, 0, 0).slice(3), [4 * Math.sin(step), 1.183158], 5);
    expectAll(eyesOf(placed, 0, 2).slice(4), [0.178988], 5);
    const end = placed.members.find(({ across }) => across === 4);
    // At the sitters' left the body turns to its right.
    expect(end?.turn).toBeCloseTo(-2 * step, 12);
    expect((2 * step * 180) / Math.PI).toBeCloseTo(17.2, 1);
  });

  test('is refused where it would reach round the lens', () => {
    const asked: GroupAsked = {
      rows: [row(10)],
      rowSpacing: 0.7,
      step: 0.2,
      curve: 'curved',
      // Nine ways of 0.6 m along a half circle of 3.14 m.
      depth: 1,
    };
    expect(placeGroup(asked)).toMatchObject({ ok: false, reason: 'behind-camera' });
  });
});

test('nobody in front, and distances that are none, are refused', () => {
  const asked = { rowSpacing: 0.7, step: 0.2, curve: 'straight', depth: 4 } as const;
  expect(placeGroup({ ...asked, rows: [] }).ok).toBe(false);
  expect(placeGroup({ ...asked, rows: [row(0), row(2)] }).ok).toBe(false);
  expect(placeGroup({ ...asked, rows: [row(2)], depth: 0 }).ok).toBe(false);
  expect(placeGroup({ ...asked, rows: [row(2)], rowSpacing: Number.NaN }).ok).toBe(false);
  expect(placeGroup({ ...asked, rows: [row(2, { spacing: 0 })] }).ok).toBe(false);
  expect(placeGroup({ ...asked, rows: [row(2)], step: -0.1 }).ok).toBe(false);
});

test('a person of a curved row is turned about the eyes, nose towards the lens', () => {
  const model = [...loadModels().sitters.values()][0];
  if (!model) throw new Error('no sitter');
  const dimensions = dimensionsOf(model);
  const five = Array.from({ length: 5 }, (_, i) => memberOf(`${i}`, model.name, dimensions));
  const placed = group([row(0, { members: five })], { curve: 'curved' });
  const end = placed.members.find(({ across }) => across === 4);
  if (!end) throw new Error('no end');
  const { eyes, noseTip, pupils, halfBreadth } = personAt(end, landmarksFor(dimensions));
  // On the line from the eyes to the lens over the floor, as far before them as the model's nose.
  const before = [noseTip[0] - eyes[0], noseTip[2] - eyes[2]] as const;
  expect(Math.atan2(-before[0], before[1])).toBeCloseTo(Math.atan2(eyes[0], 4 - eyes[2]), 9);
  expect(Math.hypot(...before)).toBeCloseTo(dimensions.nose_tip_to_eye_plane / 1000, 9);
  expect((pupils[0][0] + pupils[1][0]) / 2).toBeCloseTo(eyes[0], 9);
  expect(halfBreadth).toBeCloseTo(dimensions.bideltoid_breadth / 2000, 12);
});
