/** The studio's four lights as they are set. */
import { clamp, LIMITS } from './limits';

export const LAMPS = ['key', 'fill', 'hair', 'background'] as const;
export type LampName = (typeof LAMPS)[number];

/** Those that stand about the sitter; the background light is a pool on the backdrop. */
export const STANDS = ['key', 'fill', 'hair'] as const satisfies readonly LampName[];

/** Angles in radians as seen from the sitter's eyes. */
export interface LampSetting {
  /** About the vertical, from the front, positive to the picture's left; pi is straight behind. */
  readonly azimuth: number;
  readonly elevation: number;
  /** 1 is the usual strength, 0 is off. */
  readonly strength: number;
  /** From the eyes to the source, metres. */
  readonly distance: number;
  /** Side or diameter of the source, metres. */
  readonly size: number;
}

/**
 * Key: the light that shapes the face. Fill: a large soft box that casts no shadow of its own. Hair: from
 * behind and above, on hair and shoulders. Background: on the backdrop; azimuth and elevation say where
 * its pool of light lies behind the head.
 */
export type Light = Readonly<Record<LampName, LampSetting>>;

/** Size of the source over its distance: 0.05 hard .. 1 soft. */
export const softnessOf = ({ size, distance }: Pick<LampSetting, 'size' | 'distance'>): number =>
  clamp(size / distance, LIMITS.lightSoftness);

/** Where a source is from the first person's eyes, metres: to the picture's right, up, towards the camera. */
export interface LampPlace {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function lampPlace({
  azimuth,
  elevation,
  distance,
}: Pick<LampSetting, 'azimuth' | 'elevation' | 'distance'>): LampPlace {
  const level = distance * Math.cos(elevation);
  return {
    x: -level * Math.sin(azimuth),
    y: distance * Math.sin(elevation),
    z: level * Math.cos(azimuth),
  };
}

const DEGREE = Math.PI / 180;

/** The usual places, by eye: fill and hair light on the side away from a key at the picture's left. */
export const USUAL_LIGHT: Light = {
  key: { azimuth: 38 * DEGREE, elevation: 34 * DEGREE, strength: 1, distance: 1.6, size: 0.48 },
  fill: { azimuth: -40 * DEGREE, elevation: 12 * DEGREE, strength: 1, distance: 1.7, size: 1.36 },
  hair: { azimuth: -148 * DEGREE, elevation: 36 * DEGREE, strength: 1, distance: 1.3, size: 0.26 },
  background: { azimuth: 0, elevation: -4 * DEGREE, strength: 1, distance: 1.4, size: 1.12 },
};
