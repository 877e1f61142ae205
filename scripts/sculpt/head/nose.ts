import { bell, capsule, ellipsoid, mix, smoothMax, smoothMin, softAbs, tube } from '../field';
import type { HeadShape } from './shape';

/** Joins the nose to the face's distance and cuts the nostrils. Drawn coordinates. */
export function nose(shape: HeadShape): (d: number, x: number, y: number, z: number) => number {
  const f = shape.femininity;
  const dip = mix(0, 1.3, f);
  const bridge = tube([
    [0, 20, 5.2 - 0.6 * dip, 5.6],
    [0, 10, 4.7 - dip, 5.6],
    [0, 1, 8 - dip, 5.7],
    [0, -10, 15.2 - dip, 6],
    [0, -21, 23 - dip, mix(6.4, 6, f)],
  ]);
  const tip = mix(24.4, 23.7, f);
  const yaw = 0.36;
  const cos = Math.cos(yaw);
  const sin = Math.sin(yaw);
  return (d0, x, y, z) => {
    if (z < -25 || y > 45 || y < -62 || Math.abs(x) > 40) return d0;
    const ax = softAbs(x);
    let n = bridge.distance(ax, y, z);
    n = smoothMin(n, capsule(ax, y, z, [4.5, 4, -2.5, 7.6], [9, -24, 8.5, mix(8.3, 7.6, f)]), 13);
    n = smoothMin(
      n,
      ellipsoid(ax, y, z, 0, mix(-28, -26.6, f), tip, mix(9.4, 8.4, f), mix(8.6, 8, f), 10.2),
      8,
    );
    n = smoothMin(
      n,
      ellipsoid(
        ax,
        y,
        z,
        mix(12.2, 11.6, f),
        mix(-32.2, -31.4, f),
        12.6,
        6.3,
        mix(6.8, 6.4, f),
        9.6,
      ),
      6.5,
    );
    n = smoothMin(n, capsule(ax, y, z, [0, -34.5, 25, 3.6], [0, -38, 15, 3.6]), 5);
    let d = smoothMin(d0, n, 8);
    // Groove over the wing.
    d += 0.7 * bell(Math.hypot(ax - 15, y + 25, (z - 17) * 0.6), 3);
    const nx = ax - 7;
    const nz = z - 18.5;
    const nostril = ellipsoid(
      nx * cos + nz * sin,
      y,
      nz * cos - nx * sin,
      0,
      -39.2,
      0,
      3.2,
      5,
      6.4,
    );
    return smoothMax(d, -nostril, 2.6);
  };
}
