/** What a camera's frame takes in, from above and from the side. Metres, the sitter's frame. */
import type { FloorPlan, OnFloor } from './floor';
import { leaveOutline } from './floor';
import type { PlanPicture } from './types';

type Pictured = Pick<PlanPicture, 'camera'>;

/** Sideways way for each metre of depth of the frame's edges, in the row of the axis. */
function sidesPerDepth({ camera: { frustum, tilt } }: Pictured): readonly [number, number] {
  return [frustum.left / Math.cos(tilt), frustum.right / Math.cos(tilt)];
}

export const pupilOnFloor = ({ camera: { position } }: Pictured): OnFloor => [
  position[0],
  position[2],
];

/** The frame's edges at a depth from the pupil, measured along the floor: right of the sitter first. */
export function fieldAt(picture: Pictured, depth: number): readonly [OnFloor, OnFloor] {
  const [x, z] = pupilOnFloor(picture);
  const [right, left] = sidesPerDepth(picture);
  return [
    [x + right * depth, z - depth],
    [x + left * depth, z - depth],
  ];
}

/** Where each edge of the field ends: on the backdrop, or past its side on a wall. */
export function fieldEnds(picture: Pictured, floor: FloorPlan): readonly OnFloor[] {
  const from = pupilOnFloor(picture);
  const depth = from[1] + floor.backdrop.behind;
  return fieldAt(picture, depth).map((end) =>
    Math.abs(end[0]) <= floor.backdrop.half
      ? end
      : (leaveOutline(floor.walls, from, [end[0] - from[0], end[1] - from[1]]) ?? end),
  );
}

/** The part of the floor that is drawn sharp, not beyond the backdrop; null where none is. */
export function sharpOnFloor(picture: PlanPicture, floor: FloorPlan): readonly OnFloor[] | null {
  const farthest = pupilOnFloor(picture)[1] + floor.backdrop.behind;
  const near = Math.max(0, picture.sharp[0]);
  const far = Math.min(farthest, picture.sharp[1]);
  if (!(far > near)) return null;
  const [a, b] = fieldAt(picture, near);
  const [d, c] = fieldAt(picture, far);
  return [a, b, c, d];
}

export type EdgeEnd = 'backdrop' | 'over-backdrop' | 'ceiling' | 'floor';

export interface SideEdge {
  /** From the pupil to where it ends: z and height above the eyes. */
  readonly from: readonly [z: number, y: number];
  readonly to: readonly [z: number, y: number];
  /** Where it passes over the backdrop, when it does. */
  readonly passes: readonly [z: number, y: number] | null;
  readonly end: EdgeEnd;
}

/** The frame's upper and lower edge from the side, up to backdrop, ceiling, floor or rear wall. */
export function sideEdges(
  { camera: { position, tilt, frustum } }: Pictured,
  room: { behind: number; top: number; floor: number; ceiling: number; rear: number },
): readonly SideEdge[] {
  const [, y, z] = position;
  return [frustum.top, frustum.bottom].map((edge): SideEdge => {
    // A ray of the frame, turned by the tilt about the camera's own x axis.
    const back = Math.cos(tilt) - edge * Math.sin(tilt);
    const rise = (edge * Math.cos(tilt) + Math.sin(tilt)) / back;
    const at = (depth: number) => [z - depth, y + rise * depth] as const;
    const depthTo = (height: number) =>
      rise === 0 || (height - y) / rise < 0 ? Number.POSITIVE_INFINITY : (height - y) / rise;
    const toBackdrop = z + room.behind;
    const ceiling = depthTo(room.ceiling);
    const floor = depthTo(room.floor);
    const from = [z, y] as const;
    if (ceiling < toBackdrop) return { from, to: at(ceiling), passes: null, end: 'ceiling' };
    if (floor < toBackdrop) return { from, to: at(floor), passes: null, end: 'floor' };
    const meets = at(toBackdrop);
    if (meets[1] <= room.top) return { from, to: meets, passes: null, end: 'backdrop' };
    const to = at(Math.min(ceiling, z - room.rear));
    return { from, to, passes: meets, end: 'over-backdrop' };
  });
}
