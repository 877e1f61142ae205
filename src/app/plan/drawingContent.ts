/** A session as the drawings of its room take it. Pure. */
import { figureOf, type PlanContent, type PlanFigure, type ProfileOutline } from '../../drawings';
import { dimensionsOf } from '../../models/framing';
import type { Models } from '../../models/types';
import { depthOfField } from '../../optics/focus';
import { shadesLight, standInPicture } from '../../plan/lights';
import { toFloor } from '../../plan/room';
import { axisOf } from '../../plan/run';
import type { PlanRequest, PlanRoom } from '../../plan/types';
import { runOf } from '../../session/kit';
import { known } from '../../session/known';
import { LAMPS, type LampName, lampPlace } from '../../session/light';
import { LIMITS } from '../../session/limits';
import { personDimensions, personOf } from '../../session/person';
import { groupSteps, shownWanted } from '../../session/plan-shown';
import type { PersonId, Session } from '../../session/types';
import { UPRIGHT } from '../../sitter/types';
import { focusMarks } from '../compare/focusMarks';
import type { Shown } from '../compare/shown';
import { words } from '../words';

type Pictures = PlanContent['pictures'];

/** What a picture's camera may do along the axis, with the reason at a limit. */
function pictureOf(shown: Shown, session: Session): Pictures[number] {
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
  };
}

/** Everybody in the picture that is spoken of: the session's people, or the group's. */
function figures(
  session: Session,
  request: PlanRequest,
  models: Models,
  profile: ProfileOutline | null,
): PlanFigure[] {
  const wanted = shownWanted(session, request);
  const { group } = session.plan;
  if (wanted?.isGroup && group) {
    const steps = groupSteps(group);
    return wanted.people.map(({ id, name, eyes }) => {
      const [row = 0, place = 0] = id.split('.').map((each) => Number(each) - 1);
      const { place: stands, models: sitters } = group.rows[row] as (typeof group.rows)[number];
      return figureOf({
        id,
        name,
        eyes,
        dimensions: dimensionsOf(known(models.sitters, sitters[place] as string)),
        pose: stands === 'seated' ? { ...UPRIGHT, stance: 'seated' } : UPRIGHT,
        stepHeight: steps[row] ?? 0,
      });
    });
  }
  const [first] = request.wanted;
  return (wanted?.people ?? first?.people ?? []).map(({ id, name, eyes }, i) => {
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

function lights(
  session: Session,
  pictures: readonly Shown[],
  room: PlanRoom,
  name: (lamp: LampName) => string,
): PlanContent['lights'] {
  const place = toFloor(session.room);
  return LAMPS.filter((lamp) => session.light[lamp].strength > 0).map((lamp) => {
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
      inPicture: pictures
        .filter(({ resolved }) => standInPicture(resolved.camera, stand, room))
        .map(({ letter }) => letter),
      shadedBy: pictures
        .filter(({ resolved: { camera, focusDistance, tapeDistance, lens } }) => {
          const sensor = camera.position[2] + tapeDistance - focusDistance;
          return shadesLight(
            stand,
            {
              front: sensor - (lens?.length ?? 0),
              back: sensor + room.behindCamera,
              lensHeight: camera.position[1] - room.floor,
            },
            room,
          );
        })
        .map(({ letter }) => letter),
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
    people: figures(session, request, models, profile),
    steps: [],
    pictures: pictures.map((shown) => pictureOf(shown, session)),
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
