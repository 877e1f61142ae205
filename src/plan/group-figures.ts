/** What rows, spacing and curve of a group do to heads and sharpness from one standpoint. Metres, radians. */
import { fNumberForDepth, focusForTwoPlanes } from '../optics/focus';
import { focalForFrame } from '../optics/framing';
import { offAxisStretch, type Stretch } from '../optics/off-axis';
import { must } from '../optics/result';
import type { SensorFormat } from '../optics/types';
import { metres, radians } from '../optics/units';
import { PEOPLE_MARGIN } from './conditions';
import type { RowCurve } from './group';
import type { PlanPerson } from './types';

/** Where the ends of a row may stand at the most, and how many so fit in it. */
export interface EndLimit {
  /** The row that is stretched the most, 0 nearest to the camera. */
  readonly row: number;
  /** From the axis, and before the middle of the row; a straight row's ends are not before it. */
  readonly aside: number;
  readonly forward: number;
  readonly people: number;
}

/** The ends of one arrangement. */
export interface Ends {
  /** The outermost head's image over that of a head in the middle of its row: across the picture, and upwards. */
  readonly across: number;
  readonly up: number;
  /** Under the stretch that is asked; null where none is, and where no two fit. */
  readonly limit: EndLimit | null;
}

export interface GroupFigures {
  /** Width of the frame at the front row, margins with it. */
  readonly width: number;
  /** Least way from the front row to the backdrop, so that the back row stands before it. */
  readonly toBackdrop: number;
  /** From the lens to the nearest and on to the farthest eyes, along the axis. */
  readonly front: number;
  readonly rowsApart: number;
  /** By how much the nearest heads are drawn larger than the farthest: (s - zb) / (s - zf) - 1. */
  readonly headDifference: number;
  /** Focus that shares the nearest and the farthest eyes, from the lens, and the f-number from which both are sharp. */
  readonly shared: { readonly focus: number; readonly fNumber: number } | null;
  /** Of the arrangement chosen, and of the other; null for a curved one that would reach round the camera. */
  readonly ends: Readonly<Record<RowCurve, Ends | null>>;
}

/** From somebody's eyes to the back, with a little room to the backdrop, metres: by eye. */
const BEHIND_EYES = 0.3;

/** How far the outermost shoulders are drawn to either side of the axis, which runs through the front row's middle. */
function reach(people: readonly PlanPerson[], s: number): number {
  return Math.max(
    ...people.map(({ eyes: [x, , z], halfBreadth }) => ((Math.abs(x) + halfBreadth) * s) / (s - z)),
  );
}

/** Least depth from which two rows `apart` differ by at most a share: (s + apart) / s - 1 = apart / s. */
export const depthForHeads = (apart: number, most: number): number => apart / most;

/** Greatest way from row to row that keeps within it. */
export const rowsApartFor = (s: number, most: number): number => s * most;

/**
 * How far from the axis a head may be in a row `depth` away (curved: equally far over the floor) and `up` above the
 * lens, so that it is drawn at most sec t = 1 + most as long as broad: T = tan t. Straight: x^2 + up^2 = (T depth)^2.
 * Curved, at the angle a: sin^2 a + (up / depth)^2 = T^2 cos^2 a. Null where it is too high or low for any place.
 */
export function asideFor(curve: RowCurve, depth: number, up: number, most: number): number | null {
  const tangent2 = (1 + most) ** 2 - 1;
  const left = tangent2 - (up / depth) ** 2;
  if (left < 0) return null;
  return depth * Math.sqrt(curve === 'straight' ? left : left / (1 + tangent2));
}

/** A row: from the lens to its middle along the axis, and its people from the picture's left. */
interface Row {
  readonly row: number;
  readonly depth: number;
  readonly people: readonly PlanPerson[];
}

function rowsOf(people: readonly PlanPerson[], s: number, curve: RowCurve): Row[] {
  const rows = [...new Set(people.map(({ row }) => row))];
  return rows.map((row) => {
    const own = people.filter((person) => person.row === row);
    const [x, , z] = own.toSorted((a, b) => a.eyes[0] - b.eyes[0])[0]?.eyes ?? [0, 0, 0];
    return { row, depth: curve === 'curved' ? Math.hypot(x, s - z) : s - z, people: own };
  });
}

