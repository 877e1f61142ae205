/**
 * A named change of the document: a pure function with the words undo shows for it.
 */
import { clampSession } from '../clamp';
import type { ActionContext } from '../follow';
import { shareEqual } from '../share';
import { LETTERS, type Letter, type Picture, type Session } from '../types';

export interface Action<Args> {
  readonly edit: (session: Session, args: Args, context: ActionContext) => Session;
  /** "A moved to 0.40 m", from the session after the change. */
  readonly label: (after: Session, args: Args, context: ActionContext) => string;
}

/** Makes an action whose result is brought into the legal ranges; what it leaves alone stays the same object. */
export const action = <Args>({ edit, label }: Action<Args>): Action<Args> => ({
  edit: (session, args, context) => {
    const edited = edit(session, args, context);
    return edited === session ? session : shareEqual(session, clampSession(edited, context.models));
  },
  label,
});

/** Which pictures an action means: one, or all when no letter is given. */
export interface Whose {
  readonly letter?: Letter;
}

export const pictureOf = (session: Session, letter: Letter): Picture | undefined =>
  session.pictures.find((picture) => picture.letter === letter);

/** Changes one picture, or all when no letter is given. */
export const editPictures = (
  session: Session,
  { letter }: Whose,
  edit: (picture: Picture) => Picture,
): Session => ({
  ...session,
  pictures: session.pictures.map((picture) =>
    letter === undefined || picture.letter === letter ? edit(picture) : picture,
  ),
});

/** "A" or "A and B" or "All pictures". */
export function whose({ pictures }: Session, { letter }: Whose): string {
  if (letter !== undefined) return letter;
  const [first, second] = pictures.map((picture) => picture.letter);
  if (pictures.length > 2 || first === undefined) return 'All pictures';
  return second === undefined ? first : `${first} and ${second}`;
}

export const freeLetter = ({ pictures }: Session): Letter | undefined =>
  LETTERS.find((letter) => pictures.every((picture) => picture.letter !== letter));
