import { LANDMARKS, MIDLINE_LANDMARKS } from '../../src/sitter/types';
import type { Asset, Place } from './asset';
import { figure } from './body/figure';
import { arm } from './body/limbs';
import { bodySeeds } from './body/seeds';
import type { BodyShape } from './body/shape';
import { trunk } from './body/trunk';
import type { Point } from './field';
import type { HeadParts } from './head/parts';
import { type HeadLandmark, seeds } from './head/seeds';
import type { HeadShape } from './head/shape';
import type { TriangleMesh } from './mesh';
import { type PickRule, pickVertex } from './pick';

/** A vertex of the left half that a landmark or a guide holds. */
export interface Placed {
  readonly vertex: number;
  readonly paired: boolean;
}

const UP: Point = [0, 1, 0];
const DOWN: Point = [0, -1, 0];
const OUT: Point = [1, 0, 0];
const FRONT: Point = [0, 0, 1];
const BACK: Point = [0, 0, -1];

/** Landmarks that are extremes of the surface near their seed; the others are its nearest vertex. */
const EXTREMES: Readonly<Partial<Record<HeadLandmark, PickRule>>> = {
  vertex: { toward: UP, reach: 12 },
  opisthocranion: { toward: BACK, reach: 12 },
  glabella: { toward: FRONT, reach: 6 },
  sellion: { toward: BACK, reach: 5 },
  pronasale: { toward: FRONT, reach: 5 },
  labrale_superius: { toward: FRONT, reach: 2.5 },
  labrale_inferius: { toward: FRONT, reach: 2.5 },
  pogonion: { toward: FRONT, reach: 6 },
  menton: { toward: DOWN, reach: 6 },
  zygion: { toward: OUT, reach: 8 },
  euryon: { toward: OUT, reach: 7 },
  superaurale: { toward: UP, reach: 4 },
  subaurale: { toward: DOWN, reach: 4 },
  postaurale: { toward: BACK, reach: 4 },
};

const MIDLINE = new Set<string>(MIDLINE_LANDMARKS);

/** Landmarks and guides on the skin. */
export function headPlaces(
  half: TriangleMesh,
  shape: HeadShape,
  region: HeadParts['region'],
): Record<string, Placed> {
  const onEar = (x: number, y: number, z: number): boolean => region(x, y, z) === 'earLeft';
  const besideEar = (x: number, y: number, z: number): boolean => !onEar(x, y, z);
  const found: Record<string, Placed> = {};
  const all = seeds(shape);
  for (const [name, seed] of Object.entries(all) as [HeadLandmark, Point][]) {
    if (name === 'pupil') continue;
    const midline = MIDLINE.has(name);
    found[name] = {
      vertex: pickVertex(half, seed, {
        ...EXTREMES[name],
        midline,
        among: name.endsWith('aurale') ? onEar : besideEar,
      }),
      paired: !midline,
    };
  }
  // The back of the head's lower slope, which follows the back of the head and not the nape.
  const back = all.opisthocranion;
  found.inion = {
    vertex: pickVertex(half, [0, back[1] - 45, back[2] + 10], { midline: true, reach: 20 }),
    paired: false,
  };
  // The head behind the ear's rim, where ear protrusion is measured from; the root of the nose.
  const rim = all.postaurale;
  const behind = pickVertex(half, [0.88 * rim[0], rim[1], rim[2] - 12], {
    reach: 25,
    among: besideEar,
  });
  found.retroauriculare = { vertex: behind, paired: true };
  // The side of the head over the ear, which follows the head's breadth and not the ear.
  const top = all.superaurale;
  const over = pickVertex(half, [0.97 * top[0], top[1] + 13, top[2]], {
    reach: 20,
    among: besideEar,
  });
  found.temporale = { vertex: over, paired: true };
  const root: Point = [8, all.sellion[1], (all.sellion[2] + all.endocanthion[2]) / 2];
  found.nasal_root = { vertex: pickVertex(half, root), paired: true };
  return found;
}

