/** The studio's four lights as they are set. */
import type { Light } from '../session/types';

/** Angles in radians as seen from the sitter's eyes. */
export interface LampSetting {
  /** About the vertical, from the front, positive to the picture's left; pi is straight behind. */
  readonly azimuth: number;
  readonly elevation: number;
  /** 1 is the usual strength, 0 is off. */
  readonly strength: number;
  /** Diameter of the source over its distance: 0.05 hard .. 1 soft. */
  readonly softness: number;
}

export interface StudioLight {
  readonly key: LampSetting;
  /** A large soft box that casts no shadow of its own. */
  readonly fill: LampSetting;
  /** From behind and above, on hair and shoulders. */
  readonly hair: LampSetting;
  /** On the backdrop: azimuth and elevation say where its pool of light lies behind the head. */
  readonly background: LampSetting;
}

const DEGREE = Math.PI / 180;

/** The usual places, by eye: fill and hair light on the side away from a key at the picture's left. */
export const USUAL_LIGHT: StudioLight = {
  key: { azimuth: 38 * DEGREE, elevation: 34 * DEGREE, strength: 1, softness: 0.3 },
  fill: { azimuth: -40 * DEGREE, elevation: 12 * DEGREE, strength: 1, softness: 0.8 },
  hair: { azimuth: -148 * DEGREE, elevation: 36 * DEGREE, strength: 1, softness: 0.2 },
  background: { azimuth: 0, elevation: -4 * DEGREE, strength: 1, softness: 0.8 },
};

/** All four lights of a session's light: one that names the key alone has the others in their usual places. */
export function studioLight(light: Light | StudioLight): StudioLight {
  if ('key' in light) return light;
  const side = light.azimuth >= 0 ? 1 : -1;
  const across = (lamp: LampSetting): LampSetting => ({ ...lamp, azimuth: side * lamp.azimuth });
  return {
    key: { ...light, strength: 1 },
    fill: across(USUAL_LIGHT.fill),
    hair: across(USUAL_LIGHT.hair),
    background: USUAL_LIGHT.background,
  };
}
