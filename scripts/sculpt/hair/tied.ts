import { bell, ellipsoid, type Field, mix, type Point, smoothMin, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { RibbonBuilder, scatter, settle } from '../ribbons';
import { CAP_SLOPE, type Cap, cap } from './cap';
import { type Flow, follow, onSurface, rootDirection } from './flow';
import { HAIR_CENTRE } from './hairline';
import type { HairStyle } from './style';

/** The knot's middle and half axes, drawn coordinates. */
const KNOT = [0, 46, -193] as const;
const KNOT_AXES = [32, 31, 24] as const;
const DRAWN_LOCKS = 2400;
const BORDER_LOCKS = 1350;
const KNOT_LOCKS = 300;
/** Angle between two turns of the knot's coil, seen from its middle. */
const PITCH = 0.62;

/** Hair drawn back from the face to a knot behind the head; the ears stay free. */
export function tiedHair(shape: HeadShape): HairStyle {
  const [sx, sy, sz] = shape.scale;
  const scalp = cap(shape, (q, _x, y) =>
    mix(0.8, mix(4.5, 8, step(30, 110, y / sy)), step(0, 45, q)),
  );
  const knot: Field = (x, y, z) =>
    ellipsoid(x / sx, y / sy, z / sz, ...KNOT, ...KNOT_AXES) * Math.min(sx, sy, sz) * CAP_SLOPE;
  const cell = (): number => 3;
  return {
    volume: (x, y, z) => smoothMin(scalp.volume(x, y, z), knot(x, y, z), 4),
    grid: {
      x: mirroredAxis(94 * sx, cell),
      y: axis(-85 * sy, 136 * sy, cell),
      z: axis(-230 * sz, 25, cell),
    },
    locks: () => {
      const builder = new RibbonBuilder();
      drawnBack(builder, shape, scalp);
      wound(builder, shape, knot);
      return builder.build();
    },
  };
}

/** Locks from the hairline and the scalp towards the knot. */
function drawnBack(
  builder: RibbonBuilder,
  shape: HeadShape,
  { bed, inside, direction }: Cap,
): void {
  const [_sx, sy, sz] = shape.scale;
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  const target: Point = [0, (KNOT[1] + 2) * sy, (KNOT[2] + 14) * sz];
  const toKnot: Flow = (p) => [target[0] - p[0], target[1] - p[1], target[2] - p[2]];
  for (let i = 0; i < DRAWN_LOCKS; i++) {
    const root = onSurface(bed, centre, rootDirection(i, BORDER_LOCKS, direction));
    const jitter = scatter(i, 2);
    const q = inside(...root.at) - 4.5 * scatter(i * 11 + 5, 0);
    if (q < -2.5) continue;
    const way = Math.hypot(...toKnot(root.at));
    const length = Math.min(way * 0.93, mix(55, 105, jitter));
    if (length < 14) continue;
    // Near the hairline the cap bulges, and a straight piece of lock would sink into it.
    const rise = 0.7 + 0.8 * jitter + 0.7 * bell(q - 12, 9);
    const path = follow(
      bed,
      CAP_SLOPE,
      toKnot,
      root.at,
      7,
      length / 7,
      (t) => mix(0.12, rise, step(0, 0.3, t)) - 0.5 * step(0.75, 1, t),
    );
    const full = mix(0.9, 2.5, step(0, 26, q)) * (0.6 + 0.7 * jitter);
    const tone = 0.72 + 0.5 * scatter(i * 7 + 3, 2);
    builder.add(
      path,
      (t) => full * mix(0.15, 1, step(0, 0.3, t)) * (1 - 0.8 * step(0.6, 1, t)),
      () => tone,
      0.75,
    );
  }
}

/** The knot: locks coiled about its axis, which points back. */
function wound(builder: RibbonBuilder, shape: HeadShape, knot: Field): void {
  const [sx, sy, sz] = shape.scale;
  for (let i = 0; i < KNOT_LOCKS; i++) {
    const jitter = scatter(i, 2);
    const start = 2 * Math.PI * scatter(i, 0);
    const ring = mix(0.1, 1.5, scatter(i, 1));
    const path = Array.from({ length: 9 }, (_, k) => {
      const a = start + (k / 8) * mix(1.2, 1.8, jitter);
      const tilt = ring + (PITCH * (a - start)) / (2 * Math.PI);
      const p: Point = [
        KNOT_AXES[0] * sx * Math.sin(tilt) * Math.cos(a),
        KNOT[1] * sy + KNOT_AXES[1] * sy * Math.sin(tilt) * Math.sin(a),
        KNOT[2] * sz - KNOT_AXES[2] * sz * Math.cos(tilt),
      ];
      // The coil's thick turns; the locks run along them.
      const turn = 1.6 + 1.6 * Math.cos((2 * Math.PI * tilt) / PITCH - a);
      return settle(knot, p, 0.3 + turn + 0.7 * jitter, CAP_SLOPE);
    });
    const tone = 0.7 + 0.5 * scatter(i * 5 + 1, 0);
    builder.add(
      path,
      (t) => 3.4 * (0.6 + 0.6 * jitter) * Math.sin(Math.PI * mix(0.08, 0.95, t)),
      () => tone,
      0.75,
    );
  }
}
