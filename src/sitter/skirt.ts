/**
 * A skirt on a seated figure. As sculpted it falls straight from the belly; once the thighs are level it
 * lies on them, and sags a little between them. Its front is drawn back to the thighs before the pose bends it.
 */
import { step } from './neck';
import type { SculptureMesh } from './sculpture';
import type { Skeleton } from './skeleton';

/** Air and cloth that stay between thigh and skirt, metres. Sculptor's choice, as all below. */
const STAYS = 0.011;
/** How much higher hands lie on a skirt than on trousers, metres. */
export const SKIRT_OVER_TROUSERS = 0.02;
/** Middle part of the thigh where the gap is measured, shares of its length from the hip. */
const MEASURED = [0.35, 0.65] as const;
const ASIDE = 0.035;
/** It is drawn back wholly from this share of the thigh on, not at all over the other. */
const ALONG = [0.18, 0.5] as const;
/** How far it sags between the thighs, and over which way, shares of the hip joint's from the midline. */
const SAG = 0.42;
const BETWEEN = 0.7;
/** At most this share of the depth over which the draw grows, so that the cloth keeps its order. */
const MOST = 0.55;

export interface Skirt {
  readonly mesh: number;
  /** How far the front is drawn back over the thighs, metres. */
  readonly by: number;
}

/** Height and breadth of the left thigh and how far before its joint the cloth is, upright, metres. */
interface Thigh {
  readonly hip: readonly [number, number, number];
  readonly length: number;
}

const thighOf = (rest: Skeleton): Thigh => ({
  hip: rest.thigh_left,
  length: rest.thigh_left[1] - rest.shin_left[1],
});

/** The foremost cloth over the middle of the thigh, or null where a mesh does not reach it. */
function front(positions: Float32Array, { hip, length }: Thigh): number | null {
  let most: number | null = null;
  for (let o = 0; o < positions.length; o += 3) {
    const down = (hip[1] - (positions[o + 1] as number)) / length;
    if (down < MEASURED[0] || down > MEASURED[1]) continue;
    if (Math.abs((positions[o] as number) - hip[0]) > ASIDE) continue;
    const z = positions[o + 2] as number;
    if (most === null || z > most) most = z;
  }
  return most;
}

/** The skirt that hangs before the thighs of an upright figure, or null. */
export function skirtOf(
  meshes: readonly Pick<SculptureMesh, 'substance'>[],
  upright: readonly Float32Array[],
  rest: Skeleton,
): Skirt | null {
  const thigh = thighOf(rest);
  const mesh = meshes.findIndex(({ substance }) => substance === 'top');
  const under = meshes.findIndex(({ substance }) => substance === 'trousers');
  if (mesh < 0 || under < 0) return null;
  const outer = front(upright[mesh] as Float32Array, thigh);
  const inner = front(upright[under] as Float32Array, thigh);
  if (outer === null || inner === null) return null;
  const by = Math.min(outer - inner - STAYS, MOST * (outer - thigh.hip[2]) - SAG * thigh.hip[0]);
  return by > 0 ? { mesh, by } : null;
}

/** Lays the skirt's front on the thighs, in place; upright, before the pose. */
export function layOnThighs(
  { by }: Skirt,
  rest: Skeleton,
  positions: Float32Array,
  normals: Float32Array,
): void {
  const { hip, length } = thighOf(rest);
  const sag = SAG * hip[0];
  const width = (by + sag) / MOST;
  const drawn = (x: number, y: number, z: number): number => {
    const along = step(ALONG[0], ALONG[1], (hip[1] - y) / length);
    const between = Math.exp(-((x / (BETWEEN * hip[0])) ** 2));
    return along * (by + sag * between) * step(hip[2], hip[2] + width, z);
  };
  const h = 1e-4;
  for (let o = 0; o < positions.length; o += 3) {
    const [x, y, z] = [positions[o], positions[o + 1], positions[o + 2]] as [
      number,
      number,
      number,
    ];
    if (y > hip[1] || z < hip[2]) continue;
    positions[o + 2] = z - drawn(x, y, z);
    // Normals go by the inverse transpose of the gradient.
    const slope = (dx: number, dy: number, dz: number): number =>
      (drawn(x + dx, y + dy, z + dz) - drawn(x - dx, y - dy, z - dz)) / (2 * h);
    const out = (normals[o + 2] as number) / (1 - slope(0, 0, h));
    const n = [
      (normals[o] as number) + out * slope(h, 0, 0),
      (normals[o + 1] as number) + out * slope(0, h, 0),
      out,
    ];
    const size = Math.hypot(...n);
    n.forEach((c, j) => {
      normals[o + j] = c / size;
    });
  }
}
