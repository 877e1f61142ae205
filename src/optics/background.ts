/** How large what stands behind the sitter is drawn, and how much of it the frame holds. */
import { notFinite, notNegative, notPositive, ok, refuse } from './result';
import type { Camera, Refusal, Result } from './types';
import { type Metre, metres } from './units';

function notBehindSitter(distance: Metre, behind: Metre): Refusal | null {
  const bad = notPositive(distance) ?? notFinite(behind);
  if (bad) return bad;
  return behind <= -distance ? refuse('behind-camera', -distance, behind) : null;
}

/** Size of a thing `behind` the eye plane over its size at the eye plane: d / (d + b). */
export function backgroundSize(distance: Metre, behind: Metre): Result<number> {
  return notBehindSitter(distance, behind) ?? ok(distance / (distance + behind));
}

/**
 * Width that a backdrop must span, W (d + b) / d, plus `margin` at each side (a share of that
 * width), for a frame centred on the axis; metres.
 */
export function backdropWidth(
  frameWidth: Metre,
  distance: Metre,
  behind: Metre,
  margin = 0,
): Result<Metre> {
  const bad = notPositive(frameWidth) ?? notNegative(margin) ?? notBehindSitter(distance, behind);
  return bad ?? ok(metres(((frameWidth * (distance + behind)) / distance) * (1 + 2 * margin)));
}

/** Edges on the backdrop in the sitter's frame, metres from the eyes. */
export interface Extent {
  readonly left: Metre;
  readonly right: Metre;
  readonly bottom: Metre;
  readonly top: Metre;
}

/**
 * What the frame holds of an upright backdrop `behind` the eyes, wherever the frame is placed:
 * the box around its four corners. Refuses a tilted frame that looks past the backdrop's plane.
 */
export function backdropExtent(camera: Camera, behind: Metre): Result<Extent> {
  const [x, y, z] = camera.position;
  const bad = notBehindSitter(metres(z), behind);
  if (bad) return bad;
  const cos = Math.cos(camera.tilt);
  const sin = Math.sin(camera.tilt);
  const { left, right, bottom, top } = camera.frustum;
  // Level, each edge of the frame is one height of the plane; tilted, that height's scale differs.
  const rows = [bottom, top].map((edge) => {
    const forward = cos - edge * sin;
    return { forward, scale: (z + behind) / forward, rise: edge * cos + sin };
  });
  const least = Math.min(...rows.map(({ forward }) => forward));
  if (least <= 0) return refuse('behind-camera', 0, least);
  const across = rows.flatMap(({ scale }) => [x + left * scale, x + right * scale]);
  const heights = rows.map(({ scale, rise }) => y + rise * scale);
  return ok({
    left: metres(Math.min(...across)),
    right: metres(Math.max(...across)),
    bottom: metres(Math.min(...heights)),
    top: metres(Math.max(...heights)),
  });
}
