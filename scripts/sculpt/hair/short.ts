import { mix, type Point, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { RibbonBuilder, scatter } from '../ribbons';
import { CAP_SLOPE, cap } from './cap';
import { type Flow, follow, onSurface, rootDirection } from './flow';
import { HAIR_CENTRE } from './hairline';
import type { HairStyle } from './style';

const LOCKS = 8600;
const BORDER_LOCKS = 2000;

/** Short hair: longer on top and combed forward and aside, close at the sides and the nape. */
export function shortHair(shape: HeadShape): HairStyle {
  const [sx, sy, sz] = shape.scale;
  const topness = (y: number, z: number): number => step(34, 96, y / sy) * step(-190, -120, z / sz);
  const { volume, bed, inside, direction } = cap(shape, (q, _x, y, z) => {
    const top = topness(y, z);
    return mix(0.6, mix(3.6, 10.5, top), step(0, mix(40, 22, top), q));
  });
  const crown: Point = [12 * sx, 100 * sy, -140 * sz];
  const flow: Flow = (p) => {
    const away: Point = [p[0] - crown[0], p[1] - crown[1], p[2] - crown[2]];
    const n = Math.hypot(...away) || 1;
    const top = topness(p[1], p[2]);
    return [away[0] / n + 0.45 * top, away[1] / n + 0.35 * top, away[2] / n];
  };
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  const locks = () => {
    const builder = new RibbonBuilder();
    for (let i = 0; i < LOCKS; i++) {
      const root = onSurface(bed, centre, rootDirection(i, BORDER_LOCKS, direction));
      const jitter = scatter(i, 2);
      const q = inside(...root.at) - 3 * scatter(i * 11 + 5, 0);
      if (q < -1) continue;
      const top = topness(root.at[1], root.at[2]);
      const border = step(0, 9, q);
      const length =
        mix(mix(4, 15, step(0, 34, q)), mix(14, 27, step(0, 30, q)), top) * (0.75 + 0.5 * jitter);
      const lift = mix(mix(0.4, 0.9, border), mix(1.5, 3.4, jitter), top);
      const turn = 0.7 * (scatter(i * 3 + 1, 1) - 0.5);
      const bent: Flow = (p) => {
        const [x, y, z] = flow(p);
        return [x + turn * z, y, z - turn * x];
      };
      const steps = top > 0.2 ? 3 : 2;
      const path = follow(
        bed,
        CAP_SLOPE,
        bent,
        root.at,
        steps,
        length / steps,
        (t) => mix(0.1, 0.5, border) + lift * t,
      );
      const width = mix(0.45, mix(1, 1.65, top), border) * (0.7 + 0.6 * jitter);
      const tone = 0.7 + 0.5 * scatter(i * 7 + 2, 2);
      builder.add(
        path,
        (t) => width * (1 - 0.88 * t * t),
        (t) => tone * mix(0.8, 1.12, t),
        0.7,
      );
    }
    return builder.build();
  };
  const cell = (): number => 3;
  return {
    volume,
    grid: {
      x: mirroredAxis(96 * sx, cell),
      y: axis(-85 * sy, 140 * sy, cell),
      z: axis(-205 * sz, 25, cell),
    },
    locks,
  };
}
