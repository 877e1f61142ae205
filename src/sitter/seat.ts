/** The seat under a seated figure: how high the hips stand over it, and how they lie flat on it. */
import type { Vec3 } from '../optics/types';
import { step } from './neck';
import type { Sculpture, SculptureMesh } from './sculpture';
import { BONES, type Bone, type Skeleton } from './skeleton';
import type { Dimensions, Substance } from './types';

/** A seat is round; its radius, metres. */
export const SEAT_RADIUS = 0.165;

/**
 * Hip joint over the seat, as a share of the hips' breadth: 81 mm of the median woman, 79 of the
 * median man, whose sitting height, stature and crotch height (ANSUR II 2012) leave 81 and 78.
 */
const HIP_OVER_SEAT = 0.23;

/** Hip joint over the seat of a person sitting upright, metres. */
export const hipOverSeat = (d: Pick<Dimensions, 'hip_breadth_standing'>): number =>
  (HIP_OVER_SEAT * d.hip_breadth_standing) / 1000;

/**
 * How much nearer the head the hips are, seated, than in the upright figure, metres: what the
 * sitting height leaves over the seat. The waist takes it; the legs keep their lengths.
 */
export const hipsRise = (rest: Skeleton, d: Dimensions): number =>
  (d.vertex_above_eyes - d.sitting_height) / 1000 + hipOverSeat(d) - rest.pelvis[1];

/** Where a posed figure sits, metres. */
export interface Seat {
  /** Midway between the hip joints. */
  readonly hips: Vec3;
  /** The level way that the thighs point, a unit vector, and the length of a thigh. */
  readonly forward: Vec3;
  readonly thigh: number;
  /** Height of the seat's top. */
  readonly height: number;
}

/** What is worn between a body and its seat. */
const WORN: ReadonlySet<Substance> = new Set(['top', 'outer', 'trousers']);

interface Worn {
  readonly substance: Substance;
  readonly positions: Float32Array;
}

/** The lowest cloth over a round seat: its height, metres. */
export function lowestOn(
  [x0, , z0]: Vec3,
  meshes: readonly Worn[],
  among: (mesh: number, vertex: number) => boolean = () => true,
): number {
  let low = Number.POSITIVE_INFINITY;
  meshes.forEach(({ substance, positions: P }, m) => {
    if (!WORN.has(substance)) return;
    for (let o = 0; o < P.length; o += 3) {
      const y = P[o + 1] as number;
      const aside = Math.hypot((P[o] as number) - x0, (P[o + 2] as number) - z0);
      if (y < low && aside < SEAT_RADIUS && among(m, o / 3)) low = y;
    }
  });
  return low;
}

/** How flat what lies on the seat becomes: its thickness there over what it was. */
const FLATTENED = 0.1;
/** Round the flat the surface bends over this share of the hips' height over the seat. */
const ROUNDED = 0.22;
/** In front of the seat, the press ends at the latest at this share of the thigh. */
const FRONT = 0.8;

/** Depth under the hip joints -> pressed depth, and how fast it grows there. */
interface Press {
  readonly at: (depth: number) => number;
  readonly slope: (depth: number) => number;
}

/**
 * The press that takes the depth `deepest` to `seat`: nothing moves far above, all is nearly flat
 * at the seat, and deeper stays deeper, so that cloth stays outside of what it covers.
 */
export function pressOf(deepest: number, seat: number): Press {
  const width = ROUNDED * seat;
  /** Softplus: how much a depth past `start` gives way, rounded; nothing at the hip joints. */
  const softplus = (x: number): number => width * Math.log1p(Math.exp(x / width));
  const pressed = (depth: number, start: number): number =>
    depth - (1 - FLATTENED) * (softplus(depth - start) - softplus(-start));
  let [low, high] = [seat - deepest, deepest + 20 * width];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (pressed(deepest, middle) < seat) low = middle;
    else high = middle;
  }
  const start = low;
  return {
    at: (depth) => pressed(depth, start),
    // The derivative of softplus is the logistic function.
    slope: (depth) => 1 - (1 - FLATTENED) / (1 + Math.exp((start - depth) / width)),
  };
}

const SITTING: ReadonlySet<number> = new Set(
  (['pelvis', 'thigh_left', 'thigh_right'] satisfies Bone[]).map((bone) => BONES.indexOf(bone)),
);

/** Share of a vertex that goes with pelvis and thighs, 0..1. */
function sittingShare({ joints, weights }: SculptureMesh, v: number): number {
  if (!joints || !weights) return 0;
  let sum = 0;
  for (let k = 4 * v; k < 4 * v + 4; k++)
    if (SITTING.has(joints[k] as number)) sum += weights[k] as number;
  return sum / 255;
}

/**
 * Presses hips and thighs, with all that is worn on them, onto the seat, in place: the lowest
 * cloth over the seat comes to lie at its height. In front of the seat the press fades, as the
 * legs hang over its edge.
 */
export function pressOnSeat(
  sculpture: Pick<Sculpture, 'meshes'>,
  { hips, forward, thigh, height }: Seat,
  posed: readonly (Worn & { readonly normals: Float32Array })[],
): void {
  const shareOf = (m: number, v: number): number =>
    sittingShare(sculpture.meshes[m] as SculptureMesh, v);
  const deepest = hips[1] - lowestOn(hips, posed, (m, v) => shareOf(m, v) === 1);
  const press = pressOf(deepest, hips[1] - height);
  const end = thigh;
  const start = Math.min(SEAT_RADIUS, FRONT * thigh);
  posed.forEach(({ positions: P, normals: N }, m) => {
    for (let o = 0; o < P.length; o += 3) {
      const depth = hips[1] - (P[o + 1] as number);
      if (depth <= 0) continue;
      const share = shareOf(m, o / 3);
      if (share === 0) continue;
      const along =
        ((P[o] as number) - hips[0]) * forward[0] + ((P[o + 2] as number) - hips[2]) * forward[2];
      const fade = step(end, start, along);
      if (fade === 0) continue;
      const lift = depth - press.at(depth);
      P[o + 1] = (P[o + 1] as number) + share * fade * lift;
      // Normals go by the inverse transpose of the press's gradient.
      const up = (N[o + 1] as number) / (1 - share * fade * (1 - press.slope(depth)));
      const lean = share * fading(end, start, along) * lift * up;
      const n = [
        (N[o] as number) - lean * forward[0],
        up,
        (N[o + 2] as number) - lean * forward[2],
      ] as const;
      const length = Math.hypot(...n);
      n.forEach((c, j) => {
        N[o + j] = c / length;
      });
    }
  });
}

/** Derivative of `step(a, b, x)` by x. */
function fading(a: number, b: number, x: number): number {
  const t = (x - a) / (b - a);
  return t > 0 && t < 1 ? (6 * t * (1 - t)) / (b - a) : 0;
}
