/**
 * What the standpoint does to proportions. Depths z run from the eye plane towards the entrance
 * pupil, along the line from the eyes' midpoint to it; d is the standpoint distance. Sizes
 * follow from similar triangles, so the lens does not appear.
 */
import { andThen, mapResult, notFinite, notPositive, ok, refuse } from './result';
import type { Refusal, Result, Vec3 } from './types';
import { type Metre, metres } from './units';

/** Depth of a point before the eye plane of a camera at `position`, metres; negative behind it. */
export function depthBefore(point: Vec3, position: Vec3): Result<Metre> {
  const distance = Math.hypot(...position);
  const [x, y, z] = position;
  return (
    notFinite(...point) ??
    notPositive(distance) ??
    ok(metres((point[0] * x + point[1] * y + point[2] * z) / distance))
  );
}

function notBeforeLens(distance: Metre, ...depths: Metre[]): Refusal | null {
  const bad = notPositive(distance) ?? notFinite(...depths);
  if (bad) return bad;
  const nearest = Math.max(...depths);
  return nearest >= distance ? refuse('behind-camera', distance, nearest) : null;
}

/** Size at depth z over the size the same thing would have at the eye plane: d / (d - z). */
export function sizeAtDepth(distance: Metre, z: Metre): Result<number> {
  return notBeforeLens(distance, z) ?? ok(distance / (distance - z));
}

/** Size of a thing at depth `zA` over the same thing at `zB`: (d - zB) / (d - zA). */
export function ratioOf(distance: Metre, zA: Metre, zB: Metre): Result<number> {
  return notBeforeLens(distance, zA, zB) ?? ok((distance - zB) / (distance - zA));
}

/** Excess of `ratioOf` over the far (parallel) view, where it is 1: (zA - zB) / (d - zA). */
export function gain(distance: Metre, zA: Metre, zB: Metre): Result<number> {
  return notBeforeLens(distance, zA, zB) ?? ok((zA - zB) / (distance - zA));
}

/** Change of the gain when the standpoint moves away by `step` (nearer when negative). */
export function gainPerStep(distance: Metre, zA: Metre, zB: Metre, step: Metre): Result<number> {
  return andThen(gain(distance, zA, zB), (here) =>
    mapResult(gain(metres(distance + step), zA, zB), (there) => there - here),
  );
}

/**
 * Standpoint distance that gives a wanted gain: d = zA + (zA - zB) / gain, metres. Refuses a gain
 * of 0 (reached only infinitely far away), one of the sign this pair of depths never has, and one
 * that would need a lens inside the face.
 */
export function distanceForGain(zA: Metre, zB: Metre, wanted: number): Result<Metre> {
  const bad = notFinite(zA, zB, wanted);
  if (bad) return bad;
  const beyondA = (zA - zB) / wanted;
  if (!(beyondA > 0 && Number.isFinite(beyondA))) return refuse('not-positive', 0, wanted);
  const distance = metres(zA + beyondA);
  const nearest = Math.max(0, zA, zB);
  return distance > nearest ? ok(distance) : refuse('behind-camera', nearest, distance);
}

/** Depths of two landmarks of one sitter, A over B. */
export interface DepthPair {
  readonly zA: Metre;
  readonly zB: Metre;
}

/** "Match the look": where one sitter has the ratio another shows from `otherDistance`, metres. */
export function distanceToMatch(
  own: DepthPair,
  other: DepthPair,
  otherDistance: Metre,
): Result<Metre> {
  return andThen(gain(otherDistance, other.zA, other.zB), (wanted) =>
    distanceForGain(own.zA, own.zB, wanted),
  );
}