/** Where the ends of one row may stand; `left` is by how many times they may be farther aside than they are. */
function limitOf({ row, depth, people }: Row, curve: RowCurve, lens: number, most: number) {
  if (people.length < 2) return null;
  const across = people.map(({ eyes: [x] }) => x);
  const up = Math.max(...people.map(({ eyes: [, y] }) => Math.abs(y - lens)));
  const half = (Math.max(...across) - Math.min(...across)) / 2;
  const aside = asideFor(curve, depth, up, most);
  if (aside === null || half === 0) return null;
  // Along a straight row places are counted in metres, along a curved one in angles.
  const along = (x: number) => (curve === 'curved' ? Math.asin(x / depth) : x);
  const spacing = (2 * along(half)) / (people.length - 1);
  return {
    left: aside / half,
    limit: {
      row,
      aside,
      forward: curve === 'curved' ? depth - Math.sqrt(depth ** 2 - aside ** 2) : 0,
      people: Math.floor((2 * along(aside)) / spacing + ROUNDING) + 1,
    },
  };
}

/** A row that just fits is not one too few by rounding. */
const ROUNDING = 1e-9;

/** Ends of one arrangement: a head beside the axis at the angle t is stretched as `offAxisStretch` has it. */
function endsOf(
  people: readonly PlanPerson[],
  s: number,
  curve: RowCurve,
  { lens, most }: { readonly lens: number; readonly most: number | null },
): Ends {
  const angle = Math.max(...people.map(({ eyes: [x, , z] }) => Math.atan(Math.abs(x) / (s - z))));
  const { equalDepth, equalDistance } = must(offAxisStretch(radians(angle)));
  const { radial, tangential }: Stretch = curve === 'curved' ? equalDistance : equalDepth;
  const limits = rowsOf(people, s, curve).flatMap((row) => {
    const found = most === null ? null : limitOf(row, curve, lens, most);
    return found ? [found] : [];
  });
  const [tightest] = limits.toSorted((a, b) => a.left - b.left);
  return { across: radial, up: tangential, limit: tightest?.limit ?? null };
}

export interface GroupSeen {
  /** The same people in both arrangements; null for a curved one that would reach round the camera. */
  readonly people: Readonly<Record<RowCurve, readonly PlanPerson[] | null>>;
  readonly chosen: RowCurve;
  /** From the lens to the middle of the front row, along the axis. */
  readonly s: number;
  /** Lens above (+) or below (-) the first person's eyes. */
  readonly lens: number;
  /** Greatest stretch of a face that is asked; null: none. */
  readonly most: number | null;
}

/**
 * Frame, heads and focus of the arrangement chosen, ends of both. The frame's width runs over the long side of the
 * format; sharpness is that of the focal length which frames so. Null without people, and among them.
 */
export function groupFigures(seen: GroupSeen, format: SensorFormat): GroupFigures | null {
  const { s } = seen;
  const people = seen.people[seen.chosen] ?? [];
  const depths = people.map(({ eyes: [, , z] }) => z);
  const [near, far] = [Math.max(...depths), Math.min(...depths)];
  if (people.length === 0 || near >= s) return null;
  const width = (2 * reach(people, s)) / (1 - 2 * PEOPLE_MARGIN);
  const height = (width * format.shortSide) / format.longSide;
  const focal = must(focalForFrame(metres(height), metres(s), format.shortSide));
  const [a, b] = [metres(s - near), metres(s - far)];
  const fNumber = must(fNumberForDepth(focal, a, b, format.circleOfConfusion));
  const ends = (curve: RowCurve): Ends | null => {
    const own = seen.people[curve];
    return own && endsOf(own, s, curve, seen);
  };
  return {
    width,
    toBackdrop: BEHIND_EYES - far,
    front: s - near,
    rowsApart: near - far,
    headDifference: (s - far) / (s - near) - 1,
    shared: near === far ? null : { focus: must(focusForTwoPlanes(a, b)), fNumber },
    ends: { straight: ends('straight'), curved: ends('curved') },
  };
}
