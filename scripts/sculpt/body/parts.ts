import type { Substance } from '../../../src/sitter/types';
import { type Field, smoothMin } from '../field';
import { axis, type Grid, mirroredAxis } from '../nets';
import { figure } from './figure';
import { handsAndWrists } from './hand';
import { arm } from './limbs';
import type { BodyShape } from './shape';
import { shoes } from './shoes';
import { top, topHem } from './top';
import { trousers } from './trousers';

/** One closed, mirrored part of the body: its field and the grid that resolves it. */
export interface BodyPart {
  readonly name: string;
  readonly substance: Substance;
  readonly field: Field;
  readonly grid: Grid;
}

/** Cell size that narrows from `wide` to `fine` within `reach` mm of the places named. */
const cells =
  (wide: number, fine: number, reach: number, places: readonly number[]) =>
  (at: number): number => {
    const away = Math.min(...places.map((p) => Math.abs(at - p)));
    return away < reach ? fine : Math.min(wide, fine + (away - reach) * 0.12);
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
        x: mirroredAxis(outer, () => 3.2),
        y: axis(Math.min(hem, wrist[1]) - 30, notch + 130, cells(3.6, 1.6, 85, [notch + 10])),
        z: axis(-275, 70, () => 3.2),
      },
    },
    {
      name: 'trousers',
      substance: 'trousers',
      field: trousers(f),
      grid: {
        x: mirroredAxis(mm.hip_breadth_standing / 2 + 40, () => 4.5),
        y: axis(floor - 10, hem + 130, () => 6),
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
        y: axis(floor - 8, floor + 130, () => 2.5),
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
