/** The third quantity: what follows when two of standpoint, focal length and frame are given. */

import type { Models } from '../models/types';
import { focusForFrame, sensorSides } from '../optics/framing';
import { imageDistance } from '../optics/lens';
import { depthBefore, distanceToMatch } from '../optics/perspective';
import type { Result, SensorSides, Vec3 } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import type { Sitter } from '../sitter/types';
import { type Cast, leadOf } from './cast';
import { cropFocal } from './hold';
import { bodyOf, lensesOf } from './kit';
import { known } from './known';
import { actingFocal } from './lens-fit';
import { clamp, LIMITS } from './limits';
import { placeOf } from './place';
import type { Picture, Session } from './types';

/** What actions need beside the document. */
export interface ActionContext {
  readonly models: Models;
  readonly cast: Cast;
}

/** Rounds of the fixed points below; each at least halves the error. */
const ROUNDS = 60;
const SETTLED = 1e-13;

/** Where a value of standpoint that gives `wanted` lies, when `at` grows nearly in proportion to it. */
function solve(start: number, wanted: number, at: (standpoint: number) => number): number {
  let standpoint = start;
  for (let i = 0; i < ROUNDS; i++) {
    const next = clamp((standpoint * wanted) / at(standpoint), LIMITS.standpoint);
    if (Math.abs(next / standpoint - 1) < SETTLED) return next;
    standpoint = next;
  }
  return standpoint;
}

export const sensorOf = (session: Session, models: Models): SensorSides =>
  sensorSides(known(models.formats, bodyOf(session).format), session.crop.orientation);

const replace = (session: Session, picture: Picture): Session => ({
  ...session,
  pictures: session.pictures.map((each) => (each.letter === picture.letter ? picture : each)),
});

/** Focal length as it acts of what a picture's fixed view names: a mark when its lens is named. */
function actingAt(
  session: Session,
  picture: Picture,
  focal: number,
  depth: Metre,
  models: Models,
): Metre {
  return picture.lens === null
    ? metres(focal)
    : actingFocal(known(lensesOf(session, models), picture.lens), metres(focal), depth);
}

/** Standpoint from which the session's crop needs `focal`, metres. */
export function standpointForFocal(
  session: Session,
  picture: Picture,
  focal: number,
  { models, cast }: ActionContext,
): number {
  const sensor = sensorOf(session, models);
  return solve(picture.standpoint, 1, (standpoint) => {
    const there = { ...picture, standpoint };
    const needed = cropFocal(replace(session, there), there, sensor, cast);
    return needed / actingAt(session, picture, focal, placeOf(there, sensor).depth, models);
  });
}

/**
 * The crop's frame height with which a picture that follows the crop needs `focal` from where
 * it stands: all held sizes grow with the image distance alike. Null inside the focal length.
 */
export function frameHeightForFocal(
  session: Session,
  picture: Picture,
  focal: number,
  { models, cast }: ActionContext,
): number | null {
  const sensor = sensorOf(session, models);
  const { depth } = placeOf(picture, sensor);
  const now = imageDistance(cropFocal(session, picture, sensor, cast), depth);
  const wanted = imageDistance(actingAt(session, picture, focal, depth, models), depth);
  return now.ok && wanted.ok ? (session.crop.frameHeight * now.value) / wanted.value : null;
}

/** Standpoint from which a picture of fixed focal length frames `frameHeight`, metres. */
export function standpointForFrame(
  session: Session,
  picture: Picture,
  focal: number,
  frameHeight: number,
  { models }: ActionContext,
): number {
  const sensor = sensorOf(session, models);
  return solve(picture.standpoint, 1, (standpoint) => {
    const { depth } = placeOf({ ...picture, standpoint }, sensor);
    const acting = actingAt(session, picture, focal, depth, models);
    const focus = focusForFrame(metres(frameHeight), acting, sensor.height);
    return focus.ok ? depth / focus.value : 1;
  });
}

/** Depths of nose tip and mean ear before the eye plane, seen from `position`. */
function noseAndEars(sitter: Sitter, position: Vec3): { zA: Metre; zB: Metre } | null {
  const { pronasale, tragion_left, tragion_right } = sitter.landmarks;
  const [nose, left, right] = [pronasale, tragion_left, tragion_right].map((point) =>
    depthBefore(point, position),
  );
  if (!nose?.ok || !left?.ok || !right?.ok) return null;
  return { zA: nose.value, zB: metres((left.value + right.value) / 2) };
}

/**
 * Standpoint at which a picture shows the nose-to-ear ratio of the other. Equal standpoints, unless the
 * cameras stand at different heights or the pictures show different sitters: a child's face is less deep,
 * and shows the same from nearer. Null where none does.
 */
export function standpointForLook(
  session: Session,
  picture: Picture,
  other: Picture,
  { models, cast }: ActionContext,
): number | null {
  const sensor = sensorOf(session, models);
  const place = placeOf(other, sensor);
  const theirs = noseAndEars(leadOf(cast, other), place.position);
  const sitter = leadOf(cast, picture);
  let { standpoint } = other;
  for (let i = 0; i < ROUNDS; i++) {
    const own = noseAndEars(sitter, placeOf({ ...picture, standpoint }, sensor).position);
    const found: Result<Metre> | null =
      own && theirs && distanceToMatch(own, theirs, place.standpoint);
    if (!found?.ok) return null;
    const next = clamp(found.value, LIMITS.standpoint);
    if (Math.abs(next / standpoint - 1) < SETTLED) return next;
    standpoint = next;
  }
  return standpoint;
}
