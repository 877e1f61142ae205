import { useMemo } from 'react';
import { formatLength, formatRatio } from '../../../readings/format';
import { LINES } from '../../compare/lines';
import { letterAt, showSeries } from '../../compare/series';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { useWorkbench } from '../../state/workbench';
import { Photograph } from '../Photograph';
import type { PageSitting } from '../useSitting';

/** Pixels across a small picture on the screen. */
const WIDTH = 160;

/** The same crop from several standpoints, with nose to ear under each. */
export function SeriesPart({ darkroom, sitting }: { darkroom: Darkroom; sitting: PageSitting }) {
  const { models } = useWorkbench();
  const { session, cast } = sitting;
  const { series, units } = session;
  const strip = useMemo(
    () => showSeries(session, models, cast, series),
    [session, models, cast, series],
  );
  return (
    <div className="page-series" style={{ '--count': strip.length } as React.CSSProperties}>
      {strip.map((shown) => {
        const { standpoint } = shown.resolved;
        const letter = letterAt(session, standpoint);
        const gain = shown.measures.face.noseToEar.mean;
        return (
          <figure key={standpoint} className={letter ? `marked ${LINES[letter].css}` : ''}>
            <Photograph darkroom={darkroom} session={session} shown={shown} width={WIDTH} />
            <figcaption>
              <b>
                {letter !== null && `${letter} `}
                {formatLength(standpoint, units, 'distance')}
              </b>
              <br />
              {gain === null ? '' : formatRatio(gain)}
            </figcaption>
          </figure>
        );
      })}
    </div>
  );
}
