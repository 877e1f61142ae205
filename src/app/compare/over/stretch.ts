import { sphereImage } from '../../../optics/off-axis';
import type { Camera } from '../../../optics/types';
import { metres, radians } from '../../../optics/units';

/** One ball's image, lengths in shares of the picture's height, from its upper left corner. */
export interface BallImage {
  readonly x: number;
  readonly y: number;
  /** Semi-axes: along the radius from the axis' foot, and across it. */
  readonly along: number;
  readonly across: number;
  /** Direction of the radius, degrees clockwise from the right. */
  readonly turn: number;
}

/** Balls across the shorter side of the frame, and their radius in shares of the spacing. */
const COUNT = 5;
const RADIUS = 0.26;

/**
 * Small equal balls, all at one distance from the lens, spread over the frame; each is drawn as the
 * exact ellipse that its cone of rays cuts from the flat picture.
 */
export function ballImages({ frustum }: Camera): BallImage[] {
  const width = frustum.right - frustum.left;
  const height = frustum.top - frustum.bottom;
  const step = Math.min(width, height) / COUNT;
  const columns = Math.round(width / step);
  const rows = Math.round(height / step);
  const balls: BallImage[] = [];
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const right = frustum.left + ((i + 0.5) * width) / columns;
      const up = frustum.top - ((j + 0.5) * height) / rows;
      const radius = Math.hypot(right, up);
      const image = sphereImage(metres(RADIUS * step), metres(1), radians(Math.atan(radius)));
      if (!image.ok) continue;
      const outward = radius > 0 ? image.value.centre / radius : 1;
      balls.push({
        x: (right * outward - frustum.left) / height,
        y: (frustum.top - up * outward) / height,
        along: image.value.radial / height,
        across: image.value.tangential / height,
        turn: (-Math.atan2(up, right) * 180) / Math.PI,
      });
    }
  }
  return balls;
}
