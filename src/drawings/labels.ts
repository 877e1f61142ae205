/** Places texts so that none covers another; sight lines are crossed only when nothing else is left. */
import type { Letter } from '../session/types';
import { type Box, boxesOverlap, boxInside, grow, type Segment, segmentMeetsBox } from './geometry';
import { spread } from './spread';

export interface LabelWish {
  readonly id: string;
  /** The text, then shorter ones, each as lines. */
  readonly texts: readonly (readonly string[])[];
  /** Places for a box of that size, best first: its left upper corner. */
  places(width: number, height: number): readonly { readonly x: number; readonly y: number }[];
  readonly align: 'left' | 'middle' | 'right';
  /** Whose it is, for its colour. */
  readonly letters?: readonly Letter[];
  /** Left out sooner than drawn across a line. */
  readonly optional?: boolean;
}

export interface PlacedLabel {
  readonly id: string;
  readonly lines: readonly string[];
  readonly box: Box;
  readonly align: 'left' | 'middle' | 'right';
  readonly letters?: readonly Letter[];
}

export interface LabelGround {
  readonly bounds: Box;
  /** Never covered. */
  readonly solid: readonly Box[];
  /** Covered only in need. */
  readonly lines: readonly Segment[];
  /** Width of a text in pixels. */
  readonly widthOf: (text: string) => number;
  readonly lineHeight: number;
  readonly gap: number;
}

/**
 * Greedy, in the order of the wishes: the full text clear of all, then shorter texts, then
 * whatever crosses fewest lines. A wish without a place is left out, so the result never
 * overlaps; a later wish with the same id is its second chance.
 */
export function placeLabels(wishes: readonly LabelWish[], ground: LabelGround): PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  for (const wish of wishes) {
    if (placed.some(({ id }) => id === wish.id)) continue;
    const label = placeOne(wish, ground, placed);
    if (label) placed.push(label);
  }
  return placed;
}

function placeOne(
  { id, texts, places, align, letters, optional }: LabelWish,
  ground: LabelGround,
  placed: readonly PlacedLabel[],
): PlacedLabel | null {
  const blocked = (box: Box): boolean =>
    !boxInside(box, ground.bounds) ||
    ground.solid.some((other) => boxesOverlap(box, other, ground.gap)) ||
    placed.some((other) => boxesOverlap(box, other.box, ground.gap));
  const crossings = (box: Box): number => {
    const aired = grow(box, ground.gap / 2);
    return ground.lines.filter((line) => segmentMeetsBox(line, aired)).length;
  };
  let best: { crossed: number; label: PlacedLabel } | null = null;
  for (const lines of texts) {
    const width = Math.max(...lines.map(ground.widthOf));
    const height = lines.length * ground.lineHeight;
    for (const { x, y } of places(width, height)) {
      const box = { x, y, width, height };
      if (blocked(box)) continue;
      const crossed = crossings(box);
      const label = { id, lines, box, align, ...(letters && { letters }) };
      if (crossed === 0) return label;
      if (!optional && (!best || crossed < best.crossed)) best = { crossed, label };
    }
  }
  return best?.label ?? null;
}

export interface RowWish {
  /** The part of the row it speaks of. */
  readonly from: number;
  readonly to: number;
  /** From the longest to the shortest. */
  readonly texts: readonly string[];
}

export interface RowText {
  /** The text's middle. */
  readonly at: number;
  readonly text: string;
}

/**
 * Texts along one row. First the shortest of each as near to the middle of its part as the others
 * let it (the last ones go when the row is too short for all); then, one size at a time, longer
 * texts that keep to their part (with a gap to spare on either side) and clear the others.
 */
export function chooseTexts(
  wishes: readonly RowWish[],
  row: {
    readonly widthOf: (text: string) => number;
    readonly gap: number;
    readonly from: number;
    readonly to: number;
  },
): (RowText | null)[] {
  const middle = ({ from, to }: RowWish) => (from + to) / 2;
  const chosen: RowText[] = [];
  for (let count = wishes.length; count > 0; count -= 1) {
    const texts = wishes.slice(0, count).map((wish) => wish.texts.at(-1) ?? '');
    const widths = texts.map(row.widthOf);
    const total = widths.reduce((sum, width) => sum + width + row.gap, -row.gap);
    if (total > row.to - row.from) continue;
    const blocks = wishes.slice(0, count).map((wish, i) => {
      const half = (widths[i] ?? 0) / 2;
      return { at: middle(wish), left: half, right: half };
    });
    const places = spread(blocks, row.gap, row.from, row.to);
    chosen.push(...texts.map((text, i) => ({ at: places[i] ?? 0, text })));
    break;
  }

  const clear = (candidate: RowText, i: number): boolean =>
    chosen.every(
      (other, j) =>
        j === i ||
        Math.abs(other.at - candidate.at) >=
          (row.widthOf(other.text) + row.widthOf(candidate.text)) / 2 + row.gap,
    );
  const sizes = Math.max(0, ...wishes.map(({ texts }) => texts.length));
  for (let size = 2; size <= sizes; size += 1) {
    for (const [i, wish] of wishes.slice(0, chosen.length).entries()) {
      const text = wish.texts.at(-size);
      if (text === undefined || row.widthOf(text) > wish.to - wish.from + 2 * row.gap) continue;
      const candidate = { at: middle(wish), text };
      if (clear(candidate, i)) chosen[i] = candidate;
    }
  }
  return wishes.map((_, i) => chosen[i] ?? null);
}
