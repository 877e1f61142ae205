import type { Vec3 } from '../optics/types';
import { headShare, neckAxis } from './neck';
import type { Landmarks, Pose } from './types';

type Quaternion = readonly [x: number, y: number, z: number, w: number];

/** Where on the neck's axis the head turns, as a share of the way from its root to the jaw. */
const PIVOT = 0.5;

const about = (axis: 0 | 1 | 2, angle: number): Quaternion => {
  const s = Math.sin(angle / 2);
  return [axis === 0 ? s : 0, axis === 1 ? s : 0, axis === 2 ? s : 0, Math.cos(angle / 2)];
};

const times = (a: Quaternion, b: Quaternion): Quaternion => [
  a[3] * b[0] + a[0] * b[3] + a[1] * b[2] - a[2] * b[1],
  a[3] * b[1] - a[0] * b[2] + a[1] * b[3] + a[2] * b[0],
  a[3] * b[2] + a[0] * b[1] - a[1] * b[0] + a[2] * b[3],
  a[3] * b[3] - a[0] * b[0] - a[1] * b[1] - a[2] * b[2],
];

/** Row-major rotation matrix. */
function matrix([x, y, z, w]: Quaternion): Float64Array {
  return Float64Array.of(
    1 - 2 * (y * y + z * z),
    2 * (x * y - z * w),
    2 * (x * z + y * w),
    2 * (x * y + z * w),
    1 - 2 * (x * x + z * z),
    2 * (y * z - x * w),
    2 * (x * z - y * w),
    2 * (y * z + x * w),
    1 - 2 * (x * x + y * y),
  );
}

/** The rotation by a share of the whole angle. */
function part(q: Quaternion, share: number): Quaternion {
  const half = Math.acos(Math.min(1, Math.max(-1, q[3])));
  if (half < 1e-9) return [0, 0, 0, 1];
  const k = Math.sin(half * share) / Math.sin(half);
  return [q[0] * k, q[1] * k, q[2] * k, Math.cos(half * share)];
}

/**
 * A pose as one map of space: the head turns about a point of the neck, the neck takes a share
 * that fades down to the trunk, the whole figure turns about the vertical, and all is set so that
 * the midpoint between the pupils is back at the origin. Landmarks and vertices go through the
 * same map, so a landmark stays on its vertex.
 */
export interface Posing {
  point(p: Vec3): Vec3;
  /** Poses positions and normals (xyz triples), in place. */
  mesh(positions: Float32Array, normals: Float32Array): void;
}

export function posing(upright: Landmarks, pose: Pose): Posing {
  const axis = neckAxis((name) => upright[name]);
  const t = PIVOT * axis.length;
  const pivot: Vec3 = [
    0,
    axis.root[1] + t * axis.direction[1],
    axis.root[2] + t * axis.direction[2],
  ];
  // Tilt first, then nod, then turn: the turn is about the vertical whatever the nod.
  const head = times(
    times(about(1, pose.headTurn), about(0, -pose.headNod)),
    about(2, -pose.headTilt),
  );
  const body = about(1, pose.bodyTurn);
  const still = Math.abs(head[3]) > 1 - 1e-15;
  const whole = matrix(times(body, head));
  const trunk = matrix(body);
  const buffer = new Float64Array(6);

  /** Position and normal in `buffer`, before the final shift. */
  const move = (x: number, y: number, z: number, nx: number, ny: number, nz: number): void => {
    const share = still ? 0 : headShare(axis, x, y, z);
    const m = share === 0 ? trunk : share === 1 ? whole : matrix(times(body, part(head, share)));
    const [dx, dy, dz] = [x - pivot[0], y - pivot[1], z - pivot[2]];
    for (let r = 0; r < 3; r++) {
      const [a, b, c] = [m[3 * r], m[3 * r + 1], m[3 * r + 2]] as [number, number, number];
      buffer[r] = a * dx + b * dy + c * dz;
      buffer[3 + r] = a * nx + b * ny + c * nz;
    }
  };
  const eyes: Vec3 = [0, 1, 2].map(
    (j) => ((upright.pupil_left[j] as number) + (upright.pupil_right[j] as number)) / 2,
  ) as unknown as Vec3;
  move(...eyes, 0, 0, 1);
  const shift = buffer.slice(0, 3);
  const at = (j: number): number => (buffer[j] as number) - (shift[j] as number);
  return {
    point: (p) => {
      move(...p, 0, 0, 1);
      return [at(0), at(1), at(2)];
    },
    mesh: (P, N) => {
      for (let o = 0; o < P.length; o += 3) {
        move(
          P[o] as number,
          P[o + 1] as number,
          P[o + 2] as number,
          N[o] as number,
          N[o + 1] as number,
          N[o + 2] as number,
        );
        for (let j = 0; j < 3; j++) {
          P[o + j] = at(j);
          N[o + j] = buffer[3 + j] as number;
        }
      }
    },
  };
}

export const posedLandmarks = (upright: Landmarks, { point }: Posing): Landmarks =>
  Object.fromEntries(Object.entries(upright).map(([name, p]) => [name, point(p)])) as Landmarks;
