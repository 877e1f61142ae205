import type { MidlineLandmark, PairedLandmark } from '../../../src/sitter/types';
import { figure } from '../body/figure';
import { BODY_SHAPES } from '../body/shape';
import { mix, type Point } from '../field';
import { ear } from './ear';
import { lidOpening } from './eyes';
import { MOUTH_HALF_WIDTH, mouth } from './mouth';
import type { HeadShape } from './shape';
import { bareHead, skin } from './skin';
import { best, range, trace } from './trace';

export type HeadLandmark =
  | MidlineLandmark
  | Exclude<PairedLandmark, 'acromion' | 'deltoid' | 'elbow' | 'wrist' | 'knee' | 'fingertip'>;

/**
 * Where each landmark lies on a shape's surface, mm; of paired ones the sitter's left. Found by
 * rays against the field, each by its definition in anthropometry, so they follow the sculpture.
 */
export function seeds(shape: HeadShape): Readonly<Record<HeadLandmark, Point>> {
  const [sx, sy, sz] = shape.scale;
  const surface = skin(shape);
  const bare = bareHead(shape);
  const lips = mouth(shape);
  const opening = lidOpening(shape);
  const pinna = ear(shape);
  const f = shape.femininity;
  const { suprasternale, cervicale: nape } = figure(BODY_SHAPES[shape.id]);
  const [notch, cervicale] = [suprasternale[1], nape[1]];
  const front = (x: number, y: number): Point | undefined =>
    trace(surface, [x * sx, y * sy, 60], [0, 0, -1]);
  const profile = (from: number, to: number): (Point | undefined)[] =>
    range(from, to, 0.5).map((y) => front(0, y));
  const on = (x: number, y: number): Point => best([front(x, y)], () => 0);
  const side = (y: number, z: number): Point | undefined =>
    trace(bare, [160, y * sy, z * sz], [-1, 0, 0]);
  const sides = (ys: number[], zs: number[]): (Point | undefined)[] =>
    ys.flatMap((y) => zs.map((z) => side(y, z)));
  const behind = (from: number, to: number): (Point | undefined)[] =>
    range(from, to, 1).map((y) => trace(surface, [0, y * sy, -300], [0, 0, 1]));
  const forward = (p: Point): number => p[2];
  const outward = (p: Point): number => p[0];

  const pronasale = best(profile(-38, -18), forward);
  const labraleSuperius = best(profile(-64, -52), forward);
  // Subnasale: the profile's point farthest behind the chord from nose tip to upper lip.
  const chord = [labraleSuperius[1] - pronasale[1], labraleSuperius[2] - pronasale[2]] as const;
  const subnasale = best(
    profile(-46, -33),
    (p) => (p[2] - pronasale[2]) * chord[0] - (p[1] - pronasale[1]) * chord[1],
  );
  const menton = best(
    range(-6, 8, 1).map((z) => trace(surface, [0, -160, z * sz], [0, 1, 0])),
    (p) => -p[1],
  );
  const rim = (angle: number): Point => {
    // The ear's outline, walked from outside towards its middle.
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    for (let r = 60; r > 5; r -= 0.2)
      for (let w = -4; w <= 6; w += 1)
        if (pinna.distance(16 + r * c, 3 + r * s, w) < 0) {
          const p = pinna.toWorld(16 + r * c, 3 + r * s, w);
          return [p[0] * sx, p[1] * sy, p[2] * sz];
        }
    throw new Error('the ear has no outline');
  };
  const outline = range(0, 6.28, 0.05).map(rim);
  const tragus = pinna.toWorld(2, 1.5, 3);
  const pupil = shape.interpupillary / 2;
  const lidCorner = (dx: number): Point => {
    const y = opening.upper(dx);
    return best([trace(surface, [pupil + dx, y, 60], [0, 0, -1])], () => 0);
  };
  return {
    vertex: best(
      range(-130, -50, 1).map((z) => trace(surface, [0, 200, z * sz], [0, -1, 0])),
      (p) => p[1],
    ),
    opisthocranion: best(behind(5, 70), (p) => -p[2]),
    glabella: best(profile(20, 36), forward),
    sellion: best(profile(2, 22), (p) => -p[2]),
    pronasale,
    subnasale,
    labrale_superius: labraleSuperius,
    stomion: on(0, lips.line(0)),
    labrale_inferius: best(profile(-76, -66), forward),
    pogonion: best(profile(-104, -84), forward),
    menton,
    suprasternale: best(
      range(notch - 3, notch + 2, 1).map((y) => front(0, y / sy)),
      (p) => -p[2],
    ),
    cervicale: best(behind(cervicale / sy, cervicale / sy), () => 0),
    pupil: [pupil, 0, 0],
    endocanthion: lidCorner(opening.inner - 0.6),
    ectocanthion: lidCorner(opening.outer + 0.6),
    alare: best(
      range(-36, -26, 0.5).flatMap((y) =>
        range(13.5, 21, 0.5).map((z) => trace(surface, [24 * sx, y * sy, z * sz], [-1, 0, 0])),
      ),
      (p) => (p[0] < 23.5 * sx ? p[0] : 0),
    ),
    cheilion: on(MOUTH_HALF_WIDTH, lips.line(MOUTH_HALF_WIDTH)),
    zygion: best(sides(range(-26, -4, 1), range(-64, -40, 2)), outward),
    tragion: [tragus[0] * sx, tragus[1] * sy, tragus[2] * sz],
    // The angle of the jaw is rounded: its middle is where the proportions put it.
    gonion: best([side(mix(-69.4, -67.2, f), mix(-79.4, -75.4, f))], () => 0),
    frontotemporale: best([side(32, -14)], () => 0),
    euryon: best(sides(range(15, 75, 3), range(-125, -75, 5)), outward),
    superaurale: best(outline, (p) => p[1]),
    subaurale: best(outline, (p) => -p[1]),
    postaurale: best(outline, (p) => -p[2]),
  };
}
