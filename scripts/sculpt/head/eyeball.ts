import { clamp, step } from '../field';
import type { TriangleMesh } from '../mesh';
import type { LidOpening } from './eyes';
import { CORNEA_RISE, GLOBE_DEPTH, GLOBE_RADIUS, IRIS_RADIUS } from './shape';

/** An eyeball about its own pupil: the pupil's middle is the mesh's foremost point, at the origin. */
export interface Eyeball extends TriangleMesh {
  /** 0..1 a vertex: inside the limbus; the pupil, of which the stage draws its own. */
  readonly iris: Float32Array;
  readonly pupil: Float32Array;
  /** Pinkness of the white towards the corners, 0..1. */
  readonly blush: Float32Array;
  /** Share of light that the lids leave, 0..1. */
  readonly openness: Float32Array;
}

const PUPIL_RADIUS = 1.9;
const STEPS_ROUND = 56;
/** Distances from the axis where rings stand, mm on the sphere's profile: close at the limbus. */
const RINGS = [0.8, 1.9, 3, 4.1, 5, 5.5, 5.85, 6.2, 6.6, 7.3, 8.2, 9.2, 10.2, 11, 11.6] as const;

/**
 * The lids' shade on the ball, by eye: wide under the upper lid, which stands out and holds the lashes,
 * narrow over the lower one, deep into both corners. `x` outwards, mm.
 */
function openTo(opening: LidOpening, x: number, y: number): number {
  const dx = clamp(x, opening.inner, opening.outer);
  const under = Math.max(0, opening.upper(dx) - y);
  const over = Math.max(0, y - opening.lower(dx));
  const corner = Math.max(0, Math.min(x - opening.inner, opening.outer - x));
  const shade =
    (1 - 0.78 * Math.exp(-under / 2)) *
    (1 - 0.5 * Math.exp(-over / 1)) *
    (1 - 0.6 * Math.exp(-corner / 3.2));
  return clamp(shade, 0.05, 1);
}

/**
 * Builds the visible front of an eyeball, mm, +Z out of the face. The white is stretched sideways so
 * that it fills both lid corners; the cornea rises `CORNEA_RISE` over the globe. +X points outwards.
 */
export function eyeball(opening: LidOpening): Eyeball {
  const rows = RINGS.length;
  const count = 1 + rows * STEPS_ROUND;
  const positions = new Float32Array(count * 3);
  const normals = new Float32Array(count * 3);
  const fields = ['iris', 'pupil', 'blush', 'openness'] as const;
  const masks = Object.fromEntries(fields.map((k) => [k, new Float32Array(count)])) as Record<
    (typeof fields)[number],
    Float32Array
  >;
  const depth = (r: number): number => {
    const sphere = Math.sqrt(Math.max(0, GLOBE_RADIUS ** 2 - r * r)) - GLOBE_DEPTH;
    const cap = Math.max(0, 1 - (r / (IRIS_RADIUS + 0.8)) ** 2);
    return sphere + CORNEA_RISE * cap ** 1.25;
  };
  const put = (v: number, r: number, angle: number): void => {
    const x0 = r * Math.cos(angle);
    const wide = Math.abs(x0);
    const stretch = wide > 6 ? 6 + (wide - 6) * 1.62 : wide;
    positions[3 * v] = Math.sign(x0) * stretch;
    positions[3 * v + 1] = r * Math.sin(angle);
    positions[3 * v + 2] = depth(r);
    const slope = (depth(r + 0.02) - depth(Math.max(0, r - 0.02))) / (r > 0.02 ? 0.04 : 0.02 + r);
    const n = Math.hypot(slope, 1);
    normals[3 * v] = ((-slope / n) * Math.cos(angle)) / (wide > 6 ? 1.3 : 1);
    normals[3 * v + 1] = (-slope / n) * Math.sin(angle);
    normals[3 * v + 2] = 1 / n;
    masks.iris[v] = step(IRIS_RADIUS + 0.2, IRIS_RADIUS - 0.2, r);
    masks.pupil[v] = step(PUPIL_RADIUS + 0.12, PUPIL_RADIUS - 0.12, r);
    masks.blush[v] = step(8, 13.5, stretch);
    masks.openness[v] = openTo(opening, Math.sign(x0) * stretch, r * Math.sin(angle));
  };
  put(0, 0, 0);
  RINGS.forEach((r, k) => {
    for (let s = 0; s < STEPS_ROUND; s++)
      put(1 + k * STEPS_ROUND + s, r, (2 * Math.PI * s) / STEPS_ROUND);
  });
  const indices: number[] = [];
  const at = (k: number, s: number): number => 1 + k * STEPS_ROUND + (s % STEPS_ROUND);
  for (let s = 0; s < STEPS_ROUND; s++) indices.push(0, at(0, s), at(0, s + 1));
  for (let k = 0; k + 1 < rows; k++)
    for (let s = 0; s < STEPS_ROUND; s++)
      indices.push(
        at(k, s),
        at(k + 1, s),
        at(k + 1, s + 1),
        at(k, s),
        at(k + 1, s + 1),
        at(k, s + 1),
      );
  return { positions, normals, indices: Uint32Array.from(indices), ...masks };
}
