/**
 * The lens as wide as it is: a picture averages the views from all points of the entrance pupil.
 * Source of the relations: similar triangles of a central projection from each of those points.
 */
import { notPositive, ok } from './result';
import type { Camera, Result } from './types';
import { type Metre, metres } from './units';

export interface Aperture {
  /** Of the entrance pupil. */
  readonly diameter: Metre;
  /** Along the axis, from the entrance pupil to the plane in focus. */
  readonly focusDepth: Metre;
}

/** A point of the entrance pupil from its centre, to the right and up as the camera sees it. */
export interface PupilPoint {
  readonly right: Metre;
  readonly up: Metre;
}

/** Diameter f/N of the entrance pupil: what the f-number means. */
export function pupilDiameter(focal: Metre, fNumber: number): Result<Metre> {
  return notPositive(focal, fNumber) ?? ok(metres(focal / fNumber));
}

/**
 * The view from one point of the entrance pupil. The camera moves there without turning; its frustum is
 * sheared by -offset / s, so that it cuts the same rectangle from the plane at focus depth s. A point
 * at depth x is drawn offset (1/s - 1/x) away from where the pupil's centre draws it, as a slope.
 */
export function throughPupil(camera: Camera, { right, up }: PupilPoint, focusDepth: Metre): Camera {
  const { position, tilt, frustum } = camera;
  const [x, y, z] = position;
  return {
    ...camera,
    position: [x + right, y + up * Math.cos(tilt), z + up * Math.sin(tilt)],
    frustum: {
      left: frustum.left - right / focusDepth,
      right: frustum.right - right / focusDepth,
      bottom: frustum.bottom - up / focusDepth,
      top: frustum.top - up / focusDepth,
    },
  };
}
