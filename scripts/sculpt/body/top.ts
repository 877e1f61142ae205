import {
  bell,
  capsule,
  type Field,
  type Knot,
  mix,
  smoothMax,
  smoothMin,
  softAbs,
  step,
} from '../field';
import { neckAndShoulders } from '../head/neck';
import { SHAPES } from '../head/shape';
import { bodyFolds, sleeveFolds } from './drape';
import { fallThrough, type Level } from './fall';
import type { Figure } from './figure';
import { sleeve } from './limbs';
import { type Neckline, neckline } from './neckline';
import { trunk } from './trunk';

/** Height of the top's lower hem above the floor, mm. */
export const topHem = (f: Figure): number => f.mm.crotch_height + f.by(78, 62);

/** Where the sleeves end, y. */
export const cuffEnd = (f: Figure): number => f.joints.wrist[1] + 6;
/** Distance of the seams from hem and cuff, mm. */
export const SEAM = 22;

/** How the cloth falls from the chest to the hem: looser than the waist beneath it. */
function fall(f: Figure): Field {
  const { mm } = f;
  const chest = mm.chest_height;
  const waist = mm.waist_height_navel;
  const hem = topHem(f);
  const table = f.by<readonly Level[]>(
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
  return fallThrough(f, table, 2.45);
}

/**
 * The band round a neck opening: how far it stands proud, half its ramp, depth and half breadth of the
 * seam that sets it on, and how much thinner its free edge is over how much breadth, mm.
 */
const BAND = { height: 0.9, ramp: 1.6, seam: 0.8, line: 2, thin: 1.2, edge: 7 } as const;

/** How far under the skin a garment ends within its neck opening, mm. */
const PLUG = 9;

/** Shape of a garment for the upper body. */
export interface Cut {
  readonly neckline: Neckline;
  /** Breadth of the band along the neck's edge, mm. */
  readonly band: number;
  /** Ends of the body: height of its hem over the floor, mm. */
  readonly hem: number;
  /** Surface that the body of the cloth falls along below the chest. */
  readonly fall: Field;
}

/**
 * Blend of skin and trunk under the cloth; a quarter of it is air where the two agree, mm. Over the
 * collar bones only: at the shoulder's point the cloth lies on the body, where the survey measured it.
 */
const AIR = 7;

/** What cloth near the neck lies on: the skin, its pit and the hollows over the collar bones bridged. */
export function underNeck(f: Figure): Field {
  const skin = neckAndShoulders(SHAPES[f.sex]);
  const filled = trunk(f);
  const [, notch, notchZ] = f.suprasternale;
  const bridge: readonly [Knot, Knot] = [
    [-26, notch - 6, notchZ - 8, 9],
    [26, notch - 6, notchZ - 8, 9],
  ];
  // Cloth is held from the trapezius to the collar bone, as a strap is. Sculptor's choice.
  const strap = f.by<readonly [Knot, Knot]>(
    [
      [76, notch + 32, -122, 7],
      [76, notch + 2, -80, 7],
    ],
    [
      [68, notch + 44, -120, 7],
      [68, notch + 6, -80, 7],
    ],
  );
  return (x, y, z) => {
    let bare = smoothMin(skin(x, y, z), capsule(x, y, z, bridge[0], bridge[1]), 12);
    bare = smoothMin(bare, capsule(softAbs(x), y, z, strap[0], strap[1]), 10);
    // Fades where the cloth leaves the skin, so that body and neck agree there.
    const inward = step(f.acromion[0] - 10, f.acromion[0] - 50, Math.abs(x));
    const air = 0.04 + AIR * step(notch - 145, notch - 75, y) * inward;
    return smoothMin(bare, filled(x, y, z), air);
  };
}

/** Distance above the edge of a neck opening, mm: negative where cloth covers. */
export const opening = (f: Figure, style: Neckline): Field => neckline(f, underNeck(f), style);

/** Breadth of the blend of sleeve and body at a height, mm. */
export function sleeveSeam(f: Figure): (y: number) => number {
  const top = f.joints.shoulder[1];
  return (y) => 2 + 8 * step(top - 210, top - 100, y) + 34 * step(top - 80, top + 20, y);
}

/** A garment of knitted cloth from neck to hem with sleeves; its edges are form, not colour. */
export function garment(f: Figure, cut: Cut): Field {
  const body = trunk(f);
  const arm = sleeve(f, (share) => f.cloth + f.by(4.2, 6) * Math.min(1, 1.6 * share));
  const folds = bodyFolds(f);
  const gathers = sleeveFolds(f);
  const skin = underNeck(f);
  const edge = neckline(f, skin, cut.neckline);
  const { shoulder } = f.joints;
  const hem = f.y(cut.hem);
  const cuff = cuffEnd(f);
  const nearNeck = f.suprasternale[1] - 150;
  const inner = shoulder[0] - 96;
  const pit = shoulder[1] - 60;
  const cap = f.suprasternale[1] + 55;
  const seamWidth = sleeveSeam(f);
  return (x, y, z) => {
    const ax = softAbs(x);
    // At its neck the cloth lies on the skin and its hollows; farther down it bridges them.
    const near = y > nearNeck;
    const up = near ? edge(x, y, z) : -100;
    let d = body(x, y, z);
    if (near) {
      const bare = skin(x, y, z);
      d = mix(bare, Math.min(d, bare), step(-4, -40, up));
    }
    d -= f.cloth;
    if (y < shoulder[1]) d = smoothMin(d, cut.fall(x, y, z), 30);
    if (y < hem + 60) d = smoothMax(d + 0.9 * bell(y - hem - SEAM, 2.2), hem - y, 3);
    if (ax > inner) {
      let s = arm(x, y, z);
      if (Math.abs(s) < 12) s -= gathers(x, y, z);
      if (y < cuff + 40) s += 0.9 * bell(y - cuff - SEAM, 2.2);
      // Wide seam over the shoulder, narrow where the sleeve leaves the armpit, none where it hangs.
      d = smoothMin(d, s, seamWidth(y));
      // The seam where the sleeve is set in, from the shoulder's point to the armpit.
      if (y > pit && Math.abs(d) < 6) {
        const seam = f.acromion[0] - 7 - 0.085 * (f.acromion[1] - y);
        d += 0.9 * bell(ax - seam, 2) * step(pit, pit + 30, y);
      }
    }
    if (Math.abs(d) < 12 && ax < shoulder[0] && up < -cut.band)
      d -= folds(x, y, z) * step(shoulder[0], shoulder[0] - 14, ax) * step(-cut.band, -60, up);
    if (!near || d > 30) return d;
    // A flat band, set on with a seam and thinner towards its edge; no line finer than the mesh.
    d -=
      BAND.height * step(-cut.band - BAND.ramp, -cut.band + BAND.ramp, up) -
      BAND.seam * bell(up + cut.band + 3, BAND.line) -
      BAND.thin * step(-BAND.edge, 0, up);
    // Within the opening the cloth ends a little under the skin, where nobody looks.
    return smoothMax(d, Math.min(up, Math.max(skin(x, y, z) + PLUG, y - cap)), 2.4);
  };
}

/** How a top is cut: a scoop for the woman, a crew neck for the man. */
export const topCut = (f: Figure): Cut => ({
  neckline: f.by('scoop', 'crew'),
  band: f.by(14, 17),
  hem: topHem(f),
  fall: fall(f),
});

export const top = (f: Figure): Field => garment(f, topCut(f));
