/**
 * Light stands in the room: how light falls off, whether a stand is seen, and whether the camera is in its way.
 * Places are in the sitter's frame, metres. A soft box is a square that faces the sitter's eyes.
 */
import { toCameraAxes } from '../optics/camera';
import { notPositive, ok } from '../optics/result';
import type { Camera, Result, Vec3 } from '../optics/types';
import { cross, minus, plus, scaled, unit } from '../optics/vector';
import { PHOTOGRAPHER_WIDTH } from './conditions';
import { cut } from './polygon';
import type { PlanRoom } from './types';

export interface Stand {
  /** Middle of the source. */
  readonly at: Vec3;
  /** Side of the soft box. */
  readonly size: number;
}

const EYES: Vec3 = [0, 0, 0];

/**
 * Stops by which light of a small source falls from one distance to another, 2 log2(farther / nearer): the
 * inverse square law. A soft box follows it from about twice its own size on.
 */
export const fallOffStops = (nearer: number, farther: number): Result<number> =>
  notPositive(nearer, farther) ?? ok(2 * Math.log2(farther / nearer));

/** Stops from the face to the backdrop straight behind it. */
export const stopsToBackdrop = ({ at }: Stand, room: PlanRoom): Result<number> =>
  fallOffStops(Math.hypot(...at), Math.hypot(at[0], at[1], at[2] + room.backdrop.behind));

/** Stops between the brightest and the darkest of several faces. */
export function stopsAcross({ at }: Stand, faces: readonly Vec3[]): Result<number> {
  const ways = faces.map((face) => Math.hypot(...minus(at, face)));
  return fallOffStops(Math.min(...ways), Math.max(...ways));
}

/** The soft box's corners; level where the box hangs straight above or below. */
export function boxCorners({ at, size }: Stand): readonly Vec3[] {
  const towards = unit(minus(EYES, at));
  const upright: Vec3 = Math.abs(towards[1]) > 0.999 ? [0, 0, 1] : [0, 1, 0];
  const across = unit(cross(upright, towards));
  const up = cross(towards, across);
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([a = 0, b = 0]) =>
    plus(at, plus(scaled(across, (a * size) / 2), scaled(up, (b * size) / 2))),
  );
}

/** So near to the lens that nothing stands there. */
const NEAR = 1e-3;

/** Is a flat thing before the backdrop in the picture? Cut by every side of the field, something is left of it. */
function polygonInPicture(camera: Camera, polygon: readonly Vec3[], room: PlanRoom): boolean {
  const { left, right, bottom, top } = camera.frustum;
  const before = cut(polygon, ([, , z]) => z + room.backdrop.behind).map((p) =>
    toCameraAxes(camera, p),
  );
  const sides: ((p: Vec3) => number)[] = [
    ([, , z]) => -z - NEAR,
    ([x, , z]) => x + left * z,
    ([x, , z]) => -right * z - x,
    ([, y, z]) => y + bottom * z,
    ([, y, z]) => -top * z - y,
  ];
  return sides.reduce<readonly Vec3[]>((left_, side) => cut(left_, side), before).length > 0;
}

/** A stand's pole, metres across: common practice, no source. */
const POLE = 0.03;

/** Is the box, or the pole below it down to the floor, in the picture? */
export function standInPicture(camera: Camera, stand: Stand, room: PlanRoom): boolean {
  const [x, y, z] = stand.at;
  const pole: Vec3[] = [
    [x - POLE / 2, room.floor, z],
    [x + POLE / 2, room.floor, z],
    [x + POLE / 2, y, z],
    [x - POLE / 2, y, z],
  ];
  return polygonInPicture(camera, boxCorners(stand), room) || polygonInPicture(camera, pole, room);
}

/** How high the photographer's head reaches over the lens, metres: common practice, no source. */
const ABOVE_LENS = 0.15;

interface Photographer {
  /** Along the axis: the lens's front and the photographer's back. */
  readonly front: number;
  readonly back: number;
  /** Above the floor. */
  readonly lensHeight: number;
}

/** Does the way from the eyes to a point pass the photographer, a box from the floor to a little above the lens? */
function passes(to: Vec3, { front, back, lensHeight }: Photographer, floor: number): boolean {
  const half = PHOTOGRAPHER_WIDTH / 2;
  const box = [
    [-half, half],
    [floor, floor + lensHeight + ABOVE_LENS],
    [front, back],
  ] as const;
  // From the eyes (t = 0) to the point (t = 1), cut by each pair of sides.
  let [from, until] = [0, 1];
  for (const [i, [least, most]] of box.entries()) {
    const along = to[i] as number;
    if (along === 0) {
      if (least > 0 || most < 0) return false;
      continue;
    }
    const [a, b] = [least / along, most / along];
    from = Math.max(from, Math.min(a, b));
    until = Math.min(until, Math.max(a, b));
  }
  return from < until;
}

/** Does the photographer stand between the sitter's eyes and the middle or a corner of the source? */
export const shadesLight = (stand: Stand, photographer: Photographer, room: PlanRoom): boolean =>
  [stand.at, ...boxCorners(stand)].some((point) => passes(point, photographer, room.floor));

/** What is wrong with where a stand is put. */
export const STAND_FAULTS = [
  'outside-walls',
  'under-floor',
  'over-ceiling',
  'in-obstacle',
] as const;
export type StandFault = (typeof STAND_FAULTS)[number];

type Outline = PlanRoom['walls'];

/** Is a place on the floor inside a convex outline, its border with it? */
function isInside(outline: Outline, x: number, z: number): boolean {
  const sides = outline.map(([x1, z1], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length] as readonly [number, number];
    return (x2 - x1) * (z - z1) - (z2 - z1) * (x - x1);
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

export function standFaults(stand: Stand, room: PlanRoom): StandFault[] {
  const [x, , z] = stand.at;
  const corners = boxCorners(stand);
  const heights = corners.map(([, y]) => y);
  const found: [StandFault, boolean][] = [
    ['outside-walls', corners.some(([cx, , cz]) => !isInside(room.walls, cx, cz))],
    ['under-floor', Math.min(...heights) < room.floor],
    ['over-ceiling', Math.max(...heights) > room.ceiling],
    ['in-obstacle', room.obstacles.some(({ outline }) => isInside(outline, x, z))],
  ];
  return found.filter(([, is]) => is).map(([fault]) => fault);
}
