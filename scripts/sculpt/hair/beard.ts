import { type Field, mix, type Point, smoothMax, step } from '../field';
import type { HeadShape } from '../head/shape';
import { skin } from '../head/skin';
import { trace } from '../head/trace';
import { axis, mirroredAxis } from '../nets';
import { chance, RibbonBuilder } from '../ribbons';
import { BEARD_AXIS, BEARD_END, type Beardline, beardline } from './beardline';
import { type Flow, follow, ragged } from './flow';
import type { HairParts } from './style';

/** Slope by which the skin's field under-estimates distance. */
const SLOPE = 0.9;

/** How a beard is worn; millimetres. */
interface Beard {
  /** Of the mass under the hairs: on the cheeks, and more on the chin. */
  readonly cheek: number;
  readonly chin: number;
  /** Shortest and longest hairs on the cheeks; chins wear half as much again. */
  readonly length: readonly [number, number];
  /** How far tips stand off. */
  readonly lift: number;
  /** Distance from its border at which it is full. */
  readonly soft: number;
  readonly hairs: number;
  readonly width: number;
}

const SHORT: Beard = {
  cheek: 0.9,
  chin: 1.4,
  length: [4, 6.5],
  lift: 1,
  soft: 12,
  hairs: 7600,
  width: 2.5,
};
const FULL: Beard = {
  cheek: 5,
  chin: 11,
  length: [13, 20],
  lift: 2.6,
  soft: 16,
  hairs: 6800,
  width: 5,
};

/** The beards a head can wear. */
export const shortBeard = (shape: HeadShape): HairParts => beard(shape, SHORT);
export const fullBeard = (shape: HeadShape): HairParts => beard(shape, FULL);

function beard(shape: HeadShape, worn: Beard): HairParts {
  const [sx, sy, sz] = shape.scale;
  const face = skin(shape);
  const line = beardline(shape);
  const chinness = (x: number, y: number, z: number): number =>
    step(40, 12, Math.abs(x) / sx) * step(-78, -92, y / sy) * step(-52, -30, z / sz);
  const thickness = (m: number, x: number, y: number, z: number): number =>
    mix(worn.cheek, worn.chin, chinness(x, y, z)) * step(0, worn.soft * 1.4, m);
  const volume: Field = (x, y, z) => {
    const d = face(x, y, z);
    if (Math.abs(d) > 40) return Math.abs(d) - 14;
    const m = line.inside(x, y, z) - 3;
    const outside = d - mix(-2, thickness(Math.max(m, 0), x, y, z), step(-2, 3, m));
    // A shell: what lies deeper in the head is never seen.
    return Math.max(smoothMax(outside, -m - 2.5, 2), -d - 4) * 0.85;
  };
  const bed: Field = (x, y, z) => {
    const d = face(x, y, z);
    return Math.abs(d) > 40
      ? d
      : d - SLOPE * thickness(Math.max(line.inside(x, y, z) - 3, 0), x, y, z);
  };
  return {
    volume,
    paint: (x, y, z) => ({
      shade: 0.62,
      strand: line.azimuth(x, z) / 130,
      sheer: 0.95 * step(worn.soft, 3, line.inside(x, y, z)),
    }),
    grid: {
      x: mirroredAxis(80 * sx, () => 2),
      y: axis(-142 * sy, 2, () => 2),
      z: axis(-100 * sz, 36, () => 2),
    },
    locks: () => {
      const builder = new RibbonBuilder();
      for (let i = 0; i < worn.hairs; i++) {
        const root = rootOf(i, shape, face);
        if (root) hair(builder, i, root, worn, bed, line, chinness(...root), shape);
      }
      return builder.build();
    },
  };
}

/** A place on the beard's skin: seen from around (the upper lip more often), or from below the jaw. */
function rootOf(i: number, { scale }: HeadShape, face: Field): Point | undefined {
  const [sx, sy, sz] = scale;
  const [u, v] = [chance(i, 10), chance(i, 11)];
  if (i % 4 === 0) {
    const from: Point = [mix(-48, 48, u) * sx, -126 * sy, mix(-42, 4, v) * sz];
    return face(...from) < 0 ? undefined : trace(face, from, [0, 1, 0]);
  }
  const lip = i % 6 === 1;
  const reach = lip ? 34 : BEARD_END;
  const a = (mix(-reach, reach, u) * Math.PI) / 180;
  const y = (lip ? mix(-59, -41, v) : mix(-122, -5, v)) * sy;
  return trace(
    face,
    [130 * Math.sin(a) * sx, y, (BEARD_AXIS + 130 * Math.cos(a)) * sz],
    [-Math.sin(a) * sx, 0, -Math.cos(a) * sz],
  );
}

function hair(
  builder: RibbonBuilder,
  i: number,
  root: Point,
  worn: Beard,
  bed: Field,
  line: Beardline,
  chin: number,
  shape: HeadShape,
): void {
  const m = line.inside(...root) + 1.5 * (chance(i, 1) - 0.6);
  if (m < 0) return;
  const [, sy] = shape.scale;
  const within = step(0, worn.soft, m);
  const moustache = step(-66, -58, root[1] / sy) * step(36, 26, Math.abs(root[0]));
  const flow: Flow = ([x, y]) => {
    const side = Math.tanh(x / 4);
    const under = step(-100, -112, y / sy);
    return [
      mix(0.12 * side, 0.95 * side, moustache),
      mix(-1, -0.55, moustache),
      0.35 + 0.9 * under,
    ];
  };
  const [short, long] = worn.length;
  const length =
    mix(short, long, chance(i, 2)) *
    mix(0.7, 1, within) *
    mix(1, 1.5, chin) *
    mix(1, 0.75, moustache);
  const lift = worn.lift * mix(0.3, 1, within * chance(i, 3)) * mix(1, 1.8, chin);
  const steps = length > 9 ? 3 : 2;
  const stray = 0.7 * (chance(i, 4) - 0.5);
  const bend = 0.8 * (chance(i, 5) - 0.5);
  const path = follow(bed, SLOPE, flow, {
    root,
    length,
    steps,
    height: (t) => 0.15 + 0.5 * within * t + lift * t * t,
    stray: (t) => stray + bend * t,
  });
  const full = worn.width * mix(0.4, 1, within) * mix(0.7, 1.2, chance(i, 6));
  const least = mix(0.8, 0.1, within) * mix(0.85, 1.1, chance(i, 8));
  const ends = ragged(0.45, 0.7, mix(0.95, 0.4, within));
  const tone = mix(0.82, 1.14, chance(i, 7));
  builder.add(path, {
    width: (t) => full * mix(1, 0.8, t),
    shade: () => tone,
    sheer: (t) => Math.max(least, ends(t)),
    hairs: Math.max(2, Math.round(full / 0.16)),
    over: lift,
    roundness: 0,
  });
}
