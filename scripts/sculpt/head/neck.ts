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
    [mix(52.5, 50.5, f), -42, -100, 8],
    [45 * g, -85, -91, 9.5],
    [35 * g, -140, -69, 9],
    [20, -185, -55, 7],
    [14, -203, -53, 5],
  ]);
  const trapezius = tube([
    [14, -30, -148, 12],
    [20 * g, -78, -141, 17 * g],
    [28 * g, -120, -141, 20 * g],
    [62 * b, -166, -138, 22],
    [118 * b, -194, -127, 20],
    [180 * b, -217, -119, 14],
  ]);
  const clavicle = tube([
    [13, -209, -55, 7],
    [48 * b, -210, -60, 7],
    [95 * b, -205, -76.5, 6.8],
    [142 * b, -204, -101.5, 7.2],
    [182 * b, -213, -117, 9],
  ]);
  const column: Field = (ax, y, z) => {
    const t = clamp((-60 - y) / 145);
    const cz = mix(-96, -107, t);
    const rx = (mix(50.5, 56, t) + 8 * step(-160, -215, y)) * g;
    const rz = (mix(57, 60, t) + 3 * step(-160, -215, y)) * g;
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
    // Rib cage, breast muscle, the plane under the collar bone, shoulder, shoulder blade.
    body = smoothMin(
      body,
      ellipsoid(ax, y, z, 0, -350, -132, mix(146, 134, f), 158, mix(102, 96, f)),
      40,
    );
    body = smoothMin(body, ellipsoid(ax, y, z, 74 * b, -300, -86, 82 * b, 84, 48), 60);
    body = smoothMin(body, ellipsoid(ax, y, z, 84 * b, -236, -100, 84 * b, 40, 34), 44);
    body = smoothMin(body, ellipsoid(ax, y, z, 190 * b, -262, -117, mix(50, 44, f), 57, 50), 40);
    body = smoothMin(body, ellipsoid(ax, y, z, 80 * b, -265, -180, 80 * b, 86, 40), 50);
    body = joinTube(body, clavicle, ax, y, z, 22);
    let d = smoothMin(neck, body, 34);
    d = smoothMax(d, -ellipsoid(ax, y, z, 0, -206, -36, 9, 10, 12), 14);
    return d * Math.min(sx, sy, sz) * 0.97;
  };
}
