import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bufferScale, viewportOf } from '../../src/stage/rects';

describe('rectangles', () => {
  it('counts from below in the buffer', () => {
    expect(viewportOf({ x: 10, y: 20, width: 100, height: 50 }, 2, 400)).toEqual({
      x: 20,
      y: 260,
      width: 200,
      height: 100,
    });
  });

  it('leaves neither gap nor overlap between pictures that touch', () => {
    const side = fc.double({ min: 1, max: 2000, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.double({ min: 0.5, max: 2, noNaN: true }), (x, width, scale) => {
        const left = viewportOf({ x, y: 0, width, height: 10 }, scale, 100);
        const right = viewportOf({ x: x + width, y: 0, width: 30, height: 10 }, scale, 100);
        fc.pre(width * scale >= 1);
        expect(left.x + left.width).toBe(right.x);
      }),
    );
  });

  it('follows the display up to 2, and the limits below that', () => {
    const wide = { side: 8192, area: 12e6 };
    expect(bufferScale(1000, 600, 1, wide)).toBe(1);
    expect(bufferScale(1000, 600, 3, wide)).toBe(2);
    expect(bufferScale(1000, 600, 2, { side: 1500, area: 12e6 })).toBe(1.5);
    const scale = bufferScale(4000, 3000, 2, wide);
    expect(4000 * scale * 3000 * scale).toBeCloseTo(12e6, 0);
  });
});
