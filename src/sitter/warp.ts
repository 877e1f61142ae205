import { type Factors, factor, solve } from './linear';

/**
 * A smooth map of space that takes each control point exactly to its target: biharmonic radial
 * basis |r| in three dimensions plus an affine part (Carr et al. 2001, "Reconstruction and
 * representation of 3D objects with radial basis functions", section 3). The system is factored
 * once; new targets cost one back-substitution.
 */
export interface Warp {
  /** xyz of the control points, metres. */
  readonly centres: Float64Array;
  readonly factors: Factors;
}

/** Displacement coefficients: one xyz triple a control point, then constant, x, y, z. */
export type Coefficients = Float64Array;

/** Rounds the cone of |r| at a control point, metres; small beside the distance between them. */
const ROUNDING = 0.002;
const ROUNDING2 = ROUNDING * ROUNDING;

const kernel = (dx: number, dy: number, dz: number): number =>
  Math.sqrt(dx * dx + dy * dy + dz * dz + ROUNDING2);

/** @throws when two control points coincide or all lie in a plane. */
export function prepareWarp(centres: Float64Array): Warp {
  const n = centres.length / 3;
  const size = n + 4;
  const m = new Float64Array(size * size);
  const c = (i: number, axis: number): number => centres[3 * i + axis] as number;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++)
      m[i * size + j] = kernel(c(i, 0) - c(j, 0), c(i, 1) - c(j, 1), c(i, 2) - c(j, 2));
    for (let axis = -1; axis < 3; axis++) {
      const value = axis < 0 ? 1 : c(i, axis);
      m[i * size + n + 1 + axis] = value;
      m[(n + 1 + axis) * size + i] = value;
    }
  }
  return { centres, factors: factor(m, size) };
}

/** Coefficients that take every control point to its target (xyz, metres). */
export function coefficientsFor(warp: Warp, targets: Float64Array): Coefficients {
  const n = warp.centres.length / 3;
  const rhs = new Float64Array((n + 4) * 3);
  for (let i = 0; i < 3 * n; i++) rhs[i] = (targets[i] as number) - (warp.centres[i] as number);
  return solve(warp.factors, rhs, 3);
}

/** Moves the vertices (all, or those listed) from `source` to `target`, both xyz. */
export function applyWarp(
  warp: Warp,
  k: Coefficients,
  source: Float32Array,
  target: Float32Array,
  only?: Uint32Array,
): void {
  const { centres } = warp;
  const n3 = centres.length;
  const count = only ? only.length : source.length / 3;
  for (let q = 0; q < count; q++) {
    const o = 3 * (only ? (only[q] as number) : q);
    const x = source[o] as number;
    const y = source[o + 1] as number;
    const z = source[o + 2] as number;
    let u = x;
    let v = y;
    let w = z;
    for (let i = 0; i < n3; i += 3) {
      const r = kernel(
        x - (centres[i] as number),
        y - (centres[i + 1] as number),
        z - (centres[i + 2] as number),
      );
      u += (k[i] as number) * r;
      v += (k[i + 1] as number) * r;
      w += (k[i + 2] as number) * r;
    }
    const at = (row: number, axis: number): number => k[n3 + 3 * row + axis] as number;
    target[o] = u + at(0, 0) + at(1, 0) * x + at(2, 0) * y + at(3, 0) * z;
    target[o + 1] = v + at(0, 1) + at(1, 1) * x + at(2, 1) * y + at(3, 1) * z;
    target[o + 2] = w + at(0, 2) + at(1, 2) * x + at(2, 2) * y + at(3, 2) * z;
  }
}
