import { mix, type Point, softAbs, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { cap, wave } from './cap';
import type { Flow } from './flow';
import { Groom } from './groom';
import type { HairParts } from './style';

/** Short hair: longer on top and swept aside over the brow, close at the sides and the nape. */
export function shortHair(shape: HeadShape): HairParts {
  const [sx, sy, sz] = shape.scale;
  // Towards the sides the top's depth gives way, or the head looks square.
  const topness = (x: number, y: number, z: number): number =>
    step(46, 88, y / sy) * step(-190, -130, z / sz) * mix(0.3, 1, step(70, 32, Math.abs(x) / sx));
  const crown: Point = [10 * sx, 100 * sy, -135 * sz];
  /** Angle about the crown, 0 forwards .. 1 backwards. */
  const comb = (x: number, z: number): number => Math.atan2(softAbs(x, 60), z - crown[2]) / Math.PI;
  const scalp = cap(shape, (q, x, y, z) => {
    const top = topness(x, y, z);
    const front = step(-75, -25, z / sz);
    const gathered = step(4, 30, q) * mix(0.4, 1.1, top) * wave(comb(x, z) * 22 + 0.03 * y);
    const full = mix(mix(2.6, 3.8, step(-20, 40, y / sy)), mix(12, 16, front), top);
    return mix(0.3, full, step(0, mix(38, mix(30, 20, front), top), q)) + gathered;
  });
  const flow: Flow = ([x, y, z]) => {
    const away: Point = [x - crown[0], y - crown[1], z - crown[2]];
    const n = Math.hypot(...away) || 1;
    const top = topness(x, y, z);
    const front = top * step(-80, -25, z / sz);
    const keep = 1 - 0.85 * front;
    // Before the ear it hangs straight down.
    const temple = step(60, 30, y / sy) * step(-95, -60, z / sz);
    return [
      keep * (away[0] / n) - 0.4 * top - 0.6 * front,
      keep * (away[1] / n) + 0.45 * front - 0.9 * temple,
      keep * (1 - temple) * (away[2] / n) + 0.3 * top - 0.45 * front - 0.1 * temple,
    ];
  };
  const top = (at: Point): number => topness(...at);
  return {
    volume: scalp.volume,
    paint: (x, y, z) => ({
      shade: 0.8,
      strand: comb(x, z),
      sheer: 0.95 * step(14, 6, scalp.inside(x, y, z)),
    }),
    grid: {
      x: mirroredAxis(98 * sx, () => 3),
      y: axis(-85 * sy, 145 * sy, () => 3),
      z: axis(-205 * sz, 25, () => 3),
    },
    locks: () =>
      new Groom(shape, scalp, flow)
        .sheets({
          count: 2700,
          length: (r) =>
            mix(mix(8, 25, step(2, 36, r.q)), mix(26, 48, r.chance(1)), top(r.at)) *
            mix(0.8, 1.2, r.chance(6)),
          rise: (r) => mix(mix(0.2, 0.9, r.chance(2)), mix(0.4, 3, r.chance(2)), top(r.at)),
          lift: (r) => mix(0.3, 3.2, top(r.at) * r.chance(8)) * r.chance(10),
          width: (r) => mix(2.2, 4.8, step(2, 22, r.q)) * mix(0.7, 1.2, r.chance(4)),
          stray: 0.28,
          steps: 4,
          ragged: [0.3, 0.6],
          curl: (r) => 0.7 * (r.chance(11) - 0.5),
        })
        .border({
          count: 2300,
          length: (r) => mix(mix(6.1, 11, r.chance(9)), mix(16, 36, r.chance(9)), top(r.at)),
          rise: (r) => mix(0.2, 0.7, r.chance(11)),
          lift: (r) => mix(0.3, 4, top(r.at)) * r.chance(10),
          width: (r) => mix(0.9, 2.2, step(-1, 9, r.q) * r.chance(12)),
          stray: 0.3,
          steps: 3,
        })
        .flyaways(160, 26, 5)
        .build(),
  };
}
