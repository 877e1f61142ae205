/** The document -> cameras. What cannot be met is drawn as nearly as possible, with the reason. */

import type { FormatModel, Models } from '../models/types';
import { cameraAt, viewAngle } from '../optics/camera';
import { type Cut, cutFrom } from '../optics/cut';
import { sensorSides } from '../optics/framing';
import { must } from '../optics/result';
import type { Camera, Lens } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import type { Cast } from './cast';
import { companionOf, companyLimits, eyesAcrossFor } from './company';
import { leadFor } from './gaze';
import { type Held, heldBy, imageForHeld } from './hold';
import { bodyOf, kitOf, lensesOf, runOf } from './kit';
import { known } from './known';
import { fitLens, rankLenses, tapeFor } from './lens-fit';
import type { Limit } from './limit';
import { LIMITS } from './limits';
import { placeOf } from './place';
import { roomLimits, viewLimits } from './place-limits';
import type { Company, Letter, Picture, Session } from './types';
import { viewOf } from './view';

export interface ResolvedPicture {
  readonly letter: Letter;
  readonly of: Company;
  readonly camera: Camera;
  readonly standpoint: Metre;
  /** Focal length as it acts, of what is on the camera (for a cut: of the wider picture). */
  readonly focal: Metre;
  readonly frameHeight: Metre;
  readonly frameWidth: Metre;
  /** Along the axis, on the eyes. */
  readonly focusDistance: Metre;
  /** From the sensor mark, along the axis. */
  readonly tapeDistance: Metre;
  readonly fNumber: number;
  readonly format: FormatModel;
  /** The named lens, or the best of the kit; null when none of the kit can. */
  readonly lens: Lens | null;
  /** What to set on that lens. */
  readonly lensMark: Metre | null;
  /** Passed limits, the one to show first; empty when all is met. */
  readonly limits: readonly Limit[];
  /** What "stay back and crop" costs, when the picture is cut. */
  readonly cut: Cut | null;
  /** The camera sees the face from above (+) or below (-), radians. */
  readonly faceAngle: number;
  readonly held: Held;
  /** It has the held size: by its own focal length or as a cut, and no limit stood in the way. */
  readonly followsCrop: boolean;
}

/**
 * One picture of a session as a camera with all that follows from it. Never NaN and never a
 * throw for a session that `decode` let in: an impossible request gives the nearest picture.
 */
export function resolvePicture(
  session: Session,
  picture: Picture,
  models: Models,
  cast: Cast,
): ResolvedPicture {
  const body = bodyOf(session);
  const lenses = lensesOf(session, models);
  const format = known(models.formats, body.format);
  const sensor = sensorSides(format, session.crop.orientation);
  const named = picture.lens === null ? null : known(lenses, picture.lens);
  const place = placeOf(picture, sensor);
  const held = heldBy(session, sensor, cast);
  const lead = leadFor(session, cast, picture);
  const { sitter } = lead;
  const wanted = imageForHeld(held, session.crop, place, sensor, lead);
  const view = viewOf(picture.view, place, sensor, wanted, named);
  const { focal, share } = view;
  const request = {
    standpoint: place.standpoint,
    height: metres(place.position[1]),
    tilt: place.tilt,
    focal,
    sensor: { width: metres(sensor.width * share), height: metres(sensor.height * share) },
    eyesAt: session.crop.eyesAt,
    eyesAcross: session.crop.eyesAcross,
  };
  const alone = must(cameraAt(request));
  const companion = companionOf(session, picture, cast);
  const camera = companion
    ? must(cameraAt({ ...request, eyesAcross: eyesAcrossFor(alone, companion, session.crop) }))
    : alone;
  const { left, right, bottom, top } = camera.frustum;
  const frameHeight = metres((top - bottom) * place.depth);
  const { fNumber } = picture;
  const wantedFrame =
    picture.view.by === 'cut' ? (sensor.height * place.depth) / wanted : LIMITS.frameHeight.least;
  const asked = {
    focal,
    focus: place.depth,
    fNumber,
    frameHeight: metres((sensor.height * place.depth) / camera.imageDistance),
    sensorHeight: sensor.height,
    isFocalFixed: picture.view.by !== 'crop',
    standpointPerFocus: place.standpoint / place.depth,
  };
  const fits = named
    ? [fitLens(named, asked)]
    : rankLenses(
        kitOf(session).lenses.map((id) => known(lenses, id)),
        asked,
      );
  const [best] = fits;
  const lens = named ?? (best?.limit === null ? best.lens : null);
  const tapeDistance = tapeFor(lens, focal, place.depth);
  const lensLimits =
    lens !== null && best?.limit === null ? [] : fits.flatMap((fit) => fit.limit ?? []);
  const cut =
    picture.view.by === 'cut' && view.refusal === null
      ? cutFrom({
          focal,
          fNumber,
          focus: place.depth,
          sensor,
          frameHeight,
          megapixels: body.megapixels,
        })
      : null;
  return {
    letter: picture.letter,
    of: picture.of,
    camera,
    standpoint: place.standpoint,
    focal,
    frameHeight,
    frameWidth: metres((right - left) * place.depth),
    focusDistance: place.depth,
    tapeDistance,
    fNumber,
    format,
    lens,
    lensMark: lens ? (best?.mark ?? null) : null,
    limits: [
      ...(companion ? companyLimits(camera, sitter, companion, frameHeight) : []),
      ...viewLimits(place, view, asked, metres(wantedFrame)),
      ...lensLimits,
      ...roomLimits(place, asked, tapeDistance, lens, runOf(session.room), sitter),
    ],
    cut: cut?.ok ? cut.value : null,
    faceAngle: viewAngle(camera),
    held,
    followsCrop: picture.view.by !== 'lens' && view.refusal === null,
  };
}
