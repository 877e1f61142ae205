/** What Compare shows: each picture resolved, with everybody in it measured. Pure. */

import type { Models } from '../../models/types';
import type { Camera } from '../../optics/types';
import { type Measures, measure } from '../../readings/measures';
import type { Visibility } from '../../readings/visibility';
import type { Lettered } from '../../readings/words';
import { type Cast, type Placed, placeCompany } from '../../session/cast';
import { looking } from '../../session/gaze';
import { personOf } from '../../session/person';
import { isMeasurable, readingInput } from '../../session/reading-input';
import { type ResolvedPicture, resolvePicture } from '../../session/resolve';
import type { Letter, PersonId, Picture, Session } from '../../session/types';
import type { SitterModel } from '../../sitter/types';
import { words } from '../words';

/** Somebody in a picture, as measured there. */
export interface Subject extends Placed, Lettered {
  readonly person: PersonId;
  readonly picture: Letter;
  /** Who it is, where the session has two people. */
  readonly name: string | null;
  /** "A", or "A (child)" where the session has two people: how sentences and tables call it. */
  readonly letter: string;
  readonly measures: Measures;
  /** As it stands before this one's eyes. */
  readonly camera: Camera;
}

export interface Shown {
  readonly letter: Letter;
  readonly picture: Picture;
  readonly resolved: ResolvedPicture;
  /** Everybody in it, with the gaze this picture's lens meets; the first is the one its distances are taken to. */
  readonly company: readonly Placed[];
  /** Those that the camera stands before. */
  readonly subjects: readonly [Subject, ...Subject[]];
  /** The first one's. */
  readonly measures: Measures;
}

/** How the people of a session are told apart in words; `the` puts the article before a noun. */
export function peopleNames({ people }: Pick<Session, 'people'>, models: Models) {
  const nouns = people.map(({ model }) => models.sitters.get(model)?.noun ?? '');
  const alike = new Set(nouns).size < nouns.length;
  const name = (id: PersonId): string => {
    const i = people.findIndex((person) => person.id === id);
    return alike ? words.people.numbered(id) : (nouns[i] ?? '');
  };
  const the = (id: PersonId): string => (alike ? name(id) : words.people.the(name(id)));
  return { name, the };
}

/** A picture of those who are built: whoever is not yet there is not named either. */
function built(picture: Picture, cast: Cast): Picture {
  const [first, ...others] = picture.of.filter((id) => cast[id]);
  if (first !== undefined && others.length + 1 === picture.of.length) return picture;
  return { ...picture, of: first === undefined ? ['1'] : [first, ...others] };
}

/** Pictures on the wall; `moving` replaces the one of its letter while a move is played. */
export function showPictures(
  session: Session,
  models: Models,
  cast: Cast,
  moving: Picture | null,
): Shown[] {
  const { name } = peopleNames(session, models);
  return session.pictures.map((own) => {
    const picture = built(moving?.letter === own.letter ? moving : own, cast);
    const resolved = resolvePicture(session, picture, models, cast);
    const { position } = resolved.camera;
    const placed = placeCompany(cast, picture.of, session.beside);
    const company = placed.map(({ sitter, at }, i) => {
      const { gaze } = personOf(session, picture.of[i] as PersonId);
      const lens = [position[0] - at[0], position[1] - at[1], position[2] - at[2]] as const;
      return { sitter: looking(sitter, gaze, lens), at };
    });
    const [first, ...others] = company.flatMap((one, i): Subject[] => {
      if (i > 0 && !isMeasurable(resolved, one)) return [];
      const person = picture.of[i] as PersonId;
      const who = session.people.length > 1 ? name(person) : null;
      const letter = who === null ? own.letter : words.people.inPicture(own.letter, who);
      const input = readingInput(session, resolved, one);
      return [
        {
          ...one,
          person,
          picture: own.letter,
          name: who,
          letter,
          camera: input.camera,
          measures: measure(input),
        },
      ];
    }) as [Subject, ...Subject[]];
    const subjects = [first, ...others] as const;
    return { letter: own.letter, picture, resolved, company, subjects, measures: first.measures };
  });
}

/** What each subject's picture can see, by picture and person. */
export type Seen = Readonly<Partial<Record<`${Letter}${PersonId}`, Visibility>>>;

/** The same with what each camera can see, where that is known. */
export function withVisibility(
  session: Session,
  pictures: readonly Shown[],
  visibilities: Seen,
): Shown[] {
  return pictures.map((shown) => {
    const measured = shown.subjects.map((subject) => {
      const seen = visibilities[`${shown.letter}${subject.person}`];
      if (!seen) return subject;
      const input = readingInput(session, shown.resolved, subject);
      return { ...subject, measures: measure(input, seen) };
    });
    const subjects = measured as unknown as Shown['subjects'];
    return { ...shown, subjects, measures: subjects[0].measures };
  });
}

/** The readings' columns: everybody in every picture. */
export const columnsOf = (pictures: readonly Shown[]): readonly Subject[] =>
  pictures.flatMap(({ subjects }) => subjects);

/** How sentences speak of whoever is in the pictures: of them when they are not all alike. */
export function pronounOf(
  subjects: readonly Subject[],
  { people }: Pick<Session, 'people'>,
  models: Models,
): SitterModel['pronoun'] {
  const ids = new Set(subjects.map(({ person }) => person));
  const pronouns = new Set(
    people
      .filter(({ id }) => ids.has(id))
      .map(({ model }) => models.sitters.get(model)?.pronoun ?? 'them'),
  );
  const [only, another] = pronouns;
  return only !== undefined && another === undefined ? only : 'them';
}
