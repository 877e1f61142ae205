import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longer, staysIn } from '../../src/plan/changes';
import { planRoom, type RoomAsked, toFloor, toSitter } from '../../src/plan/room';
import { wallBehind } from '../../src/plan/room-conditions';
import { AXES, axisOf, hangBackdrop, runThrough, sidesForCameraWall } from '../../src/plan/run';

/** A room of 5.20 by 3.40 m: paper 1.35 m wide 0.20 m off the end wall, the sitter 1.20 m before it. */
const room: RoomAsked = {
  length: 5.2,
  width: 3.4,
  ceiling: 2.6,
  axis: 'along',
  aside: 0,
  backdrop: { offWall: 0.2, width: 1.35, top: 2.3 },
  sitterBefore: 1.2,
  behindCamera: 0.6,
  obstacles: [
    {
      id: 'a',
      name: 'Piano',
      kind: 'thing',
      x: 2.1,
      y: 2.8,
      length: 1.5,
      width: 0.6,
      height: 1.25,
    },
  ],
};

function near(found: readonly (readonly number[])[], wanted: readonly (readonly number[])[]): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((point, i) => {
    point.forEach((value, j) => {
      expect(value).toBeCloseTo(wanted[i]?.[j] as number, 12);
    });
  });
}

describe('a room along its length', () => {
  it('puts the sitter 1.40 m from the end wall, 3.80 m from the other', () => {
    const plan = planRoom(room, 1.5);
    near(plan.walls, [
      [-1.7, -1.4],
      [-1.7, 3.8],
      [1.7, 3.8],
      [1.7, -1.4],
    ]);
    expect(plan.wallBehindCamera).toBeCloseTo(3.8, 12);
    expect(plan.floor).toBe(-1.5);
    expect(plan.ceiling).toBeCloseTo(1.1, 12);
    expect(plan.backdrop).toEqual({ behind: 1.2, left: 0.675, right: -0.675, top: 2.3 - 1.5 });
  });

  it('turns things with it: y grows to the left of a sitter who looks along x', () => {
    // The piano runs from x 2.1 to 3.6, y 2.8 to 3.4; the sitter is at (1.4, 1.7).
    near(planRoom(room, 1.5).obstacles[0]?.outline ?? [], [
      [1.1, 0.7],
      [1.1, 2.2],
      [1.7, 2.2],
      [1.7, 0.7],
    ]);
  });

  it('with the axis 0.30 m to the left of the middle the left wall is 0.30 m nearer', () => {
    const xs = planRoom({ ...room, aside: 0.3 }, 1.5).walls.map(([x]) => x);
    expect(Math.max(...xs)).toBeCloseTo(1.4, 12);
    expect(Math.min(...xs)).toBeCloseTo(-2, 12);
  });

  it('cuts a paper wider than the walls leave', () => {
    expect(hangBackdrop({ ...room, backdrop: { offWall: 0.2, width: 3.55 } })).toEqual({
      along: 0.2,
      width: 3.4,
      forward: 0,
    });
    // Off the middle by 0.50 m, 1.20 m are left on one side.
    const { width } = hangBackdrop({
      ...room,
      aside: 0.5,
      backdrop: { offWall: 0.2, width: 3.55 },
    });
    expect(width).toBeCloseTo(2.4, 12);
  });
});

it('a room across its length: x grows to the right of a sitter who looks along y', () => {
  const plan = planRoom({ ...room, axis: 'across', aside: 0.4 }, 1.5);
  // The axis runs at x = 2.6 - 0.4 = 2.2; the sitter stands at y = 1.4.
  near(plan.walls, [
    [2.2, -1.4],
    [-3, -1.4],
    [-3, 2],
    [2.2, 2],
  ]);
  expect(plan.wallBehindCamera).toBeCloseTo(2, 12);
});

/** A floor of 4 by 3 m, whose diagonal is 5 m: it runs along (0.8, 0.6), and left of it is (-0.6, 0.8). */
const corner: RoomAsked = {
  ...room,
  length: 4,
  width: 3,
  axis: 'diagonal',
  backdrop: { offWall: 0.2, width: 1.2, top: 2.3 },
  obstacles: [],
};

