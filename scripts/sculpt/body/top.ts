import { bell, type Field, smoothMax, smoothMin, softAbs, step } from '../field';
import { bodyFolds, sleeveFolds } from './drape';
import type { Figure } from './figure';
import { sleeve } from './limbs';
import { loft, type Station } from './loft';
import { neckline } from './neckline';
import { trunk } from './trunk';
import { underlay } from './underlay';

/** Height of the top's lower hem above the floor, mm. */
export const topHem = (f: Figure): number => f.mm.crotch_height + f.by(78, 62);

/** Where the sleeves end, y. */
export const cuffEnd = (f: Figure): number => f.joints.wrist[1] + 6;
/** Distance of the seams from hem and cuff, mm. */
export const SEAM = 22;

/** Thickness of the cloth where its edge can be seen, mm. */
const THICK = 5.5;
/** Depth of the gap that is left behind such an edge, mm. */
const GAP = 28;

/** How the cloth falls from the chest to the hem: looser than the waist beneath it. */
function fall(f: Figure): Field {
  const { mm } = f;
  const chest = mm.chest_height;
  const waist = mm.waist_height_navel;
  const hem = topHem(f);
  const table = f.by(
    [
      [chest + 30, 0.44 * mm.chest_breadth, -26, -190],
      [chest - 10, 0.49 * mm.chest_breadth, 8, -209],
      [chest - 60, 0.5 * mm.chest_breadth + 4, 16, -211],
      [waist + 70, 0.47 * mm.waist_breadth + 3, 14, -205],
      [waist, 0.5 * mm.waist_breadth + 7, 17, -211],
      [hem + 40, 0.5 * mm.hip_breadth_standing + 5, 17, -236],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 8, 15, -240],
    ],
    [
      [chest + 30, 0.46 * mm.chest_breadth, -6, -204],
      [chest - 20, 0.5 * mm.chest_breadth, 25, -227],
      [chest - 100, 0.52 * mm.chest_breadth + 5, 31, -232],
      [waist + 75, 0.48 * mm.waist_breadth + 10, 32, -226],
      [waist, 0.5 * mm.waist_breadth + 10, 34, -226],
      [hem + 40, 0.5 * mm.hip_breadth_standing + 11, 29, -246],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 14, 26, -251],
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

/** The top before its neck is cut: trunk, neck and sleeves under cloth. */
function cloth(f: Figure, skin: Field, opening: Field): Field {
  const body = trunk(f);
  const drop = fall(f);
  const arm = sleeve(f, (share) => f.cloth + f.by(4.5, 6) * Math.min(1, 1.6 * share));
  const folds = bodyFolds(f);
  const gathers = sleeveFolds(f);
  const { shoulder } = f.joints;
  const hem = f.y(topHem(f));
  const nearNeck = f.suprasternale[1] - 170;
  const inner = shoulder[0] - 90;
  return (x, y, z) => {
    const ax = softAbs(x);
    let d = body(x, y, z);
    // Below the neckline the skin sinks away: from there on the body is this folder's own.
    if (y > nearNeck) {
      const up = opening(x, y, z);
      if (up > -90) d = smoothMin(d, skin(x, y, z) + 80 * step(-4, -90, up), 30);
    }
    d -= f.cloth;
    if (y < shoulder[1]) d = smoothMin(d, drop(x, y, z), 30);
    if (y < hem + 60) d = smoothMax(d + 0.9 * bell(y - hem - SEAM, 2.2), hem - y, 3);
    if (ax > inner) {
      let s = arm(x, y, z);
      if (Math.abs(s) < 12) s -= gathers(x, y, z);
      // Wide seam over the shoulder, narrow where the sleeve leaves the armpit.
      d = smoothMin(d, s, 12 + 20 * step(shoulder[1] - 90, shoulder[1] - 10, y));
    }
    return Math.abs(d) < 12 && ax < shoulder[0]
      ? d - folds(x, y, z) * step(shoulder[0], shoulder[0] - 14, ax)
      : d;
  };
}

/** Distance above the edge of the top's neck opening, mm; skin far below it is never seen. */
export function topOpening(f: Figure): Field {
  const body = trunk(f);
  const skin = underlay(f);
  return neckline(f, (x, y, z) => Math.min(body(x, y, z), skin(x, y, z)));
}

/** The top with its neck cut; all edges are rolled so that the border of the cloth is form. */
export function top(f: Figure): Field {
  const skin = underlay(f);
  const opening = topOpening(f);
  const whole = cloth(f, skin, opening);
  const band = f.by(8, 19);
  const rise = f.by(0.8, 1.2);
  const nearNeck = f.suprasternale[1] - 90;
  const floor = f.suprasternale[1] - 64;
  const cuff = cuffEnd(f);
  return (x, y, z) => {
    let d = whole(x, y, z);
    if (d > 30) return d;
    if (y > nearNeck) {
      const up = opening(x, y, z);
      // A band that stands a little proud, with a shallow seam below it.
      // Where the cloth stands off the skin it is thin at the edge, and the gap behind it is open.
      const gap = Math.min(-d - THICK, d + GAP, up + GAP);
      d += 0.8 * bell(up + band + 1, 1.6) - rise * step(-band - 1.5, -band + 1.5, up);
      // The opening ends at a floor inside the chest, where nobody looks.
      return smoothMax(smoothMax(d, gap, 2), Math.min(up, y - floor), 3.4);
    }
    return y < cuff + 40 ? d + 0.9 * bell(y - cuff - SEAM, 2.2) : d;
  };
}
