import type { BufferGeometry } from 'three';
import { describe, expect, it } from 'vitest';
import { demoSession } from '../../src/session/demo';
import { runOf } from '../../src/session/kit';
import type { Room } from '../../src/session/types';
import { hallBounds } from '../../src/stage/floor';
import { furniture, windowPanes } from '../../src/stage/room/furniture';
import { hallShell } from '../../src/stage/room/shell';

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

describe('the hall', () => {
  it('reaches to the walls beside the axis, to the ceiling and to the wall behind the camera', () => {
    // 3.40 m across, the axis 0.30 m to the sitter's left of the middle; 5.20 m less 0.20 m off the wall.
    const { hall } = runOf(roomOf({ aside: 0.3 }));
    expect(hall.left).toBeCloseTo(1.4, 12);
    expect(hall.right).toBeCloseTo(2, 12);
    expect(hall.height).toBe(2.6);
    expect(hall.depth).toBeCloseTo(5, 12);
    const across = runOf(roomOf({ axis: 'across' })).hall;
    expect(across.left).toBeCloseTo(2.6, 12);
    expect(across.depth).toBeCloseTo(3.2, 12);
  });

  it('is as wide on a diagonal as the room is at the sitter', () => {
    // In a square the walls run off the axis at 45 degrees: as far as the corner is behind.
    const room = roomOf({ axis: 'diagonal', length: 6, width: 6, sitterBefore: 1.5 });
    const { left, right } = runOf(room).hall;
    // Paper 1.35 m wide comes 0.675 m out of the corner.
    expect(left).toBeCloseTo(0.675 + 1.5, 12);
    expect(right).toBeCloseTo(left, 12);
  });

  it('is the very same wherever the sitter is on a straight axis', () => {
    const { hall } = runOf(roomOf({}));
    for (const sitterBefore of [0.3, 0.7, 1.1, 1.9]) {
      expect(runOf(roomOf({ sitterBefore })).hall).toEqual(hall);
    }
  });

  it('is bounded as a box about the eyes', () => {
    const { min, max } = hallBounds(-1.2, runOf(roomOf({ aside: 0.3 })));
    [-2, -1.2, -1.2].forEach((value, i) => {
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
    const made = furniture(runOf(roomOf({})).hall);
    expect(made && boxOf(made).max.y).toBeGreaterThan(1.96);
    expect(made && boxOf(made).min.x).toBeLessThan(-0.5);
  });
});
