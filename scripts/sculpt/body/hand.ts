import type { Vec3 } from '../../../src/optics/types';
import { cross, dot, unit } from '../../../src/optics/vector';
import { HAND_AXES, HAND_LENGTH } from '../../../src/sitter/skeleton';
import {
  bell,
  capsule,
  ellipsoid,
  type Field,
  type Knot,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  step,
} from '../field';
import type { Figure } from './figure';

/** One finger: place across the palm (mm at hand length 180), lengths of its phalanges, radii. */
interface Finger {
  readonly knuckle: Vec3;
  readonly phalanges: readonly [number, number, number];
  readonly radius: number;
  /** Bend at the three joints, degrees. */
  readonly bend: readonly [number, number, number];
  /** Spread towards the thumb, degrees. */
  readonly spread: number;
}

/*
 * The hand's own axes: `a` away from the wrist, `b` towards the thumb, `c` out of the palm.
 * Numbers are for a hand 180 mm long and 78 mm broad; shares of hand length after the usual
 * segment tables (middle finger 0.44 of the hand), the curl that of a hand at rest.
 */
const FINGERS: readonly Finger[] = [
  { knuckle: [92, 29, -4], phalanges: [41, 25, 19], radius: 8.9, bend: [17, 24, 12], spread: 3 },
  { knuckle: [95, 9.5, -6], phalanges: [45, 28, 20], radius: 9.1, bend: [21, 28, 14], spread: 0.5 },
  { knuckle: [90, -10, -5], phalanges: [42, 27, 20], radius: 8.6, bend: [26, 31, 15], spread: -1 },
  { knuckle: [82, -28, -2], phalanges: [33, 20, 18], radius: 7.5, bend: [30, 32, 16], spread: -2 },
];

const rad = (deg: number) => (deg * Math.PI) / 180;

/** Knots along a finger, from its knuckle to its tip, in the hand's axes. */
function fingerKnots(finger: Finger): Knot[] {
  const { knuckle, phalanges, radius, bend, spread } = finger;
  const knots: Knot[] = [[knuckle[0], knuckle[1], knuckle[2], radius * 1.12]];
  let at = knuckle;
  let angle = 0;
  const taper = [0.93, 0.84, 0.72];
  phalanges.forEach((length, i) => {
    angle += rad(bend[i] ?? 0);
    const reach = i === 2 ? length - radius * 0.76 : length;
    const way: Vec3 = [
      reach * Math.cos(angle) * Math.cos(rad(spread)),
      reach * Math.cos(angle) * Math.sin(rad(spread)),
      reach * Math.sin(angle),
    ];
    at = [at[0] + way[0], at[1] + way[1], at[2] + way[2]];
    knots.push([at[0], at[1], at[2], radius * (taper[i] ?? 1)]);
  });
  return knots;
}

/** The hand's axes in the sitter's frame: it hangs from the wrist, palm to the thigh. */
export interface HandFrame {
  readonly wrist: Vec3;
  readonly a: Vec3;
  readonly b: Vec3;
  readonly c: Vec3;
  readonly scale: number;
}

export const handFrame = (f: Figure): HandFrame => ({
  wrist: f.joints.wrist,
  ...HAND_AXES,
  scale: f.mm.hand_length / HAND_LENGTH,
});

/** Takes a point of the hand's axes (mm at hand length 180) into the sitter's frame. */
export function fromHand(h: HandFrame, p: Vec3): Vec3 {
  const at = (i: 0 | 1 | 2) =>
    h.wrist[i] + h.scale * (p[0] * h.a[i] + p[1] * h.b[i] + p[2] * h.c[i]);
  return [at(0), at(1), at(2)];
}

/** A point of the left side in the hand's axes (mm at hand length 180). */
export function inHand(h: HandFrame, x: number, y: number, z: number): Vec3 {
  const p: Vec3 = [x - h.wrist[0], y - h.wrist[1], z - h.wrist[2]];
  const along = (v: Vec3): number => (p[0] * v[0] + p[1] * v[1] + p[2] * v[2]) / h.scale;
  return [along(h.a), along(h.b), along(h.c)];
}

/** Tip of the middle finger in the sitter's frame, mm. */
export function middleFingertip(f: Figure): Vec3 {
  const knots = fingerKnots(FINGERS[1] as Finger);
  const [a, b, c, r] = knots[3] as Knot;
  const [pa, pb, pc] = knots[2] as Knot;
  const l = Math.hypot(a - pa, b - pb, c - pc);
  return fromHand(handFrame(f), [
    a + ((a - pa) / l) * r,
    b + ((b - pb) / l) * r,
    c + ((c - pc) / l) * r,
  ]);
}

const THUMB: readonly Knot[] = [
  [20, 20, 6, 14],
  [52, 41, 16, 11.5],
  [82, 50, 22, 9.6],
  [106, 53, 25, 7.6],
];

/** A bone's own axes: along it, across, and out of the finger's back. */
function boneAxes(from: Knot, to: Knot, back: Vec3): { along: Vec3; across: Vec3; up: Vec3 } {
  const along = unit([to[0] - from[0], to[1] - from[1], to[2] - from[2]]);
  const across = unit(cross(along, back));
  return { along, across, up: cross(across, along) };
}

/** Creases over a finger's joint: where they lie along it, breadth and depth; how far the joint swells, mm. */
const CREASE = { at: [-3.4, 0, 3.2], breadth: 0.9, deep: 0.26, swell: 0.15 } as const;

