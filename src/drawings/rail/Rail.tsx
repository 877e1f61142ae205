/**
 * The rail: the room from the side, drawn to scale under the pictures, with a handle for each.
 * One unit of the drawing is one CSS pixel; texts follow `rem`, the root font size.
 */
import '../tones.css';
import './rail.css';
import { RailHandle } from './RailHandle';
import { RailLine } from './RailLine';
import { RailLabels, RailRoom } from './RailRoom';
import type { RailContent, RailSheet } from './types';
import type { RailActions } from './useHandle';
import { useRailLayout } from './useRailLayout';
import { zonesSentence } from './words';

export interface RailProps extends RailContent, RailActions, Omit<RailSheet, 'measure'> {}

export function Rail(props: RailProps) {
  const { units, figure, room, width } = props;
  const { onMoveStart, onMove, onMoveEnd, onType } = props;
  const { drawing, layout } = useRailLayout(props);
  const { ground, handles, notes, reasons } = layout;
  // In the order of the letters, so that the keyboard walks A, B, C, D wherever they stand.
  const byLetter = [...handles].sort((a, b) => a.letter.localeCompare(b.letter));
  return (
    <div className="rail" data-narrow={ground.narrow || undefined}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be an SVG */}
      <svg
        ref={drawing}
        width={width}
        height={ground.height}
        viewBox={`0 0 ${width} ${ground.height}`}
        role="group"
        aria-label={`The room from the side, distances from the eyes. ${zonesSentence(units)}`}
      >
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
        <g aria-hidden="true">
          <RailRoom layout={layout} room={room} figure={figure} />
          <RailLine layout={layout} />
        </g>
        {byLetter.map((place) => (
          <RailHandle
            key={place.letter}
            place={place}
            ground={ground}
            units={units}
            {...(onMoveStart && { onMoveStart })}
            onMove={onMove}
            {...(onMoveEnd && { onMoveEnd })}
            {...(onType && { onType })}
          />
        ))}
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
        <g aria-hidden="true">
          <RailLabels layout={layout} />
        </g>
      </svg>
      {(ground.narrow || reasons.length > 0) && (
        <p className="rail-note">
          {reasons.map(({ letter, text }) => (
            <span key={letter} className="rail-reason">
              <b className={`tone tone-${letter.toLowerCase()}`}>{letter}</b> {text}{' '}
            </span>
          ))}
          {reasons.length === 0 && notes.join(' ')}
        </p>
      )}
    </div>
  );
}
