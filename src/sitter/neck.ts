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
  /** From the root up to the menton, vertically. */
  readonly height: number;
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
    height: at('menton')[1] - root[1],
  };
}

/** 0 at `a`, 1 at `b`, smooth between and flat beyond. */
export const step = (a: number, b: number, x: number): number => {
  const t = Math.min(1, Math.max(0, (x - a) / (b - a)));
  return t * t * (3 - 2 * t);
};

/** Share of the head's pose that a point follows: none on the trunk, all above the jaw. */
export function headShare(axis: NeckAxis, x: number, y: number, z: number): number {
  return step(0.05, 0.98, axis.along(x, y, z) / axis.length);
}

/** Heights between which hanging hair leaves the head's pose, over the neck's root and its height. */
const HANGS = [-0.45, 1.15] as const;

/**
 * Share of the head's pose that hair follows which hangs free of the skin: all at the jaw's level and
 * above, none where it lies on chest and back. It turns over more of its length than the neck does,
 * so that it is not wrung.
 */
export const hangingShare = (axis: NeckAxis, y: number): number =>
  step(HANGS[0], HANGS[1], (y - axis.root[1]) / axis.height);
