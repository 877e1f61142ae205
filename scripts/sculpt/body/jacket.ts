import { bell, curve, type Field, mix, smoothMax, smoothMin, softAbs, step } from '../field';
import { neckAndShoulders } from '../head/neck';
import { SHAPES } from '../head/shape';
import { bodyFolds, sleeveFolds } from './drape';
import { fallThrough, type Level } from './fall';
import type { Figure } from './figure';
import { sleeve } from './limbs';
import { crest, SLOPE } from './neckline';
import { cuffEnd, sleeveSeam, underNeck } from './top';
import { trunk } from './trunk';

/** How far the jacket stands over the cloth under it, mm. */
const OVER = 6.5;
/** How far under the trunk's surface the jacket ends within its opening, mm. */
const PLUG = 4;
/** Sleeve shorter than the top's, so that its cuff shows, mm. */
const CUFF = 14;
/** Height of lapels and collar over the jacket's front, mm. */
const LAPEL = 3.8;

/** How deep the jacket's folds are over the top's: its cloth is lined and stiff. */
const STIFF = 0.55;

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

/** The upper button's distance to the lower one, mm. */
const BUTTONS_APART = 100;
/** Radius of a button and of the dish in it, its height and the dish's depth, mm. */
const BUTTON = { radius: 9.5, dish: 6, height: 3.2, deep: 1 } as const;
/** How far a closed front passes its middle, mm. */
const CLOSED = -6;
/** How far the collar rises above the seventh vertebra behind, and over the shoulders' crest beside, mm. */
const RISE = { behind: 10, beside: 13 } as const;

/** Where the front opens and closes, and where its collar and lapels lie, mm. */
interface Front {
  /** Half breadth of the opening at a height; below 0 where the front is closed. */
  readonly gap: (y: number) => number;
  /** Height of the collar's upper edge behind, at a distance from the midline. */
  readonly nape: (ax: number) => number;
  /** Shoulders' crest beside the neck, and its distance from the midline. */
  readonly crest: number;
  readonly half: number;
  /** Where collar and lapel meet, and where the lapel ends: at the upper button. */
  readonly gorge: number;
  readonly end: number;
}

function frontOf(f: Figure): Front {
  const notch = f.suprasternale[1];
  const half = f.by(62, 70);
  const top = crest(underNeck(f), half, notch + 90);
  const end = f.y(f.mm.waist_height_navel + f.by(70, 55));
  const lower = end - BUTTONS_APART;
  const hem = f.y(jacketHem(f));
  const side = top + RISE.beside;
  const behind = f.cervicale[1] + RISE.behind;
  return {
    half,
    crest: top,
    gorge: notch - f.by(18, 14),
    end,
    nape: (ax) => mix(behind, side, Math.min(1, (ax / half) ** 3)),
    gap: curve([
      [hem - 10, 54],
      [hem + 30, 34],
      [mix(hem, lower, 0.6), 13],
      [lower - 14, 0],
      [lower, CLOSED],
      [end, CLOSED],
      [end + 12, 0],
      [mix(end, notch, 0.5), 0.45 * half],
      [notch - 60, 0.72 * half],
      [notch - 10, 0.88 * half],
      [top, half],
    ]),
  };
}

/** Two buttons on the middle of the closed front, and the line where its edges meet: mm over the cloth. */
function closure({ end, gap }: Front): Field {
  return (x, y, z) => {
    if (z < -60 || Math.abs(x) > 2 * BUTTON.radius) return 0;
    const away = Math.min(Math.hypot(x, y - end + 4), Math.hypot(x, y - end + 4 + BUTTONS_APART));
    const button =
      BUTTON.height * step(BUTTON.radius + 1.3, BUTTON.radius - 1.3, away) -
      BUTTON.deep * step(BUTTON.dish, BUTTON.dish - 3, away);
    return button - 1.4 * bell(x, 1.8) * step(2, CLOSED, gap(y)) * step(9, 12, away);
  };
}

