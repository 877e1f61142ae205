import type { Sitter } from '../sitter/types';
import type { Bounds } from './depthRange';
import { HALL } from './room/shell';

/** Height of the floor in the sitter's frame: under the soles, or where the stature puts it for a bust. */
export function floorHeight(sitter: Sitter, bounds: Bounds): number {
  const { stature, vertex_above_eyes } = sitter.dimensions;
  return Math.min(-(stature - vertex_above_eyes) / 1000, bounds.min[1]);
}

/** The hall around the sitter, as a box in the sitter's frame. */
export const hallBounds = (floor: number, backdrop: number): Bounds => ({
  min: [-HALL.halfWidth, floor, -backdrop],
  max: [HALL.halfWidth, floor + HALL.height, HALL.depth - backdrop],
});
