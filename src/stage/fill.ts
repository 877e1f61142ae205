/**
 * The fill light: neutral soft boxes around the sitter and grey walls between them, as nine spherical
 * harmonics. It has no shadows of its own; the sitter's baked occlusion stands for them.
 *
 * Irradiance from radiance: Ramamoorthi and Hanrahan, "An efficient representation for irradiance
 * environment maps" (2001): bands weighted by pi, 2 pi / 3, pi / 4.
 */
import type { Vec3 } from '../optics/types';
import { cross, dot, scaled, unit } from '../optics/vector';
import { lightDirection } from './lamps';
import { type LampSetting, softnessOf } from './studio';

export interface SoftBox {
  readonly centre: Vec3;
  /** Half sides: level, and square to it. The box faces the sitter. */
  readonly half: readonly [number, number];
  /** Relative to a white card in full light. */
  readonly radiance: number;
}

export const WALL_RADIANCE = 0.12;
/** The floor and the ceiling in the surround, seen from the sitter. */
const FLOOR_RADIANCE = 0.06;

/** The fill's own box, and what the hall's light walls and ceiling give back. */
export const SOFT_BOXES = 3;

/** The boxes around the sitter when the fill is set so. */
export function fillSurround(fill: LampSetting): readonly SoftBox[] {
  const [x, y, z] = lightDirection(fill);
  const half = (softnessOf(fill) * fill.distance) / 2;
  return [
    {
      centre: [x * fill.distance, y * fill.distance, z * fill.distance],
      half: [half, half],
      radiance: 1.45 * fill.strength,
    },
    { centre: [-3.2, 1.6, 1.2], half: [0.8, 1.2], radiance: 0.5 },
    { centre: [0, 3.2, 0.6], half: [1.8, 1.6], radiance: 0.6 },
  ];
}

/** Level and upright unit vectors of a box that faces the sitter. */
export function boxAxes({ centre }: SoftBox): readonly [level: Vec3, upright: Vec3, facing: Vec3] {
  const facing = unit(scaled(centre, -1));
  const level = unit(cross(Math.abs(facing[1]) > 0.9 ? [0, 0, 1] : [0, 1, 0], facing));
  return [level, cross(facing, level), facing];
}

/** Radiance that reaches the sitter from a direction. */
export function fillRadiance(boxes: readonly SoftBox[], direction: Vec3): number {
  let radiance = WALL_RADIANCE + (FLOOR_RADIANCE - WALL_RADIANCE) * Math.max(0, -direction[1]);
  for (const box of boxes) {
    const [level, upright, facing] = boxAxes(box);
    const towards = dot(direction, facing);
    if (towards >= 0) continue;
    const hit = scaled(direction, dot(box.centre, facing) / towards);
    const off: Vec3 = [hit[0] - box.centre[0], hit[1] - box.centre[1], hit[2] - box.centre[2]];
    const inside =
      Math.abs(dot(off, level)) < box.half[0] && Math.abs(dot(off, upright)) < box.half[1];
    if (inside) radiance = box.radiance;
  }
  return radiance;
}

/** The nine real harmonics at a direction, in the order of band, then -m .. m. */
export function harmonics([x, y, z]: Vec3): readonly number[] {
  return [
    0.282095,
    0.488603 * y,
    0.488603 * z,
    0.488603 * x,
    1.092548 * x * y,
    1.092548 * y * z,
    0.315392 * (3 * z * z - 1),
    1.092548 * x * z,
    0.546274 * (x * x - y * y),
  ];
}

/** Coefficients of a radiance over the sphere, by even sampling of it. */
export function harmonicCoefficients(radiance: (direction: Vec3) => number): readonly number[] {
  const count = 8192;
  const sums = new Array<number>(9).fill(0);
  for (let i = 0; i < count; i++) {
    const y = 1 - (2 * i + 1) / count;
    const around = i * 2.399963229728653;
    const level = Math.sqrt(1 - y * y);
    const direction: Vec3 = [Math.cos(around) * level, y, Math.sin(around) * level];
    const value = (radiance(direction) * 4 * Math.PI) / count;
    harmonics(direction).forEach((harmonic, k) => {
      sums[k] = (sums[k] as number) + harmonic * value;
    });
  }
  return sums;
}

const BAND = [0, 1, 1, 1, 2, 2, 2, 2, 2] as const;
const COSINE_LOBE = [Math.PI, (2 * Math.PI) / 3, Math.PI / 4] as const;

/** Coefficients of the irradiance that a radiance causes. */
export const irradianceCoefficients = (coefficients: readonly number[]): readonly number[] =>
  coefficients.map((value, k) => value * COSINE_LOBE[BAND[k] as 0 | 1 | 2]);