/** Distance inside the opening, mm: in front by its outline, behind by the collar's level. */
function openFront(f: Figure, front: Front): Field {
  const behind = f.cervicale[2] + 2;
  return (x, y, z) => {
    const ax = softAbs(x, 0.5);
    const inFront = y > front.crest ? front.half - ax : front.gap(y) - ax;
    const atBack = -smoothMax(ax - front.half, front.nape(ax) - y, 6);
    return mix(atBack, inFront, step(behind, behind + 26, z));
  };
}

/** How far collar and lapels stand over the front, mm, and the seam and the step beside them. */
function lapels(f: Figure, front: Front): (ax: number, y: number, z: number, up: number) => number {
  const wide = f.by(58, 66);
  const collarWide = f.by(44, 48);
  const notchAt = 0.46 * wide;
  const { half } = front;
  const level = front.nape(half);
  // The collar lies round the neck: seen from behind its outer edge is an arc from shoulder to shoulder.
  const round = (ax: number, y: number): number => {
    const across = ax / (half + collarWide - 4);
    const down = Math.max(0, level - SLOPE * Math.max(0, ax - half) - y) / collarWide;
    return ((across ** 2.8 + down ** 2.8) ** (1 / 2.8) - 1) * collarWide;
  };
  return (ax, y, z, up) => {
    const u = ax - front.gap(Math.min(y, front.crest));
    const beyond = Math.max(0, u - notchAt);
    // In front the collar ends in a point; the lapel is broad at the gorge and ends at the button.
    const collarEnd = front.gorge + 0.24 * u + 0.42 * beyond - y;
    const fore = step(-132, -98, z);
    const collar = mix(round(ax, y), Math.max(-up - collarWide, collarEnd), fore);
    const share = (y - front.end) / (front.gorge - front.end);
    const lapel = Math.max(
      (u - wide * share * (1.12 - 0.12 * share)) * 0.94,
      y - (front.gorge - 2 + 0.24 * u - 0.2 * beyond),
      front.end - y,
      -80 - z,
    );
    const raised = Math.max(step(2, -2, collar), step(2, -2, lapel));
    const seam = bell(collarEnd + 0.8, 1.6) * step(-2, 4, u) * step(notchAt + 4, notchAt, u);
    return LAPEL * raised - 1.1 * seam * step(-110, -90, z);
  };
}

/** A tailored jacket with collar and lapels, buttoned, worn over a top. */
export function jacket(f: Figure): Field {
  const body = trunk(f);
  const skin = underNeck(f);
  const neck = neckAndShoulders(SHAPES[f.sex]);
  const drop = hang(f);
  const arm = sleeve(f, (share) => f.cloth + OVER + f.by(4.5, 6.5) * Math.min(1, 1.6 * share));
  const gathers = sleeveFolds(f);
  const folds = bodyFolds(f);
  const seamWidth = sleeveSeam(f);
  const front = frontOf(f);
  const open = openFront(f, front);
  const relief = lapels(f, front);
  const flaps = pockets(f);
  const buttons = closure(front);
  const { shoulder } = f.joints;
  const hem = f.y(jacketHem(f));
  const cuff = cuffEnd(f) + CUFF;
  const nearNeck = f.suprasternale[1] - 150;
  const inner = shoulder[0] - 96;
  const pit = shoulder[1] - 60;
  const cap = f.cervicale[1] + RISE.behind + 20;
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
    if (Math.abs(d) < 12 && ax < shoulder[0])
      d -= STIFF * folds(x, y, z) * step(70, 110, ax) * step(shoulder[0], shoulder[0] - 14, ax);
    const up = open(x, y, z);
    if (up > -140) d -= relief(ax, y, z, up);
    if (Math.abs(d) < 14) {
      d -= flaps(ax, y, z) + buttons(x, y, z);
      // The seam down the middle of the back.
      d += 0.5 * bell(x, 2.2) * step(-150, -180, z);
    }
    const deep = near ? Math.min(body(x, y, z), neck(x, y, z)) : bare;
    const plug = Math.max(deep + PLUG, y - cap);
    // The cloth's edge along the front is rounded, as a rolled lapel is.
    return smoothMax(d, Math.min(up, plug), 5);
  };
}
