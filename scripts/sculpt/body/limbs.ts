import type { Vec3 } from '../../../src/optics/types';
import { ellipsoid, type Field, mix, smoothMin, softAbs } from '../field';
import type { Figure } from './figure';
import { loft, type Station } from './loft';

const along = (a: Vec3, b: Vec3, t: number): Vec3 => [
  mix(a[0], b[0], t),
  mix(a[1], b[1], t),
  mix(a[2], b[2], t),
];

/** A horizontal elliptical section about a point of the limb's axis. */
export const section = (c: Vec3, halfX: number, halfZ: number, n = 2): Station => ({
  at: c[1],
  u: [c[0] - halfX, c[0] + halfX],
  v: [c[2] - halfZ, c[2] + halfZ],
  n,
});

/** A loft along y from stations given from the top down, on the left; mirrored (see softAbs). */
export function limb(stations: readonly Station[], round: number, foot = 2): Field {
  const body = loft([...stations].reverse(), round);
  return (x, y, z) => body(y, softAbs(x, foot), z);
}

/** Sections of the arm from acromion to wrist, `ease` mm larger all round (a sleeve). */
export function armStations(f: Figure, ease: (share: number) => number): Station[] {
  const { mm } = f;
  const { shoulder, elbow, wrist } = f.joints;
  const top = f.y(mm.acromial_height) - f.cloth;
  const s = mm.shoulder_elbow_length / f.by(334, 363);
  const outer = mm.bideltoid_breadth / 2 - f.cloth;
  const z = f.acromion[2];
  const e = ease;
  const deltoid = (drop: number, share: number, half: number, front: number, back: number) => ({
    at: top - drop * s,
    u: [outer * share - 2 * half - e(0), outer * share + e(0)] as const,
    v: [z - back - e(0), z + front + e(0)] as const,
    n: 2.1,
  });
  const upper = f.by(1, 1.15);
  const lower = f.by(1, 1.16);
  return [
    deltoid(52, f.by(0.945, 0.95), f.by(36, 42), f.by(36, 42), f.by(38, 43)),
    deltoid(92, f.by(0.966, 0.965), f.by(43, 49), f.by(46, 54), f.by(47, 54)),
    section(along(shoulder, elbow, 0.5), 42 * upper + e(0.25), 45 * upper + e(0.25)),
    section(along(shoulder, elbow, 0.76), 38 * upper + e(0.4), 41 * upper + e(0.4)),
    section(elbow, 34.5 * upper + e(0.5), 37 * upper + e(0.5)),
    section(along(elbow, wrist, 0.24), 34.5 * lower + e(0.6), 38 * lower + e(0.6)),
    section(along(elbow, wrist, 0.6), 29 * lower + e(0.8), 32 * lower + e(0.8)),
    section(along(elbow, wrist, 0.93), 21 * lower + e(1), 27 * lower + e(1)),
    section([wrist[0], wrist[1] + 6, wrist[2]], 20 * lower + e(1), 28 * lower + e(1)),
  ];
}

/** The rounded cap of the deltoid over the head of the humerus, `ease` mm larger. */
function deltoidCap(f: Figure, ease: number): Field {
  const { mm } = f;
  const top = f.y(mm.acromial_height) - f.cloth;
  const rx = f.by(47, 54);
  const ry = f.by(66, 74);
  const rz = f.by(48, 56);
  const cx = mm.bideltoid_breadth / 2 - f.cloth - rx - f.by(5.5, 7);
  return (x, y, z) =>
    ellipsoid(x, y, z, cx, top - f.by(78, 88), f.acromion[2], rx + ease, ry + ease, rz + ease);
}

function armWithEase(f: Figure, ease: (share: number) => number, round: number): Field {
  const shaft = limb(armStations(f, ease), round);
  const cap = deltoidCap(f, ease(0));
  return (x, y, z) => smoothMin(shaft(x, y, z), cap(softAbs(x), y, z), 24);
}

/** The naked arms from the shoulder to the wrist. */
export const arm = (f: Figure): Field => armWithEase(f, () => 0, 30);

/** The sleeves' outer surface without folds: the arm made `ease(share)` mm larger. */
export const sleeve = (f: Figure, ease: (share: number) => number): Field =>
  armWithEase(f, ease, 8);

/** The trouser leg's outer surface: it falls from seat and thigh, hiding knee and calf. */
export function trouserLeg(f: Figure, hemHeight: number): Field {
  const { hip, knee, ankle } = f.joints;
  const hem = f.y(hemHeight);
  const thigh = f.by(86, 88);
  const w = f.by(0.94, 1.06);
  // The knee-cap's front is the surveyed landmark: cloth lies on it.
  const kneeDepth = f.by(66, 74);
  const at = (t: number, z: number): Vec3 => {
    const p = along(hip, knee, t);
    return [p[0], p[1], z];
  };
  return limb(
    [
      section([hip[0] + 1, hip[1] + 24, hip[2] + 10], thigh, thigh * 1.19, 2.1),
      section(at(0.2, hip[2] + 6), thigh, thigh * 1.12, 2.1),
      section(
        at(0.55, mix(hip[2], knee[2], 0.5)),
        78 * w,
        mix(thigh * 1.1, kneeDepth + 4, 0.6),
        2.1,
      ),
      section(knee, 69 * w, kneeDepth - 4),
      section([knee[0], knee[1] - 60, knee[2] - 5], 67 * w, kneeDepth - 1),
      section(along(knee, [ankle[0], hem, ankle[2] + 9], 0.55), 64 * w, 77 * w),
      section([ankle[0], hem + 60, ankle[2] + 9], 61 * w, 80 * w),
      section([ankle[0], hem, ankle[2] + 7], 62 * w, 85 * w),
    ],
    4,
    50,
  );
}
