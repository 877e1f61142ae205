import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FrameLayout, frameLayout } from '../../../src/handout/clip/layout';
import type { Box } from '../../../src/handout/sheet';

const SIZES = [
  { width: 640, height: 360 },
  { width: 1920, height: 1080 },
  { width: 3840, height: 2160 },
  { width: 1080, height: 1920 },
] as const;

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const shareOfFrame = ({ width, height, pictures }: FrameLayout): number =>
  pictures.reduce((sum, box) => sum + box.width * box.height, 0) / (width * height);

describe('the layout of a frame', () => {
  it('keeps every box inside, apart from the others, and the pictures in shape', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SIZES),
        fc.constantFrom(2 / 3, 3 / 2, 3 / 4, 4 / 3, 1, 6 / 7, 4 / 5, 5 / 4),
        fc.integer({ min: 1, max: 2 }),
        fc.boolean(),
        (size, aspect, count, captioned) => {
          const layout = frameLayout(size, new Array(count).fill(aspect), captioned);
          const boxes = [...layout.pictures, ...layout.captions];
          expect(layout.pictures).toHaveLength(count);
          expect(layout.captions).toHaveLength(captioned ? count : 0);
          for (const [i, box] of boxes.entries()) {
            for (const side of Object.values(box)) expect(Number.isInteger(side)).toBe(true);
            expect(box.x).toBeGreaterThanOrEqual(0);
            expect(box.y).toBeGreaterThanOrEqual(0);
            expect(box.x + box.width).toBeLessThanOrEqual(size.width);
            expect(box.y + box.height).toBeLessThanOrEqual(size.height);
            for (const other of boxes.slice(i + 1)) expect(overlap(box, other)).toBe(false);
          }
          for (const box of layout.pictures)
            expect(Math.abs(box.width - aspect * box.height)).toBeLessThanOrEqual(0.5);
          expect(new Set(layout.pictures.map(({ height }) => height)).size).toBe(1);
        },
      ),
      { seed: 13 },
    );
  });

  it('wastes little of the frame on an upright picture alone, and none of its height', () => {
    const alone = frameLayout({ width: 1920, height: 1080 }, [2 / 3], true);
    expect((alone.pictures[0] as Box).height).toBeGreaterThan(0.9 * 1080);
  });

  it('stacks pictures where that shows them larger', () => {
    const upright = frameLayout({ width: 1080, height: 1920 }, [3 / 2, 3 / 2], true);
    expect((upright.pictures[1] as Box).y).toBeGreaterThan((upright.pictures[0] as Box).y);
    const lying = frameLayout({ width: 1920, height: 1080 }, [2 / 3, 2 / 3], true);
    expect((lying.pictures[1] as Box).y).toBe((lying.pictures[0] as Box).y);
    for (const layout of [upright, lying]) expect(shareOfFrame(layout)).toBeGreaterThan(0.4);
  });
});
