import { mix, type Point, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { RibbonBuilder, scatter } from '../ribbons';
import { CAP_SLOPE, cap } from './cap';
import { type Flow, follow, onSurface } from './flow';
import { HAIR_CENTRE, hairline } from './hairline';
import type { HairStyle } from './style';

/** Short hair: longer on top and swept forward and up, close at the sides and the nape. */
export function shortHair(shape: HeadShape): HairStyle {
  const [sx, sy, sz] = shape.scale;
  const inside = hairline(shape);
  const topness = (y: number, z: number): number =>
    step(30, 100, y / sy) * step(-190, -110, z / sz);
  const volume = cap(shape, (q, _x, y, z) => {
    const top = topness(y, z);
    const forelock = step(-60, -10, z / sz) * top;
    return mix(0.7, mix(4.2, 13, top) + 4 * forelock, step(0, mix(26, 13, top), q));
  });
  const crown: Point = [14 * sx, 100 * sy, -135 * sz];
  const flow: Flow = (p) => {
    const away: Point = [p[0] - crown[0], p[1] - crown[1], p[2] - crown[2]];
    const n = Math.hypot(...away) || 1;
    const top = topness(p[1], p[2]);
    // On top the hair sweeps to the sitter's left as it comes forward.
    return [away[0] / n + 0.35 * top, away[1] / n, away[2] / n];
  };
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  const locks = () => {
    const builder = new RibbonBuilder();
    const count = 3600;
    for (let i = 0; i < count; i++) {
      const up = mix(-0.82, 1, scatter(i, 0));
      const around = 2 * Math.PI * scatter(i, 1);
      const level = Math.sqrt(1 - up * up);
      const root = onSurface(volume, centre, [
        level * Math.sin(around),
        up,
        level * Math.cos(around),
      ]);
      const q = inside(...root.at);
      if (q < -1.5) continue;
      const top = topness(root.at[1], root.at[2]);
      const jitter = scatter(i, 2);
      const length =
        mix(mix(6, 14, step(2, 30, q)), mix(24, 34, step(0, 30, q)), top) * (0.75 + 0.5 * jitter);
      const lift = mix(0.5, mix(1.6, 3.2, jitter), top);
      const turn = 0.5 * (scatter(i * 3 + 1, 1) - 0.5);
      const bent: Flow = (p) => {
        const [x, y, z] = flow(p);
        return [x + turn * z, y, z - turn * x];
      };
      const path = follow(
        volume,
        CAP_SLOPE,
        bent,
        root.at,
        4,
        length / 4,
        (t) => mix(-0.3, lift, t * t) * step(-1.5, 3, q) + 0.15,
      );
      const width = mix(0.7, 2.1, top) * (0.7 + 0.6 * jitter) * step(-3, 4, q);
      const tone = 0.72 + 0.5 * scatter(i, 2);
      builder.add(
        path,
        (t) => width * (1 - 0.9 * t * t),
        (t) => tone * mix(0.85, 1.1, t),
        0.7,
      );
    }
    return builder.build();
  };
  const cell = (): number => 2.2;
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
