/**
 * Where the people of a group stand. The group's frame: origin in the middle of the front row, which the
 * camera's axis runs through, at the eye height of its first person, the one nearest to that middle; +X to
 * the sitters' left (the picture's right), +Y up, +Z along the camera's axis towards the camera, which
 * stands `depth` away. With an odd front row of equals that is the first person's own frame. Metres, radians.
 */
import { ok, refuse } from '../optics/result';
import type { Result, Vec3 } from '../optics/types';
import type { Dimensions, LandmarkName, Landmarks } from '../sitter/types';
import type { PlanPerson } from './types';

export const ROW_PLACES = ['seated', 'standing', 'step'] as const;
export type RowPlace = (typeof ROW_PLACES)[number];

/**
 * Straight: each row square to the camera's axis. Curved: everybody of a row equally far from the
 * camera over the floor, so that the ends come forward.
 */
export type RowCurve = 'straight' | 'curved';

/** A usual figure and how it is known. */
export interface UsualFigure {
  readonly value: number;
  readonly how: string;
}

export const USUAL_GROUP = {
  /** Between neighbours' shoulders. */
  shoulderGap: {
    value: 0.05,
    how: 'common practice, no source: 0.5 to 0.6 m from head to head, of which the shoulders take 0.45 to 0.51 m (ANSUR II 2012, bideltoid breadth, means of women and men)',
  },
  rowSpacing: { value: 0.7, how: 'common practice, no source: 0.5 to 0.9 m' },
  step: { value: 0.2, how: 'common practice, no source: about a head, 0.20 to 0.25 m' },
  seat: { value: 0.45, how: 'common practice, no source: the height of a chair' },
} as const satisfies Record<string, UsualFigure>;

/** What a place in a row takes of a person. */
export interface GroupMember {
  readonly id: string;
  readonly name: string;
  /** Eyes above the soles, standing. */
  readonly standingEyes: number;
  /** Eyes above the seat. */
  readonly seatedEyes: number;
  /** Shoulder to shoulder, over the upper arms. */
  readonly shoulders: number;
  readonly headBreadth: number;
  /** Crown above the eyes. */
  readonly crown: number;
}

/** A member of a sitter's dimensions, which are millimetres. */
export function memberOf(id: string, name: string, dimensions: Dimensions): GroupMember {
  const m = (value: number) => value / 1000;
  const crown = m(dimensions.vertex_above_eyes);
  return {
    id,
    name,
    standingEyes: m(dimensions.stature) - crown,
    seatedEyes: m(dimensions.sitting_height) - crown,
    shoulders: m(dimensions.bideltoid_breadth),
    headBreadth: m(dimensions.head_breadth),
    crown,
  };
}

export interface RowAsked {
  readonly place: RowPlace;
  /** From the picture's left to its right. */
  readonly members: readonly GroupMember[];
  /** From one person's middle to the next's; null: as their shoulders need it. */
  readonly spacing: number | null;
}

export interface GroupAsked {
  /** Nearest to the camera first. */
  readonly rows: readonly RowAsked[];
  /** From one row's eyes to the next's. */
  readonly rowSpacing: number;
  /** Height of one step; the first row on steps stands on one, the next on two. */
  readonly step: number;
  readonly curve: RowCurve;
  /** From the lens to the middle of the front row along the axis. */
  readonly depth: number;
}

export interface MemberPlace {
  readonly member: GroupMember;
  /** 0 nearest to the camera. */
  readonly row: number;
  /** 0 at the picture's left. */
  readonly across: number;
  readonly place: RowPlace;
  readonly eyes: Vec3;
  /** What the person stands or sits on, y. */
  readonly support: number;
  /** Body about the vertical, positive to the sitter's left: 0 faces along the axis. */
  readonly turn: number;
}

export interface GroupPlaces {
  /** The first is the one whose eyes the heights are told from; then row by row from the picture's left. */
  readonly members: readonly [MemberPlace, ...MemberPlace[]];
  /** Floor, y. */
  readonly floor: number;
  readonly depth: number;
}

/** From the middle of one person to the next one's. */
export const spacingOf = (a: GroupMember, b: GroupMember, spacing: number | null): number =>
  spacing ?? (a.shoulders + b.shoulders) / 2 + USUAL_GROUP.shoulderGap.value;

/** Eyes above the floor. */
function eyesAboveFloor(member: GroupMember, place: RowPlace, support: number): number {
  return support + (place === 'seated' ? member.seatedEyes : member.standingEyes);
}

