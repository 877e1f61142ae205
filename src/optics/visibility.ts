/**
 * What a near camera cannot see of a round head: closed forms to check rays against.
 *
 * A ray from the camera touches a sphere where it is square to the radius. With the camera at
 * distance D from the centre that circle of contact lies at the angle acos(r/D) from the line to
 * the camera, in the plane r^2/D before the centre. An ellipsoid is a sphere scaled along its
 * axes, and scaling keeps tangents tangent: seen along z its contact lies at z = c^2/D.
 */
import { notPositive, ok, refuse } from './result';
import type { Refusal, Result } from './types';
import { type Metre, type Radian, radians } from './units';

function notOutside(radius: Metre, distance: Metre): Refusal | null {
  const bad = notPositive(radius, distance);
  if (bad) return bad;
  return distance <= radius ? refuse('behind-camera', radius, distance) : null;
}

export interface SphereVisibility {
  /** From the line to the camera to the last visible point: acos(r/D). */
  readonly halfAngle: Radian;
  /** Share of the surface, by area (a cap's is (1 - cos)/2): half from afar. */
  readonly surface: number;
  /** Breadth of the outline's circle over the true breadth: sqrt(1 - r^2/D^2). */
  readonly breadth: number;
}

/** What is seen of a sphere from `distance` (to its centre). */
export function sphereVisibility(radius: Metre, distance: Metre): Result<SphereVisibility> {
  const bad = notOutside(radius, distance);
  if (bad) return bad;
  const cosine = radius / distance;
  return ok({
    halfAngle: radians(Math.acos(cosine)),
    surface: (1 - cosine) / 2,
    breadth: Math.sqrt(1 - cosine ** 2),
  });
}

export interface EllipsoidOutline {
  /** Slope of the ray that touches its side: a / sqrt(D^2 - c^2). */
  readonly tangent: number;
  /** Breadth where that ray touches over the true breadth: sqrt(1 - c^2/D^2). */
  readonly breadth: number;
}

/**
 * Outline of an ellipsoid seen along its z axis from `distance` (to its centre): half breadth `a`
 * across, half depth `c` along the view.
 */
export function ellipsoidOutline(a: Metre, c: Metre, distance: Metre): Result<EllipsoidOutline> {
  const bad = notPositive(a) ?? notOutside(c, distance);
  if (bad) return bad;
  return ok({
    tangent: a / Math.sqrt(distance ** 2 - c ** 2),
    breadth: Math.sqrt(1 - (c / distance) ** 2),
  });
}
