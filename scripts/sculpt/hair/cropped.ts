import { mix, type Point, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { cap } from './cap';
import { Groom } from './groom';
import type { HairParts } from './style';

/** Cropped hair: a few millimetres all over, the scalp just covered, ears free. */
export function croppedHair(shape: HeadShape): HairParts {
  const [sx, sy, sz] = shape.scale;
  const crown: Point = [8 * sx, 100 * sy, -135 * sz];
  const topness = (y: number): number => step(20, 80, y / sy);
  const scalp = cap(shape, (q, _x, y) => mix(0.5, mix(1.8, 3.4, topness(y)), step(0, 40, q)));
  return {
    volume: scalp.volume,
    paint: (x, y, z) => ({
      shade: 0.82,
      strand: Math.atan2(Math.abs(x), z - crown[2]) / Math.PI,
      sheer: 0.95 * step(22, 6, scalp.inside(x, y, z)),
    }),
    grid: {
      x: mirroredAxis(94 * sx, () => 3),
      y: axis(-85 * sy, 132 * sy, () => 3),
      z: axis(-200 * sz, 25, () => 3),
    },
    locks: () =>
      new Groom(shape, scalp, ([x, y, z]) => {
        // Forwards over the crown, down and a little back before the ears.
        const temple = step(50, 20, y / sy) * step(-95, -60, z / sz);
        return [
          0.4 * (x - crown[0]),
          y - crown[1] - 60 * temple,
          (z - crown[2]) * (1 - 0.9 * temple) - 20 * temple,
        ];
      })
        .sheets({
          count: 5200,
          length: (r) => mix(6.2, 13, r.chance(1) ** 1.5) * mix(1, 1.25, topness(r.at[1])),
          rise: (r) => mix(0.2, 0.8, r.chance(2)),
          lift: (r) => mix(1, 2.6, r.chance(10)) * mix(0.5, 1, topness(r.at[1])),
          width: (r) => mix(2, 4.4, step(2, 18, r.q)) * mix(0.7, 1.3, r.chance(4)),
          stray: 0.6,
          steps: 2,
          ragged: [0.55, 0.85],
        })
        .border({
          count: 3000,
          length: (r) => mix(6.05, 9, r.chance(9)),
          rise: () => 0.2,
          lift: (r) => 1.1 * r.chance(10),
          width: (r) => mix(0.8, 2, step(-1, 9, r.q) * r.chance(12)),
          stray: 0.4,
          steps: 2,
        })
        .build(),
  };
}
