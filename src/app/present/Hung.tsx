import type { RefCallback } from 'react';
import type { Speaking } from '../../readings/read';
import type { Session } from '../../session/types';
import { captionWords } from '../compare/captions';
import { Framed } from '../compare/Framed';
import type { Shown } from '../compare/shown';
import { tell } from '../compare/told';
import { words } from '../words';
import { present as said } from '../words/present.en';

/** How much a caption tells beside its letter. */
export type Told = 'nothing' | 'distance' | 'all';

/** A picture of a slide: cords, mat, and a caption that is read from the last row. */
export function Hung(props: {
  shown: Shown;
  told: Told;
  units: Session['units'];
  speaking: Speaking;
  hang: RefCallback<HTMLElement>;
}) {
  const { shown, told } = props;
  const { letter } = shown;
  const caption = told === 'nothing' ? null : captionWords(shown, props.units);
  return (
    <Framed
      letter={letter}
      alt={
        told === 'nothing' ? said.picture(letter) : words.alt(letter, tell(shown, props.speaking))
      }
      hang={props.hang}
    >
      <figcaption className="caption">
        <span className="letter">{letter}</span>
        {caption && (
          <span>
            <span className="where">
              {caption.distance} <span className="from">{said.away}</span>
            </span>
            {told === 'all' && <span className="how">{said.lens(caption.focal)}</span>}
          </span>
        )}
      </figcaption>
    </Framed>
  );
}
