/** A door's swing from the ground that it sweeps. */
import type { RoomAsked, RoomObstacle } from '../../plan/room';
import type { FloorPoint } from '../../plan/run';

export interface DoorSwing {
  readonly hinge: FloorPoint;
  /** End of the open leaf, and of the shut one: the opening is from hinge to `shut`. */
  readonly open: FloorPoint;
  readonly shut: FloorPoint;
}

/**
 * The door is in the wall nearest to the swept ground and hinged at the end nearer to the room's corner,
 * so that it opens against the side wall.
 */
export function doorSwing(
  { x, y, length, width }: Pick<RoomObstacle, 'x' | 'y' | 'length' | 'width'>,
  room: Pick<RoomAsked, 'length' | 'width'>,
): DoorSwing {
  const walls = [
    { gap: x, upright: true, wall: x, far: x + length },
    { gap: room.length - x - length, upright: true, wall: x + length, far: x },
    { gap: y, upright: false, wall: y, far: y + width },
    { gap: room.width - y - width, upright: false, wall: y + width, far: y },
  ] as const;
  const { upright, wall, far } = [...walls].sort((a, b) => a.gap - b.gap)[0] ?? walls[0];
  const [from, to, run] = upright ? [y, y + width, room.width] : [x, x + length, room.length];
  const [hinge, end] = from <= run - to ? [from, to] : [to, from];
  const point = (across: number, along: number): FloorPoint =>
    upright ? [across, along] : [along, across];
  return { hinge: point(wall, hinge), open: point(far, hinge), shut: point(wall, end) };
}
