import { ellipsoid, type Field, joinTube, mix, smoothMax, smoothMin, tube } from '../field';
import type { HeadShape } from './shape';

const PROTRUSION = (29 * Math.PI) / 180;
const TILT = (11 * Math.PI) / 180;

export interface Ear {
  toLocal(ax: number, y: number, z: number): [number, number, number];
  toWorld(u: number, v: number, w: number): [number, number, number];
  /** Distance to the ear alone, local axes. */
  distance: Field;
  /** Joins the ear to the head's distance. */
  join(d: number, ax: number, y: number, z: number): number;
}

export function ear(shape: HeadShape): Ear {
  /** Where the ear's own axes stand: u backwards, v up, w outwards; drawn coordinates. */
  const root = { x: 65, y: -13, z: mix(-87.5, -83, shape.femininity) } as const;
  const [ct, st] = [Math.cos(TILT), Math.sin(TILT)];
  const [cp, sp] = [Math.cos(PROTRUSION), Math.sin(PROTRUSION)];
  const helix = tube([
    [13, -1.6, -1, 1.5],
    [7, 2, 1.2, 2],
    [2.6, 9, 2.4, 2.2],
    [3.2, 18, 2.8, 2.5],
    [8.2, 26.5, 3.1, 2.7],
    [16.5, 31, 3.2, 2.8],
    [25.5, 29, 3.1, 2.7],
    [31.6, 21.5, 2.9, 2.5],
    [33.4, 11, 2.5, 2.3],
    [32, -0.5, 1.9, 2.1],
    [28, -10.5, 0.8, 2],
    [22, -18, -1, 2],
  ]);
  const antihelix = tube([
    [13, -14, 1.8, 2.3],
    [18.5, -11.5, 1.9, 2.4],
    [23.2, -4, 2.4, 2.7],
    [25, 5.5, 2.5, 3],
    [23, 13.5, 2, 3],
    [18.5, 20.5, 1.2, 2.8],
    [14.5, 25.5, 0.2, 2.4],
  ]);
  const crus = tube([
    [23.8, 9.5, 2, 2.6],
    [18.2, 13.8, 1.4, 2.4],
    [11, 14.8, 0.5, 2],
    [5, 13.3, 0, 1.6],
  ]);
  const distance: Field = (u, v, w) => {
    const bowl = w + 0.4 - 0.0015 * (u - 12) * (u - 12);
    let d = smoothMax(ellipsoid(u, v, 0, 17.7, 5, 0, 15.4, 25.5, 1e3), Math.abs(bowl) - 1.6, 2);
    d = smoothMin(d, ellipsoid(u, v, w, 12.4, -20, -2, 8.4, 9.6, 4.2), 7);
    d = joinTube(d, antihelix, u, v, w - 0.4, 3.2);
    d = joinTube(d, crus, u, v, w - 0.3, 3.4);
    d = smoothMax(d, -ellipsoid(u, v, w, 13.5, -2.5, 4.2, 8.6, 10.5, 8.6), 4);
    d = smoothMin(d, ellipsoid(u, v, w, 14, -2.5, -6.8, 16.5, 18.5, 5.4), 2.6);
    d = smoothMax(d, -ellipsoid(u, v, w, 11.8, -3, 3.4, 6.8, 8.4, 6.8), 4);
    d = joinTube(d, helix, u, v, w - 0.3, 2.2);
    d = smoothMin(d, ellipsoid(u, v, w, 3.9, -3.6, 3.4, 3.2, 5, 4), 2.6);
    d = smoothMin(d, ellipsoid(u, v, w, 13.4, -14.2, 1.6, 4.2, 3, 3), 4);
    return d;
  };
  const toLocal = (ax: number, y: number, z: number): [number, number, number] => {
    const X = ax - root.x;
    const Y = y - root.y;
    const Z = z - root.z;
    const tilted = Y * st + Z * ct;
    return [X * sp - tilted * cp, Y * ct - Z * st, X * cp + tilted * sp];
  };
  const toWorld = (u: number, v: number, w: number): [number, number, number] => {
    const Z = -u * cp + w * sp;
    return [u * sp + w * cp + root.x, v * ct + Z * st + root.y, Z * ct - v * st + root.z];
  };
  const join = (d0: number, ax: number, y: number, z: number): number => {
    if (ax < 46 || y < -70 || y > 45 || z < -147 || z > -53) return d0;
    const [u, v, w] = toLocal(ax, y, z);
    if (Math.hypot(u - 16, v - 1, w) > 50) return d0;
    let d = smoothMin(d0, ellipsoid(u, v, w, 9, -1, -9, 10, 20, 10), 7);
    d = smoothMin(d, distance(u, v, w), 4);
    return smoothMax(d, -ellipsoid(u, v, w, 5.8, -4.8, -0.6, 2.3, 3.3, 5), 2.6);
  };
  return { toLocal, toWorld, distance, join };
}
