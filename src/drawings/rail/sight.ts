/** Where a camera stands in the side view and what its frame cuts from it. Metres; x = z, y up. */
import type { Camera } from '../../optics/types';
import { type Box, clipSegment, type Point, type Segment } from '../geometry';

/** Where the frame's edges cross the eye plane, measured along it from the eyes, up positive. */
export interface FrameSpan {
  readonly top: number;
  readonly bottom: number;
}

/** A standpoint in the side view: straight distance and height above the eyes. */
export interface SideStandpoint {
  readonly standpoint: number;
  /** |cameraHeight| <= standpoint. */
  readonly cameraHeight: number;
}

/** The entrance pupil. */
export function pupilAt({ standpoint, cameraHeight }: SideStandpoint): Point {
  return { x: Math.sqrt(Math.max(0, standpoint ** 2 - cameraHeight ** 2)), y: cameraHeight };
}

/** A point of the eye plane: through the eyes, square to the line from there to the pupil. */
export function onEyePlane(from: SideStandpoint, along: number): Point {
  const pupil = pupilAt(from);
  return { x: (-pupil.y / from.standpoint) * along, y: (pupil.x / from.standpoint) * along };
}

/**
 * The part of the eye plane that a camera's frame spans. Each edge of the frame is a ray from the
 * entrance pupil; its crossing with the eye plane follows from (pupil + k ray) . normal = 0.
 */
export function frameAtEyePlane(camera: Pick<Camera, 'position' | 'tilt' | 'frustum'>): FrameSpan {
  const pupil: Point = { x: camera.position[2], y: camera.position[1] };
  const distance = Math.hypot(pupil.x, pupil.y);
  const normal = { x: pupil.x / distance, y: pupil.y / distance };
  const cos = Math.cos(camera.tilt);
  const sin = Math.sin(camera.tilt);
  const crossing = (edge: number): number => {
    const ray = { x: edge * sin - cos, y: edge * cos + sin };
    const k = -distance / (ray.x * normal.x + ray.y * normal.y);
    return (pupil.y + k * ray.y) * normal.x - (pupil.x + k * ray.x) * normal.y;
  };
  return { top: crossing(camera.frustum.top), bottom: crossing(camera.frustum.bottom) };
}

/**
 * The two sight lines of a picture: from its entrance pupil through the frame's upper and lower
 * edge at the eyes and on, cut to `room` (metres, side view).
 */
export function sightLines(from: SideStandpoint, frame: FrameSpan, room: Box): Segment[] {
  const pupil = pupilAt(from);
  const reach = room.width + room.height + 2 * from.standpoint;
  return [frame.top, frame.bottom].flatMap((edge) => {
    const through = onEyePlane(from, edge);
    const length = Math.hypot(through.x - pupil.x, through.y - pupil.y);
    const far = {
      x: pupil.x + ((through.x - pupil.x) / length) * reach,
      y: pupil.y + ((through.y - pupil.y) / length) * reach,
    };
    const inside = clipSegment([pupil, far], room);
    return inside ? [inside] : [];
  });
}

/**
 * Points from the entrance pupil down (or up) to the axis at equal distance from the eyes, so
 * that a raised camera's distance can be read off the line. A single point at eye height.
 */
export function distanceArc(from: SideStandpoint, steps = 12): Point[] {
  const pupil = pupilAt(from);
  if (pupil.y === 0) return [pupil];
  const angle = Math.atan2(pupil.y, pupil.x);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const at = angle * (1 - i / steps);
    return { x: from.standpoint * Math.cos(at), y: from.standpoint * Math.sin(at) };
  });
}
