/** The room's floor in the sitter's frame: x to the sitter's left, z towards the camera. Metres. */
import { type RoomAsked, toFloor, toSitter } from '../../plan/room';
import { axisOf, type FloorPoint, hangBackdrop, runThrough } from '../../plan/run';

/** x and z. */
export type OnFloor = readonly [x: number, z: number];

export interface FloorPlan {
  readonly corners: readonly FloorPoint[];
  /** The same in the sitter's frame. */
  readonly walls: readonly OnFloor[];
  /** Unit vector of the axis in floor coordinates. */
  readonly towards: FloorPoint;
  /** Where the axis comes into the room and where it leaves it, z. */
  readonly enters: number;
  readonly leaves: number;
  readonly backdrop: { readonly behind: number; readonly half: number };
  /** From the axis to the walls at a place on it, to the sitter's left and right. */
  reach(z: number): { readonly left: number; readonly right: number };
  toFloor(at: OnFloor): FloorPoint;
  toSitter(at: FloorPoint): OnFloor;
}

export function floorPlan(room: RoomAsked): FloorPlan {
  const axis = axisOf(room);
  const hung = hangBackdrop(room);
  const sitter = hung.along + room.sitterBefore;
  const inFrame = toSitter(room);
  const corners: FloorPoint[] = [
    [0, 0],
    [room.length, 0],
    [room.length, room.width],
    [0, room.width],
  ];
  return {
    corners,
    walls: corners.map(inFrame),
    towards: axis.towards,
    enters: axis.enters - sitter,
    leaves: runThrough(room).cameraWall,
    backdrop: { behind: room.sitterBefore, half: hung.width / 2 },
    reach: (z) => axis.reach(sitter + z),
    toFloor: toFloor(room),
    toSitter: inFrame,
  };
}

/**
 * The part of a convex outline where `side` is not negative. Sutherland and Hodgman 1974, "Reentrant
 * polygon clipping", one edge of it.
 */
export function cutOutline(
  outline: readonly OnFloor[],
  side: (at: OnFloor) => number,
): readonly OnFloor[] {
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const [a, b] = [side(from), side(to)];
    const share = a / (a - b);
    const crossing: OnFloor = [
      from[0] + share * (to[0] - from[0]),
      from[1] + share * (to[1] - from[1]),
    ];
    const kept = a >= 0 ? [from] : [];
    return a >= 0 === b >= 0 ? kept : [...kept, crossing];
  });
}

/** Where a ray from a point leaves a convex outline; null when it misses it. */
export function leaveOutline(
  outline: readonly OnFloor[],
  [x, z]: OnFloor,
  [dx, dz]: OnFloor,
): OnFloor | null {
  let farthest = -1;
  for (const [i, [ax, az]] of outline.entries()) {
    const [bx, bz] = outline[(i + 1) % outline.length] ?? [ax, az];
    const across = dx * (bz - az) - dz * (bx - ax);
    if (across === 0) continue;
    const way = ((ax - x) * (bz - az) - (az - z) * (bx - ax)) / across;
    const along = ((ax - x) * dz - (az - z) * dx) / across;
    if (along >= -1e-9 && along <= 1 + 1e-9) farthest = Math.max(farthest, way);
  }
  return farthest < 0 ? null : [x + farthest * dx, z + farthest * dz];
}
