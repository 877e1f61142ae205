import type { BufferGeometry } from 'three';
import { describe, expect, it } from 'vitest';
import { planRoom } from '../../src/plan/room';
import { demoSession } from '../../src/session/demo';
import { runOf } from '../../src/session/kit';
import type { Room } from '../../src/session/types';
import { hallBounds } from '../../src/stage/floor';
import { furniture, windowPanes } from '../../src/stage/room/furniture';
import { hangingSheet } from '../../src/stage/room/sheet';
import { hallShell } from '../../src/stage/room/shell';
import { cornerWalls } from '../../src/stage/room/walls';

const roomOf = (changes: Partial<Room>): Room => ({
  ...demoSession().room,
  obstacles: [],
  ...changes,
});
const boxOf = (geometry: BufferGeometry) => {
  geometry.computeBoundingBox();
  if (!geometry.boundingBox) throw new Error('empty');
  return geometry.boundingBox;
};

/** A wall for a backdrop: as wide and as high as the room. */
const WALL = { offWall: 0.2, width: 3.4, top: 2.6 } as const;

describe('the hall', () => {
  it('reaches to the walls beside the axis, to the ceiling and to the walls at both ends', () => {
    // 3.40 m across, the axis 0.30 m to the sitter's left of the middle.
    const { hall } = runOf(roomOf({ aside: 0.3 }));
    expect(hall.left).toBeCloseTo(1.4, 12);
    expect(hall.right).toBeCloseTo(2, 12);
    expect(hall.height).toBe(2.6);
    expect(hall.depth).toBe(5.2);
    expect(hall.behind).toBe(0.2);
    const across = runOf(roomOf({ axis: 'across' })).hall;
    expect(across.left).toBeCloseTo(2.6, 12);
    expect(across.depth).toBe(3.4);
  });

  it('is closed by the backdrop where that is as wide and as high as the room', () => {
    const { hall } = runOf(roomOf({ backdrop: WALL }));
    expect(hall.sheet).toBeNull();
    expect(hall.behind).toBe(0);
    expect(hall.depth).toBeCloseTo(5, 12);
    for (const smaller of [{ width: 3.3 }, { top: 2.5 }]) {
      expect(runOf(roomOf({ backdrop: { ...WALL, ...smaller } })).hall.sheet).not.toBeNull();
    }
  });

  it('has a corner behind the sitter on a diagonal, which the sheet reaches into', () => {
    const room = roomOf({ axis: 'diagonal', length: 6, width: 6, sitterBefore: 1.5 });
    const { hall } = runOf(room);
    // Square: the walls run off at 45 degrees, so paper 1.35 m wide comes 0.675 m out of the corner.
    expect(hall.behind).toBeCloseTo(0.675, 12);
    expect(hall.corner).toEqual({ left: 1, right: 1 });
    expect(hall.left).toBeCloseTo(6 / Math.SQRT2, 12);
    expect(hall.depth).toBeCloseTo(6 * Math.SQRT2, 12);
  });

  it('has the walls of its corner where the plan has them', () => {
    const room = roomOf({ axis: 'diagonal', aside: 0.25 });
    const run = runOf(room);
    const { corner, left, right } = run.hall;
    if (!corner) throw new Error('no corner');
    const walls = cornerWalls(run.hall, corner);
    const [foot, end] = [(left - right) / 2, -run.backdrop - run.hall.behind];
    const drawn = [
      [foot, end],
      [-right, end + walls.right.end],
      [foot, end + walls.left.end + walls.right.end],
      [left, end + walls.left.end],
    ];
    const planned = planRoom(room, 1.5).walls;
    for (const [i, point] of drawn.entries()) {
      expect(point[0]).toBeCloseTo((planned[i] as readonly number[])[0] as number, 12);
      expect(point[1]).toBeCloseTo((planned[i] as readonly number[])[1] as number, 12);
    }
    expect(walls.left.length).toBeCloseTo(room.width, 12);
    expect(walls.right.length).toBeCloseTo(room.length, 12);
  });

  it('is the very same wherever the sitter is on a straight axis', () => {
    const { hall } = runOf(roomOf({}));
    for (const sitterBefore of [0.3, 0.7, 1.1, 1.9]) {
      expect(runOf(roomOf({ sitterBefore })).hall).toEqual(hall);
    }
  });

  it('is bounded as a box about the eyes', () => {
    const { min, max } = hallBounds(-1.2, runOf(roomOf({ aside: 0.3 })));
    [-2, -1.2, -1.4].forEach((value, i) => {
      expect(min[i]).toBeCloseTo(value, 12);
    });
    [1.4, 1.4, 3.8].forEach((value, i) => {
      expect(max[i]).toBeCloseTo(value, 12);
    });
  });

  it.each([
    [2, 1.6, 2.2],
    [5.2, 3.4, 2.6],
    [20, 14, 4],
  ])('of %s by %s m keeps its ceiling and what stands in it inside', (length, width, ceiling) => {
    const { hall } = runOf(roomOf({ length, width, ceiling, sitterBefore: 0.6 }));
    const shell = boxOf(hallShell(hall));
    expect(shell.max.y).toBeCloseTo(ceiling, 5);
    // Boards are whole: the last may run on behind the side wall.
    expect(shell.max.x).toBeGreaterThanOrEqual(hall.left - 1e-5);
    expect(shell.max.x).toBeLessThan(hall.left + 0.2);
    for (const made of [furniture(hall), windowPanes(hall)]) {
      if (!made) continue;
      const { min, max } = boxOf(made);
      expect(max.x).toBeLessThanOrEqual(hall.left);
      expect(min.x).toBeGreaterThanOrEqual(-hall.right);
      expect(max.y).toBeLessThan(hall.height);
      expect(max.z).toBeLessThan(hall.depth);
    }
  });

  it('keeps the coat stand and the notice board in a room 3.4 m wide', () => {
    for (const changes of [{}, { backdrop: WALL }]) {
      const made = furniture(runOf(roomOf(changes)).hall);
      expect(made && boxOf(made).max.y).toBeGreaterThan(1.96);
      expect(made && boxOf(made).min.x).toBeLessThan(-0.5);
    }
  });
});

