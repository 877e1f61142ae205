import {
  bell,
  curve,
  type Field,
  mix,
  type Point,
  smoothMax,
  smoothMin,
  softAbs,
  step,
} from '../field';
import type { HeadShape } from '../head/shape';
import { bareHead } from '../head/skin';
import { axis, mirroredAxis } from '../nets';
import { CAP_SLOPE, type Cap, cap, wave } from './cap';
import type { Flow } from './flow';
import { Groom, type Root } from './groom';
import type { HairParts } from './style';

/** Hair that hangs round the head, parted in the middle; drawn millimetres. All a sculptor's choice. */
interface Hanging {
  /** Height of the tips. */
  readonly tips: number;
  /** Half breadth, depth of the middle and half depth of the hanging hair, by height. */
  readonly breadth: readonly (readonly [number, number])[];
  readonly middle: readonly (readonly [number, number])[];
  readonly depth: readonly (readonly [number, number])[];
  /** Depth of its front border, by height. */
  readonly front: readonly (readonly [number, number])[];
  /** Thickness over chest and back where it lies on the shoulders; none when it ends above them. */
  readonly lying?: number;
}

const BOB: Hanging = {
  tips: -84,
  breadth: [
    [75, 80],
    [30, 91],
    [-20, 94],
    [-60, 90],
    [-84, 79],
  ],
  middle: [
    [40, -88],
    [-84, -92],
  ],
  depth: [
    [75, 98],
    [30, 108],
    [-20, 104],
    [-60, 90],
    [-84, 76],
  ],
  front: [
    [84, -10],
    [60, -20],
    [36, -29],
    [0, -36],
    [-40, -34],
    [-84, -27],
  ],
};

const LONG: Hanging = {
  tips: -250,
  breadth: [
    [75, 80],
    [30, 90],
    [-20, 93],
    [-80, 88],
    [-130, 84],
    [-250, 88],
  ],
  middle: [
    [40, -88],
    [-60, -94],
    [-130, -107],
    [-250, -118],
  ],
  depth: [
    [75, 98],
    [30, 108],
    [-20, 104],
    [-80, 98],
    [-130, 97],
    [-250, 104],
  ],
  front: [
    [84, -10],
    [60, -20],
    [36, -30],
    [0, -40],
    [-60, -48],
    [-130, -52],
    [-250, -40],
  ],
  lying: 21,
};

/** Thickness of the hanging hair, mm. */
const SHEET = 14;
/** Strands lie on surfaces that go on below the tips by this, so that they hang free of the edge. */
const BEYOND = 30;

/** A strand that runs deeper under the skin goes through the neck, mm. */
const IN_SKIN = 8;

export const bobHair = (shape: HeadShape): HairParts => hangingHair(shape, BOB);
export const longHair = (shape: HeadShape): HairParts => hangingHair(shape, LONG);

function hangingHair(shape: HeadShape, hanging: Hanging): HairParts {
  const [sx, sy, sz] = shape.scale;
  // Locks of hair run down: number them round the head.
  const comb = (x: number, z: number): number => Math.atan2(softAbs(x, 30), z / sz + 95) / Math.PI;
  const gathered = (x: number, y: number, z: number): number =>
    0.9 * wave(comb(x, z) * 24 + 0.006 * y) + 0.35 * wave(comb(x, z) * 57 + 0.01 * y);
  const scalp = cap(shape, (q, x, y, z) => {
    const parted = 1 - 0.2 * bell(x, 6) * step(40, 90, y / sy);
    const full = mix(13, 11, step(40, 100, y / sy)) * parted;
    return (
      mix(0.4, full, step(0, mix(26, 20, step(0, 60, z / sz + 60)), q)) +
      step(6, 40, q) * gathered(x, y, z)
    );
  });
  const { curtain, bottom } = drape(shape, hanging, gathered);
  const volume: Field = (x, y, z) =>
    smoothMin(scalp.volume(x, y, z), smoothMax(curtain(x, y, z), bottom(y, 12), 12), 12);
  // Below the ears it lies on itself, not on the neck.
  const bed: Field = (x, y, z) =>
    smoothMin(scalp.bed(x, y, z) + 80 * step(0, -70, y), curtain(x, y, z), 12);
  return {
    volume,
    paint: (x, y, z) => ({
      shade: 0.8,
      strand: comb(x, z),
      sheer: Math.max(
        z > -90 * sz ? 0.95 * step(15, 7, scalp.inside(x, y, z)) * step(20, 30, y) : 0,
        step(32, 9, y / sy - hanging.tips),
      ),
    }),
    grid: {
      x: mirroredAxis(112 * sx, () => 3),
      y: axis((hanging.tips - BEYOND - 12) * sy, 145 * sy, () => 3),
      z: axis(-250 * sz, 30, () => 3),
    },
    locks: () => fallen(shape, { ...scalp, bed }, hanging).build(),
  };
}

