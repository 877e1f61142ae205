import type { Vec3 } from '../../../src/optics/types';
import { HAND_AXES, HAND_LENGTH } from '../../../src/sitter/skeleton';
import { capsule, ellipsoid, type Field, type Knot, smoothMax, smoothMin, softAbs } from '../field';
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
  { knuckle: [92, 29, -4], phalanges: [40, 24, 17], radius: 8.9, bend: [20, 26, 14], spread: 3 },
  { knuckle: [95, 9.5, -6], phalanges: [44, 27, 18], radius: 9.1, bend: [24, 30, 16], spread: 0.5 },
  { knuckle: [90, -10, -5], phalanges: [41, 26, 18], radius: 8.6, bend: [28, 33, 18], spread: -1 },
  { knuckle: [82, -28, -2], phalanges: [32, 20, 16], radius: 7.6, bend: [32, 34, 18], spread: -2 },
];

const rad = (deg: number) => (deg * Math.PI) / 180;

/** Knots along a finger, from its knuckle to its tip, in the hand's axes. */
function fingerKnots(finger: Finger): Knot[] {
  const { knuckle, phalanges, radius, bend, spread } = finger;
  const knots: Knot[] = [[knuckle[0], knuckle[1], knuckle[2], radius * 1.12]];
  let at = knuckle;
  let angle = 0;
  const taper = [0.98, 0.9, 0.78];
  phalanges.forEach((length, i) => {
    angle += rad(bend[i] ?? 0);
    const reach = i === 2 ? length - radius * 0.76 : length;
    const step: Vec3 = [
      reach * Math.cos(angle) * Math.cos(rad(spread)),
      reach * Math.cos(angle) * Math.sin(rad(spread)),
      reach * Math.sin(angle),
    ];
    at = [at[0] + step[0], at[1] + step[1], at[2] + step[2]];
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

/** Distance to the hand in its own axes, mm at hand length 180; breadth scaled by `wide`. */
function handForm(): Field {
  const fingers = FINGERS.map(fingerKnots);
  return (a, b, c) => {
    // Wrist and palm: fan of metacarpals under a padded slab.
    let d = ellipsoid(a, b, c, 0, 1, -1, 34, 26, 17);
    for (const knots of fingers) {
      const k = knots[0] as Knot;
      const root: Knot = [16, k[1] * 0.52, -3, 12];
      d = smoothMin(d, capsule(a, b, c, root, [k[0] - 4, k[1] * 0.98, k[2] + 2, 10.6]), 10);
    }
    d = smoothMin(d, ellipsoid(a, b, c, 42, 19, 8, 34, 15, 12), 10); // ball of the thumb
    d = smoothMin(d, ellipsoid(a, b, c, 46, -20, 7, 38, 13, 11), 10); // little finger's ball
    let t = capsule(a, b, c, THUMB[0] as Knot, THUMB[1] as Knot);
    t = smoothMin(t, capsule(a, b, c, THUMB[1] as Knot, THUMB[2] as Knot), 4);
    t = smoothMin(t, capsule(a, b, c, THUMB[2] as Knot, THUMB[3] as Knot), 4);
    d = smoothMin(d, t, 14);
    let all = Number.POSITIVE_INFINITY;
    fingers.forEach((knots) => {
      let g = capsule(a, b, c, knots[0] as Knot, knots[1] as Knot);
      g = smoothMin(g, capsule(a, b, c, knots[1] as Knot, knots[2] as Knot), 3);
      g = smoothMin(g, capsule(a, b, c, knots[2] as Knot, knots[3] as Knot), 3);
      for (const i of [1, 2]) {
        const k = knots[i] as Knot;
        g = smoothMin(g, Math.hypot(a - k[0], b - k[1], c - k[2]) - k[3] * 1.02, 3);
      }
      all = smoothMin(all, g, 1.2);
    });
    return smoothMin(d, all, 9);
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

/** Skin of the hands with the forearms' ends, cut off inside the sleeves. */
export function handsAndWrists(f: Figure, arms: Field): Field {
  const hand = hands(f);
  const cut = f.joints.wrist[1] + 42;
  return (x, y, z) => smoothMax(smoothMin(hand(x, y, z), arms(x, y, z), 16), y - cut, 4);
}
