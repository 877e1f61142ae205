/**
 * The lids go with the gaze. The upper lid turns about the eye's own axis by as much as the eye when it
 * looks down, so that it keeps its place over the iris, and a little less when it looks up (Becker and
 * Fuchs 1988, J Neurophysiol 60: down alike, up "often smaller"; how much smaller is a choice). The lower
 * lid goes with it by a quarter (amplitudes of 2.2 and 9.1 mm: Leite, Cruz, Messias and Malbouisson, Braz
 * J Med Biol Res, young adults).
 *
 * Every point turns on its own circle about the eye's level axis, by an angle that falls off smoothly and
 * slower than the circle itself runs: no two points of a circle change their order, so the skin cannot
 * cross itself, and on the ball it slides over the ball.
 */
import type { Vec3 } from '../optics/types';
import { cross, plus, scaled } from '../optics/vector';

/** Of the eye's own turn. */
const UPPER_DOWN = 1;
const UPPER_UP = 0.85;
/** Of the upper lid's turn. */
const LOWER = 2.2 / 9.1;

const degrees = (value: number): number => (value * Math.PI) / 180;
/** Where the lids' edges stand at rest over the level through the pupil, as the figures are sculpted. */
const UPPER_EDGE = degrees(22);
const LOWER_EDGE = degrees(-30);
/** A lid is stiff near its edge; from there its turn falls off over so much. Sculptor's choice. */
const STIFF = degrees(3);
const UPPER_FALL = degrees(40);
const LOWER_FALL = degrees(32);
/** How far from the eye's axis skin goes along wholly, and where it stays; metres. Sculptor's choice. */
export const SKIN_REACH = [0.0125, 0.021] as const;
/** Lashes stand out from the lid and go with it; the brows, farther off, stay. */
export const LASH_REACH = [0.021, 0.026] as const;

/** The corners of an eye, metres from the pupil along the face's level axis; they stay. */
export interface Corners {
  readonly least: number;
  readonly most: number;
}

/** 0 .. 1 between two values, level at both ends. */
function step(from: number, to: number, value: number): number {
  const t = Math.max(0, Math.min(1, (value - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

/** Share of the upper lid's turn at an elevation, radians. */
function shareAt(elevation: number): number {
  if (elevation > UPPER_EDGE)
    return 1 - step(UPPER_EDGE + STIFF, UPPER_EDGE + STIFF + UPPER_FALL, elevation);
  const below = step(LOWER_EDGE - STIFF - LOWER_FALL, LOWER_EDGE - STIFF, elevation);
  return below * (LOWER + (1 - LOWER) * step(LOWER_EDGE, UPPER_EDGE, elevation));
}

/** Falls to nothing in both corners of the eye. */
function shareAcross(x: number, { least, most }: Corners): number {
  const t = x / (x < 0 ? least : most);
  return t < 1 ? 1 - t * t : 0;
}

/** How far the upper lid turns for an eye that is turned so far up, radians. */
export const lidTurn = (pitch: number): number => pitch * (pitch < 0 ? UPPER_DOWN : UPPER_UP);

/** Moves points about the point the eye turns about: level, up, out; metres. */
export type LidMotion = (point: Vec3) => Vec3;

/** Where points of the lids go; the very same point where they stay. */
export function lidMotion(
  turn: number,
  corners: Corners,
  [whole, still]: readonly [number, number],
): LidMotion {
  return (point) => {
    const [x, y, z] = point;
    const across = turn * shareAcross(x, corners);
    if (across === 0 || z <= 0) return point;
    const radius = Math.hypot(y, z);
    const elevation = Math.atan2(y, z);
    const by = across * shareAt(elevation) * (1 - step(whole, still, radius));
    if (by === 0) return point;
    return [x, radius * Math.sin(elevation + by), radius * Math.cos(elevation + by)];
  };
}

/** Halvings of the search for where a direction came from: to a thousandth of a degree. */
const HALVINGS = 16;

/** Where what lies in a direction lay before the lids turned: the way back of `lidMotion` near the ball. */
export function beforeLids(turn: number, corners: Corners): LidMotion {
  return (point) => {
    const [x, y, z] = point;
    const across = turn * shareAcross(x, corners);
    if (across === 0 || z <= 0) return point;
    const radius = Math.hypot(y, z);
    const now = Math.atan2(y, z);
    // The motion keeps the circle's order, and moves nothing farther than the lid itself.
    let [low, high] = [now - Math.abs(across), now + Math.abs(across)];
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (low + high) / 2;
      if (middle + across * shareAt(middle) < now) low = middle;
      else high = middle;
    }
    return [x, radius * Math.sin(low), radius * Math.cos(low)];
  };
}

/** Half the distance over which a motion's slopes are taken, metres. */
const SLOPE = 2e-5;

/** A normal after a motion: by the cofactors of its slopes at the point. Not of unit length. */
export function normalAfter(motion: LidMotion, [x, y, z]: Vec3, normal: Vec3): Vec3 {
  const slope = (high: Vec3, low: Vec3): Vec3 => [
    high[0] - low[0],
    high[1] - low[1],
    high[2] - low[2],
  ];
  const h = SLOPE;
  const a = slope(motion([x + h, y, z]), motion([x - h, y, z]));
  const b = slope(motion([x, y + h, z]), motion([x, y - h, z]));
  const c = slope(motion([x, y, z + h]), motion([x, y, z - h]));
  const [p, q, r] = [cross(b, c), cross(c, a), cross(a, b)];
  return plus(plus(scaled(p, normal[0]), scaled(q, normal[1])), scaled(r, normal[2]));
}
