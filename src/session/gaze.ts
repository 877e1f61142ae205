/** Where the eyes look in a picture. */
import type { Vec3 } from '../optics/types';
import { gazedPupils, turnedEyes, withGaze } from '../sitter/gaze';
import type { Landmarks, Sitter, SitterMesh } from '../sitter/types';
import { type Cast, leadOf } from './cast';
import { personOf } from './person';
import type { Gaze, Picture, Session } from './types';

/** Gazes remembered of each pair of eyes: those of the pictures that hang, and of some steps of a drag. */
const REMEMBERED = 16;

const turned = new WeakMap<SitterMesh, Map<string, SitterMesh>>();
const looks = new WeakMap<Sitter, Map<string, Sitter>>();

/** What `make` gave for the key before, or gives now; the oldest is forgotten. */
function remembered<Of extends object, T>(
  store: WeakMap<Of, Map<string, T>>,
  of: Of,
  key: string,
  make: () => T,
): T {
  const known = store.get(of) ?? new Map<string, T>();
  store.set(of, known);
  const found = known.get(key);
  if (found !== undefined) return found;
  const fresh = make();
  const [oldest] = known.keys();
  if (oldest !== undefined && known.size >= REMEMBERED) known.delete(oldest);
  known.set(key, fresh);
  return fresh;
}

/**
 * A sitter whose eyes look as asked; `lens` is the entrance pupil in the sitter's own frame, metres. Eyes
 * that another sitter has too (a face is shaped, and they are not) are turned once.
 */
export function looking(sitter: Sitter, gaze: Gaze, lens: Vec3): Sitter {
  const [index] = sitter.landmarkVertices.pupil_left;
  const eyes = sitter.meshes[index];
  if (gaze === 'ahead' || !eyes) return sitter;
  const target = gaze === 'lens' ? lens : gaze;
  const key = JSON.stringify(target);
  return remembered(looks, sitter, key, () =>
    withGaze(
      sitter,
      target,
      remembered(turned, eyes, key, () => turnedEyes(eyes, target)),
    ),
  );
}

/** The pupils of a sitter that looks as asked, without the eyes themselves. */
export const lookingPupils = (
  sitter: Sitter,
  gaze: Gaze,
  lens: Vec3,
): Pick<Landmarks, 'pupil_left' | 'pupil_right'> =>
  gazedPupils(sitter, gaze === 'ahead' ? null : gaze === 'lens' ? lens : gaze);

/** The sitter a picture's distances are taken to, and where its eyes look. */
export interface Lead {
  readonly sitter: Sitter;
  readonly gaze: Gaze;
}

export const leadFor = (
  session: Pick<Session, 'people'>,
  cast: Cast,
  picture: Pick<Picture, 'of'>,
): Lead => ({ sitter: leadOf(cast, picture), gaze: personOf(session, picture.of[0]).gaze });
