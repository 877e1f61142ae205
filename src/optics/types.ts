import type { Metre, Radian } from './units';

/** x to the sitter's left (the picture's right), y up, z out of the face; metres. */
export type Vec3 = readonly [x: number, y: number, z: number];

/** A sensor's exact sides, long side first. */
export interface SensorFormat {
  readonly id: string;
  readonly name: string;
  readonly longSide: Metre;
  readonly shortSide: Metre;
  /** Circle of confusion used when none is asked for, and why. */
  readonly circleOfConfusion: Metre;
}

export type Orientation = 'portrait' | 'landscape';

/** The sensor as the upright picture shows it. */
export interface SensorSides {
  readonly width: Metre;
  readonly height: Metre;
}

/** What is known of a lens. A prime has equal ends. */
export interface Lens {
  readonly id: string;
  readonly name: string;
  /** Marked focal lengths, shortest and longest. */
  readonly focal: readonly [Metre, Metre];
  /** Widest aperture (smallest f-number) at the shortest and the longest mark. */
  readonly widest: readonly [number, number];
  /** Largest f-number. */
  readonly smallest: number;
  /** Nearest focus from the sensor mark, at the shortest and the longest mark. */
  readonly nearestFocus: readonly [Metre, Metre];
  /** From the sensor mark to the front of the lens. */
  readonly length: Metre;
  /** Largest magnification, at the nearest focus of the longest mark. */
  readonly largestMagnification?: number;
  /** Entrance pupil's distance from the sensor mark. */
  readonly entrancePupil?: Metre;
  /** Exit pupil diameter over entrance pupil diameter; 1 for a thin lens. */
  readonly pupilMagnification?: number;
}

/** Edges of the picture on a plane at unit distance before the entrance pupil. */
export interface Frustum {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/**
 * One camera, fully resolved. It looks along its own -Z; `tilt` turns it about
 * its own X axis, positive upwards. The entrance pupil is at `position`.
 */
export interface Camera {
  readonly position: Vec3;
  readonly tilt: Radian;
  readonly frustum: Frustum;
  /** Entrance pupil to image plane (thin lens s'): field of view and blur alike use it. */
  readonly imageDistance: Metre;
  readonly sensor: SensorSides;
}

/** A request that optics cannot meet: never NaN, always a reason. */
export interface Refusal {
  readonly ok: false;
  readonly reason: RefusalReason;
  /** The limit that was passed and the value asked, in SI units. */
  readonly limit: number;
  readonly asked: number;
}
export type RefusalReason =
  | 'not-a-number'
  | 'not-positive'
  | 'inside-focal-length'
  | 'frame-too-small'
  | 'frame-too-large'
  | 'too-near-to-focus'
  | 'lens-too-short'
  | 'lens-too-long'
  | 'aperture-too-wide'
  | 'aperture-too-small'
  | 'behind-camera'
  | 'camera-too-high';
export type Result<T> = { readonly ok: true; readonly value: T } | Refusal;
