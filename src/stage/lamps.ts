/** The studio's lamps: where they stand, how large and how strong they are. Metres, the sitter's frame. */
import type { Vec3 } from '../optics/types';
import type { RoomRun } from '../session/kit';
import { type LampSetting, type StudioLight, softnessOf } from './studio';

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

const KEY_AIM: Vec3 = [0, -0.42, 0];
const HAIR_AIM: Vec3 = [0, -0.05, -0.05];
/** A lamp behind the sitter keeps this far from the wall. */
const WALL_GAP = 0.25;
/** The backdrop light's source. */
export const BACKDROP_SOURCE = 0.3;

/** Unit vector from the eyes to a source; azimuth positive to the picture's left (the sitter's right). */
export function lightDirection(light: Pick<LampSetting, 'azimuth' | 'elevation'>): Vec3 {
  const level = Math.cos(light.elevation);
  return [
    -Math.sin(light.azimuth) * level,
    Math.sin(light.elevation),
    Math.cos(light.azimuth) * level,
  ];
}

/** The key: a round soft box. */
export function keyLamp({ key }: Pick<StudioLight, 'key'>): Lamp {
  const [x, y, z] = lightDirection(key);
  return {
    position: [x * key.distance, y * key.distance, z * key.distance],
    target: KEY_AIM,
    diameter: softnessOf(key) * key.distance,
    strength: 0.94 * key.strength,
    beam: 0.66,
  };
}

/** The hair light, nearer than it is set where the wall asks for it; it stays as soft as it was. */
export function hairLamp({ hair }: Pick<StudioLight, 'hair'>, room: RoomRun): Lamp {
  const [x, y, z] = lightDirection(hair);
  const behind = room.backdrop - WALL_GAP;
  const distance = z < 0 ? Math.min(hair.distance, behind / -z) : hair.distance;
  return {
    position: [x * distance, y * distance, z * distance],
    target: HAIR_AIM,
    diameter: softnessOf(hair) * distance,
    strength: 0.8 * hair.strength,
    beam: 0.5,
  };
}

/**
 * The light on the backdrop: above and behind the sitter, turned to the wall, so that none of it falls on
 * the sitter. It comes nearer to the wall, and is turned down, as the wall comes nearer to the sitter.
 */
export function backdropLamp({ background }: Pick<StudioLight, 'background'>, room: RoomRun): Lamp {
  const wall = -room.backdrop;
  const reach = Math.max(0.3, Math.min(1.7, room.backdrop - 0.45));
  const [across, up] = [Math.tan(background.azimuth), Math.tan(background.elevation)];
  const within = (value: number, most: number) => Math.max(-most, Math.min(most, value));
  const x = within(-across * room.backdrop, 1.5 * reach);
  const y = within(up * room.backdrop, 0.5 * reach);
  return {
    position: [x - 0.2 * reach, 1.3 + y, wall + reach],
    target: [x + 0.06 * reach, 1.3 - 0.85 * reach + y, wall],
    diameter: BACKDROP_SOURCE,
    strength: 0.3 * reach * background.strength,
    beam: 0.4 + 0.5 * softnessOf(background),
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
