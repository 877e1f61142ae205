import type { Vec3 } from '../../../src/optics/types';
import { type Field, mix, smoothMax, smoothMin } from '../field';
import { dressCut } from './dress';
import type { Figure } from './figure';
import { limb, section } from './limbs';
import { ribsAndPelvis } from './trunk';

/** How thick tights are, mm. */
const THICK = 1;

/** How far the tights stay behind the dress, mm: its folds are shallower there. */
const BEHIND = 12;

/** The bare leg from hip to ankle: thigh, knee, calf behind the shin, and a slender ankle. */
function leg(f: Figure): Field {
  const { hip, knee, ankle } = f.joints;
  const w = f.by(0.97, 1.03);
  const between = (a: Vec3, b: Vec3, t: number, back: number): Vec3 => [
    mix(a[0], b[0], t),
    mix(a[1], b[1], t),
    mix(a[2], b[2], t) + back,
  ];
  return limb(
    [
      section([hip[0], hip[1] + 24, hip[2] + 8], 86 * w, 100 * w, 2.1),
      section(between(hip, knee, 0.2, 6), 85 * w, 94 * w, 2.1),
      section(between(hip, knee, 0.55, 6), 72 * w, 80 * w),
      section(between(hip, knee, 0.85, 6), 58 * w, 66 * w),
      section([knee[0], knee[1], knee[2] + 5], 56 * w, 65 * w),
      section(between(knee, ankle, 0.14, 0), 53 * w, 58 * w),
      section(between(knee, ankle, 0.32, -9), 56 * w, 61 * w),
      section(between(knee, ankle, 0.6, -6), 44 * w, 47 * w),
      section(between(knee, ankle, 0.86, 0), 33 * w, 38 * w),
      section([ankle[0], ankle[1] + 4, ankle[2] + 2], 34 * w, 41 * w),
      section([ankle[0], ankle[1] - 34, ankle[2] + 6], 33 * w, 46 * w),
    ],
    6,
    20,
  );
}

/** Tights, from the waist into the shoes. */
export function tights(f: Figure): Field {
  const pelvis = ribsAndPelvis(f);
  const legs = leg(f);
  const waist = f.y(f.mm.waist_height_navel - 30);
  const crotch = f.y(f.mm.crotch_height);
  const skirt = dressCut(f).fall;
  return (x, y, z) => {
    const seat = smoothMax(pelvis(x, y, z), crotch - 22 - y, 70);
    const bare = smoothMin(seat, legs(x, y, z), 36) - THICK;
    const under = y > crotch - 60 ? smoothMax(bare, skirt(x, y, z) + BEHIND, 3) : bare;
    return smoothMax(under, y - waist, 6);
  };
}
