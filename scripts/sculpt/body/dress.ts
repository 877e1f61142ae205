import { type Field, step } from '../field';
import { fallThrough, type Level } from './fall';
import type { Figure } from './figure';
import { type Cut, garment } from './top';

/** Height of the dress's hem over the floor, mm: a little below the knee. */
export const dressHem = (f: Figure): number => f.mm.knee_height_standing - 75;

/** Folds of the skirt around the body, and how far they stand out at the hem, mm. */
const FOLDS = 7;
const FOLD_DEPTH = 8;

/** The dress's body: close at the waist, then a skirt that falls from the hips and widens. */
function skirtFall(f: Figure): Field {
  const { mm } = f;
  const chest = mm.chest_height;
  const waist = mm.waist_height_navel;
  const crotch = mm.crotch_height;
  const hip = mm.hip_breadth_standing / 2;
  const hem = dressHem(f);
  const [bellyZ, seatZ] = f.by([13, -232], [28, -240]);
  const table: readonly Level[] = [
    [chest + 30, 0.44 * mm.chest_breadth, f.by(-26, -6), f.by(-190, -204)],
    [chest - 60, 0.47 * mm.chest_breadth, f.by(2, 26), f.by(-204, -226)],
    [waist + 60, 0.47 * mm.waist_breadth + 2, bellyZ - 8, f.by(-199, -216)],
    [waist, 0.5 * mm.waist_breadth + 4, bellyZ, f.by(-205, -214)],
    [crotch + 90, hip + 7, bellyZ + 5, seatZ - 4],
    [crotch - 20, hip + 12, bellyZ + 4, seatZ - 6],
    [crotch - 180, hip + 20, bellyZ + 2, seatZ - 4],
    [hem - 40, hip + 34, bellyZ + 4, seatZ - 8],
  ];
  const body = fallThrough(f, table, 2.25);
  const [top, bottom] = [f.y(crotch + 60), f.y(hem)];
  return (x, y, z) => {
    const d = body(x, y, z);
    if (y > top || Math.abs(d) > 40) return d;
    // Soft folds, unequal as cloth makes them, deepening towards the hem.
    const turn = Math.atan2(Math.abs(x), z + 110);
    const wave = Math.cos(FOLDS * turn + 0.5 * Math.sin(2 * turn)) + 0.35 * Math.cos(3 * turn + 1);
    return d - FOLD_DEPTH * step(top, bottom, y) * wave;
  };
}

/** A long-sleeved dress with a V neck. */
export const dressCut = (f: Figure): Cut => ({
  neckline: 'v',
  band: 13,
  hem: dressHem(f),
  fall: skirtFall(f),
});

export const dress = (f: Figure): Field => garment(f, dressCut(f));
