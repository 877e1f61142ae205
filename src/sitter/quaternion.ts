import type { Vec3 } from '../optics/types';
import { cross, plus, scaled, unit } from '../optics/vector';

/** A unit quaternion: a rotation. */
export type Quaternion = readonly [x: number, y: number, z: number, w: number];

export const NO_TURN: Quaternion = [0, 0, 0, 1];

/** Turn about a coordinate axis, radians. */
export const about = (axis: 0 | 1 | 2, angle: number): Quaternion => {
  const s = Math.sin(angle / 2);
  return [axis === 0 ? s : 0, axis === 1 ? s : 0, axis === 2 ? s : 0, Math.cos(angle / 2)];
};

export const times = (a: Quaternion, b: Quaternion): Quaternion => [
  a[3] * b[0] + a[0] * b[3] + a[1] * b[2] - a[2] * b[1],
  a[3] * b[1] - a[0] * b[2] + a[1] * b[3] + a[2] * b[0],
  a[3] * b[2] + a[0] * b[1] - a[1] * b[0] + a[2] * b[3],
  a[3] * b[3] - a[0] * b[0] - a[1] * b[1] - a[2] * b[2],
];

export const inverse = ([x, y, z, w]: Quaternion): Quaternion => [-x, -y, -z, w];

export function rotate(q: Quaternion, v: Vec3): Vec3 {
  const axis: Vec3 = [q[0], q[1], q[2]];
  const t = scaled(cross(axis, v), 2);
  return plus(plus(v, scaled(t, q[3])), cross(axis, t));
}

/** The rotation by a share of the whole angle. */
export function part(q: Quaternion, share: number): Quaternion {
  const half = Math.acos(Math.min(1, Math.max(-1, q[3])));
  if (half < 1e-9) return NO_TURN;
  const k = Math.sin(half * share) / Math.sin(half);
  return [q[0] * k, q[1] * k, q[2] * k, Math.cos(half * share)];
}

/** The part of a rotation that turns about a unit vector (swing-twist decomposition). */
export function twist(q: Quaternion, axis: Vec3): Quaternion {
  const along = q[0] * axis[0] + q[1] * axis[1] + q[2] * axis[2];
  const l = Math.hypot(along, q[3]);
  if (l < 1e-9) return NO_TURN;
  const s = (q[3] < 0 ? -1 : 1) / l;
  return [axis[0] * along * s, axis[1] * along * s, axis[2] * along * s, q[3] * s];
}

/** The rotation that takes one direction into another, with its `beside` as near as can be. */
export function aligning(
  from: { readonly along: Vec3; readonly beside: Vec3 },
  to: { readonly along: Vec3; readonly beside: Vec3 },
): Quaternion {
  const axes = ({ along, beside }: typeof from): readonly [Vec3, Vec3, Vec3] => {
    const x = unit(along);
    const z = unit(cross(x, beside));
    return [x, cross(z, x), z];
  };
  const a = axes(from);
  const b = axes(to);
  // R = sum of b_k a_k^T; its quaternion by the largest component (Shepperd 1978).
  const m = (r: 0 | 1 | 2, c: 0 | 1 | 2): number =>
    b[0][r] * a[0][c] + b[1][r] * a[1][c] + b[2][r] * a[2][c];
  const [xx, yy, zz] = [m(0, 0), m(1, 1), m(2, 2)];
  const squares = [1 + xx - yy - zz, 1 - xx + yy - zz, 1 - xx - yy + zz, 1 + xx + yy + zz];
  const [xy, xz, yz] = [m(1, 0) + m(0, 1), m(2, 0) + m(0, 2), m(2, 1) + m(1, 2)];
  const [wx, wy, wz] = [m(2, 1) - m(1, 2), m(0, 2) - m(2, 0), m(1, 0) - m(0, 1)];
  const rows: readonly Quaternion[] = [
    [squares[0] as number, xy, xz, wx],
    [xy, squares[1] as number, yz, wy],
    [xz, yz, squares[2] as number, wz],
    [wx, wy, wz, squares[3] as number],
  ];
  const best = rows[squares.indexOf(Math.max(...squares))] as Quaternion;
  const l = Math.hypot(...best) * (best[3] < 0 ? -1 : 1);
  return [best[0] / l, best[1] / l, best[2] / l, best[3] / l];
}
