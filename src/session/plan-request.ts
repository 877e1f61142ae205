/** A session and the models -> what the plan is asked. Pure and cheap; equal sessions get the same object. */
import type { Models } from '../models/types';
import { sensorSides } from '../optics/framing';
import { PEOPLE_MARGIN } from '../plan/conditions';
import { planRoom } from '../plan/room';
import type { PlanPerson, PlanRequest, Wanted } from '../plan/types';
import { wantedCompany } from './company';
import { usualFrameHeight } from './framed';
import { downTo, gatheredGroup, hungDepth } from './group-frame';
import { bodyOf, kitOf } from './kit';
import { known } from './known';
import { personOf } from './person';
import { cameraId, planCameras } from './plan-camera';
import { type Gathered, movedTo, standing } from './plan-people';
import type { Group, PlanWanted, Session } from './types';

const CENTIMETRE = 0.01;

interface Cast {
  readonly people: readonly [PlanPerson, ...PlanPerson[]];
  /** The first person's eyes above the floor. */
  readonly eyes: number;
}

/** Who of the session's people is in a wanted picture. Without a second person the first one is. */
function castOf(session: Session, { of }: PlanWanted, models: Models): Cast {
  const { beside } = session;
  const { person, eyes } = standing(personOf(session, of === '2' ? '2' : '1'), models);
  if (of !== 'both' || session.people.length < 2) return { people: [person], eyes };
  const second = standing(personOf(session, '2'), models);
  const at = [beside.right, second.eyes - eyes, beside.forward] as const;
  return { people: [person, movedTo(second.person, at)], eyes };
}

/** Width over height of the frame, of the narrowest body there is. */
function aspectOf(session: Session, { orientation }: PlanWanted, models: Models): number {
  const aspects = kitOf(session).bodies.map(({ format }) => {
    const { width, height } = sensorSides(known(models.formats, format), orientation);
    return width / height;
  });
  return Math.min(...aspects);
}

/** The frame of one or two people: as told or as the framing has it, and both of two in it. */
function frameOf(
  session: Session,
  wanted: PlanWanted,
  people: Cast['people'],
  models: Models,
): Pick<Wanted, 'frameHeight' | 'eyesAcross'> {
  const framing = wanted.framing === null ? undefined : models.framings.get(wanted.framing);
  const usual = framing
    ? usualFrameHeight(personOf(session, wanted.of === '2' ? '2' : '1'), framing, models)
    : session.crop.frameHeight;
  const asked = wanted.frameHeight ?? usual;
  const [first, second] = people;
  if (!second) return { frameHeight: asked, eyesAcross: 0.5 };
  const aspect = aspectOf(session, wanted, models);
  const apart = Math.abs(second.eyes[0]);
  const half = apart / 2 + Math.max(first.halfBreadth, second.halfBreadth);
  const needed = (2 * half) / (1 - 2 * PEOPLE_MARGIN) / aspect;
  const frameHeight =
    wanted.frameHeight === null && needed > asked
      ? Math.ceil(needed / CENTIMETRE) * CENTIMETRE
      : asked;
  // The middle between both pairs of eyes sits in the middle of the body in use's frame.
  const body = known(models.formats, bodyOf(session).format);
  const { width, height } = sensorSides(body, wanted.orientation);
  return { frameHeight, eyesAcross: 0.5 - second.eyes[0] / 2 / ((frameHeight * width) / height) };
}

/** The frame of a group: grown until everybody is in it, down to where the framing has it. */
function groupFrame(
  { framing: id, frameHeight }: PlanWanted,
  group: Group,
  cast: Gathered,
  models: Models,
): Pick<Wanted, 'frameHeight' | 'eyesAcross' | 'downTo'> {
  const framing = id === null ? undefined : models.framings.get(id);
  return {
    frameHeight,
    eyesAcross: 0.5,
    ...(framing ? { downTo: downTo(group, cast, framing, models) } : {}),
  };
}

/** Who is before the camera, in the words of a list: the framing's name, and who is in it. */
function nameOf({ framing, of }: PlanWanted, session: Session, models: Models): string {
  const name = framing === null ? 'Own frame' : known(models.framings, framing).name;
  if (of === 'group') return `${name}, group`;
  if (session.people.length < 2) return name;
  return of === 'both' ? `${name}, both` : `${name}, person ${of}`;
}

function wantedOf(
  session: Session,
  wanted: PlanWanted,
  models: Models,
): { readonly wanted: Wanted; readonly eyes: number } {
  const { group } = session.plan;
  const together = wanted.of === 'group' ? gatheredGroup(session, models) : null;
  const { people, eyes } = together ?? castOf(session, wanted, models);
  const frame =
    group && together
      ? groupFrame(wanted, group, together, models)
      : frameOf(session, wanted, people, models);
  return {
    eyes,
    wanted: {
      id: wanted.id,
      name: nameOf(wanted, session, models),
      orientation: wanted.orientation,
      eyesAt: wanted.eyesAt,
      ...frame,
      margin: people.length > 1 ? PEOPLE_MARGIN : 0,
      cameraHeight: wanted.cameraHeight,
      people,
    },
  };
}

function requestOf(session: Session, models: Models): PlanRequest {
  const { eyes } = standing(session.people[0], models);
  const room = planRoom(session.room, eyes);
  return {
    cameras: planCameras(session, models),
    room,
    wanted: session.plan.wanted.map((each) => {
      const { wanted, eyes: own } = wantedOf(session, each, models);
      return own === eyes ? wanted : { ...wanted, room: planRoom(session.room, own) };
    }),
    asked: session.plan.asked,
    backdropWidths: [...models.backdrops.values()].map(({ width }) => width),
  };
}

/** All of a session that its plan hangs on. */
const partsOf = ({ kits, kit, ownLenses, people, beside, room, plan, ...rest }: Session) => [
  kits,
  kit,
  ownLenses,
  people,
  beside,
  room,
  plan.wanted,
  plan.asked,
  plan.group,
  plan.wanted.some(({ framing, frameHeight }) => framing === null && frameHeight === null)
    ? rest.crop.frameHeight
    : null,
  // A curved row is bent about the camera.
  plan.group?.curve === 'curved' ? hungDepth({ plan, pictures: rest.pictures }) : null,
];

let last: {
  readonly models: Models;
  readonly parts: readonly unknown[];
  readonly request: PlanRequest;
} | null = null;

/** What the plan is asked. While nothing changes that it hangs on, the same object. */
export function planRequest(session: Session, models: Models): PlanRequest {
  const parts = partsOf(session);
  if (last?.models === models && last.parts.every((part, i) => Object.is(part, parts[i]))) {
    return last.request;
  }
  const request = requestOf(session, models);
  last = { models, parts, request };
  return request;
}

/** Body, lens and framing of the picture that results are hung in: the row of the result that it shows. */
export function hungRow(
  session: Session,
): { readonly wanted: string; readonly camera: string } | null {
  const { plan, crop, pictures } = session;
  const picture = pictures.find(({ letter }) => letter === plan.picture);
  if (!picture || picture.lens === null) return null;
  const wanted = plan.wanted.find(
    (each) =>
      each.framing === crop.framing &&
      each.orientation === crop.orientation &&
      each.eyesAt === crop.eyesAt &&
      each.cameraHeight === picture.cameraHeight &&
      wantedCompany(session, each).join() === picture.of.join(),
  );
  return wanted ? { wanted: wanted.id, camera: cameraId(bodyOf(session), picture.lens) } : null;
}
