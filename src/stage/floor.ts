import type { RoomRun } from '../session/kit';
import type { Bounds } from './depthRange';

/** The hall around the sitter, as a box in the sitter's frame. */
export const hallBounds = (
  floor: number,
  { backdrop, hall }: Pick<RoomRun, 'backdrop' | 'hall'>,
): Bounds => ({
  min: [-hall.right, floor, -backdrop],
  max: [hall.left, floor + hall.height, hall.depth - backdrop],
});
