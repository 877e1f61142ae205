import { ellipsoid, type Field, mix, type Point, smoothMin, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { chance, type RibbonBuilder, scatter, settle } from '../ribbons';
import { CAP_SLOPE, type Cap, cap, wave } from './cap';
import { type Flow, ragged } from './flow';
import { Groom, type Root } from './groom';
import type { HairParts } from './style';

/** The knot's middle and half axes, drawn coordinates. */
const KNOT = [0, 26, -190] as const;
const KNOT_AXES = [35, 32, 22] as const;
/** Angle between two turns of the knot's coil, seen from its middle. */
const PITCH = 0.8;
const KNOT_SHEETS = 330;

/** Hair drawn back from the face to a knot behind the head; the ears stay free. */
export function tiedHair(shape: HeadShape): HairParts {
  const [sx, sy, sz] = shape.scale;
  // Where a point lies round the line from the knot to the brow: 0 over the crown .. 1 at the nape.
  const comb = (x: number, y: number, z: number): number => {
    const above = y / sy - mix(KNOT[1], -6, (z / sz - KNOT[2]) / -KNOT[2]);
    return Math.atan2(Math.abs(x / sx), above) / Math.PI;
  };
  const scalp = cap(shape, (q, x, y, z) => {
    const top = step(20, 95, y / sy) * mix(0.6, 1, step(70, 25, Math.abs(x) / sx));
    const gathered =
      step(3, 24, q) * (0.9 * wave(comb(x, y, z) * 26) + 0.35 * wave(comb(x, y, z) * 61));
    return mix(0.3, mix(3, 10, top), step(0, 42, q)) + gathered;
  });
  const knot: Field = (x, y, z) =>
    ellipsoid(x / sx, y / sy, z / sz, ...KNOT, ...KNOT_AXES) * Math.min(sx, sy, sz) * CAP_SLOPE;
  const cell = (): number => 3;
  return {
    volume: (x, y, z) => smoothMin(scalp.volume(x, y, z), knot(x, y, z), 7),
    paint: (x, y, z) => ({
      shade: 0.8,
      strand: comb(x, y, z),
      sheer: y < KNOT[1] * sy && z < -150 * sz ? 0 : 0.95 * step(17, 7, scalp.inside(x, y, z)),
    }),
    grid: {
      x: mirroredAxis(98 * sx, cell),
      y: axis(-85 * sy, 140 * sy, cell),
      z: axis(-230 * sz, 25, cell),
    },
    locks: () => {
      const groom = drawnBack(shape, scalp, comb);
      wound(groom.builder, shape, knot);
      return groom.build();
    },
  };
}

/** Hairs from the hairline and the scalp towards the knot, and those that escape it. */
function drawnBack(shape: HeadShape, scalp: Cap, comb: Field): Groom {
  const [, sy, sz] = shape.scale;
  const target: Point = [0, KNOT[1] * sy, (KNOT[2] + 10) * sz];
  const toKnot: Flow = (p) => {
    const way: Point = [target[0] - p[0], target[1] - p[1], target[2] - p[2]];
    // Over the crown it is first drawn back and only then down.
    const early = step(60, 150, Math.hypot(...way)) * step(20, 80, p[1]);
    // Before the ear it goes up and over it.
    const ear = step(-40, -68, p[2] / sz) * step(-112, -96, p[2] / sz) * step(34, 12, p[1] / sy);
    return [way[0] * (1 - 0.25 * early), way[1] + 40 * early + 120 * ear, way[2]];
  };
  const left = ([x, y, z]: Point): number =>
    Math.hypot(target[0] - x, target[1] - y, target[2] - z) - 14;
  // Locks as the comb gathers them, some lighter than others.
  const tone = ({ at }: Root): number =>
    1 + 0.16 * wave(comb(...at) * 41) + 0.1 * wave(comb(...at) * 97);
  return new Groom(shape, scalp, toKnot)
    .sheets({
      tone,
      count: 1600,
      length: (r) => Math.min(left(r.at), mix(60, 120, r.chance(1))),
      rise: (r) => mix(0.2, 1.3, r.chance(2)) * step(0, 25, r.q) + 0.1,
      width: (r) => mix(2.2, 6.5, step(2, 30, r.q)) * mix(0.7, 1.2, r.chance(4)),
      stray: 0.025,
      steps: 6,
    })
    .border({
      tone,
      count: 1500,
      length: (r) => Math.min(left(r.at), mix(30, 80, r.chance(9))),
      rise: (r) => mix(0.2, 0.8, r.chance(11)),
      width: (r) => mix(1.2, 3, step(-1, 9, r.q) * r.chance(12)),
      stray: 0.14,
      steps: 4,
    })
    .down(420)
    .flyaways(200);
}

/** The knot: sheets coiled about its axis, which points back. */
function wound(builder: RibbonBuilder, shape: HeadShape, knot: Field): void {
  const [sx, sy, sz] = shape.scale;
  for (let i = 0; i < KNOT_SHEETS; i++) {
    const start = 2 * Math.PI * scatter(i, 0);
    const ring = mix(0.05, 1.6, scatter(i, 1));
    const sway = 0.25 * (chance(i, 40) - 0.5);
    const path = Array.from({ length: 8 }, (_, k) => {
      const a = start + (k / 7) * mix(1.3, 2, chance(i, 41));
      const tilt = ring + (PITCH * (a - start)) / (2 * Math.PI) + sway * (k / 7);
      const p: Point = [
        KNOT_AXES[0] * sx * Math.sin(tilt) * Math.cos(a),
        KNOT[1] * sy + KNOT_AXES[1] * sy * Math.sin(tilt) * Math.sin(a),
        KNOT[2] * sz - KNOT_AXES[2] * sz * Math.cos(tilt),
      ];
      // The coil's thick turns; the hairs run along them.
      const turn = 1.5 + 1.5 * Math.cos((2 * Math.PI * tilt) / PITCH - a);
      return settle(knot, p, 0.3 + turn + 0.8 * chance(i, 42), CAP_SLOPE);
    });
    const full = mix(3, 6, chance(i, 43));
    const tone = mix(0.78, 1.12, chance(i, 44));
    builder.add(path, {
      width: () => full,
      shade: () => tone,
      sheer: ragged(0.3, 0.4),
      hairs: Math.round(full / 0.3),
      over: chance(i, 42),
      roundness: 0.2,
    });
  }
}
