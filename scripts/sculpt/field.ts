/**
 * Distance primitives for sculpting. A field gives the signed distance in millimetres from a
 * point to a surface: negative inside. The blends are the polynomial smooth minimum and maximum
 * (I. Quilez, "smooth minimum", quadratic form); the ellipsoid is his first-order bound.
 */
export type Field = (x: number, y: number, z: number) => number;
export type Point = readonly [number, number, number];
/** A knot of a tube: centre and radius. */
export type Knot = readonly [x: number, y: number, z: number, radius: number];

export const clamp = (t: number, low = 0, high = 1): number => (t < low ? low : Math.min(t, high));
export const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
/** Hermite step from 0 at `a` to 1 at `b`; `a` may be larger than `b`. */
export const step = (a: number, b: number, x: number): number => {
  const t = clamp((x - a) / (b - a));
  return t * t * (3 - 2 * t);
};
/** Bell of height 1 and standard deviation `sigma`. */
export const bell = (x: number, sigma: number): number => Math.exp(-(x * x) / (2 * sigma * sigma));

/** Union whose seam is rounded over a width of `k` mm; never larger than the plain minimum. */
export function smoothMin(a: number, b: number, k: number): number {
  const h = Math.max(k - Math.abs(a - b), 0) / k;
  return Math.min(a, b) - h * h * k * 0.25;
}
/** Intersection whose seam is rounded over `k` mm; never smaller than the plain maximum. */
export function smoothMax(a: number, b: number, k: number): number {
  const h = Math.max(k - Math.abs(a - b), 0) / k;
  return Math.max(a, b) + h * h * k * 0.25;
}

/** |x| with a rounded foot, so that mirrored forms meet without a crease. */
export const softAbs = (x: number, roundness = 2): number => Math.sqrt(x * x + roundness);

/** Ellipsoid: exact on the surface, a first-order estimate elsewhere. */
export function ellipsoid(
  x: number,
  y: number,
  z: number,
  cx: number,
  cy: number,
  cz: number,
  rx: number,
  ry: number,
  rz: number,
): number {
  const a = (x - cx) / rx;
  const b = (y - cy) / ry;
  const c = (z - cz) / rz;
  const k0 = Math.sqrt(a * a + b * b + c * c);
  if (k0 < 1e-6) return -Math.min(rx, ry, rz);
  const d = a / rx;
  const e = b / ry;
  const f = c / rz;
  return (k0 * (k0 - 1)) / Math.sqrt(d * d + e * e + f * f);
}

/** Capsule whose radius runs linearly from `a[3]` to `b[3]`. */
export function capsule(x: number, y: number, z: number, a: Knot, b: Knot): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const dz = b[2] - a[2];
  const px = x - a[0];
  const py = y - a[1];
  const pz = z - a[2];
  const h = clamp((px * dx + py * dy + pz * dz) / (dx * dx + dy * dy + dz * dz));
  const qx = px - dx * h;
  const qy = py - dy * h;
  const qz = pz - dz * h;
  return Math.sqrt(qx * qx + qy * qy + qz * qz) - mix(a[3], b[3], h);
}

/** A tube swept along a Catmull-Rom spline, with the sphere that holds it. */
export interface Tube {
  readonly distance: Field;
  readonly centre: Point;
  readonly reach: number;
}

const SAMPLES = 4;

/**
 * Tube through knots. The nearest point is found on a polyline of four samples a span and then
 * refined by two Newton steps on the spline: the polyline by itself shows as facets.
 */
