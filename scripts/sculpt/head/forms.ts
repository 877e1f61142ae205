import { bell, type Field, type Knot, type Point, softAbs, step, tube } from '../field';
import type { HeadShape } from './shape';
import { skin } from './skin';

/**
 * Another form of the same head: `move` takes a point of the skin near to where it then lies (mm,
 * sitter's frame), `field` is the skin that it then lies on.
 */
export interface Form {
  readonly field: Field;
  readonly move: (x: number, y: number, z: number) => Point;
}

/** Flesh that shifts: a soft region about a place and how far its middle goes, drawn mm. */
interface Shift {
  readonly at: Point;
  readonly reach: Point;
  readonly by: Point;
}
/** Flesh that swells (or sinks): a soft region about a place and by how much, drawn mm. */
interface Swell {
  readonly at: Point;
  readonly reach: Point;
  readonly by: number;
}
/** A furrow along a line: depth (negative: a band that stands out) and half width, drawn mm. */
interface Furrow {
  readonly along: readonly Point[];
  readonly depth: number;
  readonly width: number;
}
/** An ellipse about each pupil where a form leaves the skin alone, true mm from the pupil. */
interface Still {
  readonly at: readonly [out: number, up: number];
  readonly reach: readonly [out: number, up: number];
}
const LIDS: Still = { at: [0, 0], reach: [18.5, 8.5] };
const LIDS_AND_BROWS: Still = { at: [2, 8.5], reach: [25, 18.5] };

interface Changes {
  readonly still: Still;
  readonly shifts: readonly Shift[];
  readonly swells: readonly Swell[];
  readonly furrows: readonly Furrow[];
}

export const FORM_NAMES = ['older', 'child', 'smile'] as const;
export type FormName = (typeof FORM_NAMES)[number];

/** Where a mouth corner is, drawn mm, with the height that differs between the sexes. */
const corner = (f: number): Point => [26, -64.1 + 2.2 * f, 9];

/** Corners out, up and back, cheeks raised: a slight smile with a closed mouth. */
function smile(f: number): Changes {
  const [x, y, z] = corner(f);
  return {
    still: LIDS_AND_BROWS,
    shifts: [
      { at: [x, y, z], reach: [10, 9, 16], by: [3.4, 3.7, -2.6] },
      { at: [0, y, z + 10], reach: [13, 10, 14], by: [0, 0.4, -0.9] },
      { at: [37, -33, 0], reach: [13, 11, 18], by: [0.8, 2.2, 0.4] },
      { at: [18, -34, 14], reach: [5, 5, 7], by: [0.9, 0.5, -0.3] },
    ],
    swells: [
      { at: [36, -29, 0], reach: [12, 8, 16], by: 1.5 },
      { at: [x + 7, y + 4, z - 5], reach: [4, 6, 9], by: -0.7 },
    ],
    furrows: [
      {
        along: [
          [20.5, -32, 9],
          [27, -42, 6],
          [33.5, -52, 0],
          [36.5, -61, -6],
        ],
        depth: 1,
        width: 4,
      },
    ],
  };
}

/** About 65 to 75 years: flesh has sunk, lips have thinned, folds have deepened. */
function older(f: number): Changes {
  const [x, y, z] = corner(f);
  return {
    still: LIDS_AND_BROWS,
    shifts: [
      { at: [36, -82, -20], reach: [14, 12, 22], by: [0.5, -2.6, 0] },
      { at: [40, -34, -8], reach: [16, 14, 20], by: [0, -2, -0.6] },
      { at: [x, y, z], reach: [8, 7, 14], by: [-0.3, -1.4, -0.8] },
      { at: [0, -27, 26], reach: [10, 9, 12], by: [0, -1.4, 0] },
      { at: [74, -38, -90], reach: [10, 9, 14], by: [0, -2.6, 0] },
    ],
    swells: [
      // Jowl beside the chin, and the dip between the two.
      { at: [35, -86, -22], reach: [11, 9, 18], by: 2.6 },
      { at: [21, -94, -6], reach: [6, 8, 14], by: -1.4 },
      // Hollows of temple and cheek.
      { at: [58, 20, -28], reach: [11, 16, 18], by: -2 },
      { at: [45, -50, -22], reach: [12, 13, 18], by: -2.2 },
      // Lips.
      { at: [0, y + 5, z + 12], reach: [17, 3.6, 14], by: -0.9 },
      { at: [0, y - 6, z + 11], reach: [15, 4, 14], by: -1.2 },
      // Under the chin.
      { at: [0, -112, -30], reach: [16, 12, 14], by: 1.4 },
      // Bags under the eyes.
      { at: [30, -15, 0], reach: [10, 3.6, 10], by: 0.7 },
    ],
    furrows: [
      {
        along: [
          [19, -29, 11],
          [25.5, -41, 7],
          [31, -52, 1],
          [33.5, -62, -5],
        ],
        depth: 1.9,
        width: 3.4,
      },
      {
        along: [
          [28.5, -66, 2],
          [28, -76, -1],
          [25, -86, -3],
        ],
        depth: 1.2,
        width: 3.2,
      },
      {
        along: [
          [15, -13, 2],
          [22, -18.5, 2],
          [31, -21, 0],
        ],
        depth: 1.1,
        width: 2.8,
      },
      // The neck's bands.
      {
        along: [
          [10, -126, -44],
          [11, -146, -49],
          [13, -170, -52],
        ],
        depth: -1.6,
        width: 4,
      },
    ],
  };
}