const byHeight = (points: readonly (readonly [number, number])[]): ((y: number) => number) =>
  curve([...points].sort((p, q) => p[0] - q[0]));

/** The hanging part: a shell round head and neck, open before the face, and what lies on the shoulders. */
function drape(
  shape: HeadShape,
  { tips, breadth, middle, depth, front, lying }: Hanging,
  gathered: Field,
): { curtain: Field; bottom: (y: number, above: number) => number } {
  const [sx, sy, sz] = shape.scale;
  const [a, c, b, open] = [byHeight(breadth), byHeight(middle), byHeight(depth), byHeight(front)];
  const bare = bareHead(shape);
  const bottom = (y: number, above: number): number => (tips + above) * sy - y;
  const curtain: Field = (X, Y, Z) => {
    const [x, y, z] = [X / sx, Y / sy, Z / sz];
    if (Math.abs(x) > 170 || y > 150 || z < -300) return 60;
    const u = x / a(y);
    const v = (z - c(y)) / b(y);
    const k = Math.hypot(u, v);
    const outer =
      (k * (k - 1)) / Math.max(1e-4, Math.hypot(u / a(y), v / b(y))) - gathered(X, Y, Z);
    let d = smoothMax(outer, -outer - SHEET, 5);
    d = smoothMax(d, z - open(y), 9);
    if (lying !== undefined && y < -90) {
      const skin = bare(X, Y, Z);
      const on = smoothMax(skin - lying - gathered(X, Y, Z), 6 - skin, 4);
      // Before the shoulders it keeps off the middle of the chest.
      const middleFree = mix(-40, 48, step(-110, -80, z)) - Math.abs(x);
      d = smoothMin(
        smoothMax(d, 14 - skin, 6),
        smoothMax(smoothMax(on, Math.abs(x) - 90, 12), smoothMax(middleFree, y + 118, 10), 10),
        12,
      );
    }
    d = smoothMax(d, y - 84, 20);
    return smoothMax(d, bottom(Y, -BEYOND), 6) * CAP_SLOPE * 0.9;
  };
  return { curtain, bottom };
}

function fallen(shape: HeadShape, scalp: Cap, { tips, front }: Hanging): Groom {
  const [sx, sy, sz] = shape.scale;
  const flow: Flow = ([X, Y, Z]) => {
    const [x, y, z] = [X / sx, Y / sy, Z / sz];
    const side = Math.tanh(x / 6);
    // From the parting aside, over the brow also back; then down, the tips a little inwards.
    const down = Math.max(step(22, 70, Math.abs(x)), step(30, -10, y), step(-140, -175, z));
    const brow = step(-80, -10, z);
    const tucked = step(tips + 40, tips, y) * 0.2;
    return [
      mix(side, -tucked * side, down),
      mix(mix(-0.5, 0.05, brow), -1, down),
      mix(mix(-0.5, -0.75, brow), -0.04, down),
    ];
  };
  const long = tips < -150;
  const tip = (r: Root): number =>
    (tips + mix(0, long ? 110 : 60, r.chance(1) ** 4) + 24 * (r.chance(16) - 0.65)) * sy;
  const open = byHeight(front);
  const offFace = ([, y, z]: Point): boolean =>
    y > 30 * sy || z / sz < open(y / sy) + (y < -90 ? 22 : 5);
  const bare = bareHead(shape);
  const offNeck = ([x, y, z]: Point): boolean => bare(x, y, z) > -IN_SKIN;
  return new Groom(shape, scalp, flow, (at) => offFace(at) && offNeck(at))
    .sheets({
      count: long ? 1500 : 1650,
      length: (r) => r.at[1] - tip(r),
      tip,
      rise: (r) => mix(0.2, 1.4, r.chance(2)) * step(0, 25, r.q) + 0.1,
      lift: (r) => 2 * (r.chance(10) - 0.2),
      width: (r) => mix(2.4, 6.5, step(2, 30, r.q)) * mix(0.7, 1.2, r.chance(4)),
      stray: 0.05,
      steps: long ? 11 : 9,
      ragged: [0.12, long ? 0.1 : 0.16],
    })
    .border({
      count: 900,
      // The nape's own hair is hidden.
      length: (r) => (r.at[1] < 25 ? 0 : mix(30, 85, r.chance(9))),
      rise: (r) => mix(0.2, 0.9, r.chance(11)),
      width: (r) => mix(0.9, 3, step(-1, 9, r.q) * r.chance(12)),
      stray: 0.12,
      steps: 5,
    })
    .flyaways(170, 90, 7);
}
