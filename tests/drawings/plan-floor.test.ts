import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aboveGround } from '../../src/drawings/plan/above';
import { AT_WALL, doorSwing } from '../../src/drawings/plan/door';
import { fieldAt, fieldEnds, sideEdges } from '../../src/drawings/plan/field';
import { cutOutline, floorPlan, leaveOutline, type OnFloor } from '../../src/drawings/plan/floor';
import { estimateText } from '../../src/drawings/text-width';
import { contentIn, pictureAt, ROOM } from './plan-shapes';

const SQUARE: readonly OnFloor[] = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];

describe('outlines', () => {
  it('are cut by a line: half a square, and a corner of it', () => {
    expect(cutOutline(SQUARE, ([x]) => x - 1)).toEqual([
      [1, 0],
      [2, 0],
      [2, 2],
      [1, 2],
    ]);
    expect(cutOutline(SQUARE, ([x, z]) => x + z - 3)).toEqual([
      [2, 1],
      [2, 2],
      [1, 2],
    ]);
    expect(cutOutline(SQUARE, () => -1)).toEqual([]);
  });

  it('are left by a ray where it meets the farther side', () => {
    expect(leaveOutline(SQUARE, [1, 1], [1, 1])).toEqual([2, 2]);
    expect(leaveOutline(SQUARE, [-1, 1], [1, 0])).toEqual([2, 1]);
    expect(leaveOutline(SQUARE, [3, 3], [1, 0])).toBeNull();
  });
});

it.each(['along', 'across', 'diagonal'] as const)('%s: one scale, no mirror', (axis) => {
  const content = contentIn({ ...ROOM, axis });
  const g = aboveGround(content, { width: 700, rem: 16, measure: estimateText });
  const [origin, ahead, left] = [g.placeOwn([0, 0]), g.placeOwn([0, 1]), g.placeOwn([1, 0])];
  expect(Math.hypot(ahead.x - origin.x, ahead.y - origin.y)).toBeCloseTo(g.pxPerMetre, 6);
  expect(Math.hypot(left.x - origin.x, left.y - origin.y)).toBeCloseTo(g.pxPerMetre, 6);
  // Seen from above, who looks to the right has the left hand up the sheet: a turn against the clock.
  const cross =
    (ahead.x - origin.x) * (left.y - origin.y) - (ahead.y - origin.y) * (left.x - origin.x);
  expect(cross).toBeCloseTo(-(g.pxPerMetre ** 2), 3);
  const corners = g.floor.corners.map(g.place);
  expect(Math.min(...corners.map(({ x }) => x))).toBeCloseTo(g.room.x, 6);
  expect(Math.max(...corners.map(({ y }) => y))).toBeCloseTo(g.room.y + g.room.height, 6);
});

describe('the field', () => {
  it('is as wide at the sitter and at the backdrop as similar triangles say', () => {
    const picture = pictureAt('B', 2.5, 0.77, ROOM);
    const width = (depth: number) => {
      const [right, left] = fieldAt(picture, depth);
      return left[0] - right[0];
    };
    // 0.77 m high, 4 : 5: 0.616 m wide at 2.50 m, and 0.616 * 3.70 / 2.50 = 0.912 m at the backdrop.
    expect(width(2.5)).toBeCloseTo(0.616, 9);
    expect(width(3.7)).toBeCloseTo(0.91168, 9);
  });

  it('ends on the backdrop, or on the walls past its sides', () => {
    const floor = floorPlan(ROOM);
    for (const [, z] of fieldEnds(pictureAt('B', 2.5, 0.77, ROOM), floor)) {
      expect(z).toBeCloseTo(-1.2, 9);
    }
    // From 0.50 m: 0.616 * 1.70 / 0.50 = 2.09 m, wider than the 1.35 m of paper.
    for (const [x, z] of fieldEnds(pictureAt('A', 0.5, 0.77, ROOM), floor)) {
      expect(z).toBeCloseTo(-1.4, 9);
      expect(Math.abs(x)).toBeCloseTo((0.308 * 1.9) / 0.5, 9);
    }
  });

  const SIDE = { behind: 1.2, top: 0.79, floor: -1.51, ceiling: 1.09, rear: -1.4 };
  it('meets backdrop, wall over it, ceiling or floor', () => {
    // From 0.50 m, 0.308 m above the eyes: 0.308 * 1.70 / 0.50 = 1.047 m at the backdrop, over its 0.79 m.
    const [top, bottom] = sideEdges(pictureAt('A', 0.5, 0.77, ROOM), SIDE);
    expect(top?.end).toBe('over-backdrop');
    expect(top?.passes?.[1]).toBeCloseTo(1.0472, 9);
    // It rises to the ceiling 1.09 m above the eyes after 1.09 * 0.5 / 0.308 = 1.769 m, before the wall.
    expect(top?.to[0]).toBeCloseTo(0.5 - 1.76948, 4);
    // Downwards 0.462 * 1.70 / 0.50 = 1.571 m at the backdrop: below the floor.
    expect(bottom?.end).toBe('floor');
    const low = sideEdges(pictureAt('A', 0.5, 0.77, ROOM), { ...SIDE, ceiling: 0.9 });
    expect(low[0]?.end).toBe('ceiling');
    const far = sideEdges(pictureAt('B', 2.5, 0.77, ROOM), SIDE);
    expect(far.map(({ end }) => end)).toEqual(['backdrop', 'backdrop']);
    expect(far[0]?.to[1]).toBeCloseTo((0.308 * 3.7) / 2.5, 9);
  });

  it('turns with the tilt', () => {
    const picture = pictureAt('A', 2, 0.8, ROOM);
    const tilt = Math.atan(0.1) as typeof picture.camera.tilt;
    const frustum = { ...picture.camera.frustum, top: 0, bottom: -0.2 };
    const [top] = sideEdges({ camera: { ...picture.camera, tilt, frustum } }, SIDE);
    // The axis itself: one in ten over 3.20 m.
    expect(top?.to[1]).toBeCloseTo(0.32, 9);
  });
});

describe('a door', () => {
  const FLOOR = { length: 5, width: 3.5 };

  it('swings from its wall, against the nearer corner', () => {
    expect(doorSwing({ x: 4.25, y: 0.25, length: 0.75, width: 0.75 }, FLOOR)).toEqual({
      hinge: [5, 0.25],
      open: [4.25, 0.25],
      shut: [5, 1],
    });
    expect(doorSwing({ x: 0.25, y: 2.75, length: 0.75, width: 0.75 }, FLOOR)).toEqual({
      hinge: [0.25, 3.5],
      open: [0.25, 2.75],
      shut: [1, 3.5],
    });
    // Two centimetres off the wall it is still a door in that wall.
    expect(doorSwing({ x: 0.25, y: 0.02, length: 0.75, width: 0.75 }, FLOOR).hinge).toEqual([
      0.25, 0,
    ]);
  });

  it('sweeps inside its ground, but for the last centimetres to the wall', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.5, max: 1.2, noNaN: true }), (u, v, size) => {
        const ground = {
          x: u * (ROOM.length - size),
          y: v * (ROOM.width - size),
          length: size,
          width: size,
        };
        for (const [x, y] of Object.values(doorSwing(ground, ROOM))) {
          expect(x).toBeGreaterThanOrEqual(ground.x - AT_WALL);
          expect(x).toBeLessThanOrEqual(ground.x + size + AT_WALL);
          expect(y).toBeGreaterThanOrEqual(ground.y - AT_WALL);
          expect(y).toBeLessThanOrEqual(ground.y + size + AT_WALL);
        }
      }),
    );
  });
});