/** Partial sums of the steps from one to the next, about their middle. */
function centred(steps: readonly number[]): number[] {
  const total = steps.reduce((sum, step) => sum + step, 0);
  let at = -total / 2;
  return [at, ...steps.map((step) => (at += step))];
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Places of one row over the floor: x, z and turn; the row is `back` behind the front one. */
function rowOver(
  { members, spacing }: RowAsked,
  { curve, depth }: GroupAsked,
  back: number,
): Result<readonly (readonly [x: number, z: number, turn: number])[]> {
  const steps = members
    .slice(1)
    .map((member, i) => spacingOf(members[i] as GroupMember, member, spacing));
  if (curve === 'straight') return ok(centred(steps).map((x) => [x, 0 - back, 0] as const));
  const radius = depth + back;
  const widest = Math.max(0, ...steps);
  if (widest >= 2 * radius) return refuse('behind-camera', 2 * radius, widest);
  // Neighbours keep their spacing as the chord of the circle about the camera.
  const angles = steps.map((step) => 2 * Math.asin(step / 2 / radius));
  const half = sum(angles) / 2;
  if (half >= Math.PI / 2) return refuse('behind-camera', Math.PI * radius, 2 * half * radius);
  return ok(
    centred(angles).map((angle) => {
      // To the ends the circle comes forward by its sagitta.
      const forward = radius * (1 - Math.cos(angle));
      return [radius * Math.sin(angle), forward - back, -angle] as const;
    }),
  );
}

/** What each row stands on above the floor. */
export function supportsOf({
  rows,
  step,
}: {
  readonly rows: readonly Pick<RowAsked, 'place'>[];
  readonly step: number;
}): readonly number[] {
  let steps = 0;
  return rows.map(({ place }) => {
    if (place === 'step') steps += 1;
    return place === 'seated' ? USUAL_GROUP.seat.value : place === 'step' ? steps * step : 0;
  });
}

/**
 * Places everybody. Refuses a front row without people, distances that are not above 0, and a curved row
 * that would reach round the camera (limit and asked: metres of arc).
 */
export function placeGroup(asked: GroupAsked): Result<GroupPlaces> {
  const bad = [
    asked.depth,
    asked.rowSpacing,
    ...asked.rows.map(({ spacing }) => spacing ?? 1),
  ].find((value) => !(value > 0 && Number.isFinite(value)));
  if (bad !== undefined) return refuse('not-positive', 0, bad);
  if (!(asked.step >= 0 && Number.isFinite(asked.step)))
    return refuse('not-positive', 0, asked.step);

  const supports = supportsOf(asked);
  const places: MemberPlace[] = [];
  for (const [row, now] of asked.rows.entries()) {
    if (now.members.length === 0) continue;
    const over = rowOver(now, asked, row * asked.rowSpacing);
    if (!over.ok) return over;
    const support = supports[row] ?? 0;
    now.members.forEach((member, across) => {
      const [x, z, turn] = over.value[across] ?? [0, 0, 0];
      const up = eyesAboveFloor(member, now.place, support);
      places.push({ member, row, across, place: now.place, eyes: [x, up, z], support, turn });
    });
  }
  const front = places.filter(({ row }) => row === 0);
  const [first] = front.toSorted((a, b) => Math.abs(a.eyes[0]) - Math.abs(b.eyes[0]));
  if (!first) return refuse('not-positive', 0, 0);
  const level = first.eyes[1];
  const lowered = (place: MemberPlace): MemberPlace => ({
    ...place,
    eyes: [place.eyes[0], place.eyes[1] - level, place.eyes[2]],
    support: place.support - level,
  });
  return ok({
    members: [lowered(first), ...places.filter((place) => place !== first).map(lowered)],
    floor: -level,
    depth: asked.depth,
  });
}

/**
 * Somebody of a group as the plan takes people: the sitter's landmarks (its own frame) turned as the row
 * has it and carried to the place.
 */
export function personAt(place: MemberPlace, landmarks: Landmarks): PlanPerson {
  const [cos, sin] = [Math.cos(place.turn), Math.sin(place.turn)];
  const [x0, y0, z0] = place.eyes;
  const at = (name: LandmarkName): Vec3 => {
    const [x, y, z] = landmarks[name];
    return [x0 + x * cos + z * sin, y0 + y, z0 + z * cos - x * sin];
  };
  return {
    id: place.member.id,
    name: place.member.name,
    eyes: place.eyes,
    pupils: [at('pupil_right'), at('pupil_left')],
    noseTip: at('pronasale'),
    ears: [at('tragion_right'), at('tragion_left')],
    crown: at('vertex'),
    chin: at('menton'),
    halfBreadth: place.member.shoulders / 2,
    row: place.row,
  };
}
