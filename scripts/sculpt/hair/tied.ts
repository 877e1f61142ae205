import { ellipsoid, type Field, mix, type Point, smoothMin, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { RibbonBuilder, scatter, settle } from '../ribbons';
import { CAP_SLOPE, cap } from './cap';
import { type Flow, follow, onSurface } from './flow';
import { HAIR_CENTRE, hairline } from './hairline';
import type { HairStyle } from './style';

/** The knot's middle and half axes, drawn coordinates. */
const KNOT = [0, 44, -197] as const;
const KNOT_AXES = [31, 29, 24] as const;

/** Hair drawn back from the face to a knot behind the head; the ears stay free. */
export function tiedHair(shape: HeadShape): HairStyle {
  const [sx, sy, sz] = shape.scale;
  const inside = hairline(shape);
  const scalp = cap(shape, (q, _x, y) =>
    mix(1.2, mix(6, 9, step(30, 110, y / sy)), step(0, 26, q)),
  );
  const knot: Field = (x, y, z) =>
    ellipsoid(x / sx, y / sy, z / sz, ...KNOT, ...KNOT_AXES) * Math.min(sx, sy, sz) * CAP_SLOPE;
  const volume: Field = (x, y, z) => smoothMin(scalp(x, y, z), knot(x, y, z), 5);
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  const target: Point = [0, (KNOT[1] + 2) * sy, (KNOT[2] + 14) * sz];
  const toKnot: Flow = (p) => [target[0] - p[0], target[1] - p[1], target[2] - p[2]];
  const locks = () => {
    const builder = new RibbonBuilder();
    drawnBack(builder);
    wound(builder);
    return builder.build();
  };
  const drawnBack = (builder: RibbonBuilder): void => {
    for (let i = 0; i < 1500; i++) {
      const up = mix(-0.74, 1, scatter(i, 0));
      const around = 2 * Math.PI * scatter(i, 1);
      const level = Math.sqrt(1 - up * up);
      const root = onSurface(scalp, centre, [
        level * Math.sin(around),
        up,
        level * Math.cos(around),
      ]);
      const q = inside(...root.at);
      if (q < -2) continue;
      const way = Math.hypot(...toKnot(root.at));
      const jitter = scatter(i, 2);
      const length = Math.min(way * 0.95, mix(55, 95, jitter));
      if (length < 12) continue;
      const rise = 0.25 + 0.75 * jitter;
      const path = follow(
        scalp,
        CAP_SLOPE,
        toKnot,
        root.at,
        8,
        length / 8,
        (t) => mix(0.1, rise, Math.sin(Math.PI * t)) * step(-2, 6, q + t * 20),
      );
      const width = mix(0.5, 2.6, step(-2, 16, q)) * (0.6 + 0.7 * jitter);
      const tone = 0.74 + 0.5 * scatter(i * 7 + 3, 2);
      builder.add(
        path,
        (t) =>
          mix(mix(0.12, 0.5, step(2, 14, q)), 1, step(0, 0.35, t)) *
          width *
          (1 - 0.75 * step(0.55, 1, t)),
        () => tone,
        0.75,
      );
    }
  };
  // The knot: a coil of locks turning about its axis, which points back.
  const wound = (builder: RibbonBuilder): void => {
    for (let i = 0; i < 230; i++) {
      const start = 2 * Math.PI * scatter(i, 0);
      const ring = mix(0.12, 1.35, scatter(i, 1));
      const jitter = scatter(i, 2);
      const path = Array.from({ length: 9 }, (_, k) => {
        const a = start + (k / 8) * mix(1.1, 1.6, jitter);
        const tilt = ring + 0.12 * (k / 8);
        const p: Point = [
          KNOT_AXES[0] * sx * Math.sin(tilt) * Math.cos(a),
          KNOT[1] * sy + KNOT_AXES[1] * sy * Math.sin(tilt) * Math.sin(a),
          KNOT[2] * sz - KNOT_AXES[2] * sz * Math.cos(tilt),
        ];
        return settle(knot, p, 0.3 + 0.9 * jitter * Math.sin((Math.PI * k) / 8), CAP_SLOPE);
      });
      const tone = 0.72 + 0.5 * scatter(i * 5 + 1, 0);
      builder.add(
        path,
        (t) => 3 * (0.6 + 0.6 * jitter) * Math.sin(Math.PI * mix(0.08, 0.95, t)),
        () => tone,
        0.75,
      );
    }
  };
  const cell = (): number => 2.4;
  return {
    volume,
    grid: {
      x: mirroredAxis(94 * sx, cell),
      y: axis(-85 * sy, 136 * sy, cell),
      z: axis(-230 * sz, 25, cell),
    },
    locks,
  };
}
