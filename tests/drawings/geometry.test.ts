import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesOverlap, clipSegment, ringArea, segmentMeetsBox } from '../../src/drawings/geometry';

const place = fc.double({ min: -3, max: 3, noNaN: true });
const point = fc.record({ x: place, y: place });
const BOX = { x: -1, y: -0.5, width: 2.5, height: 1.5 };

describe('clipSegment', () => {
  it('keeps just the points of the segment that lie in the box (dense sampling)', () => {
    fc.assert(
      fc.property(point, point, (from, to) => {
        const clipped = clipSegment([from, to], BOX);
        for (let i = 0; i <= 200; i += 1) {
          const share = i / 200;
          const x = from.x + share * (to.x - from.x);
          const y = from.y + share * (to.y - from.y);
          const depth = Math.min(
            x - BOX.x,
            BOX.x + BOX.width - x,
            y - BOX.y,
            BOX.y + BOX.height - y,
          );
          if (depth > 1e-9) expect(clipped).not.toBeNull();
          if (!clipped) continue;
          const [a, b] = clipped;
          const on =
            x >= Math.min(a.x, b.x) - 1e-9 &&
            x <= Math.max(a.x, b.x) + 1e-9 &&
            y >= Math.min(a.y, b.y) - 1e-9 &&
            y <= Math.max(a.y, b.y) + 1e-9;
          if (depth > 1e-9) expect(on).toBe(true);
          if (depth < -1e-6 && Math.hypot(a.x - b.x, a.y - b.y) > 1e-6) expect(on).toBe(false);
        }
      }),
    );
  });

  it('leaves a segment inside the box untouched and drops one outside', () => {
    const inside = [
      { x: 0, y: 0 },
      { x: 1, y: 0.5 },
    ] as const;
    expect(clipSegment(inside, BOX)).toEqual(inside);
    expect(
      segmentMeetsBox(
        [
          { x: -2, y: 2 },
          { x: 2, y: 2 },
        ],
        BOX,
      ),
    ).toBe(false);
  });
});

describe('boxes and rings', () => {
  it('boxes that only touch do not overlap, unless a gap is asked for', () => {
    const other = { x: 1.5, y: 0, width: 1, height: 1 };
    expect(boxesOverlap(BOX, other)).toBe(false);
    expect(boxesOverlap(BOX, other, 0.1)).toBe(true);
  });

  it('a unit square has area 1', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ];
    expect(ringArea(square)).toBe(1);
    expect(ringArea([...square].reverse())).toBe(-1);
  });
});
