/** One sitter alone in a picture's crop, measured from any standpoint: what tables and charts show. */
import type { Models } from '../models/types';
import { type Measures, measure } from '../readings/measures';
import type { Sitter } from '../sitter/types';
import { leadFor, lookingPupils } from './gaze';
import { readingInput } from './reading-input';
import { resolvePicture } from './resolve';
import type { Person, Picture, Session } from './types';

/** A picture of the session's crop from another standpoint, with whatever lens that needs. */
export const pictureFrom = (picture: Picture, standpoint: number): Picture => ({
  ...picture,
  standpoint,
  view: { by: 'crop' },
  lens: null,
});

/** Somebody of `models/sitters` who takes a person's place, in the same pose. */
export const inPlaceOf = (person: Person, model: string): Person => ({
  ...person,
  model,
  changes: {},
  looks: {},
});

/**
 * Measures of `person`, who is built as `sitter`, by distance in metres. Camera height, tilt and f-number are
 * those of the first picture. What was measured once is kept.
 */
export function measuredAlone(
  session: Session,
  models: Models,
  person: Person,
  sitter: Sitter,
): (standpoint: number) => Measures {
  const [own] = session.pictures;
  if (!own) throw new RangeError('a session without a picture');
  const picture: Picture = { ...own, of: ['1'] };
  const alone: Session = { ...session, people: [{ ...person, id: '1' }], pictures: [picture] };
  const cast = { '1': sitter };
  const measured = new Map<number, Measures>();
  const measureFrom = (standpoint: number): Measures => {
    const from = pictureFrom(picture, standpoint);
    const resolved = resolvePicture(alone, from, models, cast);
    const { gaze } = leadFor(alone, cast, from);
    // The eyes' meshes stay as they are: only where the pupils look is measured.
    const pupils = lookingPupils(sitter, gaze, resolved.camera.position);
    const { dimensions, landmarks } = sitter;
    const seen = { dimensions, landmarks: { ...landmarks, ...pupils } };
    return measure(readingInput(alone, resolved, { sitter: seen, at: [0, 0, 0] }));
  };
  return (standpoint) => {
    const known = measured.get(standpoint);
    if (known) return known;
    const fresh = measureFrom(standpoint);
    measured.set(standpoint, fresh);
    return fresh;
  };
}
