/**
 * The frame's height at the first person's eye plane as a function of the depth s: one height, or for a group
 * so much that everybody is in it. A person at z before the eye plane is drawn s / (s - z) times as large
 * as there, so that each outermost part asks for A + B s / (s - z): the frame is the largest of these.
 */
import type { Vec3 } from '../optics/types';
import { between, FARTHEST, type Interval, NEAREST } from './intervals';
import {
  constant,
  less,
  linear,
  type Polynomial,
  product,
  rootsIn,
  sum,
  times,
  valueAt,
} from './polynomial';
import type { Wanted } from './types';

/** H = upper / lower between two depths. */
export interface FramePiece {
  readonly within: Interval;
  readonly upper: Polynomial;
  readonly lower: Polynomial;
}

/** A + B s / (s - z). */
interface Demand {
  readonly a: number;
  readonly b: number;
  readonly z: number;
}

/** Of the frame's height, by a point at its lower edge. */
const below = ([, y, z]: Vec3, { cameraHeight: h, eyesAt }: Wanted): Demand => ({
  a: -h / (1 - eyesAt),
  b: (h - y) / (1 - eyesAt),
  z,
});

const heightOf = ({ a, b, z }: Demand, s: number): number => a + (b * s) / (s - z);

/** What everybody's outermost parts ask of the frame's height, `aspect` its width over its height. */
function demands(wanted: Wanted, aspect: number): Demand[] {
  const { people, margin, eyesAcross, eyesAt, cameraHeight: h, downTo = [] } = wanted;
  const right = (1 - eyesAcross - margin) * aspect;
  const left = (eyesAcross - margin) * aspect;
  const sidesAndEnds = people.flatMap((person): Demand[] => [
    { a: 0, b: (person.eyes[0] + person.halfBreadth) / right, z: person.eyes[2] },
    { a: 0, b: (person.halfBreadth - person.eyes[0]) / left, z: person.eyes[2] },
    { a: h / eyesAt, b: (person.crown[1] - h) / eyesAt, z: person.crown[2] },
    below(person.chin, wanted),
  ]);
  return [...sidesAndEnds, ...downTo.map((point) => below(point, wanted))];
}

/** Without those that another one passes from `from` on: two of one A cross once at the most, so that both ends tell. */
function mayLead(all: readonly Demand[], from: number): Demand[] {
  const isUnder = (x: Demand, y: Demand) =>
    x.a === y.a &&
    heightOf(x, from) <= heightOf(y, from) &&
    heightOf(x, FARTHEST) <= heightOf(y, FARTHEST);
  let found: Demand[] = [];
  for (const each of all) {
    if (found.some((other) => isUnder(each, other))) continue;
    found = [...found.filter((other) => !isUnder(other, each)), each];
  }
  return found;
}

/** Where two demands are equal: (A1 - A2)(s - z1)(s - z2) + B1 s (s - z2) - B2 s (s - z1) = 0. */
function crossings(x: Demand, y: Demand, from: number): number[] {
  const [p, q] = [linear(-x.z, 1), linear(-y.z, 1)];
  return rootsIn(
    sum(
      times(product(p, q), x.a - y.a),
      times(product([0, 1], q), x.b),
      times(product([0, 1], p), -y.b),
    ),
    from,
    FARTHEST,
  );
}

/** The frame's height, piece by piece. Empty where the margins leave nothing of the frame at one side. */
export function framePieces(wanted: Wanted, aspect: number): readonly FramePiece[] {
  const { frameHeight } = wanted;
  if (frameHeight !== null) {
    const [within] = between(NEAREST, FARTHEST) as [Interval];
    return [{ within, upper: constant(frameHeight), lower: constant(1) }];
  }
  const every = demands(wanted, aspect);
  // The margins leave something of the frame at either side of the eyes.
  if (wanted.margin >= Math.min(wanted.eyesAcross, 1 - wanted.eyesAcross)) return [];
  // The camera stands before everybody.
  const nearest = Math.max(NEAREST, ...every.map(({ z }) => z)) + 1e-6;
  const asked = mayLead(every, nearest);
  const marks = [
    nearest,
    ...asked.flatMap((x, i) => asked.slice(i + 1).flatMap((y) => crossings(x, y, nearest))),
    FARTHEST,
  ].sort((x, y) => x - y);
  const pieces: FramePiece[] = [];
  for (let i = 0; i + 1 < marks.length; i++) {
    const [from, to] = [marks[i] as number, marks[i + 1] as number];
    const middle = (from + to) / 2;
    const leading = asked.reduce((best, each) =>
      heightOf(each, middle) > heightOf(best, middle) ? each : best,
    );
    const piece = {
      within: { from, to, fromBy: null, toBy: null },
      upper: sum(times(linear(-leading.z, 1), leading.a), [0, leading.b]),
      lower: linear(-leading.z, 1),
    };
    const last = pieces.at(-1);
    const same = last && less(last.upper, piece.upper).every((c) => c === 0);
    if (last && same && last.lower[0] === piece.lower[0])
      pieces[pieces.length - 1] = { ...last, within: { ...last.within, to } };
    else pieces.push(piece);
  }
  return pieces;
}

/** Frame height at a depth, metres; NaN outside the pieces. */
export function frameHeightAt(pieces: readonly FramePiece[], s: number): number {
  const piece = pieces.find(({ within }) => s >= within.from && s <= within.to);
  return piece ? valueAt(piece.upper, s) / valueAt(piece.lower, s) : Number.NaN;
}
