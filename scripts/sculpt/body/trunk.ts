import { ellipsoid, type Field, smoothMin, softAbs } from '../field';
import type { Figure } from './figure';
import { loft, type Station } from './loft';

const ROUND = 60;

/** Rows of [height above floor, half breadth, z front, z back, exponent] as stations along y. */
function rows(f: Figure, table: readonly (readonly number[])[]): Station[] {
  return table.map(([h = 0, half = 0, front = 0, back = 0, n = 2]) => ({
    at: f.y(h),
    u: [-half, half],
    v: [back, front],
    n,
  }));
}

/** Rib cage, waist and pelvis without breasts: a loft that meets the surveyed breadths and depths. */
export function ribsAndPelvis(f: Figure): Field {
  const { mm } = f;
  const ch = mm.crotch_height;
  const waist = mm.waist_height_navel;
  const chest = mm.chest_height;
  const ac = mm.acromial_height;
  const bust = f.by(40, 0);
  const table = f.by(
    [
      [ch - 60, 0.42 * mm.hip_breadth_standing, -34, -186, 2.1],
      [ch, 0.47 * mm.hip_breadth_standing, -16, -206, 2.2],
      [ch + 74, mm.hip_breadth_standing / 2, 3, 3 - mm.buttock_depth, 2.3],
      [ch + 140, 0.472 * mm.hip_breadth_standing, 8, -215, 2.3],
      [waist, mm.waist_breadth / 2, 10, 10 - mm.waist_depth, 2.3],
      [waist + 62, 0.453 * mm.waist_breadth, 5, -194, 2.3],
      [chest - 66, 0.487 * mm.chest_breadth, -6, -198, 2.35],
      [chest, mm.chest_breadth / 2, 30 - bust, 30 - mm.chest_depth, 2.4],
      [ac - 96, 0.515 * mm.chest_breadth, -15, -212, 2.45],
      [ac - 42, 0.5 * mm.chest_breadth, -35, -203, 2.45],
      [ac + 10, 0.4 * mm.chest_breadth, -58, -188, 2.2],
    ],
    [
      [ch - 60, 0.43 * mm.hip_breadth_standing, -32, -194, 2.1],
      [ch, 0.48 * mm.hip_breadth_standing, -12, -214, 2.2],
      [ch + 72, mm.hip_breadth_standing / 2, 12, 12 - mm.buttock_depth, 2.4],
      [ch + 138, 0.488 * mm.hip_breadth_standing, 18, -217, 2.4],
      [waist, mm.waist_breadth / 2, 26, 26 - mm.waist_depth, 2.4],
      [waist + 75, 0.465 * mm.waist_breadth, 22, -209, 2.4],
      [chest - 85, 0.51 * mm.chest_breadth, 20, -221, 2.5],
      [chest, mm.chest_breadth / 2, 25, 25 - mm.chest_depth, 2.6],
      [ac - 90, 0.525 * mm.chest_breadth, 8, -226, 2.6],
      [ac - 38, 0.51 * mm.chest_breadth, -20, -215, 2.4],
      [ac + 12, 0.42 * mm.chest_breadth, -46, -199, 2.1],
    ],
  );
  const body = loft(rows(f, table), ROUND);
  return (x, y, z) => body(y, x, z);
}

/**
 * The shoulder girdle: a loft along x whose upper edge is the line of the shoulders seen from the
 * front, from the root of the neck down the trapezius to the acromion.
 */
export function shoulderGirdle(f: Figure): Field {
  const { mm } = f;
  const half = mm.biacromial_breadth / 2;
  const ac = mm.acromial_height - f.cloth;
  const z = f.acromion[2];
  // [share of half the biacromial breadth, top and bottom above the acromion, z front, z back]
  const table = f.by(
    [
      [-0.2, 60, -60, 16, -44],
      [0, 60, -60, 16, -44],
      [0.2, 58, -58, 20, -45],
      [0.36, 47, -54, 28, -46],
      [0.56, 30, -50, 36, -46],
      [0.8, 13, -50, 40, -47],
      [1, -7, -54, 36, -42],
      [1.1, -20, -62, 30, -35],
    ],
    [
      [-0.2, 72, -66, 18, -50],
      [0, 72, -66, 18, -50],
      [0.2, 69, -64, 22, -52],
      [0.36, 56, -60, 30, -53],
      [0.56, 39, -56, 40, -52],
      [0.8, 17, -56, 47, -55],
      [1, -6, -60, 42, -48],
      [1.1, -20, -68, 34, -40],
    ],
  );
  const girdle = loft(
    table.map(([share = 0, top = 0, bottom = 0, front = 0, back = 0]) => ({
      at: share * half,
      u: [f.y(ac + bottom), f.y(ac + top)],
      v: [z + back, z + front],
      n: 2.1,
    })),
    20,
  );
  return (x, y, z0) => girdle(softAbs(x), y, z0);
}

/** One breast (woman) or the pectoral muscle's lower edge (man), left; x must be >= 0. */
function chestRelief(f: Figure): { field: Field; blend: number } {
  const { mm } = f;
  const c = f.by(
    { x: 68, y: f.y(mm.chest_height + 6), z: 30 - 60, a: 60, b: 62, d: 60 },
    { x: 54, y: f.y(mm.chest_height + 48), z: -46, a: 62, b: 64, d: 52 },
  );
  return {
    blend: f.by(34, 48),
    field: (x, y, z) => ellipsoid(x, y, z, c.x, c.y, c.z, c.a, c.b, c.d),
  };
}

/** The naked trunk without neck and arms. */
export function trunk(f: Figure): Field {
  const ribs = ribsAndPelvis(f);
  const girdle = shoulderGirdle(f);
  const relief = chestRelief(f);
  return (x, y, z) => {
    // A wide foot: cloth and flesh bridge the middle of the chest.
    const d = smoothMin(ribs(x, y, z), relief.field(softAbs(x, 500), y, z), relief.blend);
    return smoothMin(d, girdle(x, y, z), 46);
  };
}
