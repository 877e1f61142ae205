import { bell, curve, type Field, mix, smoothMax, smoothMin, softAbs, step } from '../field';
import { neckAndShoulders } from '../head/neck';
import { SHAPES } from '../head/shape';
import { sleeveFolds } from './drape';
import { fallThrough, type Level } from './fall';
import type { Figure } from './figure';
import { sleeve } from './limbs';
import { crest } from './neckline';
import { cuffEnd, sleeveSeam, underNeck } from './top';
import { trunk } from './trunk';

/** How far the jacket stands over the cloth under it, mm. */
const OVER = 6.5;
/** How far under the trunk's surface the jacket ends within its opening, mm. */
const PLUG = 4;
/** Sleeve shorter than the top's, so that its cuff shows, mm. */
const CUFF = 14;
/** Height of lapels and collar over the jacket's front, mm. */
const LAPEL = 3.6;

/** A pocket's flap: middle from the midline, half its length and depth, its slant and height, mm. */
const FLAP = { at: 118, half: 62, deep: 24, slant: 0.07, height: 2.6 } as const;

/** Middle of the pockets' flaps. */
export const pocketHeight = (f: Figure): number => f.y(jacketHem(f)) + f.by(120, 150);

/** How far the flaps of the side pockets stand over the front, mm, with the shade along their edge. */
function pockets(f: Figure): (ax: number, y: number, z: number) => number {
  const middle = pocketHeight(f);
  const side = f.acromion[2];
  return (ax, y, z) => {
    if (z < side - 20 || Math.abs(y - middle) > 2 * FLAP.deep) return 0;
    const across = Math.abs(ax - FLAP.at) - FLAP.half;
    // The lower corners are rounded.
    const v = y - middle + FLAP.slant * (ax - FLAP.at);
    const down = Math.abs(v) - FLAP.deep;
    const edge = smoothMax(across, down, v < 0 ? 14 : 3);
    const front = step(side - 20, side + 20, z);
    return front * (FLAP.height * step(1.8, -1.8, edge) - 1.1 * bell(edge - 3, 2));
  };
}

/** Height of the jacket's hem over the floor, mm. */
export const jacketHem = (f: Figure): number => f.mm.crotch_height + f.by(28, -6);

/** How the jacket hangs: straight from the chest, a little in at the waist. */
function hang(f: Figure): Field {
  const { mm } = f;
  const chest = mm.chest_height;
  const waist = mm.waist_height_navel;
  const hem = jacketHem(f);
  const table = f.by<readonly Level[]>(
    [
      [chest + 30, 0.46 * mm.chest_breadth + OVER, -16, -200],
      [chest - 10, 0.5 * mm.chest_breadth + OVER, 18, -219],
      [chest - 60, 0.51 * mm.chest_breadth + 10, 25, -221],
      [waist + 70, 0.48 * mm.waist_breadth + 10, 23, -214],
      [waist, 0.5 * mm.waist_breadth + 12, 26, -221],
      [hem + 90, 0.5 * mm.hip_breadth_standing + 7, 26, -246],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 9, 22, -252],
    ],
    [
      [chest + 30, 0.48 * mm.chest_breadth + OVER, 6, -214],
      [chest - 20, 0.51 * mm.chest_breadth + OVER, 34, -238],
      [chest - 100, 0.53 * mm.chest_breadth + 11, 40, -243],
      [waist + 75, 0.49 * mm.waist_breadth + 16, 42, -238],
      [waist, 0.5 * mm.waist_breadth + 17, 44, -238],
      [hem + 100, 0.5 * mm.hip_breadth_standing + 19, 38, -258],
      [hem - 40, 0.5 * mm.hip_breadth_standing + 23, 33, -264],
    ],
  );
  return fallThrough(f, table, 2.5);
}

/** Heights and half breadths of the open front, and where its collar and lapels lie, mm. */
interface Front {
  /** Half breadth of the opening at a height. */
  readonly gap: (y: number) => number;
  readonly crest: number;
  readonly half: number;
  /** Where collar and lapel meet, and where the lapel ends. */
  readonly gorge: number;
  readonly end: number;
}

function frontOf(f: Figure): Front {
  const notch = f.suprasternale[1];
  const half = f.by(72, 79);
  const top = crest(underNeck(f), half, notch + 90);
  const end = f.y(f.mm.waist_height_navel + f.by(92, 66));
  const hem = f.y(jacketHem(f));
  return {
    half,
    crest: top,
    gorge: notch - f.by(18, 14),
    end,
    gap: curve([
      [hem - 10, 74],
      [hem + 60, 52],
      [mix(hem, end, 0.62), 36],
      [end, 30],
      [mix(end, notch, 0.5), 41],
      [notch - 60, 54],
      [notch - 10, 64],
      [top, half],
    ]),
  };
}

