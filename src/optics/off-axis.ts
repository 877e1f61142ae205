/**
 * The stretch of a flat picture away from its axis. It belongs to projection on a plane, not to
 * a lens fault, and is apart from what the distance does.
 */
import { mapResult, notFinite, notPositive, ok, refuse } from './result';
import type { Frustum, Result } from './types';
import { type Metre, type Radian, radians } from './units';

/** Scale of a small ball's image against one on the axis: outwards, and across. */
export interface Stretch {
  readonly radial: number;
  readonly tangential: number;
}

export interface OffAxisStretch {
  /** Balls equally far from the lens: sec^2 t outwards, sec t across. */
  readonly equalDistance: Stretch;
  /** Balls in a straight row square to the axis: sec t outwards, 1 across. */
  readonly equalDepth: Stretch;
}

/** Stretch at field angle `angle` from the axis; refuses 90 degrees and more. */
export function offAxisStretch(angle: Radian): Result<OffAxisStretch> {
  const bad = notFinite(angle);
  if (bad) return bad;
  if (Math.abs(angle) >= Math.PI / 2) return refuse('behind-camera', Math.PI / 2, angle);
  const secant = 1 / Math.cos(angle);
  return ok({
    equalDistance: { radial: secant ** 2, tangential: secant },
    equalDepth: { radial: secant, tangential: 1 },
  });
}

export interface FieldPoint {
  /** From the optical axis. */
  readonly angle: Radian;
  readonly stretch: OffAxisStretch;
}

function fieldPoint(x: number, y: number): Result<FieldPoint> {
  const angle = radians(Math.atan(Math.hypot(x, y)));
  return mapResult(offAxisStretch(angle), (stretch) => ({ angle, stretch }));
}

/** The middle of the frame's edge that lies farthest from the axis. */
export function farthestEdge({ left, right, bottom, top }: Frustum): Result<FieldPoint> {
  const across = (left + right) / 2;
  const up = (bottom + top) / 2;
  const side = Math.max(Math.abs(left), Math.abs(right));
  const end = Math.max(Math.abs(bottom), Math.abs(top));
  return Math.hypot(side, up) >= Math.hypot(across, end)
    ? fieldPoint(side, up)
    : fieldPoint(across, end);
}

/** The frame's corner that lies farthest from the axis. */
export function farthestCorner({ left, right, bottom, top }: Frustum): Result<FieldPoint> {
  return fieldPoint(
    Math.max(Math.abs(left), Math.abs(right)),
    Math.max(Math.abs(bottom), Math.abs(top)),
  );
}

/** The ellipse that a ball is drawn as, on a plane at unit distance behind the lens. */
export interface SphereImage {
  /** Half axes, outwards and across. */
  readonly radial: number;
  readonly tangential: number;
  /** From the axis to the middle of the ellipse. */
  readonly centre: number;
  /** Radial over tangential. */
  readonly elongation: number;
}

/**
 * Exact image of a ball whose centre lies `distance` from the lens at field angle `angle`.
 * Its outline is a cone of half angle b, sin b = r/D, cut by the picture plane: half axes
 * (tan(a + b) - tan(a - b)) / 2 and sin b / sqrt(cos^2 a - sin^2 b). Refuses a ball that holds
 * the lens, or whose cone does not meet the plane in an ellipse.
 */
export function sphereImage(radius: Metre, distance: Metre, angle: Radian): Result<SphereImage> {
  const bad = notPositive(radius, distance) ?? notFinite(angle);
  if (bad) return bad;
  if (radius >= distance) return refuse('behind-camera', radius, distance);
  const half = Math.asin(radius / distance);
  const a = Math.abs(angle);
  if (a + half >= Math.PI / 2) return refuse('behind-camera', Math.PI / 2 - half, angle);
  const outer = Math.tan(a + half);
  const inner = Math.tan(a - half);
  const radial = (outer - inner) / 2;
  const tangential = Math.sin(half) / Math.sqrt(Math.cos(a) ** 2 - Math.sin(half) ** 2);
  return ok({ radial, tangential, centre: (outer + inner) / 2, elongation: radial / tangential });
}
