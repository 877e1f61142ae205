/** The move of a comparison as clips and moving pages show it. Pure. */
import type { PrintedCaption } from '../../../handout/caption';
import type { Models } from '../../../models/types';
import { formatLength, formatRatio } from '../../../readings/format';
import type { Cast } from '../../../session/cast';
import { type Pace, pictureAlong } from '../../../session/play';
import type { Session } from '../../../session/types';
import { captionWords } from '../../compare/captions';
import { PRINTED } from '../../compare/printed';
import { type Shown, showPictures } from '../../compare/shown';
import { words } from '../../words';
import { move as said } from '../../words/move.en';

/** one: the moving picture alone; two: the first standpoint's picture stays beside it. */
export const MOVE_VIEWS = ['one', 'two'] as const;
export type MoveView = (typeof MOVE_VIEWS)[number];

export interface Move {
  readonly session: Session;
  readonly models: Models;
  readonly cast: Cast;
  readonly pace: Pace;
}

/** Whether a comparison has both ends of its move. */
export const canMove = ({ pictures, play }: Pick<Session, 'pictures' | 'play'>): boolean =>
  play.from !== play.to &&
  [play.from, play.to].every((end) => pictures.some(({ letter }) => letter === end));

/** The picture at a place of the move, 0..1, with its readings. @throws Error where an end is missing. */
export function shownAlong({ session, models, cast, pace }: Move, at: number): Shown {
  const moving = pictureAlong(session, at, pace);
  const shown = showPictures(session, models, cast, moving).find(
    ({ letter }) => letter === moving?.letter,
  );
  if (!shown || !moving) throw new Error(said.oneEnd);
  return shown;
}

/** The ends of the move as shown: "0.40 m". */
export const endsOf = ({ pictures, play, units }: Session): readonly [string, string] => {
  const distance = (end: string) => {
    const picture = pictures.find(({ letter }) => letter === end);
    return picture ? formatLength(picture.standpoint, units, 'distance') : '';
  };
  return [distance(play.from), distance(play.to)];
};

/** Caption of a picture of the move: distance, focal length, nose to ear. The moving one is on its way. */
export function moveCaption(
  shown: Shown,
  { play, units }: Session,
  moving: boolean,
): PrintedCaption {
  const { distance, focal, angle, who } = captionWords(shown, units);
  const gain = shown.measures.face.noseToEar.mean;
  const lens = `${who === null ? '' : `${who}, `}${words.compare.lens(focal)}`;
  const facts = [lens, ...(gain === null ? [] : [said.noseToEar(formatRatio(gain))])];
  return {
    letter: moving ? said.onTheWay(play.from, play.to) : play.from,
    ...PRINTED[moving ? play.to : play.from],
    title: `${distance} ${words.compare.fromEyes}`,
    details: angle === null ? facts : [facts.join(', '), angle],
  };
}