describe('the sheet', () => {
  const hall = (changes: Partial<Room>) => {
    const found = runOf(roomOf(changes)).hall;
    if (!found.sheet) throw new Error('no sheet');
    return { hall: found, sheet: found.sheet };
  };

  it('is as wide and as high as the backdrop, down to the floor, its plane the backdrop’s', () => {
    const told = hall({});
    const { min, max } = boxOf(hangingSheet(told.hall, told.sheet).face);
    expect(max.x - min.x).toBeCloseTo(1.35, 6);
    expect(max.y).toBeCloseTo(2.3, 6);
    expect(min.y).toBeGreaterThanOrEqual(0);
    expect(min.z).toBe(0);
  });

  it.each([0, 0.05, 0.2, 1])(
    '%s m off the wall hangs before it with all that carries it',
    (offWall) => {
      const told = hall({ backdrop: { offWall, width: 1.35, top: 2.3 } });
      const { min, max } = boxOf(hangingSheet(told.hall, told.sheet).behind);
      expect(min.z).toBeGreaterThan(-told.hall.behind);
      expect(max.y).toBeLessThan(2.3);
      expect(max.x).toBeLessThan(told.hall.left);
      expect(min.x).toBeGreaterThan(-told.hall.right);
    },
  );

  it.each([
    [0, 1.35],
    [0.2, 2.72],
    [2, 5],
  ])('hangs %s m off the wall, %s m wide, through nothing that stands there', (offWall, width) => {
    const room = { length: 12, width: 9, ceiling: 3.2, backdrop: { offWall, width, top: 2.6 } };
    const told = hall(room);
    const made = furniture(told.hall);
    if (!made) return;
    const place = made.getAttribute('position');
    for (let i = 0; i < place.count; i++) {
      if (Math.abs(place.getX(i)) < width / 2) expect(place.getZ(i)).toBeLessThan(told.hall.behind);
    }
  });
});
