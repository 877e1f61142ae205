import {
  clamp,
  ellipsoid,
  type Field,
  joinTube,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  step,
  tube,
} from '../field';
import type { HeadShape } from './shape';

/**
 * Neck, shoulders, upper chest and upper back, open to the head above (true millimetres). The
 * garment is offset from this field, so it stays meaningful 60 mm away from the skin.
 */
export function neckAndShoulders(shape: HeadShape): Field {
  const [sx, sy, sz] = shape.scale;
  const f = shape.femininity;
  const g = shape.neckGirth / ((sx + sz) / 2);
  const b = shape.shoulderBreadth / sx;
  const sternomastoid = tube([
    [59 * mix(1, 0.96, f), -44, -98, 8],
    [46.5 * g, -85, -89, 9.5],
    [33 * g, -140, -70, 9],
    [20, -185, -55, 7],
    [14, -203, -53, 5],
  ]);
  const trapezius = tube([
    [14, -30, -148, 12],
    [20 * g, -78, -134, 16.5 * g],
    [33 * g, -118, -135, 21 * g],
    [72 * b, -158, -136, 24],
    [122 * b, -181, -126, 22],
    [178 * b, -197, -118, 19],
  ]);
  const clavicle = tube([
    [13, -207, -54, 8],
    [48 * b, -206, -58, 7.5],
    [95 * b, -199, -74, 7.5],
    [142 * b, -193, -102, 8.5],
    [180 * b, -196, -116, 12],
  ]);
  const column: Field = (ax, y, z) => {
    const t = clamp((-60 - y) / 145);
    const cz = mix(-92, -106, t);
    const rx = (mix(51, 52, t) + 10 * step(-160, -215, y)) * g;
    const rz = (mix(51.5, 55.5, t) + 3 * step(-160, -215, y)) * g;
    const a = ax / rx;
    const c = (z - cz) / rz;
    const k = Math.sqrt(a * a + c * c);
    return smoothMax((k - 1) * Math.min(rx, rz), Math.max(y + 30, -225 - y), 24);
  };
  return (X, Y, Z) => {
    const x = X / sx;
    const y = Y / sy;
    const z = Z / sz;
    const ax = softAbs(x);
    let neck = column(ax, y, z);
    neck = joinTube(neck, sternomastoid, ax, y, z, 18);
    neck = smoothMin(neck, ellipsoid(ax, y, z, 0, -150, mix(-52, -58, f), 11, 18, 12), 22);
    let body = trapezius.distance(ax, y, z);
    body = smoothMin(
      body,
      ellipsoid(ax, y, z, 0, -345, -128, mix(148, 136, f), 150, mix(104, 98, f)),
      40,
    );
    body = smoothMin(body, ellipsoid(ax, y, z, 80 * b, -285, -70, 78 * b, 66, 50), 50);
    body = smoothMin(body, ellipsoid(ax, y, z, 186 * b, -247, -116, mix(53, 46, f), 58, 53), 38);
    body = smoothMin(body, ellipsoid(ax, y, z, 80 * b, -255, -180, 78 * b, 86, 44), 46);
    body = joinTube(body, clavicle, ax, y, z, 20);
    let d = smoothMin(neck, body, 34);
    d = smoothMax(d, -ellipsoid(ax, y, z, 0, -206, -36, 9, 10, 12), 14);
    return d * Math.min(sx, sy, sz) * 0.97;
  };
}
