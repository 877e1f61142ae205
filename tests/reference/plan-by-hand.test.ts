/**
 * Plans worked by hand from the lens equation and similar triangles alone; the arithmetic stands beside each
 * figure. h is the sensor's side along the picture's height, H the frame's height at the eyes, s the distance.
 */
import { describe, expect, test } from 'vitest';
import type { Lens, SensorFormat, Vec3 } from '../../src/optics/types';
import { metres } from '../../src/optics/units';
import {
  type Asked,
  type PlanCamera,
  type PlanPerson,
  type PlanRequest,
  type PlanRoom,
  remediesFor,
  solvePlan,
  type Verdict,
  type Wanted,
} from '../../src/plan';

/** A thin lens, so that hand and machine reckon with the same lens. */
const lens = (shortest: number, longest: number): Lens => ({
  id: 'lens',
  name: 'lens',
  focal: [metres(shortest), metres(longest)],
  widest: [4, 4],
  smallest: 32,
  nearestFocus: [metres(0.2), metres(0.2)],
  length: metres(0.1),
});

const format = (longSide: number, shortSide: number): SensorFormat => ({
  id: `${longSide}`,
  name: `${longSide}`,
  longSide: metres(longSide),
  shortSide: metres(shortSide),
  circleOfConfusion: metres(30e-6),
});
const LARGE = format(0.036, 0.024);
const SMALL = format(0.0223, 0.0149);

const camera = (sensor: SensorFormat, on: Lens = lens(0.024, 0.12)): PlanCamera => ({
  id: 'camera',
  bodyName: 'body',
  lensId: on.id,
  lensName: on.name,
  format: sensor,
  lens: on,
});

/** Nose tip 20 mm before the eyes, ears 80 mm behind them. */
const SITTER: PlanPerson = {
  id: 'sitter',
  name: 'sitter',
  eyes: [0, 0, 0],
  pupils: [
    [-0.03, 0, 0],
    [0.03, 0, 0],
  ],
  noseTip: [0, -0.04, 0.02],
  ears: [-0.07, 0.07].map((x): Vec3 => [x, -0.01, -0.08]) as [Vec3, Vec3],
  crown: [0, 0.11, -0.08],
  chin: [0, -0.12, 0],
  halfBreadth: 0.25,
  row: 0,
};

const FRAMES = {
  'full length': [2, 0.135],
  'three-quarter length': [1.4, 0.2],
  'half-length': [0.95, 0.26],
  'head and shoulders': [0.6, 0.33],
  headshot: [0.4, 0.4],
} as const;
type Name = keyof typeof FRAMES;

const wanted = (name: Name, change: Partial<Wanted> = {}): Wanted => ({
  id: name,
  name,
  orientation: 'portrait',
  frameHeight: FRAMES[name][0],
  eyesAt: FRAMES[name][1],
  eyesAcross: 0.5,
  margin: 0,
  cameraHeight: 0,
  people: [SITTER],
  ...change,
});

/** The sitter's eyes `behind` before the backdrop; the wall behind the camera `ahead` of them. */
const room = (behind: number, ahead: number): PlanRoom => ({
  floor: -1.5,
  ceiling: 1.5,
  walls: [
    [-2, -behind],
    [2, -behind],
    [2, ahead],
    [-2, ahead],
  ],
  backdrop: { behind, left: 1.36, right: -1.36, top: 1.4 },
  wallBehindCamera: ahead,
  behindCamera: 0.6,
  obstacles: [],
});

const NOTHING: Asked = {
  noseGain: null,
  rowDifference: null,
  stretch: null,
  personal: null,
  clearance: null,
  sharp: null,
  fNumber: [1, 64],
  softness: null,
  backdropMargin: null,
};

interface Given {
  readonly on: PlanCamera;
  readonly within: PlanRoom;
  readonly of: readonly Wanted[];
  readonly asked?: Partial<Asked>;
}
const request = ({ on, within, of, asked }: Given): PlanRequest => ({
  cameras: [on],
  room: within,
  wanted: of,
  asked: { ...NOTHING, ...asked },
});
const first = (given: Given): Verdict => solvePlan(request(given)).verdicts[0] as Verdict;

function expectSpan(
  verdict: Verdict,
  from: readonly [number, string],
  to: readonly [number, string],
): void {
  expect(verdict.spans).toHaveLength(1);
  const [span] = verdict.spans;
  expect(span?.from).toBeCloseTo(from[0], 4);
  expect(span?.fromBy.name).toBe(from[1]);
  expect(span?.to).toBeCloseTo(to[0], 4);
  expect(span?.toBy.name).toBe(to[1]);
}

