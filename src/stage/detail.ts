/** How finely a picture's sitters are drawn: by their size in it, never by what moves. */
import type { Camera } from '../optics/types';

export const DETAILS = ['fine', 'coarse'] as const;
export type Detail = (typeof DETAILS)[number];

/**
 * Pixels a metre at the eyes below which the coarse level serves: its surface strays from the fine one by
 * about 0.3 mm, which is then a third of a pixel. Above the other bound the fine one comes back.
 */
export const COARSE_BELOW = 1000;
export const FINE_ABOVE = 1250;

/** Pixels that a metre at the eye plane takes in a picture of the given height. */
export function pixelsPerMetre({ frustum, position }: Camera, height: number): number {
  return height / ((frustum.top - frustum.bottom) * Math.hypot(...position));
}

/**
 * The level for a picture, given the one it had. Between the bounds it stays, so that a picture whose size
 * wavers does not flicker; a drag that holds the crop changes nothing here.
 */
export function detailFor(scale: number, before: Detail | null): Detail {
  if (scale >= FINE_ABOVE) return 'fine';
  if (scale < COARSE_BELOW) return 'coarse';
  return before ?? 'fine';
}
