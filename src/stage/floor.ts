import type { Bounds } from './depthRange';
import { HALL } from './room/shell';

/** The hall around the sitter, as a box in the sitter's frame. */
export const hallBounds = (floor: number, backdrop: number): Bounds => ({
  min: [-HALL.halfWidth, floor, -backdrop],
  max: [HALL.halfWidth, floor + HALL.height, HALL.depth - backdrop],
});
