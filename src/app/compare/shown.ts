/** What Compare shows: each picture resolved, measured and lettered. Pure. */

import type { Models } from '../../models/types';
import { type Measures, measure } from '../../readings/measures';
import type { Visibility } from '../../readings/visibility';
import { readingInput } from '../../session/reading-input';
import { type ResolvedPicture, resolvePicture } from '../../session/resolve';
import type { Letter, Picture, Session } from '../../session/types';
import type { Sitter } from '../../sitter/types';

export interface Shown {
  readonly letter: Letter;
  readonly picture: Picture;
  readonly resolved: ResolvedPicture;
  readonly measures: Measures;
}

/** Pictures on the wall; `moving` replaces the one of its letter while a move is played. */
export function showPictures(
  session: Session,
  models: Models,
  sitter: Sitter,
  moving: Picture | null,
): Shown[] {
  return session.pictures.map((own) => {
    const picture = moving?.letter === own.letter ? moving : own;
    const resolved = resolvePicture(session, picture, models, sitter);
    const measures = measure(readingInput(session, resolved, sitter));
    return { letter: own.letter, picture, resolved, measures };
  });
}

/** The same with what each camera can see, where that is known. */
export function withVisibility(
  session: Session,
  sitter: Sitter,
  pictures: readonly Shown[],
  visibilities: Readonly<Partial<Record<Letter, Visibility>>>,
): Shown[] {
  return pictures.map((shown) => {
    const seen = visibilities[shown.letter];
    return seen
      ? { ...shown, measures: measure(readingInput(session, shown.resolved, sitter), seen) }
      : shown;
  });
}
