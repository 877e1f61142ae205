import { clamp, smoothMax } from '../field';

/** One cross-section of a loft: a superellipse that fills the box `u` x `v` at the place `at`. */
export interface Station {
  readonly at: number;
  readonly u: readonly [min: number, max: number];
  readonly v: readonly [min: number, max: number];
  /** Exponent: 2 is an ellipse, larger is boxier. */
  readonly n: number;
}

/** A section is never thinner than this, mm; only met beyond a loft's ends. */
const LEAST = 4;

/** Coefficients of the natural cubic spline through (xs, ys): four for each interval. */
function spline(xs: readonly number[], ys: readonly number[]): Float64Array {
  const n = xs.length;
  const get = (a: ArrayLike<number>, i: number) => a[i] ?? 0;
  const c = new Float64Array(n);
  const mu = new Float64Array(n);
  const z = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const h0 = get(xs, i) - get(xs, i - 1);
    const h1 = get(xs, i + 1) - get(xs, i);
    const slope1 = (get(ys, i + 1) - get(ys, i)) / h1;
    const slope0 = (get(ys, i) - get(ys, i - 1)) / h0;
    const l = 2 * (h0 + h1) - h0 * get(mu, i - 1);
    mu[i] = h1 / l;
    z[i] = (3 * (slope1 - slope0) - h0 * get(z, i - 1)) / l;
  }
  const out = new Float64Array(4 * (n - 1));
  for (let i = n - 2; i >= 0; i--) {
    const h = get(xs, i + 1) - get(xs, i);
    c[i] = get(z, i) - get(mu, i) * get(c, i + 1);
    out[4 * i] = get(ys, i);
    out[4 * i + 1] = (get(ys, i + 1) - get(ys, i)) / h - (h * (get(c, i + 1) + 2 * get(c, i))) / 3;
    out[4 * i + 2] = get(c, i);
    out[4 * i + 3] = (get(c, i + 1) - get(c, i)) / (3 * h);
  }
  return out;
}

/**
 * A body lofted through superellipses: distance to it, to first order (the implicit value over the
 * length of its gradient), so that breadths and depths at the stations are met exactly.
 * `round` is the width over which each flat end is rounded. Beyond its ends the loft goes on
 * straight under the cut, so that blends near an end show no kink.
 */
export function loft(
  stations: readonly Station[],
  round: number,
): (t: number, u: number, v: number) => number {
  const ts = stations.map((s) => s.at);
  const column = (pick: (s: Station) => number) => spline(ts, stations.map(pick));
  const centreU = column((s) => (s.u[0] + s.u[1]) / 2);
  const halfU = column((s) => (s.u[1] - s.u[0]) / 2);
  const centreV = column((s) => (s.v[0] + s.v[1]) / 2);
  const halfV = column((s) => (s.v[1] - s.v[0]) / 2);
  const exponent = column((s) => s.n);
  const first = ts[0] ?? 0;
  const last = ts[ts.length - 1] ?? 0;
  const middle = (first + last) / 2;
  const half = (last - first) / 2;
  return (t, u, v) => {
    const tc = clamp(t, first, last);
    let i = 0;
    while (i < ts.length - 2 && tc > (ts[i + 1] as number)) i++;
    const s = tc - (ts[i] as number);
    const slope = (k: Float64Array): number =>
      (k[4 * i + 1] as number) +
      s * (2 * (k[4 * i + 2] as number) + s * 3 * (k[4 * i + 3] as number));
    const value = (k: Float64Array): number =>
      (k[4 * i] as number) +
      s *
        ((k[4 * i + 1] as number) + s * ((k[4 * i + 2] as number) + s * (k[4 * i + 3] as number))) +
      (t - tc) * slope(k);
    const a = Math.max(LEAST, value(halfU));
    const b = Math.max(LEAST, value(halfV));
    const n = clamp(value(exponent), 1.5, 12);
    const x = (u - value(centreU)) / a;
    const z = (v - value(centreV)) / b;
    const px = Math.abs(x) ** n;
    const pz = Math.abs(z) ** n;
    const rho = (px + pz) ** (1 / n);
    let d: number;
    if (rho < 0.05) d = -Math.min(a, b) * (1 - rho);
    else {
      const w = rho ** (1 - n);
      const gx = (w * px) / (x * a || 1e-9);
      const gz = (w * pz) / (z * b || 1e-9);
      const gt =
        -gx * (slope(centreU) + x * slope(halfU)) - gz * (slope(centreV) + z * slope(halfV));
      d = (rho - 1) / Math.sqrt(gx * gx + gz * gz + gt * gt);
    }
    return smoothMax(d, Math.abs(t - middle) - half, round);
  };
}
