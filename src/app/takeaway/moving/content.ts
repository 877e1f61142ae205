/** From a comparison to what its moving page tells; the pictures themselves apart. Pure. */
import type { MovingContent, MovingFrame, MovingPicture } from '../../../handout/moving/types';
import { readPair } from '../../../readings/compare';
import { formatLength } from '../../../readings/format';
import { readings, rowSentence, type Speaking } from '../../../readings/read';
import type { ReadingId } from '../../../readings/rows';
import type { Lettered } from '../../../readings/words';
import { PRINTED } from '../../compare/printed';
import { pronounOf, type Shown } from '../../compare/shown';
import { tell } from '../../compare/told';
import { unbroken } from '../../compare/unbroken';
import { cautionsOf, computedLine } from '../../handout/parts/notes';
import { spokenPair } from '../../handout/spoken';
import type { PageSitting } from '../../handout/useSitting';
import { move as words } from '../../words/move.en';
import { moving as said } from '../../words/moving.en';
import { page } from '../../words/page.en';
import { endsOf, type Move, type MoveView, moveCaption, shownAlong } from '../move/along';

/** What follows the slider, in its order. */
const TOLD: readonly ReadingId[] = [
  'nose_to_ear_ratio',
  'size_ratio.nose_tip',
  'size_ratio.ears',
  'focal_length_mm',
  'background_size_ratio',
  'depth_of_field_m.total',
  'nose_to_lens_m',
];

export interface MovingChoice {
  readonly view: MoveView;
  /** Standpoints between which the slider chooses, both ends among them. */
  readonly steps: number;
  /** Pixels of a picture's longer side. */
  readonly side: number;
  readonly title: string;
}

/** The pictures of the page: the standpoints lie evenly in one over the distance. */
export const framesOf = (move: Move, steps: number): readonly Shown[] =>
  Array.from({ length: steps }, (_, i) => shownAlong(move, i / (steps - 1)));

/** Everything but the images, which are asked for by picture. */
export function movingContent(
  move: Move,
  choice: MovingChoice,
  shown: readonly Shown[],
  given: Pick<MovingContent, 'size' | 'fonts'>,
  imageOf: (shown: Shown) => string,
): MovingContent {
  const { session, models, cast } = move;
  const [first, last] = [shown[0] as Shown, shown.at(-1) as Shown];
  const pronoun = pronounOf(
    shown.flatMap(({ subjects }) => subjects),
    session,
    models,
  );
  const speaking: Speaking = { units: session.units, pronoun };
  const letters = {
    start: session.play.from,
    moving: words.onTheWay(session.play.from, session.play.to),
  };
  const picture = (each: Shown, isMoving: boolean): MovingPicture => {
    const told = new Map(readings(each.measures, speaking).map(({ id, shown }) => [id, shown]));
    const { letter, title, details } = moveCaption(each, session, isMoving);
    return {
      image: imageOf(each),
      alt: said.alt(letter, tell(each, speaking)),
      title,
      details,
      cells: TOLD.map((id) => told.get(id) ?? ''),
    };
  };
  const names = new Map(readings(first.measures, speaking).map(({ id, name }) => [id, name]));
  const start: Lettered = { letter: letters.start, measures: first.measures };
  const frame = (each: Shown): MovingFrame => {
    const own: Lettered = { letter: letters.moving, measures: each.measures };
    const beside = choice.view === 'two' ? [start, own] : [own];
    return {
      ...picture(each, true),
      standpoint: each.resolved.standpoint,
      place: formatLength(each.resolved.standpoint, session.units, 'distance'),
      changes: unbroken(readPair(own, start, speaking)[0]?.meaning ?? ''),
      says: TOLD.map((id) => unbroken(rowSentence(id, beside, speaking))),
    };
  };
  const ends: PageSitting = {
    session,
    cast,
    pictures: [first, { ...last, letter: session.play.to }],
    pronoun,
  };
  const pair = spokenPair(ends);
  return {
    language: said.language,
    title: choice.title,
    lead: unbroken(pair && choice.view === 'two' ? page.leads.comparison(pair) : page.leads.claim),
    labels: { ...said.labels, measured: page.measured },
    ...given,
    letters,
    accents: {
      start: PRINTED[session.play.from].accent,
      moving: PRINTED[session.play.to].accent,
    },
    ends: endsOf(session).map((end, i) =>
      said.end(i === 0 ? session.play.from : session.play.to, end),
    ) as unknown as MovingContent['ends'],
    start: choice.view === 'two' ? picture(first, false) : null,
    rows: TOLD.map((id) => names.get(id) ?? ''),
    frames: shown.map(frame) as unknown as MovingContent['frames'],
    notes: [...cautionsOf(ends, models), computedLine(ends, models)].map(unbroken),
  };
}
