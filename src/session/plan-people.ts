/** The people of a session as the plan takes them: landmarks posed, from dimensions alone. Metres. */
import { dimensionsOf } from '../models/framing';
import type { Models } from '../models/types';
import type { Vec3 } from '../optics/types';
import { type GroupPlaces, memberOf, personAt, placeGroup, type RowAsked } from '../plan/group';
import type { PlanPerson } from '../plan/types';
import { landmarksFor } from '../sitter/landmarks';
import { fromFloor } from '../sitter/landmarks-body';
import { type BoneShares, posedLandmarks, posing } from '../sitter/pose';
import { BONES, type Bone } from '../sitter/skeleton';
import type { Dimensions, LandmarkName, Landmarks, SitterModel } from '../sitter/types';
import { known } from './known';
import { personDimensions } from './person';
import type { Group, Person } from './types';

/** A person at the origin of its own frame. */
export interface Standing {
  readonly person: PlanPerson;
  /** Eyes above the floor, as posed. */
  readonly eyes: number;
  readonly dimensions: Dimensions;
}

const on = (bone: Bone): BoneShares => ({
  joints: [BONES.indexOf(bone), 0, 0, 0],
  weights: [255, 0, 0, 0],
});

/** What a landmark of a limb moves with; the others hang on chest and head. */
function boneOf(name: LandmarkName): BoneShares | undefined {
  const [part, side] = name.split('_');
  if (side !== 'left' && side !== 'right') return undefined;
  switch (part) {
    case 'elbow':
      return on(`upper_arm_end_${side}`);
    case 'wrist':
      return on(`hand_${side}`);
    case 'fingertip':
      return on(`fingertips_${side}`);
    case 'knee':
      return on(`shin_${side}`);
    default:
      return undefined;
  }
}

const made = new WeakMap<Models, WeakMap<Person, Standing>>();

/** Somebody of the session, posed. A smile or a turned eye moves nothing the plan asks about. */
export function standing(person: Person, models: Models): Standing {
  const before = made.get(models) ?? new WeakMap<Person, Standing>();
  made.set(models, before);
  const found = before.get(person);
  if (found) return found;
  const dimensions = personDimensions(person, models);
  const upright = landmarksFor(dimensions);
  const pose = posing(upright, dimensions, person.pose);
  const landmarks = posedLandmarks(upright, pose, boneOf);
  const [kneeX, , kneeZ] = upright.knee_left;
  const [, floor] = pose.point([kneeX, fromFloor(dimensions, 0) / 1000, kneeZ], on('foot_left'));
  const fresh: Standing = {
    dimensions,
    eyes: -floor,
    person: {
      id: person.id,
      name: known(models.sitters, person.model).name,
      eyes: [0, 0, 0],
      ...faceOf(landmarks),
      halfBreadth: Math.max(
        dimensions.bideltoid_breadth / 2000,
        ...Object.values(landmarks).map(([x]) => Math.abs(x)),
      ),
      row: 0,
    },
  };
  before.set(person, fresh);
  return fresh;
}

const faceOf = (
  landmarks: Landmarks,
): Pick<PlanPerson, 'pupils' | 'noseTip' | 'ears' | 'crown' | 'chin'> => ({
  pupils: [landmarks.pupil_right, landmarks.pupil_left],
  noseTip: landmarks.pronasale,
  ears: [landmarks.tragion_right, landmarks.tragion_left],
  crown: landmarks.vertex,
  chin: landmarks.menton,
});

/** A person carried to a place. */
export function movedTo(person: PlanPerson, at: Vec3): PlanPerson {
  const by = (p: Vec3): Vec3 => [p[0] + at[0], p[1] + at[1], p[2] + at[2]];
  const [pupilRight, pupilLeft] = person.pupils;
  const [earRight, earLeft] = person.ears;
  return {
    ...person,
    eyes: by(person.eyes),
    pupils: [by(pupilRight), by(pupilLeft)],
    noseTip: by(person.noseTip),
    ears: [by(earRight), by(earLeft)],
    crown: by(person.crown),
    chin: by(person.chin),
  };
}

const figures = new WeakMap<SitterModel, { dimensions: Dimensions; landmarks: Landmarks }>();

/** A model's own figure, upright; a group has many of one model. */
function figureOf(model: SitterModel): { dimensions: Dimensions; landmarks: Landmarks } {
  const found = figures.get(model);
  if (found) return found;
  const dimensions = dimensionsOf(model);
  const fresh = { dimensions, landmarks: landmarksFor(dimensions) };
  figures.set(model, fresh);
  return fresh;
}

/** A group in its own frame, the middle of its front row on the axis. */
export interface Gathered {
  readonly people: readonly [PlanPerson, ...PlanPerson[]];
  /** The first person's eyes above the floor. */
  readonly eyes: number;
  readonly places: GroupPlaces;
}

/** `depth`: from the lens to the front row, which a curved row is bent about. Null where it cannot stand so. */
export function gathered(group: Group, depth: number, models: Models): Gathered | null {
  const landmarks = new Map<string, Landmarks>();
  const rows = group.rows.map(
    (row, i): RowAsked => ({
      place: row.place,
      spacing: row.spacing,
      members: row.models.map((model, j) => {
        const sitter = known(models.sitters, model);
        const figure = figureOf(sitter);
        const id = `${i + 1}.${j + 1}`;
        landmarks.set(id, figure.landmarks);
        return memberOf(id, sitter.name, figure.dimensions);
      }),
    }),
  );
  const { rowSpacing, step, curve } = group;
  const placed = placeGroup({ rows, rowSpacing, step, curve, depth });
  if (!placed.ok) return null;
  const [first, ...others] = placed.value.members;
  const personOf = (place: typeof first): PlanPerson =>
    personAt(place, landmarks.get(place.member.id) as Landmarks);
  return {
    people: [personOf(first), ...others.map(personOf)],
    eyes: -placed.value.floor,
    places: placed.value,
  };
}
