import type { Vec3 } from '../optics/types';
import { neckAxis, step } from './neck';
import type { LandmarkName } from './types';

/**
 * The neck as the tape sees it, upright, metres: a tube whose axis runs from between suprasternale
 * and cervicale to between the angles of the jaw, so that the section square to it rises towards
 * the nape by about 20 degrees.
 */
export interface Tube {
  readonly root: Vec3;
  readonly direction: Vec3;
  /** From the root to the menton's level along the axis. */
  readonly length: number;
  /** From the root to the lower of menton and gonion, and to the lobe of the ear, over the length. */
  readonly jaw: number;
  readonly lobe: number;
  /** Depth of the angle of the jaw. */
  readonly jawAngle: number;
  /** Height over the plane through suprasternale and cervicale, over the menton's. */
  readonly overBase: (x: number, y: number, z: number) => number;
}

export function neckTube(at: (name: LandmarkName) => Vec3): Tube {
  const [front, back] = [at('suprasternale'), at('cervicale')];
  const [jaw, menton] = [at('gonion_left'), at('menton')];
  const root: Vec3 = [0, (front[1] + back[1]) / 2, (front[2] + back[2]) / 2];
  const [dy, dz] = [jaw[1] - root[1], jaw[2] - root[2]];
  const l = Math.hypot(dy, dz);
  const tube = { root, direction: [0, dy / l, dz / l] as Vec3 };
  const length = along(tube, menton[1], menton[2]);
  const base = neckAxis(at);
  return {
    ...tube,
    length,
    jaw: Math.min(length, l) / length,
    lobe: along(tube, at('subaurale_left')[1], at('subaurale_left')[2]) / length,
    jawAngle: jaw[2],
    overBase: (x, y, z) => base.along(x, y, z) / base.length,
  };
}

const along = ({ root, direction }: Pick<Tube, 'root' | 'direction'>, y: number, z: number) =>
  (y - root[1]) * direction[1] + (z - root[2]) * direction[2];

/** Depth square to the axis. */
const forward = ({ root, direction }: Tube, y: number, z: number): number =>
  (z - root[2]) * direction[1] - (y - root[1]) * direction[2];

/** Share of the way from the root to the menton's level where the girth is taken. */
const LARYNX = 0.46;
/** No neck reaches farther from its axis, metres. */
const WIDEST = 0.1;

/** Where the skin crosses the plane of the larynx: across and forward, metres. */
function section(tube: Tube, P: Float32Array, indices: Uint32Array): [number, number][] {
  const level = LARYNX * tube.length;
  const points: [number, number][] = [];
  const height = (v: number): number =>
    along(tube, P[3 * v + 1] as number, P[3 * v + 2] as number) - level;
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const a = indices[t + k] as number;
      const b = indices[t + ((k + 1) % 3)] as number;
      const ha = height(a);
      const hb = height(b);
      if (ha < 0 === hb < 0) continue;
      const s = ha / (ha - hb);
      const mix = (j: number): number =>
        (P[3 * a + j] as number) * (1 - s) + (P[3 * b + j] as number) * s;
      const [x, depth] = [mix(0), forward(tube, mix(1), mix(2))];
      if (Math.hypot(x, depth) < WIDEST) points.push([x, depth]);
    }
  return points;
}

/** Convex-hull girth of the neck at the larynx, square to its axis, metres. */
export const neckGirth = (tube: Tube, positions: Float32Array, indices: Uint32Array): number =>
  hullLength(section(tube, positions, indices));

/** Depth of the neck's middle before the axis at the larynx, metres. */
export function neckMiddle(tube: Tube, positions: Float32Array, indices: Uint32Array): number {
  const depths = section(tube, positions, indices).map(([, depth]) => depth);
  return (Math.min(...depths) + Math.max(...depths)) / 2;
}

/** Perimeter of the convex hull (Andrew's monotone chain). */
export function hullLength(points: readonly (readonly [number, number])[]): number {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (list: readonly (readonly [number, number])[]) => {
    const out: (readonly [number, number])[] = [];
    for (const p of list) {
      for (;;) {
        const [q, r] = [out[out.length - 1], out[out.length - 2]];
        if (!q || !r) break;
        if ((q[0] - r[0]) * (p[1] - r[1]) - (q[1] - r[1]) * (p[0] - r[0]) > 0) break;
        out.pop();
      }
      out.push(p);
    }
    return out;
  };
  const hull = [...chain(sorted).slice(0, -1), ...chain(sorted.reverse()).slice(0, -1)];
  return hull.reduce((sum, p, i) => {
    const q = hull[(i + 1) % hull.length] as readonly [number, number];
    return sum + Math.hypot(p[0] - q[0], p[1] - q[1]);
  }, 0);
}

/** Behind the angle of the jaw the neck goes on upwards, all of it so far behind, metres. */
const BEHIND_JAW = [0.003, 0.035] as const;

/** Beside the midline it goes on downwards to the shoulders: from where to where (metres), how far
 * (over the menton's height). */
const ASIDE = [0.012, 0.045] as const;
const DOWN = 0.5;

/** The throat takes this much less of it than the sides and the nape. */
const THROAT = 0.5;

/**
 * How much of a girth change each point takes: all of it round the larynx, none at the neck's ends
 * (the jaw in front, below the ears behind, so that the landmarks there stay) nor on the shoulders.
 */
export function girthShares(tube: Tube, middle: number, P: Float32Array): Float32Array {
  return Float32Array.from({ length: P.length / 3 }, (_, v) => {
    const [x, y, z] = [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number];
    const t = along(tube, y, z) / tube.length;
    const back = step(tube.jawAngle - BEHIND_JAW[0], tube.jawAngle - BEHIND_JAW[1], z);
    const end = tube.jaw + back * Math.max(0, 0.95 * tube.lobe - tube.jaw);
    if (t >= end) return 0;
    const side = step(ASIDE[0], ASIDE[1], Math.abs(x));
    const share = step(0.01 - DOWN * side, 0.34, tube.overBase(x, y, z)) * step(end, 0.36, t);
    if (share === 0) return 0;
    const depth = forward(tube, y, z) - middle;
    return share * step(0.125, 0.08, Math.hypot(x, depth)) * (1 - THROAT * step(0, 0.045, depth));
  });
}

/** Moves points away from the neck's middle line by `widen` of their distance, times their share. */
export function widenNeck(
  tube: Tube,
  middle: number,
  P: Float32Array,
  shares: Float32Array,
  widen: number,
): void {
  const [, uy, uz] = tube.direction;
  shares.forEach((s, v) => {
    if (s === 0) return;
    const o = 3 * v;
    const by = s * widen;
    const out = forward(tube, P[o + 1] as number, P[o + 2] as number) - middle;
    P[o] = (P[o] as number) * (1 + by);
    P[o + 1] = (P[o + 1] as number) - uz * out * by;
    P[o + 2] = (P[o + 2] as number) + uy * out * by;
  });
}
