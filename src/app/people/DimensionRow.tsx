import { useRef, useState } from 'react';
import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { formatLength } from '../../readings/format';
import { setDimension, withDimension } from '../../session/actions';
import { known } from '../../session/known';
import { LIMITS } from '../../session/limits';
import { impossibility } from '../../session/person';
import type { Drag } from '../../session/store';
import type { Person } from '../../session/types';
import type { DimensionName, Dimensions } from '../../sitter/types';
import { LengthValue } from '../controls/LengthValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';
import { plainly } from './plainly';
import { sliderRange, standingOf } from './range';

/** Half a millimetre: as finely as a face is measured. */
const STEP = 0.5;

/** One dimension: name, typed value, slider, and where it stands in the survey. */
export function DimensionRow(props: {
  person: Person;
  who: string | null;
  name: DimensionName;
  /** As they are, those that follow a change included. */
  dimensions: Dimensions;
}) {
  const { session, models, store, shaping, act } = useWorkbench();
  const { person, name } = props;
  const [why, setWhy] = useState<string | null>(null);
  const drag = useRef<Drag | null>(null);
  const model = known(models.sitters, person.model);
  const dimension = models.dimensions[name];
  const own = model.dimensions[name].mm;
  const mm = props.dimensions[name];
  const range = sliderRange(dimension, own, model);
  const standing = standingOf(dimension, mm, model);
  const show = (value: number) => formatLength(value / 1000, session.units, 'depth');
  const label = panel.labelOf(dimension.name, props.who);
  const isChanged = person.changes[name] !== undefined;
  const told = standing
    ? panel.standing(standing.percentile, model.sculpture) + panel.survey(standing.survey)
    : panel.noSurvey;

  /** Asks for a value; what cannot be changes nothing and is told. */
  const ask = (to: number | null, doing: Pick<Drag, 'act'>) => {
    const changed = withDimension(person, name, to, { models });
    const reason = impossibility(changed, models);
    setWhy(reason === null ? null : panel.impossible(show(to ?? own), plainly(reason, models)));
    if (reason === null) doing.act(setDimension, { person: person.id, dimension: name, to });
  };
  /** Whoever comes near the slider is about to move it. */
  const prepare = () => {
    const halfway = [(range.least + own) / 2, (own + range.most) / 2];
    void shaping.prepare(person, name, [own, range.least, range.most, ...halfway]);
  };
  return (
    <div className="dimension" data-dimension={name}>
      <span className="dimension-name">{dimension.name}</span>
      <LengthValue
        label={label}
        metres={mm / 1000}
        purpose="depth"
        held={isChanged}
        range={{
          least: (LIMITS.dimensionChange.least * own) / 1000,
          most: (LIMITS.dimensionChange.most * own) / 1000,
        }}
        note={dimension.definition}
        onCommit={(metres) => ask(1000 * metres, { act })}
      />
      <Slider
        aria-label={label}
        minValue={range.least}
        maxValue={range.most}
        step={STEP}
        value={Math.min(range.most, Math.max(range.least, mm))}
        onChange={(value) => {
          drag.current ??= store.drag();
          ask(value, drag.current);
        }}
        onChangeEnd={() => {
          drag.current?.end();
          drag.current = null;
        }}
      >
        <SliderTrack className="dimension-track" onHoverStart={prepare}>
          <SliderThumb
            className="dimension-thumb"
            onFocus={prepare}
            aria-valuetext={`${show(mm)}, ${told}`}
          />
        </SliderTrack>
      </Slider>
      <span className="dimension-told">
        {told}
        {isChanged && (
          <>
            {' '}
            <Do aria-label={panel.asMeasuredOf(label)} onPress={() => ask(null, { act })}>
              {panel.asMeasured}
            </Do>
          </>
        )}
      </span>
      {why !== null && (
        <p className="slip-wrong" role="status">
          {why}
        </p>
      )}
    </div>
  );
}
