/** The studio's lamps: where they stand, how large and how strong they are. Metres, the sitter's frame. */
import type { Vec3 } from '../optics/types';
import type { Light, Room } from '../session/types';

export interface Lamp {
  readonly position: Vec3;
  readonly target: Vec3;
  /** Diameter of the source; its shadows soften with it. */
  readonly diameter: number;
  /** Irradiance square to the beam over pi, at the eyes (the backdrop light: on the wall): 1 shows a white card as white. */
  readonly strength: number;
  /** Half angle of the beam, radians. */
  readonly beam: number;
}

const KEY_DISTANCE = 2.2;
const KEY_AIM: Vec3 = [0, -0.42, 0];

/** Unit vector from the eyes to a source; azimuth positive to the picture's left (the sitter's right). */
export function lightDirection(light: Pick<Light, 'azimuth' | 'elevation'>): Vec3 {
  const level = Math.cos(light.elevation);
  return [
    -Math.sin(light.azimuth) * level,
    Math.sin(light.elevation),
    Math.cos(light.azimuth) * level,
  ];
}

/** The key: a round soft box whose size follows the wanted softness (diameter over distance). */
export function keyLamp(light: Light): Lamp {
  const [x, y, z] = lightDirection(light);
  return {
    position: [x * KEY_DISTANCE, y * KEY_DISTANCE, z * KEY_DISTANCE],
    target: KEY_AIM,
    diameter: light.softness * KEY_DISTANCE,
    strength: 1.08,
    beam: 0.66,
  };
}

/** The hair light: behind and above, on the side away from the key, kept inside the room. */
export function rimLamp(light: Light, room: Room): Lamp {
  const side = light.azimuth >= 0 ? 1 : -1;
  return {
    position: [side * 0.95, 1.15, -Math.max(0.6, Math.min(1.5, room.backdrop - 0.25))],
    target: [0, -0.05, -0.05],
    diameter: 0.3,
    strength: 0.85,
    beam: 0.5,
  };
}

/**
 * The light on the backdrop: above and behind the sitter, turned to the wall, so that none of it falls on
 * the sitter. It comes nearer to the wall, and is turned down, as the wall comes nearer to the sitter.
 */
export function backdropLamp(room: Room): Lamp {
  const wall = -room.backdrop;
  const reach = Math.max(0.3, Math.min(1.7, room.backdrop - 0.45));
  return {
    position: [-0.2 * reach, 1.3, wall + reach],
    target: [0.06 * reach, 1.3 - 0.85 * reach, wall],
    diameter: 0.3,
    strength: 0.3 * reach,
    beam: 0.8,
  };
}

/** Luminous intensity for the renderer's inverse-square law: full strength at the given distance. */
export const intensityAt = (strength: number, distance: number): number =>
  Math.PI * strength * distance ** 2;

/** Straight distance of a lamp from the eyes. */
export const throwOf = (lamp: Lamp): number => Math.hypot(...lamp.position);

/** Straight distance from a lamp to what it is aimed at. */
export const aimedThrow = ({ position, target }: Lamp): number =>
  Math.hypot(target[0] - position[0], target[1] - position[1], target[2] - position[2]);
