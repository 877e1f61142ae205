/** A room as the plan takes it: turned into the sitter's frame by the camera's axis. Metres. */
import {
  axisOf,
  type FloorPoint,
  floorPoint,
  hangBackdrop,
  type RoomPlan,
  runThrough,
} from './run';
import type { PlanObstacle, PlanRoom } from './types';

/** A thing on the floor: a rectangle from its corner nearest to (0, 0), in floor coordinates. */
export interface RoomObstacle extends Pick<PlanObstacle, 'id' | 'name' | 'kind' | 'height'> {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

export interface RoomAsked extends RoomPlan {
  readonly ceiling: number;
  readonly backdrop: RoomPlan['backdrop'] & { readonly top: number };
  readonly behindCamera: number;
  readonly obstacles: readonly RoomObstacle[];
}

type Outline = PlanRoom['walls'];

const rectangle = (x: number, y: number, length: number, width: number): FloorPoint[] => [
  [x, y],
  [x + length, y],
  [x + length, y + width],
  [x, y + width],
];

/** Floor coordinates -> x and z of the sitter's frame. */
export function toSitter(room: RoomPlan): (point: FloorPoint) => Outline[number] {
  const axis = axisOf(room);
  const { towards } = axis;
  const [x0, y0] = floorPoint(axis, hangBackdrop(room).along + room.sitterBefore, 0);
  return ([x, y]) => {
    const [dx, dy] = [x - x0, y - y0];
    return [dy * towards[0] - dx * towards[1], dx * towards[0] + dy * towards[1]];
  };
}

/** x and z of the sitter's frame -> floor coordinates: where something drawn there stands in the room. */
export function toFloor(room: RoomPlan): (point: Outline[number]) => FloorPoint {
  const axis = axisOf(room);
  const sitter = hangBackdrop(room).along + room.sitterBefore;
  return ([x, z]) => floorPoint(axis, sitter + z, x);
}

/** The room about a sitter whose eyes are `eyes` above the floor. */
export function planRoom(room: RoomAsked, eyes: number): PlanRoom {
  const placed = toSitter(room);
  const { width } = hangBackdrop(room);
  const { backdrop, cameraWall } = runThrough(room);
  return {
    floor: -eyes,
    ceiling: room.ceiling - eyes,
    walls: rectangle(0, 0, room.length, room.width).map(placed),
    backdrop: {
      behind: backdrop,
      left: width / 2,
      right: -width / 2,
      top: room.backdrop.top - eyes,
    },
    wallBehindCamera: cameraWall,
    behindCamera: room.behindCamera,
    obstacles: room.obstacles.map(({ id, name, kind, height, x, y, length, width: deep }) => ({
      id,
      name,
      kind,
      height,
      outline: rectangle(x, y, length, deep).map(placed),
    })),
  };
}
