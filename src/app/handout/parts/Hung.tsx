import type { ReactNode } from 'react';
import { formatFNumber } from '../../../readings/format';
import { captionWords } from '../../compare/captions';
import { LINES } from '../../compare/lines';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { words } from '../../words';
import { Photograph } from '../Photograph';
import type { PageSitting } from '../useSitting';

/** Pixels across a picture of a page on the screen. */
const WIDTH = 480;

/** The pictures side by side with their captions, and words beside them. */
export function Hung(props: { darkroom: Darkroom; sitting: PageSitting; beside?: ReactNode }) {
  const { session, pictures } = props.sitting;
  const { fromEyes, lens, frame } = words.compare;
  return (
    <div
      className={`page-hung ${session.crop.orientation}`}
      style={{ '--count': pictures.length } as React.CSSProperties}
    >
      {pictures.map((shown) => {
        const caption = captionWords(shown, session.units);
        return (
          <figure key={shown.letter} className={LINES[shown.letter].css}>
            <Photograph darkroom={props.darkroom} session={session} shown={shown} width={WIDTH} />
            <figcaption className="page-caption">
              <b>{shown.letter}</b>
              <span>
                <strong>
                  {caption.distance} {fromEyes}
                </strong>
                <br />
                {caption.who !== null && `${caption.who}, `}
                {lens(caption.focal)}, {frame(caption.frame)},{' '}
                {formatFNumber(shown.resolved.fNumber)}
                {caption.angle !== null && (
                  <>
                    <br />
                    {caption.angle}
                  </>
                )}
              </span>
            </figcaption>
          </figure>
        );
      })}
      {props.beside && <div className="page-beside">{props.beside}</div>}
    </div>
  );
}