describe('a room along its diagonal', () => {
  it('hangs a wide paper as near to the corner as its ends allow', () => {
    // At t from the corner the wall y = 0 is 0.75 t off to the right, the wall x = 0 1.33 t to the left:
    // half of 1.20 m fits from t = 0.80 m on, 0.60 m farther forward than asked.
    const hung = hangBackdrop(corner);
    expect(hung.along).toBeCloseTo(0.8, 12);
    expect(hung.forward).toBeCloseTo(0.6, 12);
    expect(hung.width).toBe(1.2);
    near(
      [toFloor(corner)([-0.6, -1.2]), toFloor(corner)([0.6, -1.2])],
      [
        [1, 0],
        [0.28, 0.96],
      ],
    );
  });

  it('gains length: 3.00 m before the sitter where along the length there were 2.60 m', () => {
    const plan = planRoom(corner, 1.5);
    expect(plan.wallBehindCamera).toBeCloseTo(3, 12);
    expect(runThrough({ ...corner, axis: 'along' }).cameraWall).toBeCloseTo(2.6, 12);
    // The sitter stands 2.00 m from the corner, at (1.6, 1.2).
    near(plan.walls, [
      [0, -2],
      [-2.4, 1.2],
      [0, 3],
      [2.4, -0.2],
    ]);
  });

  it('shifted aside it is shorter: by a (4/3 + 3/4)', () => {
    const { enters, leaves } = axisOf({ ...corner, aside: 0.24 });
    expect(enters).toBeCloseTo(0.18, 12);
    expect(leaves).toBeCloseTo(5 - 0.32, 12);
  });

  it('ends sooner for shoulders than for its axis', () => {
    // From (0, 3) one wall falls by 4/3, the other by 3/4 of the way aside: 0.30 m to the side 2.60 and 2.775 m.
    expect(wallBehind(planRoom(corner, 1.5))).toBeCloseTo(2.6, 12);
    expect(wallBehind(planRoom({ ...corner, axis: 'along' }, 1.5))).toBeCloseTo(2.6, 12);
  });

  it('grows in proportion from its corner: 1.00 m more of the 5 m makes it 4.80 by 3.60 m', () => {
    const more = longer(planRoom(corner, 1.5), 1);
    expect(more.wallBehindCamera).toBeCloseTo(4, 12);
    near(more.walls, [
      [0, -2],
      [-2.88, 1.84],
      [0, 4],
      [2.88, 0.16],
    ]);
    near(planRoom({ ...corner, length: 4.8, width: 3.6 }, 1.5).walls, more.walls);
  });

  it('makes the paper narrower where none so wide can hang', () => {
    // In a corridor of 6 by 1.2 m the walls of the middle are least far: 3.06 m from the corner.
    const { along, width } = hangBackdrop({
      ...corner,
      length: 6,
      width: 1.2,
      backdrop: { offWall: 0.2, width: 2.72 },
    });
    expect(along).toBeCloseTo(Math.hypot(6, 1.2) / 2, 12);
    expect(width).toBeCloseTo((Math.hypot(6, 1.2) * 1.2) / 6, 12);
  });
});

const anyRoom = fc
  .record({
    length: fc.double({ min: 2, max: 20, noNaN: true }),
    width: fc.double({ min: 2, max: 20, noNaN: true }),
    axis: fc.constantFrom(...AXES),
    aside: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    offWall: fc.double({ min: 0, max: 0.4, noNaN: true }),
    wide: fc.double({ min: 0.3, max: 3.6, noNaN: true }),
  })
  .map(({ offWall, wide, ...rest }) => ({
    ...corner,
    ...rest,
    sitterBefore: 0.3,
    backdrop: { offWall, width: wide, top: 2 },
  }));

describe('in any room', () => {
  it('growing is the same to the plan as to the room itself, where the sitter stays', () => {
    let stayed = 0;
    fc.assert(
      fc.property(anyRoom, fc.double({ min: 0.01, max: 6, noNaN: true }), (given, by) => {
        const plan = planRoom(given, 1.5);
        if (!staysIn(plan)) return;
        stayed += 1;
        const sides = sidesForCameraWall(given, plan.wallBehindCamera + by);
        const grown = planRoom({ ...given, ...sides, backdrop: given.backdrop }, 1.5);
        const told = longer(plan, by);
        expect(told.wallBehindCamera).toBeCloseTo(grown.wallBehindCamera, 9);
        if (given.axis === 'diagonal') near(told.walls, grown.walls);
      }),
      { numRuns: 400 },
    );
    expect(stayed).toBeGreaterThan(200);
  });

  it('the backdrop, the sitter and the wall behind the camera lie within the walls', () => {
    fc.assert(
      fc.property(anyRoom, (any) => {
        const { width } = hangBackdrop(any);
        const { cameraWall } = runThrough(any);
        for (const point of [
          [width / 2, -any.sitterBefore],
          [-width / 2, -any.sitterBefore],
          [0, 0],
          [0, cameraWall],
        ] as const) {
          const [x, y] = toFloor(any)(point);
          expect(Math.min(x, y, any.length - x, any.width - y)).toBeGreaterThan(-1e-9);
        }
        const [x, y] = toFloor(any)([0, cameraWall]);
        expect(Math.min(any.length - x, any.width - y)).toBeCloseTo(0, 9);
      }),
      { seed: 11, numRuns: 1000 },
    );
  });

  it('floor and sitter coordinates turn back into each other', () => {
    fc.assert(
      fc.property(anyRoom, (any) => {
        near([toFloor(any)(toSitter(any)([1, 1.5]))], [[1, 1.5]]);
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it('sides for a wall so far behind the camera give that wall', () => {
    fc.assert(
      fc.property(anyRoom, fc.double({ min: 2, max: 9, noNaN: true }), (any, wall) => {
        const wider = { ...any, backdrop: { ...any.backdrop, width: 0.6 } };
        const changed = { ...wider, ...sidesForCameraWall(wider, wall) };
        expect(runThrough(changed).cameraWall).toBeCloseTo(wall, 9);
      }),
      { seed: 13, numRuns: 300 },
    );
  });
});
