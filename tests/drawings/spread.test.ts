import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Block, spread, spreadWithSides } from '../../src/drawings/spread';

const GAP = 4;
const WIDTH = 1000;
const blocks = fc
  .array(
    fc.record({
      at: fc.double({ min: 0, max: WIDTH, noNaN: true }),
      left: fc.integer({ min: 5, max: 60 }),
      right: fc.integer({ min: 5, max: 120 }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((list) => list.sort((a, b) => a.at - b.at));

const cost = (list: readonly Block[], places: readonly number[]) =>
  list.reduce((sum, { at }, i) => sum + ((places[i] ?? 0) - at) ** 2, 0);

/** Whether the blocks stand inside and apart; `slack` is for rounding. */
function allowed(list: readonly Block[], places: readonly number[], slack: number): boolean {
  return list.every((block, i) => {
    const place = places[i] ?? 0;
    const before = list[i - 1];
    return (
      place - block.left >= -slack &&
      place + block.right <= WIDTH + slack &&
      (!before || place - block.left - ((places[i - 1] ?? 0) + before.right) >= GAP - slack)
    );
  });
}

describe('spread', () => {
  it('keeps the blocks apart and inside', () => {
    fc.assert(
      fc.property(blocks, (list) => {
        expect(allowed(list, spread(list, GAP, 0, WIDTH), 1e-6)).toBe(true);
      }),
    );
  });

  it('leaves alone what has room', () => {
    fc.assert(
      fc.property(blocks, fc.double({ min: 0, max: 3, noNaN: true }), (list, air) => {
        let end = 0;
        const roomy = list.map((block) => {
          const at = end + air + block.left;
          end = at + block.right + GAP;
          return { ...block, at };
        });
        for (const [i, place] of spread(roomy, GAP, 0, WIDTH).entries()) {
          expect(place).toBeCloseTo(roomy[i]?.at ?? 0, 6);
        }
      }),
    );
  });

  it('no other allowed arrangement moves the blocks less (random arrangements)', () => {
    fc.assert(
      fc.property(
        blocks,
        fc.array(fc.double({ min: -40, max: 40, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (list, nudges) => {
          const places = spread(list, GAP, 0, WIDTH);
          const other = places.map((place, i) => place + (nudges[i] ?? 0));
          fc.pre(allowed(list, other, 0));
          expect(cost(list, places)).toBeLessThanOrEqual(cost(list, other) + 1e-6);
        },
      ),
    );
  });
});

it('a text at the right-hand end hangs to the left of its mark', () => {
  const [first, last] = spreadWithSides(
    [
      { at: 100, half: 22, text: 60 },
      { at: 970, half: 22, text: 60 },
    ],
    GAP,
    0,
    WIDTH,
  );
  expect(first).toEqual({ at: 100, side: 'right' });
  expect(last).toEqual({ at: 970, side: 'left' });
});
