import { CLOTHES, type Clothes } from '../../../src/sitter/types';
import type { Field } from '../field';
import { axis, type Grid, mirroredAxis } from '../nets';
import { dress, dressCut, dressHem } from './dress';
import { type Figure, figure } from './figure';
import { handsAndWrists } from './hand';
import { jacket, jacketHem, pocketHeight } from './jacket';
import { arm } from './limbs';
import { type BodyPart, cells } from './parts';
import type { BodyShape } from './shape';
import { shoes } from './shoes';
import { tights } from './tights';
import { type Cut, cuffEnd, opening, SEAM, top, topCut, topHem } from './top';
import { trouserHem, trousers } from './trousers';

/** Grid of a garment of the upper body: fine at the neck, hem and cuffs. */
function garmentGrid(f: Figure, hemHeight: number, wide: number): Grid {
  const notch = f.suprasternale[1];
  const hem = f.y(hemHeight);
  const outer = f.mm.bideltoid_breadth / 2 + 85;
  return {
    x: mirroredAxis(outer, cells(wide, 2.3, [[0, 96]])),
    y: axis(
      Math.min(hem, f.joints.wrist[1]) - 30,
      notch + 130,
      cells(wide, 1.9, [
        [notch + 20, 70],
        [hem + SEAM, 7],
        [cuffEnd(f) + SEAM, 7],
        [hem, 4],
        [cuffEnd(f), 4],
      ]),
    ),
    z: axis(-280, 75, cells(wide, 2.3, [[-105, 75]])),
  };
}

/** Grid of what covers the legs, down to `end` over the floor. */
function legGrid(f: Figure, end: number): Grid {
  const floor = f.y(0);
  return {
    x: mirroredAxis(f.mm.hip_breadth_standing / 2 + 40, () => 4.5),
    y: axis(floor - 10, f.y(f.mm.waist_height_navel) + 10, cells(6, 2, [[f.y(end), 8]])),
    z: axis(-275, 60, () => 4.5),
  };
}

const knitted = (f: Figure): BodyPart => ({
  name: 'top',
  substance: 'top',
  field: top(f),
  grid: garmentGrid(f, topHem(f), 4.4),
});

function tailored(f: Figure): BodyPart {
  const notch = f.suprasternale[1];
  const hem = f.y(jacketHem(f));
  const cuff = f.joints.wrist[1];
  return {
    name: 'outer',
    substance: 'outer',
    field: jacket(f),
    grid: {
      x: mirroredAxis(f.mm.bideltoid_breadth / 2 + 90, cells(4.8, 2.1, [[0, 122]])),
      y: axis(
        Math.min(hem, cuff) - 20,
        notch + 130,
        cells(4.8, 2.2, [
          [notch - 95, 180],
          [hem, 6],
          [cuff + 20, 8],
          [pocketHeight(f), 32],
        ]),
      ),
      z: axis(-290, 85, cells(4.8, 2.6, [[-70, 120]])),
    },
  };
}

const trouserLegs = (f: Figure): BodyPart => ({
  name: 'trousers',
  substance: 'trousers',
  field: trousers(f),
  grid: legGrid(f, trouserHem(f)),
});

function pairOfShoes(f: Figure): BodyPart {
  const { ankle } = f.joints;
  const floor = f.y(0);
  return {
    name: 'shoes',
    substance: 'shoes',
    field: shoes(f),
    grid: {
      x: mirroredAxis(ankle[0] + 110, () => 3),
      y: axis(floor - 8, floor + 130, cells(3.5, 1.6, [[floor + 10, 14]])),
      z: axis(ankle[2] - 100, ankle[2] + 250, () => 3.5),
    },
  };
}

/** What can be worn, part by part, without the hands. Millimetres, the sitter's frame. */
export function clothes(shape: BodyShape): Readonly<Record<Clothes, readonly BodyPart[]>> {
  const f = figure(shape);
  return {
    top: [knitted(f), trouserLegs(f), pairOfShoes(f)],
    jacket: [knitted(f), tailored(f), trouserLegs(f), pairOfShoes(f)],
    dress: [
      { name: 'dress', substance: 'top', field: dress(f), grid: garmentGrid(f, dressHem(f), 5) },
      { name: 'tights', substance: 'trousers', field: tights(f), grid: legGrid(f, 60) },
      pairOfShoes(f),
    ],
  };
}

/** The bare hands. */
export function hands(shape: BodyShape): readonly BodyPart[] {
  const f = figure(shape);
  const { wrist } = f.joints;
  return [
    {
      name: 'hands',
      substance: 'skin',
      field: handsAndWrists(f, arm(f)),
      grid: {
        x: axis(wrist[0] - 90, wrist[0] + 75, () => 1.4),
        y: axis(
          wrist[1] - f.mm.hand_length - 30,
          wrist[1] + 60,
          cells(2.2, 1.3, [[wrist[1] - 130, 75]]),
        ),
        z: axis(wrist[2] - 90, wrist[2] + 110, () => 1.5),
      },
    },
  ];
}

/** Skin this far below a neckline is never seen, mm: no more than the band's rounded edge hides. */
const HIDDEN = 7;
/** Skin this far below it must not show through the cloth either, mm. */
const COVERED = 3;
/** Skin nearer to the cloth's outside than this would show through once it is simplified, mm. */
const CLOTH = 3;

/** For each set of clothes: whether a point of the skin lies safely under its cloth. */
export function coveredBy(
  shape: BodyShape,
): Readonly<Record<Clothes, (x: number, y: number, z: number) => boolean>> {
  const f = figure(shape);
  const neck = f.cervicale[1] + 30;
  const under = (cloth: Field, { neckline }: Cut) => {
    const above = opening(f, neckline);
    return (x: number, y: number, z: number): boolean => {
      if (y > neck) return false;
      const up = above(x, y, z);
      return up < -HIDDEN || (up < -COVERED && cloth(x, y, z) > -CLOTH);
    };
  };
  const plain = under(top(f), topCut(f));
  return { top: plain, jacket: plain, dress: under(dress(f), dressCut(f)) };
}

/** Whether a point of the skin lies under every set of clothes. */
export function alwaysCovered(shape: BodyShape): (x: number, y: number, z: number) => boolean {
  const covered = coveredBy(shape);
  return (...p) => CLOTHES.every((set) => covered[set](...p));
}
