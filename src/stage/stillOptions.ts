/** How a still is asked for. Apart from what renders it, which is fetched when the first one is wanted. */
import type { Aperture } from '../optics/aperture';

export interface StillOptions {
  /**
   * Views averaged for each pixel, each offset within it and, with an aperture, within the pupil;
   * `SAMPLES` or `APERTURE_SAMPLES` unless told. One is a quick frame.
   */
  readonly samples?: number;
  /** Draws what is out of focus as blurred as this lens does; all is sharp without it. */
  readonly aperture?: Aperture;
  /** Rows in a band handed on; the last may be lower. */
  readonly bandHeight?: number;
  /** Side of a square tile, pixels; see `planTiles`. No pixel depends on it. */
  readonly tileSide?: number;
  readonly signal?: AbortSignal;
  /** Share of the picture rendered, 0..1. */
  readonly onProgress?: (share: number) => void;
}

/** The scene changed, or its graphics context was lost, while a still was being rendered. */
export class StillInterrupted extends Error {
  override readonly name = 'StillInterrupted';
}

/** Views a pixel where all is sharp, and through an aperture. */
export const SAMPLES = 16;
export const APERTURE_SAMPLES = 64;