describe('a room 4.20 m long: backdrop on the wall, eyes 1.20 m before it, 3.00 m to the other wall', () => {
  const within = room(1.2, 3);
  const asked = { noseGain: 0.08, backdropMargin: 0 };

  test('36 x 24, full length: from the shortest mark to the wall', () => {
    // Near: f = s h / (H + h) = 24 mm: s = 0.024 x 2.036 / 0.036 = 1.35733. Nearer limits are weaker: a gain of
    // 8 % wants s = 0.02 + (0.02 + 0.08) / 0.08 = 1.27; the backdrop 1.3333 (s + 1.2) / s = 2.72: s = 1.15385.
    // Far: sensor at s + s' = s (1 + h / H) = 3.00 - 0.60: s = 2.4 x 2 / 2.036 = 2.35756.
    expectSpan(
      first({ on: camera(LARGE), within, of: [wanted('full length')], asked }),
      [1.35733, 'lens-shortest'],
      [2.35756, 'wall-behind-camera'],
    );
  });

  test('36 x 24, headshot: from the gain to the longest mark', () => {
    // s = 0.12 x 0.436 / 0.036 = 1.45333.
    expectSpan(
      first({ on: camera(LARGE), within, of: [wanted('headshot')], asked }),
      [1.27, 'nose-gain'],
      [1.45333, 'lens-longest'],
    );
  });

  test('36 x 24: everything from full length to headshot fits', () => {
    const { verdicts } = solvePlan(
      request({
        on: camera(LARGE),
        within,
        of: (Object.keys(FRAMES) as Name[]).map((name) => wanted(name)),
        asked,
      }),
    );
    expect(verdicts.map(({ spans }) => spans.length)).toEqual([1, 1, 1, 1, 1]);
  });

  test('22.3 x 14.9, full length: 20 cm are left', () => {
    // Near: 0.024 x 2.0223 / 0.0223 = 2.17648. Far: 2.4 x 2 / 2.0223 = 2.37353.
    expectSpan(
      first({ on: camera(SMALL), within, of: [wanted('full length')], asked }),
      [2.17648, 'lens-shortest'],
      [2.37353, 'wall-behind-camera'],
    );
  });

  test('22.3 x 14.9, full length, the room 20 cm shorter: nothing is left', () => {
    // Far: 2.2 x 2 / 2.0223 = 2.17574, nearer than the 2.17648 of the shortest mark.
    const shorter = { on: camera(SMALL), within: room(1.2, 2.8), of: [wanted('full length')] };
    const verdict = first(shorter);
    expect(verdict.spans).toEqual([]);
    expect(verdict.conflict.map(({ name }) => name).sort()).toEqual([
      'lens-shortest',
      'wall-behind-camera',
    ]);
    // 2.17648 x 2.0223 / 2 = 2.20075 against 2.20: 1 cm more room does.
    expect(remediesFor(request(shorter), verdict).map(({ change }) => change)).toContainEqual({
      change: 'room-length',
      by: 0.01,
    });
  });

  test('22.3 x 14.9, full length with 50 mm: 2.19 m of room are missing, or 25 mm too many', () => {
    // s = 0.05 x 2.0223 / 0.0223 = 4.53430; the sensor stands at 4.53430 x 2.0223 / 2 = 4.58486, the wall must
    // at 5.18486, 2.18486 beyond 3.00. From the farthest 2.37353 the frame takes f = 2.37353 x 0.0223 / 2.0223
    // = 26.17 mm, so 26 mm in whole millimetres.
    const given = { on: camera(SMALL, lens(0.05, 0.05)), within, of: [wanted('full length')] };
    const verdict = first(given);
    expect(verdict.spans).toEqual([]);
    expect(verdict.reach[0]?.from).toBeCloseTo(4.5343, 4);
    expect(verdict.reach[0]?.to).toBe(verdict.reach[0]?.from);
    const changes = remediesFor(request(given), verdict).map(({ change }) => change);
    expect(changes).toContainEqual({ change: 'room-length', by: 2.19 });
    expect(changes).toContainEqual({ change: 'focal', to: 0.026, atLeast: false });
  });
});