/** Landmarks, guides and joints of the clothed body. */
export function bodyPlaces(shape: BodyShape) {
  const f = figure(shape);
  const { mm } = shape;
  const { wrist } = f.joints;
  const seed = bodySeeds(shape);
  const pick = (half: TriangleMesh, seed: Point, rule: PickRule = {}): Placed => ({
    vertex: pickVertex(half, seed, { reach: 40, ...rule }),
    paired: !rule.midline,
  });
  const chest = f.y(mm.chest_height);
  const waist = f.y(mm.waist_height_navel);
  const hip = f.y(mm.crotch_height + 55);
  const toward = (direction: Point, reach: number): PickRule => ({ toward: direction, reach });
  /** Points half-way round from the side to the front and to the back. */
  const quarters = (
    half: TriangleMesh,
    name: string,
    y: number,
    x: number,
    [front = 0, back = 0]: readonly number[],
  ) => {
    const [middle, reach] = [(front + back) / 2, 0.36 * (front - back)];
    return {
      [`${name}_fore`]: pick(half, [0.75 * x, y, middle + reach], { reach: 60 }),
      [`${name}_aft`]: pick(half, [0.75 * x, y, middle - reach], { reach: 60 }),
    };
  };
  const ring = (half: TriangleMesh, name: string, y: number, x: number, z: readonly number[]) => ({
    [`${name}_side`]: pick(half, [x, y, -95]),
    [`${name}_front`]: pick(half, [0, y, z[0] as number], { midline: true }),
    [`${name}_back`]: pick(half, [0, y, z[1] as number], { midline: true }),
    ...quarters(half, name, y, x, z),
  });
  const upper = (half: TriangleMesh): Record<string, Placed> => ({
    acromion: pick(half, seed.acromion),
    deltoid: pick(half, seed.deltoid),
    elbow: pick(half, seed.elbow),
    ...ring(half, 'chest', chest, mm.chest_breadth / 2, [20, -210]),
    bust: pick(half, [f.by(70, 80), chest, 25]),
    ...ring(half, 'waist', waist, mm.waist_breadth / 2, [20, -200]),
  });
  const lower = (half: TriangleMesh): Record<string, Placed> => ({
    hip_side: pick(half, [mm.hip_breadth_standing / 2, hip, -110]),
    buttock: pick(half, [70, hip, -230], toward(BACK, 60)),
    hip_front: pick(half, [60, hip, 10]),
    ...quarters(half, 'hip', hip, mm.hip_breadth_standing / 2, [5, -225]),
    crotch: pick(half, [0, f.y(mm.crotch_height), -110], { midline: true, reach: 70 }),
    knee: pick(half, seed.knee),
  });
  const on: Record<string, (half: TriangleMesh) => Record<string, Placed>> = {
    top: upper,
    dress: upper,
    trousers: lower,
    tights: lower,
    hands: (half) => ({
      wrist: pick(half, seed.wrist),
      fingertip: pick(half, seed.fingertip, toward(DOWN, 8)),
      knuckle_front: pick(half, [wrist[0], wrist[1] - 0.5 * mm.hand_length, wrist[2] + 60]),
      knuckle_back: pick(half, [wrist[0], wrist[1] - 0.5 * mm.hand_length, wrist[2] - 40]),
    }),
    shoes: (half) => ({
      heel: pick(half, [110, f.y(10), -300], { reach: 200, toward: BACK }),
      toe: pick(half, [130, f.y(10), 60], { reach: 250, toward: FRONT }),
      sole: pick(half, [110, f.y(0), -110]),
    }),
  };
  const bare = { arm: arm(f), trunk: trunk(f) };
  return {
    on: (part: string, half: TriangleMesh) => on[part]?.(half) ?? {},
    onArm: (p: Point) => bare.arm(...p) < bare.trunk(...p),
    anchors: Object.fromEntries(
      Object.entries(f.joints).flatMap(([name, [x, y, z]]) => [
        [`${name}_left`, [x, y, z] as const],
        [`${name}_right`, [-x, y, z] as const],
      ]),
    ) satisfies Asset['anchors'],
    sort,
  };
}

/** Splits places into landmarks and guides. */
function sort(places: Readonly<Record<string, Place>>): Pick<Asset, 'landmarks' | 'guides'> {
  const names = new Set<string>(LANDMARKS);
  const part = (wanted: boolean) =>
    Object.fromEntries(Object.entries(places).filter(([name]) => names.has(name) === wanted));
  return { landmarks: part(true), guides: part(false) };
}