/** Relief of the skin over the back of a joint, mm: a swelling with creases across it. */
function creases(before: Knot, joint: Knot, after: Knot, back: Vec3): Field {
  const { along, up } = boneAxes(before, after, back);
  const r = joint[3];
  return (x, y, z) => {
    const p: Vec3 = [x - joint[0], y - joint[1], z - joint[2]];
    const t = dot(p, along);
    if (Math.abs(t) > 1.4 * r) return 0;
    const furrows = CREASE.at.reduce<number>((sum, at) => sum + bell(t - at, CREASE.breadth), 0);
    const over = step(0.15, 0.75, dot(p, up) / r);
    return over * (CREASE.swell * bell(t, 0.55 * r) - CREASE.deep * furrows);
  };
}

/** Root, half breadth and length of a nail over the fingertip's radius; height of its plate, mm. */
const NAIL = { root: 0.75, half: 0.74, length: 1.6, height: 0.5 } as const;

/**
 * Relief of a nail's plate, mm, over the surface of a finger whose last bone runs from `a` to `b`
 * with its back towards `back`.
 */
function nail(a: Knot, b: Knot, back: Vec3): Field {
  const { along, across, up } = boneAxes(a, b, back);
  const r = b[3];
  return (x, y, z) => {
    const p: Vec3 = [x - b[0], y - b[1], z - b[2]];
    if (dot(p, p) > 9 * r * r || dot(p, up) < 0) return 0;
    // From the root behind the tip's centre to the free edge in front of it.
    const t = dot(p, along) / r + NAIL.root;
    const w = Math.abs(dot(p, across) / r);
    const edge = Math.max(
      w - NAIL.half * (1 - 0.1 * t * t),
      t - NAIL.length,
      -t - 0.2 * (NAIL.half - w),
    );
    return NAIL.height * step(0.06, -0.1, edge) - 0.5 * bell(edge - 0.1, 0.11);
  };
}

/** A finger from its knuckle: three bones, creased and a little broader at the joints, and a nail. */
function fingerForm(knots: readonly Knot[], back: Vec3): Field {
  const [k0, k1, k2, k3] = knots as [Knot, Knot, Knot, Knot];
  const plate = nail(k2, k3, back);
  const middle = creases(k0, k1, k2, back);
  const last = creases(k1, k2, k3, back);
  return (a, b, c) => {
    let g = capsule(a, b, c, k0, k1);
    g = smoothMin(g, capsule(a, b, c, k1, k2), 4);
    g = smoothMin(g, capsule(a, b, c, k2, k3), 4);
    // The first joint is bony.
    const joint = Math.hypot(a - k1[0], b - k1[1], c - k1[2]);
    g = smoothMin(g, joint - k1[3], 5);
    return Math.abs(g) < 4 ? g - plate(a, b, c) - middle(a, b, c) - 0.5 * last(a, b, c) : g;
  };
}

/** Distance to the hand in its own axes, mm at hand length 180. */
function handForm(): Field {
  const knots = FINGERS.map(fingerKnots);
  const fingers = knots.map((k) => fingerForm(k, [0.3, 0, -1]));
  const thumb = fingerForm(THUMB, [0.2, 0.75, -0.6]);
  return (a, b, c) => {
    // Wrist and palm: fan of metacarpals under a padded slab.
    let d = ellipsoid(a, b, c, 0, 1, -1, 38, 25, 16.5);
    for (const [k] of knots as [Knot][]) {
      const root: Knot = [16, k[1] * 0.52, -3, 12];
      d = smoothMin(d, capsule(a, b, c, root, [k[0] - 4, k[1] * 0.98, k[2] + 2, 10.4]), 10);
    }
    d = smoothMin(d, ellipsoid(a, b, c, 42, 19, 8, 34, 15, 12), 10); // ball of the thumb
    d = smoothMin(d, ellipsoid(a, b, c, 46, -20, 7, 38, 13, 11), 10); // little finger's ball
    // Tendons of the fingers' backs, from the wrist to the knuckles.
    if (c < 0)
      for (const [k] of knots as [Knot][]) {
        const share = (a - 18) / (k[0] - 18);
        const off = b - k[1] * (0.34 + 0.62 * share);
        d -= 0.45 * bell(off, 2.6) * step(0.1, 0.5, share) * step(1.04, 0.9, share);
      }
    d = smoothMin(d, thumb(a, b, c), 12);
    let all = Number.POSITIVE_INFINITY;
    for (const finger of fingers) all = smoothMin(all, finger(a, b, c), 1.2);
    return smoothMin(d, all, 8);
  };
}

/** Both hands, from a little above the wrist to the fingertips. */
export function hands(f: Figure): Field {
  const h = handFrame(f);
  const form = handForm();
  const { mm } = f;
  const wide = mm.hand_breadth / (78 * h.scale);
  return (x, y, z) => {
    const [a, b, c] = inHand(h, softAbs(x), y, z);
    return form(a, b / wide, c) * h.scale * Math.min(1, wide);
  };
}

/** Skin of the hands with the forearms' ends, cut off inside the sleeves and narrower than they. */
export function handsAndWrists(f: Figure, arms: Field): Field {
  const hand = hands(f);
  const cut = f.joints.wrist[1] + 42;
  const cuff = f.joints.wrist[1] + 6;
  const room = f.cloth + f.by(0, 1.5);
  return (x, y, z) => {
    const arm = arms(x, y, z);
    const d = smoothMax(smoothMin(hand(x, y, z), arm, 16), y - cut, 4);
    if (y < cuff - 8) return d;
    return smoothMax(d, arm - mix(30, room, step(cuff - 8, cuff, y)), 2);
  };
}