describe('a 24-120 mm zoom on 36 x 24 at one standpoint', () => {
  const of = (Object.keys(FRAMES) as Name[]).map((name) => wanted(name));
  const sitting = (noseGain: number | null) =>
    solvePlan(request({ on: camera(LARGE), within: room(1, 20), of, asked: { noseGain } }))
      .oneStandpoint[0];

  test('all five framings share 1.357 to 1.453 m', () => {
    // Full length from 24 mm: 1.35733; headshot to 120 mm: 1.45333. Root of the product 1.40451, in steps 1.40.
    expect(sitting(null)?.standpoint).toBeCloseTo(1.4, 9);
    expect(sitting(null)?.covers).toHaveLength(5);
  });

  test('with a gain of at most 6 % the headshot stays out', () => {
    // s = 0.02 + 0.1 / 0.06 = 1.68667, beyond 1.45333. The other four share it up to head and shoulders at
    // 120 mm: 0.12 x 0.636 / 0.036 = 2.12. Root of the product 1.89097, in steps 1.90.
    const place = sitting(0.06);
    expect(place?.misses).toEqual(['headshot']);
    expect(place?.standpoint).toBeCloseTo(1.9, 9);
  });

  test('full length loses what the nearer standpoint adds to the gain', () => {
    // Its own best: 1.68667 to 0.12 x 2.036 / 0.036 = 6.78667, root of the product 3.38329, in steps 3.40: gain
    // 0.1 / 3.38 = 0.029586; at 1.90 it is 0.1 / 1.88 = 0.053191.
    expect(sitting(0.06)?.lost['full length']).toBeCloseTo(0.053191 - 0.029586, 5);
  });
});

describe('a backdrop 2.72 m wide, 5 cm to spare at each side', () => {
  // Full length upright on 36 x 24: the frame is 2 x 24 / 36 = 1.33333 m wide at the eyes, on the backdrop
  // 1.33333 (s + b) / s <= 2.62: s >= b / (2.62 / 1.33333 - 1) = b / 0.965.
  test.each([
    [1, 1.35733, 'lens-shortest'],
    [2, 2.07254, 'backdrop-sides'],
    [3, 3.10881, 'backdrop-sides'],
  ])('%d m behind the eyes: from %d m, by %s', (behind, from, by) => {
    expectSpan(
      first({
        on: camera(LARGE),
        within: room(behind, 20),
        of: [wanted('full length')],
        asked: { backdropMargin: 0.05 },
      }),
      [from, by],
      [6.78667, 'lens-longest'],
    );
  });

  test('full length across the format is wider than it from anywhere', () => {
    // 2 x 36 / 24 = 3.00 m at the eyes already.
    const verdict = first({
      on: camera(LARGE),
      within: room(1, 20),
      of: [wanted('full length', { orientation: 'landscape' })],
      asked: { backdropMargin: 0.05 },
    });
    expect(verdict.conflict.map(({ name }) => name)).toEqual(['backdrop-sides']);
  });
});

describe('sharp from nose tip to ears in a headshot, focused on the eyes', () => {
  // N = h^2 / (c H (H + h)) x 0.08 s / (s + 0.08) for the ears, the farther part:
  // 0.036^2 / (0.00003 x 0.4 x 0.436) = 247.7064, x 0.08 = 19.81651.
  const at = (smallest: number): Verdict =>
    first({
      on: camera(LARGE, lens(0.024, 0.6)),
      within: room(1, 20),
      of: [wanted('headshot')],
      asked: { sharp: 'nose-to-ears', fNumber: [1, smallest] },
    });

  // The near end is that of the shortest mark, 0.024 x 0.436 / 0.036 = 0.29067; the far end of f/20 and more
  // that of the longest, 0.6 x 0.436 / 0.036 = 7.26667.
  test.each([
    // s / (s + 0.08) = 16 / 19.81651 = 0.807408: s = 0.08 x 0.807408 / 0.192592 = 0.33539.
    ['close', 16, 0.33539, 'sharpness'],
    // 18.813 / 19.81651 = 0.949360: s = 0.08 x 0.949360 / 0.050640 = 1.49977, the usual 1.5 m.
    ['usual', 18.813, 1.49977, 'sharpness'],
    // 19.5 / 19.81651 = 0.984028: s = 0.08 x 0.984028 / 0.015972 = 4.92877.
    ['long', 19.5, 4.92877, 'sharpness'],
    ['any', 20, 7.26667, 'lens-longest'],
  ])('%s: f/%d holds it up to %d m', (_, smallest, to, by) => {
    const [span] = at(smallest).spans;
    expect(span?.from).toBeCloseTo(0.29067, 4);
    expect(span?.to).toBeCloseTo(to, 2);
    expect(span?.toBy.name).toBe(by);
  });
});
