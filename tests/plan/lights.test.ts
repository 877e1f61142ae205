import { describe, expect, test } from 'vitest';
import { cameraAt } from '../../src/optics/camera';
import { metres, radians } from '../../src/optics/units';
import type { PlanRoom } from '../../src/plan';
import { cautionsFor } from '../../src/plan/cautions';
import {
  boxCorners,
  fallOffStops,
  shadesLight,
  standFaults,
  standInPicture,
  stopsAcross,
  stopsToBackdrop,
} from '../../src/plan/lights';

const room: PlanRoom = {
  floor: -1.5,
  ceiling: 1.1,
  walls: [
    [-1.7, -1.4],
    [1.7, -1.4],
    [1.7, 3.8],
    [-1.7, 3.8],
  ],
  backdrop: { behind: 1.2, left: 1, right: -1, top: 0.8 },
  wallBehindCamera: 3.8,
  behindCamera: 0.6,
  obstacles: [
    {
      id: 'thing',
      name: 'Thing',
      kind: 'thing',
      height: 1,
      outline: [
        [1, 1],
        [1.6, 1],
        [1.6, 2],
        [1, 2],
      ],
    },
  ],
};

/** Frame 0.42 x 0.28 m at the eyes, from 2 m. */
const made = cameraAt({
  standpoint: metres(2),
  height: metres(0),
  tilt: radians(0),
  focal: metres((2 * 0.036) / (0.42 + 0.036)),
  sensor: { width: metres(0.024), height: metres(0.036) },
});
if (!made.ok) throw new Error(made.reason);
const camera = made.value;

describe('fall-off', () => {
  test('follows the inverse square law: 1.2 m to 2.7 m is 2 log2(2.25) = 2.34 stops', () => {
    const stops = fallOffStops(1.2, 2.7);
    expect(stops.ok && stops.value).toBeCloseTo(2.34, 2);
    // Straight before the face: 1.2 m to the eyes, 2.4 m to a backdrop 1.2 m behind them: two stops.
    const back = stopsToBackdrop({ at: [0, 0, 1.2], size: 0.5 }, room);
    expect(back.ok && back.value).toBeCloseTo(2, 12);
  });

  test('across a group is that of its nearest and farthest face', () => {
    // 3-4-5 and 4 m: 2 log2(5 / 4).
    const stops = stopsAcross({ at: [0, 0, 4], size: 0.5 }, [
      [0, 0, 0],
      [3, 0, 0],
    ]);
    expect(stops.ok && stops.value).toBeCloseTo(2 * Math.log2(1.25), 12);
    expect(fallOffStops(0, 1).ok).toBe(false);
  });
});

describe('a stand', () => {
  test('has a square box that faces the eyes', () => {
    const corners = boxCorners({ at: [1, 1, 1], size: 0.6 });
    for (const [x, y, z] of corners) {
      // In the plane through the middle, square to the way to the eyes: x + y + z = 3.
      expect(x + y + z).toBeCloseTo(3, 12);
      expect(Math.hypot(x - 1, y - 1, z - 1)).toBeCloseTo(0.3 * Math.SQRT2, 12);
    }
  });

  test('is in the picture where its box reaches the field', () => {
    // At half way the field is 0.07 m to each side (0.28 / 2 / 2). The box is 0.4 m wide and turned a
    // little towards the eyes: its middle at 0.3 m leaves it out, at 0.2 m it comes in.
    expect(standInPicture(camera, { at: [0.3, 0, 1], size: 0.4 }, room)).toBe(false);
    expect(standInPicture(camera, { at: [0.2, 0, 1], size: 0.4 }, room)).toBe(true);
    // Behind the lens and behind the backdrop it is not seen.
    expect(standInPicture(camera, { at: [0, 0, 2.5], size: 0.4 }, room)).toBe(false);
    expect(standInPicture(camera, { at: [0, 0, -1.3], size: 0.1 }, room)).toBe(false);
  });

  test('is shaded by a photographer in the way, not by one below or beside it', () => {
    const body = { front: 2, back: 2.6, lensHeight: 1.5 };
    expect(shadesLight({ at: [0, 0.1, 3], size: 0.5 }, body, room)).toBe(true);
    // 1 m up at 3 m: at 2.6 m the way runs 0.87 m above the eyes.
    expect(shadesLight({ at: [0, 1, 3], size: 0.5 }, body, room)).toBe(false);
    expect(shadesLight({ at: [1, 0, 3], size: 0.5 }, body, room)).toBe(false);
    expect(shadesLight({ at: [0, 0, 1], size: 0.5 }, body, room)).toBe(false);
    // Its middle is free at 0.7 m aside, 0.61 m where the photographer ends; the near corner, 0.6 m nearer, is not.
    expect(shadesLight({ at: [0.7, 0, 3], size: 1.2 }, body, room)).toBe(true);
    expect(shadesLight({ at: [0.7, 0, 3], size: 0.2 }, body, room)).toBe(false);
  });

  test('is told where it cannot stand', () => {
    expect(standFaults({ at: [0.5, 0.3, 1], size: 0.4 }, room)).toEqual([]);
    expect(standFaults({ at: [3, 0.3, 1], size: 0.4 }, room)).toEqual(['outside-walls']);
    expect(standFaults({ at: [0.5, 1.05, 1], size: 0.8 }, room)).toEqual(['over-ceiling']);
    expect(standFaults({ at: [1.2, 0.3, 1.5], size: 0.2 }, room)).toEqual(['in-obstacle']);
  });
});

test('cautions follow the set-up', () => {
  expect(
    cautionsFor({ setting: { noseClearance: 0.3, lensHeight: 1.9 }, people: [], lights: [0.8] }),
  ).toEqual(['close-to-face', 'raised-camera', 'stands-and-cables', 'light-near-eyes']);
  expect(
    cautionsFor({ setting: { noseClearance: 2, lensHeight: 1.5 }, people: [], lights: [] }),
  ).toEqual([]);
});
