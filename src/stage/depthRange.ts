import { toCameraAxes } from '../optics/camera';
import type { Camera, Vec3 } from '../optics/types';

/** Depths along the camera's axis between which things are drawn, metres. */
export interface DepthRange {
  readonly near: number;
  readonly far: number;
}

/** An upright box in the sitter's frame. */
export interface Bounds {
  readonly min: Vec3;
  readonly max: Vec3;
}

const NEAREST = 0.004;
const FARTHEST_NEAR = 0.25;

function corners({ min, max }: Bounds): Vec3[] {
  const xs = [min[0], max[0]];
  const ys = [min[1], max[1]];
  const zs = [min[2], max[2]];
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z): Vec3 => [x, y, z])));
}

/**
 * Near plane at half the sitter's gap to the lens, so that nothing of the sitter is cut and the depth
 * buffer keeps its steps fine; far plane just behind the room.
 */
export function depthRange(camera: Camera, sitter: Bounds, room: Bounds): DepthRange {
  const depth = (point: Vec3): number => -toCameraAxes(camera, point)[2];
  const gap = Math.min(...corners(sitter).map(depth));
  const near = Math.min(FARTHEST_NEAR, Math.max(NEAREST, gap / 2));
  const far = Math.max(near * 2, ...corners(room).map(depth)) * 1.01;
  return { near, far };
}

/** Box around points given as xyz triples. */
export function boundsOf(lists: readonly Float32Array[]): Bounds {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const list of lists) {
    for (let i = 0; i < list.length; i++) {
      const axis = i % 3;
      const value = list[i] as number;
      if (value < (min[axis] as number)) min[axis] = value;
      if (value > (max[axis] as number)) max[axis] = value;
    }
  }
  return { min, max };
}
