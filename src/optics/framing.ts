/** How much of the sitter the frame holds, and the frustum that holds it. */
import { notFocusable } from './lens';
import { notFinite, notPositive, ok } from './result';
import type { Frustum, Orientation, Result, SensorFormat, SensorSides } from './types';
import { type Metre, metres, type Radian, radians } from './units';

/** Metres on the sensor, of the upright picture: u to the right, v up. */
export interface SensorPoint {
  readonly u: Metre;
  readonly v: Metre;
}

/** Part of a picture as shares of its width from the left and of its height from the top. */
export interface Part {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** The sensor's sides as the upright picture shows them. */
export function sensorSides(format: SensorFormat, orientation: Orientation): SensorSides {
  return orientation === 'landscape'
    ? { width: format.longSide, height: format.shortSide }
    : { width: format.shortSide, height: format.longSide };
}

export const diagonal = (sensor: SensorSides): Metre =>
  metres(Math.hypot(sensor.width, sensor.height));

/** Focal length f = s h / (H + h) that frames `frameHeight` at `focus`, thin lens, metres. */
export function focalForFrame(
  frameHeight: Metre,
  focus: Metre,
  sensorHeight: Metre,
): Result<Metre> {
  return (
    notPositive(frameHeight, focus, sensorHeight) ??
    ok(metres((focus * sensorHeight) / (frameHeight + sensorHeight)))
  );
}

/** Frame height H = h (s - f) / f in the plane of focus, thin lens, metres. */
export function frameForFocal(focal: Metre, focus: Metre, sensorHeight: Metre): Result<Metre> {
  return (
    notPositive(sensorHeight) ??
    notFocusable(focal, focus) ??
    ok(metres((sensorHeight * (focus - focal)) / focal))
  );
}

/** Focus distance s = f (1 + H/h) from which `focal` frames `frameHeight`, thin lens, metres. */
export function focusForFrame(
  frameHeight: Metre,
  focal: Metre,
  sensorHeight: Metre,
): Result<Metre> {
  return (
    notPositive(frameHeight, focal, sensorHeight) ??
    ok(metres(focal * (1 + frameHeight / sensorHeight)))
  );
}

/**
 * Image distance that draws two seen points `wantedImageSize` apart on the sensor:
 * s' = size / (tan a + tan b). The angles are taken from the optical axis, `tanTop` upwards and
 * `tanBottom` downwards (or left and right); a point on the other side of the axis counts negative.
 */
export function imageDistanceForAngles(
  wantedImageSize: Metre,
  tanTop: number,
  tanBottom: number,
): Result<Metre> {
  const bad = notFinite(tanTop, tanBottom) ?? notPositive(wantedImageSize, tanTop + tanBottom);
  return bad ?? ok(metres(wantedImageSize / (tanTop + tanBottom)));
}

/** Angle of view 2 atan(side / 2s') of a frame centred on the axis, radians. */
export function angleOfView(side: Metre, imageDistance: Metre): Result<Radian> {
  return notPositive(side, imageDistance) ?? ok(radians(2 * Math.atan(side / imageDistance / 2)));
}

/** The frustum of a sensor whose centre lies `shift` away from the foot of the optical axis. */
export function frustumFor(
  imageDistance: Metre,
  sensor: SensorSides,
  shift: SensorPoint = { u: metres(0), v: metres(0) },
): Result<Frustum> {
  return (
    notPositive(imageDistance, sensor.width, sensor.height) ??
    notFinite(shift.u, shift.v) ??
    ok({
      left: (shift.u - sensor.width / 2) / imageDistance,
      right: (shift.u + sensor.width / 2) / imageDistance,
      bottom: (shift.v - sensor.height / 2) / imageDistance,
      top: (shift.v + sensor.height / 2) / imageDistance,
    })
  );
}

/** The frustum of one part of a picture: a tile, a crop, or (beyond 0..1) a margin around it. */
export function partOfFrustum(whole: Frustum, part: Part): Frustum {
  const across = (share: number) => whole.left + (whole.right - whole.left) * share;
  const down = (share: number) => whole.top + (whole.bottom - whole.top) * share;
  return {
    left: across(part.x0),
    right: across(part.x1),
    bottom: down(part.y1),
    top: down(part.y0),
  };
}

/** The frustum moved by shares of its width to the right and of its height upwards. */
export function jitterFrustum(frustum: Frustum, right: number, up: number): Frustum {
  const dx = (frustum.right - frustum.left) * right;
  const dy = (frustum.top - frustum.bottom) * up;
  return {
    left: frustum.left + dx,
    right: frustum.right + dx,
    bottom: frustum.bottom + dy,
    top: frustum.top + dy,
  };
}
