/** A door's swing from the ground that it sweeps. */
import type { RoomAsked, RoomObstacle } from '../../plan/room';
import type { FloorPoint } from '../../plan/run';

export interface DoorSwing {
  readonly hinge: FloorPoint;
  /** End of the open leaf, and of the shut one: the opening is from hinge to `shut`. */
  readonly open: FloorPoint;
  readonly shut: FloorPoint;
}

/** Ground so near to a wall reaches it, metres. */
export const AT_WALL = 0.1;

/**
 * The door is in the wall nearest to the swept ground and hinged at the end nearer to the room's corner,
 * so that it opens against the side wall.
 */
export function doorSwing(
  { x, y, length, width }: Pick<RoomObstacle, 'x' | 'y' | 'length' | 'width'>,
  room: Pick<RoomAsked, 'length' | 'width'>,
): DoorSwing {
  const walls = [
    { edge: x, wall: 0, upright: true, far: x + length },
    { edge: x + length, wall: room.length, upright: true, far: x },
    { edge: y, wall: 0, upright: false, far: y + width },
    { edge: y + width, wall: room.width, upright: false, far: y },
  ].map((side) => ({ ...side, gap: Math.abs(side.wall - side.edge) }));
  const nearest = [...walls].sort((a, b) => a.gap - b.gap)[0];
  if (!nearest) throw new RangeError('a room has walls');
  const { upright, far } = nearest;
  const wall = nearest.gap < AT_WALL ? nearest.wall : nearest.edge;
  const [from, to, run] = upright ? [y, y + width, room.width] : [x, x + length, room.length];
  const [hinge, end] = from <= run - to ? [from, to] : [to, from];
  const point = (across: number, along: number): FloorPoint =>
    upright ? [across, along] : [along, across];
  return { hinge: point(wall, hinge), open: point(far, hinge), shut: point(wall, end) };
}
