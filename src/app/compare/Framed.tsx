import type { ReactNode, RefCallback } from 'react';
import type { Letter } from '../../session/types';
import { LINES } from './lines';

/** A picture's frame on the wall: cords, mat, and the place that the stage draws it in. */
export function Framed(props: {
  letter: Letter;
  /** What the picture shows, for somebody who does not see it. */
  alt: string;
  hang: RefCallback<HTMLElement>;
  /** Lies over the picture. */
  over?: ReactNode;
  /** Its caption. */
  children: ReactNode;
}) {
  const { letter } = props;
  return (
    <figure className={`print ${LINES[letter].css}`} data-picture={letter}>
      <i className="cord" />
      <i className="cord" />
      <div className="print-sheet">
        <div ref={props.hang} className="print-picture" role="img" aria-label={props.alt} />
        {props.over}
      </div>
      {props.children}
    </figure>
  );
}
