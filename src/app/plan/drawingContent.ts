/** A session as the drawings of its room take it. Pure. */
import {
  figureOf,
  type PlanContent,
  type PlanFigure,
  type ProfileOutline,
} from '../../drawings/plan';
import { dimensionsOf } from '../../models/framing';
import type { Models } from '../../models/types';
import { depthOfField } from '../../optics/focus';
import { toFloor } from '../../plan/room';
import { axisOf } from '../../plan/run';
import type { PlanPerson, PlanRequest, PlanRoom } from '../../plan/types';
import { runOf } from '../../session/kit';
import { known } from '../../session/known';
import { type LampName, lampPlace, STANDS } from '../../session/light';
import { LIMITS } from '../../session/limits';
import { personDimensions, personOf } from '../../session/person';
import { groupSteps, type ShownWanted, shownWanted } from '../../session/plan-shown';
import type { PersonId, Session } from '../../session/types';
import { UPRIGHT } from '../../sitter/types';
import { focusMarks } from '../compare/focusMarks';
import type { Shown } from '../compare/shown';
import { words } from '../words';
import { standsIn } from './standsIn';

type Pictures = PlanContent['pictures'];

/** A lens keeps so far from floor and ceiling, metres. By eye. */
const LEAST_LENS = 0.1;

/** What a picture's camera may do along the axis, with the reason at a limit. */
function pictureOf(shown: Shown, session: Session, eyeHeight: number): Pictures[number] {
  const { resolved, letter } = shown;
  const { cameraWall } = runOf(session.room);
  const { focal, fNumber, focusDistance, tapeDistance, format, camera, limits } = resolved;
  const sharp = depthOfField({
    focal,
    fNumber,
    focus: focusDistance,
    circleOfConfusion: format.circleOfConfusion,
  });
  const { reasons } = words.rail;
  const passed = limits.find(({ reason }) => reason in reasons);
  return {
    letter,
    camera,
    standpoint: resolved.standpoint,
    sharp: sharp.ok ? [sharp.value.near, sharp.value.far] : [0, Number.POSITIVE_INFINITY],
    toSensor: tapeDistance - focusDistance,
    move: {
      min: LIMITS.standpoint.least,
      max: Math.max(cameraWall, resolved.standpoint),
      reason: passed && reasons[passed.reason as keyof typeof reasons],
    },
    lift: {
      min: Math.max(LEAST_LENS, eyeHeight + LIMITS.cameraHeight.least),
      max: Math.min(session.room.ceiling - LEAST_LENS, eyeHeight + LIMITS.cameraHeight.most),
    },
  };
}

/** Body about the vertical, positive to the sitter's left: in a curved row everybody faces the lens. */
const turnOf = ({ pupils: [right, left] }: PlanPerson): number =>
  Math.atan2(right[2] - left[2], left[0] - right[0]);

/** Everybody in the picture that is spoken of: the session's people, or the group's. */
function figures(
  session: Session,
  wanted: ShownWanted | null,
  models: Models,
  profile: ProfileOutline | null,
): PlanFigure[] {
  const { group } = session.plan;
  if (wanted?.isGroup && group) {
    const steps = groupSteps(group);
    return wanted.people.map((person) => {
      const { id, name, eyes } = person;
      const [row = 0, place = 0] = id.split('.').map((each) => Number(each) - 1);
      const { place: stands, models: sitters } = group.rows[row] as (typeof group.rows)[number];
      return figureOf({
        id,
        name,
        eyes,
        dimensions: dimensionsOf(known(models.sitters, sitters[place] as string)),
        pose: {
          ...UPRIGHT,
          stance: stands === 'seated' ? 'seated' : 'standing',
          bodyTurn: turnOf(person),
        },
        stepHeight: steps[row] ?? 0,
      });
    });
  }
  // Without a wanted picture the first person stands there all the same.
  const [{ id: first, model }] = session.people;
  const alone = [{ id: first, name: known(models.sitters, model).name, eyes: [0, 0, 0] as const }];
  return (wanted?.people ?? alone).map(({ id, name, eyes }, i) => {
    const person = personOf(session, id as PersonId);
    return figureOf({
      id,
      name,
      eyes,
      dimensions: personDimensions(person, models),
      pose: person.pose,
      ...(i === 0 ? { profile } : {}),
    });
  });
}

/** The raised floor under each row that stands on a step. */
function stepsUnder(
  group: NonNullable<Session['plan']['group']>,
  people: PlanRequest['wanted'][number]['people'],
): PlanContent['steps'] {
  return groupSteps(group).flatMap((height, row) => {
    const depths = people.filter((person) => person.row === row).map(({ eyes: [, , z] }) => z);
    if (height === 0 || depths.length === 0) return [];
    const half = group.rowSpacing / 2;
    return [{ from: Math.min(...depths) - half, to: Math.max(...depths) + half, height }];
  });
}

function lights(
  session: Session,
  pictures: readonly Shown[],
  room: PlanRoom,
  name: (lamp: LampName) => string,
): PlanContent['lights'] {
  const place = toFloor(session.room);
  return STANDS.filter((lamp) => session.light[lamp].strength > 0).map((lamp) => {
    const setting = session.light[lamp];
    const { x, y, z } = lampPlace(setting);
    const stand = { at: [x, y, z] as const, size: setting.size };
    const [floorX, floorY] = place([x, z]);
    return {
      id: lamp,
      name: name(lamp),
      x: floorX,
      y: floorY,
      height: y - room.floor,
      size: setting.size,
      ...standsIn(stand, pictures, room),
      move: [
        { min: 0, max: session.room.length },
        { min: 0, max: session.room.width },
      ],
    };
  });
}

export function drawingContent(
  session: Session,
  pictures: readonly Shown[],
  request: PlanRequest,
  models: Models,
  profile: ProfileOutline | null,
  lampName: (lamp: LampName) => string,
): PlanContent {
  const { room, plan } = session;
  const wanted = shownWanted(session, request);
  const around = wanted?.room ?? request.room;
  const { reach } = axisOf(room);
  const { left, right } = reach(room.backdrop.offWall + room.sitterBefore);
  const { besideAxis } = LIMITS;
  return {
    units: session.units,
    room,
    eyeHeight: -around.floor,
    people: figures(session, wanted, models, profile),
    steps: wanted?.isGroup && plan.group ? stepsUnder(plan.group, wanted.people) : [],
    pictures: pictures.map((shown) => pictureOf(shown, session, -around.floor)),
    chosen: plan.picture,
    focus: focusMarks(pictures),
    lights: lights(session, pictures, around, lampName),
    moves: {
      sitter: { min: LIMITS.backdrop.least, max: runOf(room).cameraWall + room.sitterBefore - 0.5 },
      aside: {
        min: room.aside - right + besideAxis.least,
        max: room.aside + left - besideAxis.least,
      },
      backdrop: { min: 0, max: room.backdrop.offWall + room.sitterBefore - LIMITS.backdrop.least },
      backdropTop: { min: LIMITS.backdropTop.least, max: room.ceiling },
      obstacles: Object.fromEntries(
        room.obstacles.map(({ id, length, width }) => [
          id,
          [
            { min: 0, max: Math.max(0, room.length - length) },
            { min: 0, max: Math.max(0, room.width - width) },
          ] as const,
        ]),
      ),
    },
  };
}
