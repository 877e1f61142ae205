import type { Vec3 } from '../optics/types';
import { PROPORTION } from './landmarks';
import { positionAt, type Sculpture } from './sculpture';
import { type Landmarks, REGION, type Side } from './types';

/**
 * The ears move as pieces of their own: a map scaled by the ear's dimensions takes the tragion and
 * three points of the rim to their places, and fades into the head's warp at the ear's root.
 */
export interface Ears {
  readonly mesh: number;
  readonly sides: readonly EarPiece[];
}

interface EarPiece {
  readonly side: Side;
  readonly vertices: Uint32Array;
  /** 0 at the root, 1 where the ear stands free. */
  readonly weights: Float32Array;
  readonly tragion: Vec3;
  /** Rows: rim points less the tragion. */
  readonly rim: readonly [Vec3, Vec3, Vec3];
}

/** Greatest width of the root over which the ear's map takes over from the head's, metres. */
const ROOT = 0.009;
const RIM = ['superaurale', 'subaurale', 'postaurale'] as const;

/** @throws when the sculpture has no ears. */
export function findEars(sculpture: Sculpture): Ears {
  const [mesh] = sculpture.landmarks.tragion_left;
  const skin = sculpture.meshes[mesh];
  if (!skin) throw new RangeError('the tragion stands on no mesh');
  const away = distanceIntoEars(skin.positions, skin.indices, skin.regions);
  const sides = (['left', 'right'] as const).map((side): EarPiece => {
    const region = side === 'left' ? REGION.earLeft : REGION.earRight;
    const vertices: number[] = [];
    skin.regions.forEach((r, v) => {
      if (r === region) vertices.push(v);
    });
    if (!vertices.length) throw new RangeError(`the sculpture has no ${side} ear`);
    const at = (name: (typeof RIM)[number] | 'tragion'): Vec3 =>
      positionAt(sculpture.meshes, sculpture.landmarks[`${name}_${side}`]);
    const tragion = at('tragion');
    // The free rim must follow the ear's map wholly, or it would miss its landmarks.
    const free = (['superaurale', 'postaurale'] as const).map(
      (name) => away[sculpture.landmarks[`${name}_${side}`][1]] as number,
    );
    const root = Math.min(ROOT, ...free);
    return {
      side,
      vertices: Uint32Array.from(vertices),
      weights: Float32Array.from(vertices, (v) => smooth((away[v] as number) / root)),
      tragion,
      rim: RIM.map((name) => less(at(name), tragion)) as [Vec3, Vec3, Vec3],
    };
  });
  return { mesh, sides };
}

const less = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const smooth = (t: number): number => {
  const s = Math.min(1, Math.max(0, t));
  return s * s * (3 - 2 * s);
};

/** Distance along edges from the ears' border into them, metres; 0 elsewhere. */
function distanceIntoEars(P: Float32Array, I: Uint32Array, regions: Uint8Array): Float64Array {
  const isEar = (v: number): boolean => {
    const r = regions[v];
    return r === REGION.earLeft || r === REGION.earRight;
  };
  const away = Float64Array.from(regions, (_, v) => (isEar(v) ? Number.POSITIVE_INFINITY : 0));
  const edges: [number, number, number][] = [];
  for (let t = 0; t < I.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const a = I[t + k] as number;
      const b = I[t + ((k + 1) % 3)] as number;
      if (!isEar(a) && !isEar(b)) continue;
      const along = (j: number): number => (P[3 * a + j] as number) - (P[3 * b + j] as number);
      edges.push([a, b, Math.hypot(along(0), along(1), along(2))]);
    }
  // Relaxation until nothing shortens: an ear is a few dozen edges across.
  for (let changed = true; changed; ) {
    changed = false;
    for (const [a, b, length] of edges)
      for (const [from, to] of [
        [a, b],
        [b, a],
      ] as const) {
        const reach = (away[from] as number) + length;
        if (reach < (away[to] as number) - 1e-9) {
          away[to] = reach;
          changed = true;
        }
      }
  }
  return away;
}

/** Coordinates in the ear's own axes: out of the head, up along the ear, behind. */
const UP = [Math.cos(PROPORTION.earLean), -Math.sin(PROPORTION.earLean)] as const;
const inAxes = ([x, y, z]: Vec3): Vec3 => [x, y * UP[0] + z * UP[1], y * UP[1] - z * UP[0]];
const fromAxes = ([out, up, behind]: Vec3): Vec3 => [
  out,
  up * UP[0] + behind * UP[1],
  up * UP[1] - behind * UP[0],
];

const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/**
 * The ear's map, from and to offsets from the tragion in the ear's axes: scaled along each axis by
 * protrusion, length and breadth; what is left at the rim's three points (a millimetre or two, the
 * sculpted ear's own character) is spread by inverse-square distance (Shepard 1968).
 */
function earMap(from: readonly Vec3[], to: readonly Vec3[]): (p: Vec3) => Vec3 {
  const [top, bottom, rear] = from as [Vec3, Vec3, Vec3];
  const [topTo, bottomTo, rearTo] = to as [Vec3, Vec3, Vec3];
  const scale: Vec3 = [
    rearTo[0] / rear[0],
    (topTo[1] - bottomTo[1]) / (top[1] - bottom[1]),
    rearTo[2] / rear[2],
  ];
  const scaled = (p: Vec3): Vec3 => [p[0] * scale[0], p[1] * scale[1], p[2] * scale[2]];
  const nodes: readonly Vec3[] = [[0, 0, 0], ...from];
  const rest: readonly Vec3[] = [[0, 0, 0], ...to.map((p, i) => less(p, scaled(from[i] as Vec3)))];
  return (p) => {
    const weights = nodes.map((node) => 1 / (distance(p, node) ** 2 + 1e-14));
    const sum = weights.reduce((a, b) => a + b, 0);
    const shift = (j: 0 | 1 | 2): number =>
      weights.reduce((total, w, i) => total + (w / sum) * (rest[i] as Vec3)[j], 0);
    const at = scaled(p);
    return [at[0] + shift(0), at[1] + shift(1), at[2] + shift(2)];
  };
}

/** Moves the ears' vertices from `source` (upright sculpture) into `target` (already warped). */
export function placeEars(
  ears: Ears,
  landmarks: Landmarks,
  source: Float32Array,
  target: Float32Array,
): void {
  for (const piece of ears.sides) {
    // Both ears are mapped as left ears.
    const mirror = piece.side === 'left' ? 1 : -1;
    const own = ([x, y, z]: Vec3): Vec3 => inAxes([mirror * x, y, z]);
    const tragion = landmarks[`tragion_${piece.side}`];
    const map = earMap(
      piece.rim.map(own),
      RIM.map((name) => own(less(landmarks[`${name}_${piece.side}`], tragion))),
    );
    piece.vertices.forEach((v, i) => {
      const w = piece.weights[i] as number;
      if (w === 0) return;
      const o = 3 * v;
      const from: Vec3 = [source[o] as number, source[o + 1] as number, source[o + 2] as number];
      const [x, y, z] = fromAxes(map(own(less(from, piece.tragion))));
      const to: Vec3 = [tragion[0] + mirror * x, tragion[1] + y, tragion[2] + z];
      for (const j of [0, 1, 2] as const)
        target[o + j] = (1 - w) * (target[o + j] as number) + w * to[j];
    });
  }
}