/** Distance inside the opening, mm: in front by its outline, behind by the collar's level. */
function openFront(f: Figure, front: Front): Field {
  const behind = f.cervicale[2] + 2;
  return (x, y, z) => {
    const ax = softAbs(x, 0.5);
    const inFront = y > front.crest ? front.half - ax : front.gap(y) - ax;
    const atBack = Math.min(front.half - ax, y - front.crest + 0.36 * Math.max(0, ax - front.half));
    return mix(atBack, inFront, step(behind, behind + 26, z));
  };
}

/** How far collar and lapels stand over the front, mm, and the seam and the step beside them. */
function lapels(f: Figure, front: Front): (ax: number, y: number, z: number, up: number) => number {
  const wide = f.by(58, 66);
  const collarWide = f.by(44, 48);
  const notchAt = 0.46 * wide;
  return (ax, y, z, up) => {
    const u = ax - front.gap(Math.min(y, front.crest));
    const beyond = Math.max(0, u - notchAt);
    // Collar: a band round the neck that ends in a point; lapel: broad at the gorge, none at its end.
    const collarEnd = front.gorge + 0.24 * u + 0.42 * beyond - y;
    const collar = Math.max(-up - collarWide, z > -105 ? collarEnd : -99);
    const share = (y - front.end) / (front.gorge - front.end);
    const lapel = Math.max(
      (u - wide * share * (1.12 - 0.12 * share)) * 0.94,
      y - (front.gorge - 1.6 + 0.24 * u - 0.2 * beyond),
      front.end - y,
      -80 - z,
    );
    const raised = Math.max(step(1.6, -1.6, collar), step(1.6, -1.6, lapel));
    const seam = bell(collarEnd + 0.8, 1.3) * step(-2, 4, u) * step(notchAt + 4, notchAt, u);
    const shade = bell(Math.min(collar, lapel) - 2.6, 1.5);
    return LAPEL * raised - 0.9 * seam * step(-110, -90, z) - 0.8 * shade;
  };
}

/** An open tailored jacket with collar and lapels, worn over a top. */
export function jacket(f: Figure): Field {
  const body = trunk(f);
  const skin = underNeck(f);
  const neck = neckAndShoulders(SHAPES[f.sex]);
  const drop = hang(f);
  const arm = sleeve(f, (share) => f.cloth + OVER + f.by(4.5, 6.5) * Math.min(1, 1.6 * share));
  const gathers = sleeveFolds(f);
  const seamWidth = sleeveSeam(f);
  const front = frontOf(f);
  const open = openFront(f, front);
  const relief = lapels(f, front);
  const flaps = pockets(f);
  const { shoulder } = f.joints;
  const hem = f.y(jacketHem(f));
  const cuff = cuffEnd(f) + CUFF;
  const nearNeck = f.suprasternale[1] - 150;
  const inner = shoulder[0] - 96;
  const pit = shoulder[1] - 60;
  const cap = f.suprasternale[1] + 70;
  return (x, y, z) => {
    const ax = softAbs(x);
    const near = y > nearNeck;
    const bare = near ? Math.min(body(x, y, z), skin(x, y, z)) : body(x, y, z);
    let d = bare - f.cloth - OVER;
    if (y < shoulder[1]) d = smoothMin(d, drop(x, y, z), 30);
    d = smoothMax(d, hem - y, 4);
    if (ax > inner) {
      let s = arm(x, y, z);
      if (Math.abs(s) < 12) s -= 0.8 * gathers(x, y, z);
      s = smoothMax(s, cuff - y, 3);
      d = smoothMin(d, s, seamWidth(y));
      // The sleeve is set in: a seam, and the sleeve's head a little fuller beyond it.
      if (y > pit && Math.abs(d) < 8) {
        const from = ax - (f.acromion[0] + 3 - 0.085 * (f.acromion[1] - y));
        d += (1.1 * bell(from, 2.2) - 1.2 * bell(from - 9, 6)) * step(pit, pit + 40, y);
      }
    }
    if (d > 30) return d;
    const up = open(x, y, z);
    if (up > -140) d -= relief(ax, y, z, up);
    if (Math.abs(d) < 14) d -= flaps(ax, y, z);
    const deep = near ? Math.min(body(x, y, z), neck(x, y, z)) : bare;
    const plug = Math.max(deep + PLUG, y - cap);
    // The cloth's edge along the front is rounded, as a rolled lapel is.
    return smoothMax(d, Math.min(up, plug), 5);
  };
}
