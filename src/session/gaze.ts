/** Where the eyes look in a picture. */
import type { Vec3 } from '../optics/types';
import { withGaze } from '../sitter/gaze';
import type { Sitter } from '../sitter/types';
import { type Cast, leadOf } from './cast';
import { personOf } from './person';
import type { Gaze, Picture, Session } from './types';

/** Gazes remembered of each sitter: those of the pictures that hang, and of some steps of a drag. */
const REMEMBERED = 16;
const known = new WeakMap<Sitter, Map<string, Sitter>>();

/** A sitter whose eyes look as asked; `lens` is the entrance pupil in the sitter's own frame, metres. */
export function looking(sitter: Sitter, gaze: Gaze, lens: Vec3): Sitter {
  if (gaze === 'ahead') return sitter;
  const target = gaze === 'lens' ? lens : gaze;
  const gazes = known.get(sitter) ?? new Map<string, Sitter>();
  known.set(sitter, gazes);
  const key = JSON.stringify(target);
  const found = gazes.get(key);
  if (found) return found;
  const fresh = withGaze(sitter, target);
  const [oldest] = gazes.keys();
  if (oldest !== undefined && gazes.size >= REMEMBERED) gazes.delete(oldest);
  gazes.set(key, fresh);
  return fresh;
}

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
