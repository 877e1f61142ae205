import type { Vec3 } from '../optics/types';
import { type LandmarkName, REGION, type Substance } from './types';

/** A figure as the measures see it: upright, metres; a sculpture or a sitter. */
export interface Figure {
  readonly meshes: readonly {
    readonly substance: Substance;
    readonly positions: Float32Array;
    readonly indices: Uint32Array;
    readonly regions: Uint8Array;
  }[];
  readonly landmark: (name: LandmarkName) => Vec3;
  readonly guide: (name: string) => Vec3;
}

export interface Extent {
  readonly min: Vec3;
  readonly max: Vec3;
}

type Among = (x: number, y: number, z: number, region: number) => boolean;

/** Bounds of the vertices of one substance that are asked for, metres. */
export function extent(figure: Figure, substance: Substance, among: Among): Extent {
  const min = [0, 0, 0].map(() => Number.POSITIVE_INFINITY) as [number, number, number];
  const max = [0, 0, 0].map(() => Number.NEGATIVE_INFINITY) as [number, number, number];
  for (const mesh of figure.meshes) {
    if (mesh.substance !== substance) continue;
    const { positions: P, regions } = mesh;
    for (let v = 0; v < regions.length; v++) {
      const o = 3 * v;
      const [x, y, z] = [P[o], P[o + 1], P[o + 2]] as [number, number, number];
      if (!among(x, y, z, regions[v] as number)) continue;
      for (const [j, c] of [x, y, z].entries()) {
        if (c < (min[j] as number)) min[j] = c;
        if (c > (max[j] as number)) max[j] = c;
      }
    }
  }
  return { min, max };
}

const breadth = ({ min, max }: Extent): number => max[0] - min[0];
const depth = ({ min, max }: Extent): number => max[2] - min[2];

/** Half the height of the band in which the trunk is measured at a level, metres. */
const BAND = 0.008;
const HIP_BAND = 0.03;

/**
 * Sizes of the clothed body in metres, by dimension: trunk without arms at its levels, hips and
 * buttocks at their greatest, crotch, foot, hand across the knuckles. Cloth is included.
 */
export function clothedExtents(figure: Figure) {
  const trunk = (level: string): Extent => {
    const y0 = figure.guide(`${level}_side_left`)[1];
    return extent(figure, 'top', (_x, y, _z, r) => r !== REGION.arm && Math.abs(y - y0) < BAND);
  };
  const chest = trunk('chest');
  const waist = trunk('waist');
  const hipY = figure.guide('hip_side_left')[1];
  const hips = extent(figure, 'trousers', (_x, y) => Math.abs(y - hipY) < HIP_BAND);
  const shoe = extent(figure, 'shoes', (x) => x > 0);
  const front = figure.guide('knuckle_front_left');
  const back = figure.guide('knuckle_back_left');
  const sole = extent(figure, 'shoes', () => true).min[1];
  return {
    chest_height: figure.guide('chest_side_left')[1] - sole,
    waist_height_navel: figure.guide('waist_side_left')[1] - sole,
    crotch_height: figure.guide('crotch')[1] - sole,
    chest_breadth: breadth(chest),
    chest_depth: depth(chest),
    waist_breadth: breadth(waist),
    waist_depth: depth(waist),
    hip_breadth_standing: breadth(hips),
    buttock_depth: depth(hips),
    foot_length: depth(shoe),
    hand_breadth: Math.hypot(front[0] - back[0], front[1] - back[1], front[2] - back[2]),
  } as const;
}
export type ClothedDimension = keyof ReturnType<typeof clothedExtents>;

/** The head above and behind the ears begins this far from them, metres. */
const CLEAR = 0.006;

const inHead = (r: number): boolean => r === REGION.face || r === REGION.scalp;

/** Extremes of the head without its ears, metres. */
export function headExtents(figure: Figure) {
  const zygion = figure.landmark('zygion_left');
  const tragion = figure.landmark('tragion_left');
  const glabella = figure.landmark('glabella');
  const vault = extent(figure, 'skin', (_x, y, _z, r) => inHead(r) && y > 0);
  const earTop = figure.landmark('superaurale_left')[1];
  const earRear = figure.landmark('postaurale_left')[2];
  const back = extent(
    figure,
    'skin',
    (_x, y, z, r) => inHead(r) && y > 0 && (z < earRear - CLEAR || y > earTop + CLEAR),
  );
  const cheeks = extent(
    figure,
    'skin',
    (_x, y, z, r) => r === REGION.face && Math.abs(y - zygion[1]) < 0.015 && z > tragion[2] + 0.012,
  );
  const face = extent(figure, 'skin', (_x, _y, _z, r) => r === REGION.face);
  return {
    headBreadth: breadth(back),
    top: vault.max[1],
    back: back.min[2],
    tip: face.max[2],
    bizygomatic: breadth(cheeks),
    headLength: glabella[2] - back.min[2],
  } as const;
}

/** How far about its widest point the wing of a nose reaches, metres. */
const WING = 0.008;

/** Greatest breadth across the wings of the nose, in front of where the cheeks begin, metres. */
export function wingBreadth(figure: Figure): number {
  const [out, height, depth] = figure.landmark('alare_left');
  return breadth(
    extent(
      figure,
      'skin',
      (x, y, z, r) =>
        r === REGION.face &&
        z >= depth - 1e-6 &&
        Math.hypot(Math.abs(x) - out, y - height, z - depth) < WING,
    ),
  );
}

/**
 * Breadth of the nose where a line across the face at a height and depth leaves it, metres: the
 * nearest crossing of the skin on the left, doubled.
 */
export function crossing(figure: Figure, y: number, z: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const { substance, positions: P, indices: I } of figure.meshes) {
    if (substance !== 'skin') continue;
    const dy = (v: number): number => (P[3 * v + 1] as number) - y;
    const dz = (v: number): number => (P[3 * v + 2] as number) - z;
    for (let t = 0; t < I.length; t += 3) {
      const [a, b, c] = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
      const side = (p: number, q: number): number => dy(p) * dz(q) - dy(q) * dz(p);
      const [wa, wb, wc] = [side(b, c), side(c, a), side(a, b)];
      if (!((wa >= 0 && wb >= 0 && wc >= 0) || (wa <= 0 && wb <= 0 && wc <= 0))) continue;
      const sum = wa + wb + wc;
      if (sum === 0) continue;
      const at = (v: number): number => P[3 * v] as number;
      const x = (wa * at(a) + wb * at(b) + wc * at(c)) / sum;
      if (x > 0 && x < nearest) nearest = x;
    }
  }
  return 2 * nearest;
}

/** Length, breadth and protrusion of the left ear, metres. */
export function earExtents(figure: Figure) {
  const top = figure.landmark('superaurale_left');
  const bottom = figure.landmark('subaurale_left');
  // Across the long axis, in the plane seen from the side.
  const [dy, dz] = [top[1] - bottom[1], top[2] - bottom[2]];
  const l = Math.hypot(dy, dz);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let out = Number.NEGATIVE_INFINITY;
  for (const { positions: P, regions } of figure.meshes)
    regions.forEach((r, v) => {
      if (r !== REGION.earLeft) return;
      const across = ((P[3 * v + 1] as number) * dz - (P[3 * v + 2] as number) * dy) / l;
      low = Math.min(low, across);
      high = Math.max(high, across);
      out = Math.max(out, P[3 * v] as number);
    });
  return {
    ear_length: Math.hypot(top[0] - bottom[0], dy, dz),
    ear_breadth: high - low,
    ear_protrusion: out - figure.guide('retroauriculare_left')[0],
  } as const;
}
