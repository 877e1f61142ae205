/** Where a text may stand about the point it speaks of. */
import type { Letter } from '../../session/types';
import type { Box, Point } from '../geometry';
import type { LabelWish, PlacedLabel } from '../labels';

export interface TextsWish {
  readonly id: string;
  readonly texts: readonly (readonly string[])[];
  readonly at: Point;
  /** Other points that would do. */
  readonly or?: readonly Point[];
  /** Over the point itself, or beside it. */
  readonly about?: 'over' | 'beside';
  /** Kept clear about the point, pixels. */
  readonly clear?: number;
  readonly letters?: readonly Letter[];
}

export interface Note {
  readonly id: string;
  readonly text: string;
  readonly letters?: readonly Letter[] | undefined;
}

/** Right, left, under and over the point, then farther out. */
export function ringWishes(
  { id, texts, at, or, about = 'beside', clear = 0, letters }: TextsWish,
  gap: number,
): LabelWish {
  const points = [at, ...(or ?? [])];
  const beside = ({ x, y }: Point, width: number, height: number, way: number) => [
    { x: x + way, y: y - height / 2 },
    { x: x - way - width, y: y - height / 2 },
    { x: x - width / 2, y: y + way },
    { x: x - width / 2, y: y - way - height },
    { x: x + way, y: y + way },
    { x: x - way - width, y: y + way },
    { x: x + way, y: y - way - height },
    { x: x - way - width, y: y - way - height },
  ];
  return {
    id,
    texts,
    align: about === 'over' ? 'middle' : 'left',
    ...(letters && { letters }),
    places: (width, height) => [
      ...(about === 'over'
        ? points.map(({ x, y }) => ({ x: x - width / 2, y: y - height / 2 }))
        : []),
      ...[1, 2.2].flatMap((times) =>
        points.flatMap((point) => beside(point, width, height, clear + times * gap)),
      ),
    ],
  };
}

/** What found no place. */
export function notesOf(wishes: readonly LabelWish[], placed: readonly PlacedLabel[]): Note[] {
  return wishes
    .filter(({ id }) => !placed.some((label) => label.id === id))
    .map(({ id, texts, letters }) => ({ id, text: (texts[0] ?? []).join(' '), letters }));
}

/** The upright box round points. */
export function boxOf(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
