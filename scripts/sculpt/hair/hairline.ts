import { clamp, curve, type Field, type Point } from '../field';
import type { HeadShape } from '../head/shape';
import { bareHead } from '../head/skin';
import { best, range, trace } from '../head/trace';
import { onSurface } from './flow';

/** Middle from which directions to the hairline are taken, drawn coordinates. */
export const HAIR_CENTRE = [0, 20, -85] as const;

export interface Hairline {
  /** Millimetres inside the hair at a point of the scalp; negative on bare skin. */
  inside(x: number, y: number, z: number): number;
  /**
   * From HAIR_CENTRE to the hairline at a share 0..1 of its length (0 and 1 at the nape, 0.5 over the
   * forehead), raised by some degrees.
   */
  direction(share: number, raised: number): Point;
}

/**
 * The hairline before the ear, drawn millimetres. Over the forehead: distance from the midline and
 * height above the glabella; from the temple to the sideburn: height and depth seen from the side.
 * Height of the trichion 50 to 55 mm, the man's receding temples and the sideburns are a sculptor's
 * choice after remembered proportions (thirds of the face).
 */
const FRONT = {
  female: {
    forehead: [
      [0, 50],
      [14, 50.6],
      [27, 48.2],
      [38, 41.5],
      [46, 32],
      [52, 21.5],
    ],
    temple: [
      [36, -30],
      [24, -42],
      [12, -52],
      [1, -59.5],
      [-9, -67],
      [-15, -73.5],
    ],
  },
  male: {
    forehead: [
      [0, 54],
      [14, 54.6],
      [26, 57],
      [35, 56],
      [42, 49],
      [48, 39],
      [53, 27],
    ],
    temple: [
      [38, -28.5],
      [27, -41],
      [14, -50],
      [2, -57],
      [-11, -65],
      [-24, -72],
    ],
  },
} as const;

/** Behind the sideburn, round the ear, to the nape: azimuth and elevation about HAIR_CENTRE, degrees. */
const BEHIND = {
  female: [
    [85.5, -25],
    [90, -9],
    [96, 2.5],
    [103, 2],
    [110, -8],
    [117, -24],
    [126, -36],
    [138, -42],
    [155, -46],
    [180, -47],
  ],
  male: [
    [85.5, -31],
    [90, -11],
    [96, 2.5],
    [103, 2],
    [110, -8],
    [117, -24],
    [126, -35],
    [138, -40],
    [155, -43],
    [180, -44],
  ],
} as const;

/** Degrees by which the line wanders, so that it is no drawn curve; a sculptor's choice. */
const wander = (azimuth: number): number =>
  0.5 * Math.sin(azimuth * 0.61 + 1) +
  0.35 * Math.sin(azimuth * 1.37) +
  0.25 * Math.sin(azimuth * 2.9);

const DEGREES = 180 / Math.PI;
const known = new WeakMap<HeadShape, Hairline>();

/** The hairline, a curve of elevation over azimuth (both in degrees) about HAIR_CENTRE. */
export function hairline(shape: HeadShape): Hairline {
  const found = known.get(shape) ?? drawn(shape);
  known.set(shape, found);
  return found;
}

