/** The rail as it lies on paper: the same drawing, with nothing to move. */
import '../tones.css';
import './rail.css';
import { useMemo, useRef } from 'react';
import { useTextWidth } from '../text-width';
import { layoutRail } from './layout';
import { HandleMark } from './RailHandle';
import { RailLine } from './RailLine';
import { RailLabels, RailRoom } from './RailRoom';
import type { RailContent, RailSheet } from './types';

export function RailStill(
  props: RailContent & Omit<RailSheet, 'measure'> & { readonly label: string },
) {
  const { units, scale, figure, room, pictures, focus, width, rem, maxBand, label } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const layout = useMemo(
    () =>
      layoutRail({ units, scale, figure, room, pictures, focus }, { width, rem, maxBand, measure }),
    [units, scale, figure, room, pictures, focus, width, rem, maxBand, measure],
  );
  const { ground, handles } = layout;
  return (
    <div className="rail">
      <svg
        ref={drawing}
        viewBox={`0 0 ${width} ${ground.height}`}
        role="img"
        aria-label={label}
        style={{ width: '100%', height: 'auto' }}
      >
        <RailRoom layout={layout} room={room} figure={figure} />
        <RailLine layout={layout} />
        {handles.map((place) => (
          <g key={place.letter} className={`tone-${place.letter.toLowerCase()}`}>
            <HandleMark place={place} ground={ground} />
          </g>
        ))}
        <RailLabels layout={layout} />
      </svg>
    </div>
  );
}