export function tube(knots: readonly Knot[]): Tube {
  const spans = knots.length - 1;
  if (spans < 1) throw new RangeError('a tube needs two knots');
  const coefficient = new Float64Array(spans * 16);
  for (let i = 0; i < spans; i++) {
    const b = knots[i] as Knot;
    const c = knots[i + 1] as Knot;
    const a = knots[i - 1] ?? b;
    const d = knots[i + 2] ?? c;
    for (let j = 0; j < 4; j++) {
      const [A, B, C, D] = [a[j], b[j], c[j], d[j]] as [number, number, number, number];
      coefficient.set(
        [B, 0.5 * (C - A), 0.5 * (2 * A - 5 * B + 4 * C - D), 0.5 * (3 * B - 3 * C + D - A)],
        i * 16 + j * 4,
      );
    }
  }
  const along = (span: number, j: number, t: number): number => {
    const o = span * 16 + j * 4;
    return (
      (coefficient[o] as number) +
      t *
        ((coefficient[o + 1] as number) +
          t * ((coefficient[o + 2] as number) + t * (coefficient[o + 3] as number)))
    );
  };
  const slope = (span: number, j: number, t: number): number => {
    const o = span * 16 + j * 4;
    return (
      (coefficient[o + 1] as number) +
      t * (2 * (coefficient[o + 2] as number) + 3 * t * (coefficient[o + 3] as number))
    );
  };
  const bend = (span: number, j: number, t: number): number => {
    const o = span * 16 + j * 4;
    return 2 * (coefficient[o + 2] as number) + 6 * t * (coefficient[o + 3] as number);
  };
  const count = spans * SAMPLES + 1;
  const line = new Float64Array(count * 4);
  for (let s = 0; s < count; s++) {
    const span = Math.min(spans - 1, Math.floor(s / SAMPLES));
    for (let j = 0; j < 4; j++) line[4 * s + j] = along(span, j, s / SAMPLES - span);
  }
  const centre: [number, number, number] = [0, 0, 0];
  for (let s = 0; s < count; s++)
    for (let j = 0; j < 3; j++) (centre[j] as number) += (line[4 * s + j] as number) / count;
  let reach = 0;
  for (let s = 0; s < count; s++) {
    const far = Math.hypot(
      (line[4 * s] as number) - centre[0],
      (line[4 * s + 1] as number) - centre[1],
      (line[4 * s + 2] as number) - centre[2],
    );
    reach = Math.max(reach, far + (line[4 * s + 3] as number));
  }
  const distance: Field = (x, y, z) => {
    let best = Number.POSITIVE_INFINITY;
    let at = 0;
    for (let s = 0; s < count - 1; s++) {
      const o = 4 * s;
      const ax = line[o] as number;
      const ay = line[o + 1] as number;
      const az = line[o + 2] as number;
      const ra = line[o + 3] as number;
      const dx = (line[o + 4] as number) - ax;
      const dy = (line[o + 5] as number) - ay;
      const dz = (line[o + 6] as number) - az;
      const px = x - ax;
      const py = y - ay;
      const pz = z - az;
      const h = clamp((px * dx + py * dy + pz * dz) / (dx * dx + dy * dy + dz * dz));
      const qx = px - dx * h;
      const qy = py - dy * h;
      const qz = pz - dz * h;
      const d = Math.sqrt(qx * qx + qy * qy + qz * qz) - ra - ((line[o + 7] as number) - ra) * h;
      if (d < best) {
        best = d;
        at = s + h;
      }
    }
    let g = at / SAMPLES;
    for (let iteration = 0; iteration < 2; iteration++) {
      const span = Math.min(spans - 1, Math.floor(g));
      const t = g - span;
      let f = 0;
      let d1 = 0;
      let d2 = 0;
      for (let j = 0; j < 3; j++) {
        const e = along(span, j, t) - (j === 0 ? x : j === 1 ? y : z);
        const v = slope(span, j, t);
        f += e * v;
        d1 += v * v;
        d2 += v * v + e * bend(span, j, t);
      }
      const limit = 0.6 / SAMPLES;
      g = clamp(g - clamp(f / Math.max(d2, 0.35 * d1), -limit, limit), 0, spans);
    }
    const span = Math.min(spans - 1, Math.floor(g));
    const t = g - span;
    const ex = along(span, 0, t) - x;
    const ey = along(span, 1, t) - y;
    const ez = along(span, 2, t) - z;
    return Math.sqrt(ex * ex + ey * ey + ez * ez) - along(span, 3, t);
  };
  return { distance, centre, reach };
}

/** Smooth union with a tube, skipped where the tube's sphere is too far to matter. */
export function joinTube(d: number, t: Tube, x: number, y: number, z: number, k: number): number {
  const far = Math.hypot(x - t.centre[0], y - t.centre[1], z - t.centre[2]) - t.reach;
  return far > d + k ? d : smoothMin(d, t.distance(x, y, z), k);
}

/** Cubic Hermite curve through points with rising abscissae; constant beyond both ends. */
export function curve(points: readonly (readonly [number, number])[]): (x: number) => number {
  const n = points.length;
  const xs = Float64Array.from(points, (p) => p[0]);
  const ys = Float64Array.from(points, (p) => p[1]);
  const abscissa = (i: number): number => xs[i] as number;
  const ordinate = (i: number): number => ys[i] as number;
  const slopes = Float64Array.from(points, (_, i) => {
    const a = Math.max(0, i - 1);
    const b = Math.min(n - 1, i + 1);
    return (ordinate(b) - ordinate(a)) / (abscissa(b) - abscissa(a));
  });
  return (x) => {
    if (x <= abscissa(0)) return ordinate(0);
    if (x >= abscissa(n - 1)) return ordinate(n - 1);
    let i = 0;
    while (x > abscissa(i + 1)) i++;
    const h = abscissa(i + 1) - abscissa(i);
    const t = (x - abscissa(i)) / h;
    const t2 = t * t;
    const t3 = t2 * t;
    return (
      (2 * t3 - 3 * t2 + 1) * ordinate(i) +
      (t3 - 2 * t2 + t) * h * (slopes[i] as number) +
      (3 * t2 - 2 * t3) * ordinate(i + 1) +
      (t3 - t2) * h * (slopes[i + 1] as number)
    );
  };
}
