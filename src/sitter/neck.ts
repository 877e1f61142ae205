import type { Vec3 } from '../optics/types';
import type { LandmarkName } from './types';

/**
 * The neck's own axis, in the upright sitter: from the plane through suprasternale and cervicale
 * up to the jaw. `along` measures from that plane, `across` from the axis; metres.
 */
export interface NeckAxis {
  along(x: number, y: number, z: number): number;
  across(x: number, y: number, z: number): number;
  /** Depth of the axis at a height of the point along it. */
  readonly root: Vec3;
  readonly direction: Vec3;
  /** From the root plane to the menton's level along the axis. */
  readonly length: number;
  /** From the root plane to the lower of menton and gonion. */
  readonly jaw: number;
}

type At = (name: LandmarkName) => Vec3;

export function neckAxis(at: At): NeckAxis {
  const front = at('suprasternale');
  const back = at('cervicale');
  const [dy, dz] = [back[1] - front[1], back[2] - front[2]];
  const l = Math.hypot(dy, dz);
  const direction: Vec3 = [0, -dz / l, dy / l];
  const root: Vec3 = [0, (front[1] + back[1]) / 2, (front[2] + back[2]) / 2];
  const along = (_x: number, y: number, z: number): number =>
    (y - root[1]) * direction[1] + (z - root[2]) * direction[2];
  return {
    root,
    direction,
    along,
    across: (x, y, z) => {
      const t = along(x, y, z);
      return Math.hypot(x, y - root[1] - t * direction[1], z - root[2] - t * direction[2]);
    },
    length: along(...at('menton')),
    jaw: Math.min(along(...at('menton')), along(...at('gonion_left'))),
  };
}

/** Share of the way from the root plane to the menton's level where the girth is taken. */
const LARYNX = 0.46;

/** Convex-hull girth of the section square to the neck at the larynx, metres. */
export function neckGirth(axis: NeckAxis, positions: Float32Array, indices: Uint32Array): number {
  const level = LARYNX * axis.length;
  const [, uy, uz] = axis.direction;
  const points: [number, number][] = [];
  const height = (v: number): number =>
    axis.along(0, positions[3 * v + 1] as number, positions[3 * v + 2] as number) - level;
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const a = indices[t + k] as number;
      const b = indices[t + ((k + 1) % 3)] as number;
      const ha = height(a);
      const hb = height(b);
      if (ha < 0 === hb < 0) continue;
      const s = ha / (ha - hb);
      const mix = (j: number): number =>
        (positions[3 * a + j] as number) * (1 - s) + (positions[3 * b + j] as number) * s;
      const [x, y, z] = [mix(0), mix(1), mix(2)];
      if (axis.across(x, y, z) > 0.1) continue;
      points.push([x, (z - axis.root[2]) * uy - (y - axis.root[1]) * uz]);
    }
  return hullLength(points);
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

const step = (a: number, b: number, x: number): number => {
  const t = Math.min(1, Math.max(0, (x - a) / (b - a)));
  return t * t * (3 - 2 * t);
};

/**
 * How much of a girth change a point takes: all of it round the larynx, none at the neck's ends
 * (so that jaw, nape and breastbone stay where their landmarks are).
 */
function girthShare(axis: NeckAxis, x: number, y: number, z: number): number {
  const t = axis.along(x, y, z) / axis.length;
  const end = axis.jaw / axis.length;
  if (t <= 0.02 || t >= end) return 0;
  const share = step(0.02, 0.4, t) * step(end, 0.5, t);
  return share === 0 ? 0 : share * step(0.088, 0.068, axis.across(x, y, z));
}

export function girthShares(axis: NeckAxis, P: Float32Array): Float32Array {
  return Float32Array.from({ length: P.length / 3 }, (_, v) =>
    girthShare(axis, P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number),
  );
}

/** Moves points away from the neck's axis by `widen` of their distance, times their share. */
export function widenNeck(
  axis: NeckAxis,
  P: Float32Array,
  shares: Float32Array,
  widen: number,
): void {
  shares.forEach((s, v) => {
    if (s === 0) return;
    const o = 3 * v;
    const t = axis.along(0, P[o + 1] as number, P[o + 2] as number);
    P[o] = (P[o] as number) * (1 + s * widen);
    for (const j of [1, 2] as const) {
      const centre = axis.root[j] + t * axis.direction[j];
      P[o + j] = centre + ((P[o + j] as number) - centre) * (1 + s * widen);
    }
  });
}

/** Share of the head's pose that a point follows: none on the trunk, all above the jaw. */
export function headShare(axis: NeckAxis, x: number, y: number, z: number): number {
  return step(0.05, 0.98, axis.along(x, y, z) / axis.length);
}
