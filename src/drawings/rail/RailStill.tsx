/** The rail as it lies on paper: the same drawing, with nothing to move. */
import '../tones.css';
import './rail.css';
import { HandleMark } from './RailHandle';
import { RailLine } from './RailLine';
import { RailLabels, RailRoom } from './RailRoom';
import type { RailContent, RailSheet } from './types';
import { useRailLayout } from './useRailLayout';

export function RailStill(
  props: RailContent & Omit<RailSheet, 'measure'> & { readonly label: string },
) {
  const { figure, room, width, label } = props;
  const { drawing, layout } = useRailLayout(props);
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
