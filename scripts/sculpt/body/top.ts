import {
  bell,
  capsule,
  type Field,
  type Knot,
  smoothMax,
  smoothMin,
  softAbs,
  step,
} from '../field';
import { neckAndShoulders } from '../head/neck';
import { SHAPES } from '../head/shape';
import { bodyFolds, sleeveFolds } from './drape';
import type { Figure } from './figure';
import { sleeve } from './limbs';
import { loft, type Station } from './loft';
import { neckline } from './neckline';
import { trunk } from './trunk';

/** Height of the top's lower hem above the floor, mm. */
export const topHem = (f: Figure): number => f.mm.crotch_height + f.by(78, 62);

/** How the cloth falls from the chest to the hem: looser than the waist beneath it. */
function fall(f: Figure): Field {
  const { mm } = f;
  const chest = mm.chest_height;
  const waist = mm.waist_height_navel;
  const hem = topHem(f);
  const table = f.by(
    [
      [chest + 30, 0.44 * mm.chest_breadth, -26, -190],
      [chest - 10, 0.495 * mm.chest_breadth, 12, -209],
      [chest - 60, 0.5 * mm.chest_breadth + 4, 16, -211],
      [waist + 70, 0.47 * mm.waist_breadth + 3, 17, -201],
      [waist, 0.5 * mm.waist_breadth + 7, 24, -206],
      [hem + 40, 0.5 * mm.hip_breadth_standing + 5, 21, -231],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 8, 18, -234],
    ],
    [
      [chest + 30, 0.46 * mm.chest_breadth, -6, -204],
      [chest - 20, 0.5 * mm.chest_breadth + 5, 26, -229],
      [chest - 70, 0.52 * mm.chest_breadth + 8, 30, -231],
      [waist + 75, 0.48 * mm.waist_breadth + 10, 32, -226],
      [waist, 0.5 * mm.waist_breadth + 10, 34, -226],
      [hem + 40, 0.5 * mm.hip_breadth_standing + 8, 29, -236],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 10, 26, -240],
    ],
  );
  const body = loft(
    table
      .map(
        ([h = 0, half = 0, front = 0, back = 0]): Station => ({
          at: f.y(h),
          u: [-half, half],
          v: [back, front],
          n: 2.45,
        }),
      )
      .reverse(),
    30,
  );
  return (x, y, z) => body(y, x, z);
}

/**
 * What the cloth lies on near the neck: the skin, sinking away below the neckline (from there on
 * the body under the cloth is this folder's own), with its hollows bridged as cloth does: the one
 * between collar-bone and trapezius, and the notch of the neck.
 */
function skinUnderCloth(f: Figure, opening: Field): Field {
  const skin = neckAndShoulders(SHAPES[f.sex]);
  const [, notch, notchZ] = f.suprasternale;
  const strap = f.by<readonly [Knot, Knot]>(
    [
      [84, notch - 8, -77, 15],
      [88, notch + 28, -134, 17],
    ],
    [
      [60, notch + 4, -76, 10],
      [64, notch + 44, -132, 14],
    ],
  );
  const bridge: readonly [Knot, Knot] = [
    [-24, notch - 4, notchZ - 8, 9],
    [24, notch - 4, notchZ - 8, 9],
  ];
  return (x, y, z) => {
    let d = skin(x, y, z);
    d = smoothMin(d, capsule(softAbs(x), y, z, strap[0], strap[1]), 16);
    d = smoothMin(d, capsule(x, y, z, bridge[0], bridge[1]), 10);
    return d + 80 * step(-4, -90, opening(x, y, z));
  };
}

/** The top before its neck is cut: trunk, neck and sleeves under cloth. */
function cloth(f: Figure, opening: Field): Field {
  const body = trunk(f);
  const skin = skinUnderCloth(f, opening);
  const drop = fall(f);
  const arm = sleeve(f, (share) => f.cloth + f.by(7, 9) * Math.min(1, 1.6 * share));
  const folds = bodyFolds(f);
  const gathers = sleeveFolds(f);
  const { shoulder } = f.joints;
  const hem = f.y(topHem(f));
  const nearNeck = f.suprasternale[1] - 170;
  const inner = shoulder[0] - 90;
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = body(x, y, z);
    if (y > nearNeck) d = smoothMin(d, skin(x, y, z), 30);
    d -= f.cloth;
    if (y < shoulder[1]) d = smoothMin(d, drop(x, y, z), 30);
    if (y < hem + 60) d = smoothMax(d + 0.7 * bell(y - hem - 22, 1.5), hem - y, 3);
    if (ax > inner) {
      let s = arm(x, y, z);
      if (Math.abs(s) < 12) s -= gathers(x, y, z);
      // Wide seam over the shoulder, narrow where the sleeve leaves the armpit.
      d = smoothMin(d, s, 12 + 22 * step(shoulder[1] - 90, shoulder[1] - 10, y));
    }
    return Math.abs(d) < 12 && ax < shoulder[0]
      ? d - folds(x, y, z) * step(shoulder[0], shoulder[0] - 14, ax)
      : d;
  };
}

/** The top with its neck cut; all edges are rolled so that the border of the cloth is form. */
export function top(f: Figure): Field {
  const opening = neckline(f);
  const whole = cloth(f, opening);
  const band = f.by(8, 19);
  const rise = f.by(0.8, 1.2);
  const nearNeck = f.suprasternale[1] - 90;
  const cuff = f.joints.wrist[1] + 16;
  return (x, y, z) => {
    let d = whole(x, y, z);
    if (d > 30) return d;
    if (y > nearNeck) {
      const up = opening(x, y, z);
      // A band that stands a little proud, with a shallow seam below it.
      d += 0.8 * bell(up + band + 1, 1.4) - rise * step(-band - 1.5, -band + 1.5, up);
      return smoothMax(d, up, 3.4);
    }
    return y < cuff + 40 ? d + 0.7 * bell(y - cuff - 14, 1.5) : d;
  };
}
