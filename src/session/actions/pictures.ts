/** Where each picture is taken from and what hangs. */
import { formatAngle, formatFNumber, formatLength } from '../../readings/format';
import { standpointForLook } from '../follow';
import type { Letter, Picture, Session } from '../types';
import { action, editPictures, freeLetter, pictureOf, type Whose, whose } from './action';

const movedTo = (session: Session, letter: Letter): string => {
  const standpoint = pictureOf(session, letter)?.standpoint ?? 0;
  return `${letter} moved to ${formatLength(standpoint, session.units, 'distance')}`;
};

/** Moves a handle. What is kept stays; while standpoints are kept, nothing moves. */
export const moveStandpoint = action<{ letter: Letter; to: number }>({
  edit: (session, { letter, to }) =>
    session.kept === 'standpoint'
      ? session
      : editPictures(session, { letter }, (picture) => ({ ...picture, standpoint: to })),
  label: (after, { letter }) => movedTo(after, letter),
});

/** Moves a picture to where its nose-to-ear ratio is that of another one. */
export const matchLook = action<{ letter: Letter; other: Letter }>({
  edit: (session, { letter, other }, context) => {
    const own = pictureOf(session, letter);
    const theirs = pictureOf(session, other);
    if (!own || !theirs || session.kept === 'standpoint') return session;
    const standpoint = standpointForLook(session, own, theirs, context);
    if (standpoint === null) return session;
    return editPictures(session, { letter }, (picture) => ({ ...picture, standpoint }));
  },
  label: (after, { letter, other }) => `${movedTo(after, letter)} for the look of ${other}`,
});

/** The first picture an action meant, as it now is. */
const shown = (after: Session, { letter }: Whose): Picture | undefined =>
  letter === undefined ? after.pictures[0] : pictureOf(after, letter);

export const setFNumber = action<Whose & { to: number }>({
  edit: (session, { to, ...which }) =>
    editPictures(session, which, (picture) => ({ ...picture, fNumber: to })),
  label: (after, which) =>
    `${whose(after, which)} set to ${formatFNumber(shown(after, which)?.fNumber ?? 0)}`,
});

/** Entrance pupil above (+) or below (-) the sitter's eyes, metres. */
export const setCameraHeight = action<Whose & { to: number }>({
  edit: (session, { to, ...which }) =>
    editPictures(session, which, (picture) => ({ ...picture, cameraHeight: to })),
  label: (after, which) => {
    const height = shown(after, which)?.cameraHeight ?? 0;
    if (height === 0) return `${whose(after, which)} level with the eyes`;
    const size = formatLength(Math.abs(height), after.units, 'distance');
    return `${whose(after, which)} set ${size} ${height > 0 ? 'above' : 'below'} the eyes`;
  },
});

/** Optical axis above (+) or below (-) level, radians. */
export const setTilt = action<Whose & { to: number }>({
  edit: (session, { to, ...which }) =>
    editPictures(session, which, (picture) => ({ ...picture, tilt: to })),
  label: (after, which) =>
    `${whose(after, which)} tilted to ${formatAngle(shown(after, which)?.tilt ?? 0)}`,
});

/** A new picture starts this much farther than the last one. */
const NEXT_STEP = 1.5;

/** Hangs another picture, a copy of the last one taken from farther away or from `standpoint`. */
export const addPicture = action<{ standpoint?: number }>({
  edit: (session, { standpoint }) => {
    const letter = freeLetter(session);
    const last = session.pictures.at(-1);
    if (letter === undefined || last === undefined) return session;
    const added = {
      ...last,
      letter,
      standpoint: standpoint ?? last.standpoint * NEXT_STEP,
    };
    const pictures = [...session.pictures, added];
    return { ...session, pictures: pictures.sort((a, b) => (a.letter < b.letter ? -1 : 1)) };
  },
  label: () => 'Picture hung',
});

/** Takes a picture down; the last one stays. */
export const removePicture = action<{ letter: Letter }>({
  edit: (session, { letter }) => {
    const pictures = session.pictures.filter((picture) => picture.letter !== letter);
    if (pictures.length === 0 || pictures.length === session.pictures.length) return session;
    return { ...session, pictures };
  },
  label: (_, { letter }) => `${letter} taken down`,
});
