import type { Substance } from '../../../src/sitter/types';
import { type Field, smoothMin } from '../field';
import { axis, type Grid, mirroredAxis } from '../nets';
import { figure } from './figure';
import { handsAndWrists } from './hand';
import { arm } from './limbs';
import type { BodyShape } from './shape';
import { shoes } from './shoes';
import { cuffEnd, SEAM, top, topHem } from './top';
import { trouserHem, trousers } from './trousers';

/** One closed, mirrored part of the body: its field and the grid that resolves it. */
export interface BodyPart {
  readonly name: string;
  readonly substance: Substance;
  readonly field: Field;
  readonly grid: Grid;
}

/** Cell size that narrows from `wide` to `fine` within reach of the places named (mm). */
const cells =
  (wide: number, fine: number, places: readonly (readonly [at: number, reach: number])[]) =>
  (at: number): number => {
    const away = Math.min(...places.map(([p, reach]) => Math.abs(at - p) - reach));
    return away < 0 ? fine : Math.min(wide, fine + away * 0.12);
  };

/** The clothed body and its bare hands, ready to polygonise. Millimetres, the sitter's frame. */
export function bodyParts(shape: BodyShape): readonly BodyPart[] {
  const f = figure(shape);
  const { mm } = shape;
  const { wrist, ankle } = f.joints;
  const notch = f.y(mm.suprasternale_height);
  const hem = f.y(topHem(f));
  const outer = mm.bideltoid_breadth / 2 + 50;
  const floor = f.y(0);
  return [
    {
      name: 'top',
      substance: 'top',
      field: top(f),
      grid: {
        x: mirroredAxis(outer, cells(3.8, 2.4, [[0, 95]])),
        y: axis(
          Math.min(hem, wrist[1]) - 30,
          notch + 130,
          cells(4, 1.6, [
            [notch + 10, 85],
            [hem + SEAM, 7],
            [cuffEnd(f) + SEAM, 7],
            [hem, 4],
            [cuffEnd(f), 4],
          ]),
        ),
        z: axis(-275, 70, cells(3.8, 2.6, [[-110, 70]])),
      },
    },
    {
      name: 'trousers',
      substance: 'trousers',
      field: trousers(f),
      grid: {
        x: mirroredAxis(mm.hip_breadth_standing / 2 + 40, () => 4.5),
        y: axis(floor - 10, hem + 130, cells(6, 2, [[f.y(trouserHem(f)), 8]])),
        z: axis(-275, 60, () => 4.5),
      },
    },
    {
      name: 'hands',
      substance: 'skin',
      field: handsAndWrists(f, arm(f)),
      grid: {
        x: axis(wrist[0] - 75, wrist[0] + 75, () => 1.6),
        y: axis(wrist[1] - mm.hand_length - 30, wrist[1] + 60, () => 1.6),
        z: axis(wrist[2] - 90, wrist[2] + 110, () => 1.6),
      },
    },
    {
      name: 'shoes',
      substance: 'shoes',
      field: shoes(f),
      grid: {
        x: mirroredAxis(ankle[0] + 110, () => 3),
        y: axis(floor - 8, floor + 130, cells(3.5, 1.6, [[floor + 10, 14]])),
        z: axis(ankle[2] - 100, ankle[2] + 250, () => 3.5),
      },
    },
  ];
}

/** Distance to everything the body shows, for occlusion. */
export function wholeBody(parts: readonly BodyPart[]): Field {
  return (x, y, z) =>
    parts.reduce((d, part) => smoothMin(d, part.field(x, y, z), 1), Number.POSITIVE_INFINITY);
}
