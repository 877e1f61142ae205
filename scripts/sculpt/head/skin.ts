import { type Field, smoothMin, softAbs } from '../field';
import { ear } from './ear';
import { lids } from './eyes';
import { face, faceCreases } from './face';
import { mouth } from './mouth';
import { neckAndShoulders } from './neck';
import { nose } from './nose';
import type { HeadShape } from './shape';
import { skull } from './skull';

/** Head and neck without ears and features: what hair lies on. True millimetres. */
export function bareHead(shape: HeadShape): Field {
  const [sx, sy, sz] = shape.scale;
  const bone = skull(shape);
  const flesh = face(shape);
  const neck = neckAndShoulders(shape);
  const least = Math.min(sx, sy, sz);
  return (x, y, z) => {
    const head = smoothMin(bone(x / sx, y / sy, z / sz), flesh(x / sx, y / sy, z / sz), 20) * least;
    return y > 40 ? head : smoothMin(head, neck(x, y, z), 21);
  };
}

/** The whole skin: head, ears, neck, shoulders. True millimetres; gradient at most about 1.3. */
export function skin(shape: HeadShape): Field {
  const [sx, sy, sz] = shape.scale;
  const head = bareHead(shape);
  const openLids = lids(shape);
  const joinNose = nose(shape);
  const creases = faceCreases(shape);
  const lips = mouth(shape);
  const { join: joinEar } = ear(shape);
  const least = Math.min(sx, sy, sz);
  return (X, Y, Z) => {
    let d = head(X, Y, Z);
    if (d > 60) return d * 0.9;
    const x = X / sx;
    const y = Y / sy;
    const z = Z / sz;
    if (Z > -45 && Y > -120 && Y < 60) {
      d = openLids(d, X, Y, Z);
      d = joinNose(d / least, x, y, z) * least;
      d += creases(x, y, z);
      if (z > -25) d -= lips.relief(softAbs(x), y) * least;
      if (z > 2) d += philtrum(softAbs(x), y);
    }
    d = joinEar(d / least, softAbs(x), y, z) * least;
    return d * 0.9;
  };
}

/** Groove and ridges between nose and upper lip. */
function philtrum(ax: number, y: number): number {
  if (y > -38 || y < -57 || ax > 14) return 0;
  const t = (-38 - y) / 17;
  const half = 2.2 + 2.6 * t;
  const fade = Math.sin(Math.PI * Math.min(1, Math.max(0, t))) ** 0.8;
  const groove = Math.exp(-((ax / (half * 0.8)) ** 2));
  const ridge = Math.exp(-(((ax - half - 1.4) / 3.2) ** 2));
  return fade * (0.55 * groove - 0.25 * ridge);
}