function drawn(shape: HeadShape): Hairline {
  const [sx, sy, sz] = shape.scale;
  const line = curve([...beforeTheEar(shape), ...BEHIND[shape.id as 'female' | 'male']]);
  const elevation = (azimuth: number): number => line(azimuth) + wander(azimuth);
  const border = onSkin(shape, elevation);
  const inside = (X: number, Y: number, Z: number): number => {
    const x = X / sx;
    const y = Y / sy - HAIR_CENTRE[1];
    const z = Z / sz - HAIR_CENTRE[2];
    const azimuth = Math.atan2(Math.abs(x), z) * DEGREES;
    const height = Math.atan2(y, Math.hypot(x, z)) * DEGREES;
    return distanceTo(border, Math.abs(X), Y, Z) * (height > elevation(azimuth) ? 1 : -1);
  };
  // Length of the line from the forehead to each degree of azimuth, so that locks stand evenly.
  const lengths = [0];
  for (let a = 1; a <= 180; a++) {
    const flat = Math.cos(line(a) / DEGREES);
    lengths.push((lengths[a - 1] as number) + Math.hypot(flat, line(a) - line(a - 1)));
  }
  const direction = (share: number, raised: number): Point => {
    const wanted = Math.abs(2 * share - 1) * (lengths[180] as number);
    const over = Math.max(
      1,
      lengths.findIndex((l) => l >= wanted),
    );
    const [from, to] = [lengths[over - 1] as number, lengths[over] as number];
    const degrees = over - 1 + (wanted - from) / (to - from);
    const e = (elevation(degrees) + raised) / DEGREES;
    const a = (Math.sign(share - 0.5) * degrees) / DEGREES;
    return [sx * Math.cos(e) * Math.sin(a), sy * Math.sin(e), sz * Math.cos(e) * Math.cos(a)];
  };
  return { inside, direction };
}

/** The line's left half as a chain of points on the bare head, xyz, about 3 mm apart. */
function onSkin(shape: HeadShape, elevation: (azimuth: number) => number): Float64Array {
  const [sx, sy, sz] = shape.scale;
  const bare = bareHead(shape);
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  const at = (azimuth: number): Point => {
    const [a, e] = [azimuth / DEGREES, elevation(azimuth) / DEGREES];
    const level = Math.cos(e);
    return onSurface(bare, centre, [
      sx * level * Math.sin(a),
      sy * Math.sin(e),
      sz * level * Math.cos(a),
    ]).at;
  };
  const chain: number[] = [];
  let last: Point = at(0);
  chain.push(...last);
  for (let azimuth = 0.25; azimuth <= 180; azimuth += 0.25) {
    const p = at(azimuth);
    if (Math.hypot(p[0] - last[0], p[1] - last[1], p[2] - last[2]) < 3 && azimuth < 180) continue;
    chain.push(...p);
    last = p;
  }
  return Float64Array.from(chain);
}

/** Distance from a point to a chain of points. */
function distanceTo(chain: Float64Array, x: number, y: number, z: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 5 < chain.length; i += 3) {
    const px = x - (chain[i] as number);
    const py = y - (chain[i + 1] as number);
    const pz = z - (chain[i + 2] as number);
    const dx = (chain[i + 3] as number) - (chain[i] as number);
    const dy = (chain[i + 4] as number) - (chain[i + 1] as number);
    const dz = (chain[i + 5] as number) - (chain[i + 2] as number);
    const t = clamp((px * dx + py * dy + pz * dz) / (dx * dx + dy * dy + dz * dz));
    const far = (px - t * dx) ** 2 + (py - t * dy) ** 2 + (pz - t * dz) ** 2;
    if (far < least) least = far;
  }
  return Math.sqrt(least);
}

/** Azimuth and elevation of the line over the forehead and down the temple. */
function beforeTheEar(shape: HeadShape): [number, number][] {
  const [sx, sy, sz] = shape.scale;
  const bare: Field = bareHead(shape);
  const { forehead, temple } = FRONT[shape.id as 'female' | 'male'];
  const front = (x: number, y: number): Point =>
    best([trace(bare, [x * sx, y, 60], [0, 0, -1])], () => 0);
  const glabella = best(
    range(20, 34, 1).map((y) => front(0, y * sy)),
    (p) => p[2],
  );
  const points = [
    ...forehead.map(([x, above]) => front(x, glabella[1] + above)),
    ...temple.map(([y, z]) => best([trace(bare, [160, y * sy, z * sz], [-1, 0, 0])], () => 0)),
  ];
  return points.map(([X, Y, Z]) => {
    const [x, y, z] = [X / sx, Y / sy - HAIR_CENTRE[1], Z / sz - HAIR_CENTRE[2]];
    return [Math.atan2(x, z) * DEGREES, Math.atan2(y, Math.hypot(x, z)) * DEGREES];
  });
}
