/** Keeps blocks on a line apart while moving them as little as possible. */

export interface Block {
  /** Where the block's mark should stand. */
  readonly at: number;
  /** Extent to the left and to the right of that mark. */
  readonly left: number;
  readonly right: number;
}

/**
 * Places for the blocks' marks, in the order given (sort by `at` first), at least `gap` between
 * neighbours and inside [from, to] where all fit. Least squares: with the blocks' widths taken
 * out, the places must not fall, which is isotonic regression (pool adjacent violators, Ayer et
 * al. 1955); clipping its result to the bounds keeps it the least-squares answer.
 */
export function spread(blocks: readonly Block[], gap: number, from: number, to: number): number[] {
  const offsets: number[] = [];
  let offset = 0;
  for (const [i, block] of blocks.entries()) {
    offset += i === 0 ? block.left : (blocks[i - 1]?.right ?? 0) + gap + block.left;
    offsets.push(offset);
  }
  const last = blocks.at(-1);
  if (!last) return [];
  const slack = to - from - (offset + last.right);

  const pools: { sum: number; count: number }[] = [];
  for (const [i, block] of blocks.entries()) {
    pools.push({ sum: block.at - (offsets[i] ?? 0) - from, count: 1 });
    for (;;) {
      const b = pools.at(-1);
      const a = pools.at(-2);
      if (!a || !b || a.sum / a.count <= b.sum / b.count) break;
      pools.splice(-2, 2, { sum: a.sum + b.sum, count: a.count + b.count });
    }
  }
  const level = pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  return level.map((value, i) => {
    const inside = Math.max(0, Math.min(value, slack));
    return from + inside + (offsets[i] ?? 0);
  });
}

/**
 * A mark with a text that may hang to either side of it: chooses the sides that move the marks
 * least, the right-hand side on equal terms. At most a handful of blocks: all choices are tried.
 */
export function spreadWithSides(
  marks: readonly { readonly at: number; readonly half: number; readonly text: number }[],
  gap: number,
  from: number,
  to: number,
): { readonly at: number; readonly side: 'left' | 'right' }[] {
  let best: { cost: number; places: { at: number; side: 'left' | 'right' }[] } | null = null;
  for (let choice = 0; choice < 2 ** marks.length; choice += 1) {
    const sides = marks.map((_, i) => ((choice >> i) & 1 ? ('left' as const) : ('right' as const)));
    const blocks = marks.map(({ at, half, text }, i) => ({
      at,
      left: half + (sides[i] === 'left' ? text : 0),
      right: half + (sides[i] === 'right' ? text : 0),
    }));
    const places = spread(blocks, gap, from, to);
    const cost = marks.reduce((sum, { at }, i) => sum + Math.abs((places[i] ?? at) - at), 0);
    if (!best || cost < best.cost - 0.5) {
      best = { cost, places: places.map((at, i) => ({ at, side: sides[i] ?? 'right' })) };
    }
  }
  return best?.places ?? [];
}
