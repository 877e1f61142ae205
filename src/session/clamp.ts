/** A sound session brought into the legal ranges. */
import type { Models } from '../models/types';
import { DIMENSIONS, type DimensionName } from '../sitter/types';
import { clamp, LIMITS } from './limits';
import type { Picture, Session, View } from './types';

function clampView(view: View): View {
  return view.by === 'crop' ? view : { ...view, focal: clamp(view.focal, LIMITS.focal) };
}

const clampPicture = (picture: Picture): Picture => ({
  ...picture,
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

export function clampSession(session: Session, models: Models): Session {
  const { sitter, crop, light, room } = session;
  const changes: Partial<Record<DimensionName, number>> = {};
  for (const name of DIMENSIONS) {
    const mm = sitter.changes[name];
    if (mm !== undefined) changes[name] = clampDimension(mm, name, sitter.model, models);
  }
  return {
    ...session,
    sitter: {
      ...sitter,
      changes,
      pose: {
        ...sitter.pose,
        lean: clamp(sitter.pose.lean, LIMITS.lean),
        bodyTurn: clamp(sitter.pose.bodyTurn, LIMITS.bodyTurn),
        headTurn: clamp(sitter.pose.headTurn, LIMITS.headTurn),
        headNod: clamp(sitter.pose.headNod, LIMITS.headNod),
        headTilt: clamp(sitter.pose.headTilt, LIMITS.headTilt),
      },
    },
    body: { ...session.body, megapixels: clamp(session.body.megapixels, LIMITS.megapixels) },
    crop: {
      ...crop,
      frameHeight: clamp(crop.frameHeight, LIMITS.frameHeight),
      eyesAt: clamp(crop.eyesAt, LIMITS.eyesAt),
      eyesAcross: clamp(crop.eyesAcross, LIMITS.eyesAcross),
    },
    pictures: session.pictures.map(clampPicture),
    light: {
      azimuth: clamp(light.azimuth, LIMITS.lightAzimuth),
      elevation: clamp(light.elevation, LIMITS.lightElevation),
      softness: clamp(light.softness, LIMITS.lightSoftness),
    },
    room: {
      backdrop: clamp(room.backdrop, LIMITS.backdrop),
      cameraWall: clamp(room.cameraWall, LIMITS.cameraWall),
      behindCamera: clamp(room.behindCamera, LIMITS.behindCamera),
    },
    play: playBetween(session.play, session.pictures),
    printHeight: clamp(session.printHeight, LIMITS.printHeight),
  };
}
