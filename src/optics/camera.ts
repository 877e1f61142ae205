/** One camera in the sitter's frame, and where it draws a point. */
import { frustumFor, type SensorPoint } from './framing';
import { imageDistance } from './lens';
import { andThen, mapResult, notFinite, notPositive, ok, refuse } from './result';
import type { Camera, Result, SensorSides, Vec3 } from './types';
import { type Metre, metres, type Radian, radians } from './units';

export interface CameraRequest {
  /** Entrance pupil to the midpoint between the pupils of the eyes, straight. */
  readonly standpoint: Metre;
  /** Entrance pupil above (+) or below (-) the eyes. */
  readonly height?: Metre;
  /** Optical axis above (+) or below (-) level. */
  readonly tilt?: Radian;
  readonly focal: Metre;
  readonly sensor: SensorSides;
  /** Where the eyes are drawn: share of the frame's height from the top; absent: no shift. */
  readonly eyesAt?: number;
  /** Share of the frame's width from the left; absent: no shift. */
  readonly eyesAcross?: number;
  /** Along the axis; absent: on the eyes. */
  readonly focusDistance?: Metre;
}

/** A point as drawn: metres on the sensor from the foot of the axis, and its depth along it. */
export interface Projection extends SensorPoint {
  readonly depth: Metre;
}

const EYES: Vec3 = [0, 0, 0];

/** A point in the camera's own axes: x right, y up, z backwards (it looks along -z), metres. */
export function toCameraAxes(camera: Pick<Camera, 'position' | 'tilt'>, point: Vec3): Vec3 {
  const x = point[0] - camera.position[0];
  const y = point[1] - camera.position[1];
  const z = point[2] - camera.position[2];
  const cos = Math.cos(camera.tilt);
  const sin = Math.sin(camera.tilt);
  return [x, y * cos + z * sin, z * cos - y * sin];
}

/**
 * The camera of a standpoint. Its axis is level unless tilted; it focuses on the eyes unless told
 * otherwise; the eyes are brought to their place in the frame by shift alone, so that neither
 * the view nor any ratio changes. Refuses a height beyond the standpoint distance, eyes behind
 * the camera, and a focus inside the focal length.
 */
export function cameraAt(request: CameraRequest): Result<Camera> {
  const { standpoint, focal, sensor, eyesAt, eyesAcross } = request;
  const height = request.height ?? metres(0);
  const tilt = request.tilt ?? radians(0);
  const bad =
    notPositive(standpoint, focal, sensor.width, sensor.height) ??
    notFinite(height, tilt, eyesAt ?? 0, eyesAcross ?? 0);
  if (bad) return bad;
  if (Math.abs(height) > standpoint) return refuse('camera-too-high', standpoint, height);

  const pose = {
    position: [0, height, Math.sqrt(standpoint ** 2 - height ** 2)] as Vec3,
    tilt,
  };
  const [, eyesUp, eyesBack] = toCameraAxes(pose, EYES);
  const depth = -eyesBack;
  if (depth <= 0) return refuse('behind-camera', 0, depth);

  return andThen(imageDistance(focal, request.focusDistance ?? metres(depth)), (image) => {
    const shift = {
      u: metres(eyesAcross === undefined ? 0 : sensor.width * (0.5 - eyesAcross)),
      v: metres(
        eyesAt === undefined ? 0 : (image * eyesUp) / depth + sensor.height * (eyesAt - 0.5),
      ),
    };
    return mapResult(frustumFor(image, sensor, shift), (frustum) => ({
      ...pose,
      frustum,
      imageDistance: image,
      sensor,
    }));
  });
}

/** Where a point is drawn, from the foot of the optical axis. Refuses a point not before the lens. */
export function project(camera: Camera, point: Vec3): Result<Projection> {
  const bad = notFinite(...point);
  if (bad) return bad;
  const [x, y, z] = toCameraAxes(camera, point);
  if (z >= 0) return refuse('behind-camera', 0, -z);
  return ok({
    u: metres((camera.imageDistance * x) / -z),
    v: metres((camera.imageDistance * y) / -z),
    depth: metres(-z),
  });
}

/** The picture's centre on the sensor, from the foot of the optical axis. */
export function pictureCentre(camera: Camera): SensorPoint {
  const { left, right, bottom, top } = camera.frustum;
  return {
    u: metres(((left + right) / 2) * camera.imageDistance),
    v: metres(((bottom + top) / 2) * camera.imageDistance),
  };
}

/** Where a point is drawn, from the picture's centre, metres on the sensor. */
export function projectInPicture(camera: Camera, point: Vec3): Result<Projection> {
  const centre = pictureCentre(camera);
  return mapResult(project(camera, point), ({ u, v, depth }) => ({
    u: metres(u - centre.u),
    v: metres(v - centre.v),
    depth,
  }));
}

/** Where a point is drawn, as shares of the frame from the left and from the top. */
export function pictureShare(
  camera: Camera,
  point: Vec3,
): Result<{ readonly across: number; readonly down: number }> {
  const { left, right, bottom, top } = camera.frustum;
  return mapResult(project(camera, point), ({ u, v }) => ({
    across: (u / camera.imageDistance - left) / (right - left),
    down: (top - v / camera.imageDistance) / (top - bottom),
  }));
}

/** Standpoint distance: entrance pupil to the midpoint between the pupils, straight, metres. */
export const standpointDistance = (camera: Camera): Metre => metres(Math.hypot(...camera.position));

/** Depth of the eyes along the optical axis, metres. */
export const eyeDepth = (camera: Camera): Metre => metres(-toCameraAxes(camera, EYES)[2]);

/** Angle at which the face is seen: from above (+) or below (-) the level of the eyes, radians. */
export const viewAngle = (camera: Camera): Radian =>
  radians(Math.atan2(camera.position[1], Math.hypot(camera.position[0], camera.position[2])));

/** Width and height of the frame in the plane square to the axis at `depth`, metres. */
export function frameAtDepth(
  camera: Camera,
  depth: Metre,
): Result<{ readonly width: Metre; readonly height: Metre }> {
  const { left, right, bottom, top } = camera.frustum;
  return (
    notPositive(depth) ??
    ok({ width: metres((right - left) * depth), height: metres((top - bottom) * depth) })
  );
}