/**
 * A child's character at an adult's landmarks: the dimensions bring the sizes. Brows go up and with
 * them their hairs; only the lids stay. The amounts are sculptor's choices.
 */
function child(f: number): Changes {
  const [, y, z] = corner(f);
  return {
    still: LIDS,
    shifts: [
      { at: [0, -30, 24], reach: [11, 9, 14], by: [0, 1.2, 0] },
      { at: [38, -36, -6], reach: [18, 16, 22], by: [0, -1, 0.6] },
      // Brows raised, most at their inner ends and from below, so that they lie straight and slim.
      { at: [13, 20, 5], reach: [9, 7, 18], by: [0.6, 2.1 - 0.5 * f, 0] },
      { at: [34, 20, -2], reach: [13, 8, 18], by: [0, 1.2, 0] },
    ],
    swells: [
      // Round forehead, smooth brow, full root of the nose: nothing that shades the inner brow.
      { at: [0, 52, -4], reach: [34, 22, 26], by: 3 },
      { at: [58, 12, -32], reach: [15, 20, 24], by: 2 },
      // Low bridge, round tip.
      { at: [0, -6, 18], reach: [9, 10, 12], by: -1.2 },
      { at: [0, -28, 30], reach: [8, 6, 9], by: 0.5 },
      // Full cheeks, no hollow before the jaw.
      { at: [38, -43, -10], reach: [15, 17, 20], by: 4 },
      { at: [52, -48, -44], reach: [14, 20, 22], by: 1.9 },
      // Small chin.
      { at: [0, -96, 6], reach: [15, 9, 16], by: -1.6 },
      { at: [24, -98, -14], reach: [14, 10, 18], by: -1.2 - 0.8 * (1 - f) },
      // Full lips.
      { at: [0, y + 5, z + 12], reach: [9, 4, 12], by: 0.9 },
      { at: [0, y - 6, z + 11], reach: [9, 4, 12], by: 0.7 },
      { at: [0, -150, -46], reach: [14, 26, 18], by: -2 + f },
    ],
    furrows: [],
  };
}

/** The changed forms of a head. Eyeballs and lashes stay as they are, and so the skin there. */
export function headForms(shape: HeadShape): Readonly<Record<FormName, Form>> {
  const surface = skin(shape);
  const f = shape.femininity;
  return {
    older: form(shape, surface, older(f)),
    child: form(shape, surface, child(f)),
    smile: form(shape, surface, smile(f)),
  };
}

/** 0 where a form leaves the skin alone, 1 away from there; true mm. */
function away(shape: HeadShape, { at, reach }: Still, ax: number, y: number): number {
  const a = (ax - shape.interpupillary / 2 - at[0]) / reach[0];
  const b = (y - at[1]) / reach[1];
  return step(1, 1.7, Math.hypot(a, b));
}

function form(shape: HeadShape, surface: Field, changes: Changes): Form {
  const [sx, sy, sz] = shape.scale;
  const near = (ax: number, y: number, z: number, at: Point, reach: Point): number =>
    bell(ax - at[0], reach[0]) * bell(y - at[1], reach[1]) * bell(z - at[2], reach[2]);
  const furrows = changes.furrows.map(({ along, depth, width }) => ({
    line: tube(along.map((p): Knot => [...p, 0.5])),
    depth,
    width,
  }));
  const shift = (X: number, Y: number, Z: number): [number, number, number] => {
    const [x, y, z] = [X / sx, Y / sy, Z / sz];
    const ax = softAbs(x, 0.5);
    const side = x / ax;
    const free = away(shape, changes.still, Math.abs(X), Y);
    let [u, v, w] = [0, 0, 0];
    for (const { at, reach, by } of changes.shifts) {
      const share = near(ax, y, z, at, reach) * free;
      u += share * by[0] * side;
      v += share * by[1];
      w += share * by[2];
    }
    return [u * sx, v * sy, w * sz];
  };
  const relief = (X: number, Y: number, Z: number): number => {
    const [x, y, z] = [X / sx, Y / sy, Z / sz];
    const ax = softAbs(x, 0.5);
    const free = away(shape, changes.still, Math.abs(X), Y);
    if (free === 0) return 0;
    let out = 0;
    for (const { at, reach, by } of changes.swells) out += by * near(ax, y, z, at, reach);
    for (const { line, depth, width } of furrows)
      out -= depth * bell(line.distance(ax, y, z) + 0.5, width);
    return out * free;
  };
  return {
    field: (x, y, z) => {
      const [u, v, w] = shift(x, y, z);
      return surface(x - u, y - v, z - w) - relief(x, y, z) * sy;
    },
    move: (x, y, z) => {
      const [u, v, w] = shift(x, y, z);
      return [x + u, y + v, z + w];
    },
  };
}
