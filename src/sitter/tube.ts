/** A round wire along a path, as vertices with normals and triangles. */
import type { Vec3 } from '../optics/types';
import { cross, dot, minus, scaled, unit } from '../optics/vector';
import type { SitterMesh } from './types';

export interface Wire {
  readonly positions: number[];
  readonly normals: number[];
  readonly indices: number[];
}

export const emptyWire = (): Wire => ({ positions: [], normals: [], indices: [] });

/** A wire as a mesh of one colour (linear reflectance, bytes). */
export function wireMesh(
  name: string,
  substance: SitterMesh['substance'],
  wire: Wire,
  colour: readonly [number, number, number],
): SitterMesh {
  const count = wire.positions.length / 3;
  return {
    name,
    substance,
    positions: Float32Array.from(wire.positions),
    normals: Float32Array.from(wire.normals),
    colours: Uint8Array.from({ length: 3 * count }, (_, i) => colour[i % 3] as number),
    openness: new Uint8Array(count).fill(255),
    indices: Uint32Array.from(wire.indices),
    regions: new Uint8Array(count),
  };
}

/**
 * Adds a wire of the given radius (metres) to `into`. `across` is any direction that the path never runs
 * along; a closed path joins its last point to its first, an open one ends in flat caps.
 */
export function addTube(
  into: Wire,
  path: readonly Vec3[],
  radius: number,
  across: Vec3,
  closed: boolean,
): void {
  const AROUND = 10;
  const first = into.positions.length / 3;
  const count = path.length;
  const at = (i: number): Vec3 => {
    const k = closed ? (i + count) % count : Math.max(0, Math.min(count - 1, i));
    return path[k] as Vec3;
  };
  const put = (p: Vec3, n: Vec3, off: number) => {
    into.positions.push(p[0] + off * n[0], p[1] + off * n[1], p[2] + off * n[2]);
    into.normals.push(...n);
  };
  for (let i = 0; i < count; i++) {
    const along = unit(minus(at(i + 1), at(i - 1)));
    const side = unit(minus(across, scaled(along, dot(across, along))));
    const up = cross(along, side);
    for (let k = 0; k < AROUND; k++) {
      const angle = (2 * Math.PI * k) / AROUND;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      put(
        at(i),
        [0, 1, 2].map((j) => c * (side[j] as number) + s * (up[j] as number)) as never,
        radius,
      );
    }
  }
  const ring = (i: number, k: number) => first + (i % count) * AROUND + (k % AROUND);
  for (let i = 0; i < (closed ? count : count - 1); i++)
    for (let k = 0; k < AROUND; k++) {
      const [a, b, c, d] = [ring(i, k), ring(i, k + 1), ring(i + 1, k + 1), ring(i + 1, k)];
      into.indices.push(a, b, c, a, c, d);
    }
  if (closed) return;
  for (const [end, sign] of [
    [0, -1],
    [count - 1, 1],
  ] as const) {
    const facing = scaled(unit(minus(at(end + 1), at(end - 1))), sign);
    const start = into.positions.length / 3;
    for (let k = 0; k < AROUND; k++) {
      const o = 3 * ring(end, k);
      const rim = into.positions.slice(o, o + 3) as unknown as Vec3;
      put(rim, facing, 0);
    }
    for (let k = 1; k + 1 < AROUND; k++)
      into.indices.push(
        start,
        ...(sign > 0 ? [start + k, start + k + 1] : [start + k + 1, start + k]),
      );
  }
}

/** A Catmull-Rom curve through knots, five steps from each to the next. */
export function smooth(knots: readonly Vec3[]): Vec3[] {
  const at = (i: number) => knots[Math.max(0, Math.min(knots.length - 1, i))] as Vec3;
  const STEPS_EACH = 5;
  return Array.from({ length: (knots.length - 1) * STEPS_EACH + 1 }, (_, n) => {
    const i = Math.min(knots.length - 2, Math.floor(n / STEPS_EACH));
    const t = n / STEPS_EACH - i;
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return [0, 1, 2].map((j) => {
      const [p, q, r, s] = [a[j], b[j], c[j], d[j]] as [number, number, number, number];
      return q + 0.5 * t * (r - p + t * (2 * p - 5 * q + 4 * r - s + t * (3 * (q - r) + s - p)));
    }) as unknown as Vec3;
  });
}
