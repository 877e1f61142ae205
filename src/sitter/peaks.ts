import type { Vec3 } from '../optics/types';
import { step } from './neck';
import type { Sculpture } from './sculpture';
import { type LandmarkName, type Landmarks, REGION } from './types';

/**
 * Landmarks that are the extreme of the head along one axis. A warp takes the landmark to its
 * place but may leave a neighbour standing out farther: the surface round the landmark, which
 * itself does not move, is then lowered by a smooth ring.
 */
interface Peak {
  readonly landmark: LandmarkName;
  readonly axis: 0 | 1 | 2;
  readonly sign: 1 | -1;
  /** Within which the surface is levelled, metres. */
  readonly reach: number;
  readonly among: (region: number) => boolean;
  /** How much of the levelling a point takes, 0..1: the ears and what they stand on take none. */
  readonly clear?: (landmarks: Landmarks, y: number, z: number) => number;
}

const head = (region: number): boolean => region === REGION.face || region === REGION.scalp;
const face = (region: number): boolean => region === REGION.face;
type Paired = Pick<Peak, 'reach' | 'among' | 'clear'>;
const pair = (name: 'euryon' | 'zygion' | 'alare', rest: Paired): readonly Peak[] => [
  { landmark: `${name}_left`, axis: 0, sign: 1, ...rest },
  { landmark: `${name}_right`, axis: 0, sign: -1, ...rest },
];

/** Over the ears and before them, levelling grows from nothing to all between these, metres. */
const OVER_EARS = [0.0005, 0.006] as const;
const BEFORE_EARS = [0.004, 0.012] as const;

const overEars: Peak['clear'] = ({ superaurale_left: [, top] }, y) =>
  step(top + OVER_EARS[0], top + OVER_EARS[1], y);
const beforeEars: Peak['clear'] = ({ tragion_left: [, , front] }, _y, z) =>
  step(front + BEFORE_EARS[0], front + BEFORE_EARS[1], z);

/** Behind the widest point of the nose's wing the cheek begins; between these, metres. */
const BEFORE_CHEEK = [-0.002, 0] as const;
const beforeCheek: Peak['clear'] = ({ alare_left: [, , wing] }, _y, z) =>
  step(wing + BEFORE_CHEEK[0], wing + BEFORE_CHEEK[1], z);

const PEAKS: readonly Peak[] = [
  { landmark: 'vertex', axis: 1, sign: 1, reach: 0.1, among: head },
  { landmark: 'opisthocranion', axis: 2, sign: -1, reach: 0.1, among: head },
  ...pair('euryon', { reach: 0.055, among: head, clear: overEars }),
  ...pair('zygion', { reach: 0.036, among: face, clear: beforeEars }),
  ...pair('alare', { reach: 0.0125, among: face, clear: beforeCheek }),
  { landmark: 'pronasale', axis: 2, sign: 1, reach: 0.007, among: face },
];

/** How much of a levelling a point takes, by height and depth. */
type Share = (y: number, z: number) => number;

/** A ring is at least this wide, metres. */
const LEAST_RING = 0.004;

/** A neighbour may stand out by this much, metres. */
const TOLERANCE = 2e-5;

/** Levels the peaks of the head in every mesh that is not an eye; positions are upright, metres. */
export function levelPeaks(
  sculpture: Sculpture,
  landmarks: Landmarks,
  positions: readonly Float32Array[],
): void {
  for (const peak of PEAKS) {
    const top = landmarks[peak.landmark];
    const [m] = sculpture.landmarks[peak.landmark];
    const regions = sculpture.meshes[m]?.regions as Uint8Array;
    const share: Share = (y, z) => peak.clear?.(landmarks, y, z) ?? 1;
    for (let round = 0; round < 8; round++) {
      const high = highest(peak, top, positions[m] as Float32Array, regions, share);
      const excess = peak.sign * (high[peak.axis] - top[peak.axis]);
      if (excess < TOLERANCE) break;
      const distance = Math.hypot(high[0] - top[0], high[1] - top[1], high[2] - top[2]);
      positions.forEach((P, mesh) => {
        if (sculpture.meshes[mesh]?.substance !== 'eye')
          lower(P, top, peak, Math.max(distance, LEAST_RING), excess, share);
      });
    }
  }
}

function highest(peak: Peak, top: Vec3, P: Float32Array, regions: Uint8Array, share: Share): Vec3 {
  let best: Vec3 = top;
  for (let v = 0; v < regions.length; v++) {
    const o = 3 * v;
    const c = P[o + peak.axis] as number;
    if (peak.sign * (c - best[peak.axis]) <= 0 || !peak.among(regions[v] as number)) continue;
    const p: Vec3 = [P[o] as number, P[o + 1] as number, P[o + 2] as number];
    if (
      Math.hypot(p[0] - top[0], p[1] - top[1], p[2] - top[2]) < 0.7 * peak.reach &&
      share(p[1], p[2]) === 1
    )
      best = p;
  }
  return best;
}

/**
 * Lowers a ring round a point by `excess`, nothing at the point itself or beyond the reach; each
 * point by its share.
 */
function lower(
  P: Float32Array,
  top: Vec3,
  peak: Peak,
  ring: number,
  excess: number,
  share: Share,
): void {
  const { reach, axis, sign } = peak;
  const shape = (r2: number): number => {
    const fade = 1 - r2 / (reach * reach);
    return (r2 / ring ** 2) * Math.exp(1 - r2 / ring ** 2) * fade * fade;
  };
  const most = excess / shape(ring * ring);
  for (let o = 0; o < P.length; o += 3) {
    const x = (P[o] as number) - top[0];
    const y = (P[o + 1] as number) - top[1];
    const z = (P[o + 2] as number) - top[2];
    const r2 = x * x + y * y + z * z;
    if (r2 >= reach * reach) continue;
    const by = most * shape(r2) * share(P[o + 1] as number, P[o + 2] as number);
    P[o + axis] = (P[o + axis] as number) - sign * by;
  }
}
