import type { RoomRun } from '../session/kit';
import type { Bounds } from './depthRange';

/** Depth of the hall's end wall, or of its corner, in the sitter's frame. */
export const endWall = ({ backdrop, hall }: Pick<RoomRun, 'backdrop' | 'hall'>): number =>
  -backdrop - hall.behind;

/** The hall around the sitter, as a box in the sitter's frame. */
export const hallBounds = (floor: number, room: Pick<RoomRun, 'backdrop' | 'hall'>): Bounds => ({
  min: [-room.hall.right, floor, endWall(room)],
  max: [room.hall.left, floor + room.hall.height, endWall(room) + room.hall.depth],
});
