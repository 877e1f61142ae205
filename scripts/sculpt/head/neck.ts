import { figure } from '../body/figure';
import { BODY_SHAPES } from '../body/shape';
import { trunk } from '../body/trunk';
import {
  clamp,
  ellipsoid,
  type Field,
  joinTube,
  type Knot,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  tube,
} from '../field';
import type { HeadShape } from './shape';
import { trace } from './trace';

/**
 * Neck, shoulders, upper chest and upper back, open to the head above (true millimetres). The
 * trunk is the body's own, so that skin and cloth agree; the neck is set into it.
 */
export function neckAndShoulders(shape: HeadShape): Field {
  const f = shape.femininity;
  const person = figure(BODY_SHAPES[shape.id]);
  const torso = trunk(person);
  const [, notch, notchZ] = person.suprasternale;
  const half = person.mm.biacromial_breadth / 2;
  /** Depth of the trunk's front at a place in front view. */
  const front = (x: number, y: number): number => trace(torso, [x, y, 200], [0, 0, -1])?.[2] ?? 0;
  const sternomastoid = tube([
    [mix(50, 47, f), mix(-38, -35, f), mix(-100, -95, f), mix(7.5, 5.5, f)],
    [mix(40, 35, f), mix(-90, -80, f), mix(-92, -86, f), mix(9, 7, f)],
    [mix(29, 25, f), notch + 52, mix(-72, -67, f), mix(8.5, 6.5, f)],
    [14, notch + 12, notchZ - 10, 5],
    [8, notch - 5, notchZ - 5.5, 4],
  ]);
  const trapezius = tube([
    [14, -32, mix(-142, -132, f), 12],
    [mix(22, 17, f), -78, mix(-131, -126, f), mix(15, 12, f)],
    [mix(31, 25, f), -118, mix(-124, -121, f), mix(15, 12, f)],
    [mix(52, 44, f), notch + mix(48, 42, f), mix(-138, -134, f), mix(14, 11, f)],
  ]);
  // Collar bones lie on the trunk's front, bowed forward near the breastbone.
  const bone = mix(6.5, 5.4, f);
  const clavicle = tube(
    (
      [
        [13 / half, -1, 1.6],
        [0.24, 3, 1.4],
        [0.48, 8, -0.2],
        [0.72, 7, -1],
        [0.92, -5, -2],
      ] as const
    ).map(([share, rise, lift]): Knot => {
      const [x, y] = [share * half, notch + rise];
      return [x, y, front(x, y) - bone + lift, bone];
    }),
  );
  const column: Field = (ax, y, z) => {
    const t = clamp((-55 - y) / (-55 - notch));
    const cz = mix(mix(-96, -89, f), mix(-111, -100, f), t);
    const rz = mix(mix(52, 47, f), mix(52.5, 46.5, f), t);
    const rx = rz * mix(mix(0.98, 0.89, f), mix(1.26, 1.04, f), t);
    const a = ax / rx;
    const c = (z - cz) / rz;
    const k = Math.sqrt(a * a + c * c);
    return smoothMax((k - 1) * Math.min(rx, rz), Math.max(y + 30, notch - 25 - y), 24);
  };
  return (x, y, z) => {
    const ax = softAbs(x, 6);
    let neck = column(ax, y, z);
    neck = joinTube(neck, sternomastoid, ax, y, z, 24);
    neck = joinTube(neck, trapezius, ax, y, z, 26);
    // Larynx.
    neck = smoothMin(
      neck,
      ellipsoid(x, y, z, 0, mix(-143, -136, f), mix(-62.5, -59.5, f), 9, mix(15, 17, f), 12),
      16,
    );
    if (y > notch + 130) return neck;
    let body = torso(x, y, z);
    // Hollow over the collar bone.
    body = smoothMax(body, -ellipsoid(ax, y, z, 0.36 * half, notch + 24, -78, 26, 11, 16), 28);
    body = joinTube(body, clavicle, ax, y, z, 16);
    const d = smoothMin(neck, body, mix(30, 32, f));
    // Pit of the neck.
    return smoothMax(d, -ellipsoid(x, y, z, 0, notch + 5, notchZ + 14, 11, 12, 14), 16);
  };
}
