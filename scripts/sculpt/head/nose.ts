import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  joinTube,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  tube,
} from '../field';
import type { HeadShape } from './shape';

const breadth = (shape: HeadShape): number => mix(1, 0.975, shape.femininity);
/** How much higher than drawn the nose ends, mm. */
const rise = (shape: HeadShape): number => mix(-0.9, 2, shape.femininity);

/** Distance to the left nostril's hollow, drawn coordinates. */
export function nostril(shape: HeadShape): Field {
  const middle = 6.8 * breadth(shape);
  const up = rise(shape);
  const [cos, sin] = [Math.cos(0.38), Math.sin(0.38)];
  return (ax, y, z) => {
    const nx = ax - middle;
    const nz = z - 16.8;
    return ellipsoid(nx * cos + nz * sin, y - up, nz * cos - nx * sin, 0, -34.8, 0, 2.9, 5, 5.2);
  };
}

/** Joins the nose to the face's distance and cuts the nostrils. Drawn coordinates. */
export function nose(shape: HeadShape): (d: number, x: number, y: number, z: number) => number {
  const f = shape.femininity;
  const wide = breadth(shape);
  const up = rise(shape);
  const tipZ = mix(25.8, 24.8, f);
  // A man's bridge is straight and broad, a woman's slimmer and a little hollow over the tip.
  const bridge = tube([
    [0, 22, 3.4, 5.4],
    [0, 8.2, mix(2.4, 1.6, f), 5.2],
    [0, 0.5, mix(11.2, 9.8, f), mix(5.7, 5.1, f)],
    [0, -10, mix(18, 16.6, f), mix(6, 5.3, f)],
    [0, -20 + up, mix(23.6, 22.4, f), mix(6.4, 5.7, f)],
  ]);
  const wing = tube([
    [12.8 * wide, -35.4, 8, 4.2],
    [14 * wide, -32.6, 13.2, 5.1],
    [11.6 * wide, -30.8, 19.4, 4.9],
    [6.2 * wide, -29.8, 24.4, 4.6],
  ]);
  const groove = tube([
    [19.6, -36, 7, 1],
    [19.4, -30.5, 9.5, 1],
    [16.2, -26, 13.5, 1],
    [11.6, -24, 19, 1],
    [8.6, -24, 23.5, 1],
  ]);
  const hollow = nostril(shape);
  return (d0, x, y, z) => {
    if (z < -30 || y > 50 || y < -68 || Math.abs(x) > 46) return d0;
    const ax = softAbs(x, 1.2);
    const yl = y - up;
    let n = bridge.distance(x, y, z);
    n = smoothMin(
      n,
      capsule(ax, y, z, [4.2, 4, 0.5, mix(7, 6.2, f)], [7.4 * wide, -22, 11.6, 7.6]),
      13,
    );
    n = smoothMin(
      n,
      ellipsoid(ax, yl, z, 0, -26.2, tipZ, mix(8.6, 7.7, f), mix(7.8, 7.2, f), 9.4),
      8,
    );
    n = joinTube(n, wing, ax, yl, z, 6);
    // Below the tip: the lobule and the slim bridge between the nostrils.
    n = smoothMin(n, capsule(x, yl, z, [0, -32.4, tipZ + 1.4, 4], [0, -35.2, 18, 3.3]), 6);
    n = smoothMin(n, ellipsoid(ax, yl, z, 0, -34.8, 13.8, 5, 4.2, 8), 5);
    // The bridge runs softly into the cheek, the wing less so.
    let d = smoothMin(d0, n, 4.5 + 9.5 * bell(y + 12, 10));
    d += 0.45 * bell(groove.distance(ax, yl, z), 2.2);
    return smoothMax(d, -hollow(ax, y, z), 2);
  };
}
