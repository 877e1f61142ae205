import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  tube,
} from '../field';
import type { HeadShape } from './shape';

/** Distance to the left nostril's hollow, drawn coordinates. */
export function nostril(shape: HeadShape): Field {
  const middle = 6.9 * breadth(shape);
  const [cos, sin] = [Math.cos(0.42), Math.sin(0.42)];
  return (ax, y, z) => {
    const nx = ax - middle;
    const nz = z - 19.4;
    return ellipsoid(nx * cos + nz * sin, y, nz * cos - nx * sin, 0, -36.6, 0, 2.6, 5, 5.2);
  };
}

const breadth = (shape: HeadShape): number => mix(1, 0.92, shape.femininity);

/** Joins the nose to the face's distance and cuts the nostrils. Drawn coordinates. */
export function nose(shape: HeadShape): (d: number, x: number, y: number, z: number) => number {
  const f = shape.femininity;
  const dip = mix(0, 1.4, f);
  const bridge = tube([
    [0, 22, 5 - dip * 0.5, 5.4],
    [0, 11, 3.7 - dip, 5.4],
    [0, 1, 7.4 - dip, mix(5.6, 5.2, f)],
    [0, -10, 14.8 - dip, mix(5.9, 5.4, f)],
    [0, -21, 22.6 - dip * 0.8, mix(6.3, 5.8, f)],
  ]);
  const tipY = mix(-28.4, -27, f);
  const tipZ = mix(24.2, 23.4, f);
  const wide = breadth(shape);
  const hollow = nostril(shape);
  return (d0, x, y, z) => {
    if (z < -30 || y > 50 || y < -66 || Math.abs(x) > 46) return d0;
    const ax = softAbs(x, 1.2);
    let n = bridge.distance(ax, y, z);
    n = smoothMin(n, capsule(ax, y, z, [4.5, 4, -2.5, 7.2], [8.2 * wide, -24, 8, 7.6]), 13);
    n = smoothMin(n, ellipsoid(ax, y, z, 0, tipY, tipZ, 8.8 * wide, 8, 10), 8);
    // Wing: from the cheek forward into the tip.
    n = smoothMin(n, ellipsoid(ax, y, z, 11.6 * wide, -32.6, 13.2, 5.9, 6.2, 9), 8);
    n = smoothMin(n, capsule(ax, y, z, [0, -34, 25, 3.3], [0, -37.6, 14, 3.8]), 6);
    let d = smoothMin(d0, n, 7);
    // Groove over the wing.
    d += 0.45 * bell(Math.hypot(ax - 14.2, y + 25.6, (z - 17) * 0.6), 2.6);
    return smoothMax(d, -hollow(ax, y, z), 2.4);
  };
}
