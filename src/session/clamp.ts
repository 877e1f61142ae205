/** A sound session brought into the legal ranges. */
import type { Models } from '../models/types';
import { DIMENSIONS, type DimensionName } from '../sitter/types';
import { clampHandout, clampStandpoints } from './clamp-handout';
import { clampKit, clampOwnLens } from './clamp-kit';
import { clampPlan } from './clamp-plan';
import { clampRoom } from './clamp-room';
import { kitOf } from './kit';
import type { LampSetting } from './light';
import { clamp, LIMITS } from './limits';
import type { Company, Compared, Gaze, Person, PersonId, Picture, Session, View } from './types';

function clampView(view: View): View {
  return view.by === 'crop' ? view : { ...view, focal: clamp(view.focal, LIMITS.focal) };
}

/** Who of the picture is there, each once; the first person when nobody is. */
function presentOf(of: Company, people: readonly Person[]): Company {
  const ids = people.map(({ id }) => id);
  const [first, ...others] = [...new Set(of)].filter((id) => ids.includes(id));
  return first === undefined ? [ids[0] as PersonId] : [first, ...others];
}

const clampPicture = (picture: Picture, people: readonly Person[]): Picture => ({
  ...picture,
  of: presentOf(picture.of, people),
  standpoint: clamp(picture.standpoint, LIMITS.standpoint),
  view: clampView(picture.view),
  fNumber: clamp(picture.fNumber, LIMITS.fNumber),
  cameraHeight: clamp(picture.cameraHeight, LIMITS.cameraHeight),
  tilt: clamp(picture.tilt, LIMITS.tilt),
});

/** The nearest legal value of a changed dimension, millimetres: a share of the sitter's own. */
export function clampDimension(
  mm: number,
  name: DimensionName,
  model: string,
  models: Models,
): number {
  const own = models.sitters.get(model)?.dimensions[name].mm ?? mm;
  const { least, most } = LIMITS.dimensionChange;
  return clamp(mm, { least: least * own, most: most * own });
}

/**
 * The move plays between two pictures that hang: a missing end becomes the first or the last one that
 * is not the other end.
 */
function playBetween(play: Session['play'], pictures: readonly Picture[]): Session['play'] {
  const letters = pictures.map(({ letter }) => letter);
  const [first = play.from] = letters;
  const from = letters.includes(play.from)
    ? play.from
    : (letters.find((letter) => letter !== play.to) ?? first);
  const others = letters.filter((letter) => letter !== from);
  const to = others.includes(play.to) ? play.to : (others.at(-1) ?? from);
  return { from, to, seconds: clamp(play.seconds, LIMITS.playSeconds) };
}

const clampGaze = (gaze: Gaze): Gaze =>
  typeof gaze === 'string'
    ? gaze
    : {
        yaw: clamp(gaze.yaw, LIMITS.gazeYaw),
        pitch: clamp(gaze.pitch, LIMITS.gazePitch),
      };

/** Hands lie in a lap only where there is one. */
const clampArms = ({ stance, arms }: Person['pose']): Person['pose']['arms'] =>
  stance === 'standing' && arms === 'lap' ? 'hanging' : arms;

function clampPerson(person: Person, models: Models): Person {
  const changes: Partial<Record<DimensionName, number>> = {};
  for (const name of DIMENSIONS) {
    const mm = person.changes[name];
    if (mm !== undefined) changes[name] = clampDimension(mm, name, person.model, models);
  }
  const { pose, looks } = person;
  return {
    ...person,
    changes,
    pose: {
      stance: pose.stance,
      arms: clampArms(pose),
      lean: clamp(pose.lean, LIMITS.lean),
      bodyTurn: clamp(pose.bodyTurn, LIMITS.bodyTurn),
      headTurn: clamp(pose.headTurn, LIMITS.headTurn),
      headNod: clamp(pose.headNod, LIMITS.headNod),
      headTilt: clamp(pose.headTilt, LIMITS.headTilt),
    },
    looks:
      looks.smile === undefined ? looks : { ...looks, smile: clamp(looks.smile, LIMITS.smile) },
    gaze: clampGaze(person.gaze),
  };
}

const clampLamp = (lamp: LampSetting): LampSetting => ({
  azimuth: clamp(lamp.azimuth, LIMITS.lightAzimuth),
  elevation: clamp(lamp.elevation, LIMITS.lightElevation),
  strength: clamp(lamp.strength, LIMITS.lightStrength),
  distance: clamp(lamp.distance, LIMITS.lightDistance),
  size: clamp(lamp.size, LIMITS.lightSize),
});

/** What a comparison hangs on, brought into the legal ranges. */
function clampCompared(compared: Compared, models: Models): Compared {
  const { people, beside, crop, light } = compared;
  const [first, ...others] = people;
  return {
    people: [clampPerson(first, models), ...others.map((person) => clampPerson(person, models))],
    beside: {
      right: clamp(beside.right, LIMITS.besideRight),
      forward: clamp(beside.forward, LIMITS.besideForward),
    },
    crop: {
      ...crop,
      frameHeight: clamp(crop.frameHeight, LIMITS.frameHeight),
      eyesAt: clamp(crop.eyesAt, LIMITS.eyesAt),
      eyesAcross: clamp(crop.eyesAcross, LIMITS.eyesAcross),
    },
    pictures: compared.pictures.map((picture) => clampPicture(picture, people)),
    light: {
      key: clampLamp(light.key),
      fill: clampLamp(light.fill),
      hair: clampLamp(light.hair),
      background: clampLamp(light.background),
    },
    play: playBetween(compared.play, compared.pictures),
  };
}

export function clampSession(session: Session, models: Models): Session {
  const [firstKit, ...otherKits] = session.kits;
  return {
    ...session,
    ...clampCompared(session, models),
    kits: [clampKit(firstKit), ...otherKits.map(clampKit)],
    kit: kitOf(session).id,
    ownLenses: session.ownLenses.map(clampOwnLens),
    room: clampRoom(session.room),
    plan: clampPlan(session.plan, session.pictures),
    printHeight: clamp(session.printHeight, LIMITS.printHeight),
    comparisons: session.comparisons.map((kept) => ({ ...kept, ...clampCompared(kept, models) })),
    series: clampStandpoints(session.series),
    tabled: clampStandpoints(session.tabled),
    handout: clampHandout(session.handout, new Set(session.comparisons.map(({ id }) => id))),
  };
}
