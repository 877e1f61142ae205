import { formatLength } from '../../readings/format';
import type { Speaking } from '../../readings/read';
import type { Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import type { Rects } from '../compare/usePictureRects';
import { present as said } from '../words/present.en';
import { seenFrom } from './calibration';
import { sentenceOf, tallyOf } from './says';
import type { Slide } from './slides';
import type { Talk } from './talk';
import type { Move } from './useMove';

/** What is read and heard on a slide: its sentence, what the class answered, where to see it from. */
export function Said(props: {
  talk: Talk;
  slide: Slide;
  session: Session;
  /** As they hang, no move played; empty until somebody is there. */
  pictures: readonly Shown[];
  move: Move;
  rects: Rects;
  pixel: number | null;
  speaking: Speaking;
  /** What stands in the way of showing the slide. */
  wrong: string | null;
}) {
  const { talk, slide, session, pictures, rects, pixel } = props;
  const { from, to } = session.play;
  const sentence = props.move.picture === null ? sentenceOf(talk, props) : said.moving(from, to);
  const tally = talk.part === 'told' ? tallyOf(talk, slide) : null;
  const places =
    !talk.numbers || pixel === null || props.move.picture !== null
      ? []
      : pictures.flatMap(({ letter, measures }) => {
          const height = rects[letter]?.height;
          if (!height) return [];
          const place = seenFrom(measures, height, pixel);
          return [[letter, formatLength(place, session.units, 'distance')] as const];
        });
  const more = [tally, places.length > 0 ? said.seenFrom(places) : null].filter(Boolean);
  return (
    <section className="present-said" aria-live="polite">
      {props.wrong !== null ? (
        <p>{props.wrong}</p>
      ) : (
        <>
          {(pictures.length > 0 || talk.part === 'question') && <p>{sentence}</p>}
          {more.length > 0 && <p className="present-more">{more.join(' ')}</p>}
        </>
      )}
    </section>
  );
}
