/** One crop from many standpoints: what strips, tables and charts show. */
import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import { pictureFrom } from '../../session/one-sitter';
import { isSamePlace } from '../../session/standpoint-list';
import type { Letter, Session } from '../../session/types';
import { type Shown, showPictures } from './shown';

/** The pictures from each of the standpoints, each as the one of `letter` (the first unless told) would be. */
export function showSeries(
  session: Session,
  models: Models,
  cast: Cast,
  standpoints: readonly number[],
  letter: Letter = session.pictures[0]?.letter ?? 'A',
): Shown[] {
  const own = session.pictures.find((each) => each.letter === letter);
  if (!own) return [];
  return standpoints.flatMap((standpoint) =>
    showPictures(session, models, cast, pictureFrom(own, standpoint)).filter(
      (shown) => shown.letter === letter,
    ),
  );
}

/** Whose picture stands at a standpoint, if any does. */
export const letterAt = (
  { pictures }: Pick<Session, 'pictures'>,
  standpoint: number,
): Letter | null =>
  pictures.find((picture) => isSamePlace(picture.standpoint, standpoint))?.letter ?? null;
