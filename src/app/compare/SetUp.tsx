import { formatPercent } from '../../readings/format';
import { parseShare } from '../../readings/parse';
import {
  setEyesAt,
  setFormat,
  setFrameHeight,
  setFraming,
  setHold,
  setOrientation,
} from '../../session/actions';
import { bodyOf } from '../../session/kit';
import { LIMITS } from '../../session/limits';
import type { Hold } from '../../session/types';
import type { SitterModel } from '../../sitter/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { Openings } from '../controls/Openings';
import { TypedValue } from '../controls/TypedValue';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { Kept, People, Surroundings } from './onDemand';
import { WhoSits } from './WhoSits';

const HOLDS: readonly Hold[] = ['frame-height', 'head-height', 'pupil-distance'];

/** The set-up of the comparison as a sentence; each value is changed where it stands. */
export function SetUp(props: { pronoun: SitterModel['pronoun'] }) {
  const { session, models, act } = useWorkbench();
  const { crop } = session;
  const body = bodyOf(session);
  const said = words.compare;
  const framing = crop.framing === null ? undefined : models.framings.get(crop.framing);
  const format = models.formats.get(body.format);
  return (
    <>
      <p className="setup">
        {said.setup({
          people: session.people.map((person) => ({
            who: <WhoSits person={person} />,
            letters: session.pictures.flatMap(({ letter, of }) =>
              of.includes(person.id) ? [letter] : [],
            ),
          })),
          person: props.pronoun,
          alike: session.people.every(({ id }) =>
            session.pictures.every(({ of }) => of.includes(id)),
          ),
          framing: (
            <ChoiceValue
              label={said.labels.framing}
              shown={framing?.name.toLowerCase() ?? said.ownFraming}
              chosen={crop.framing ?? ''}
              choices={[...models.framings.values()].map(({ id, name, cut }) => ({
                id,
                name,
                note: cut,
              }))}
              onChoose={(id) => act(setFraming, { framing: id })}
            />
          ),
          frame: (
            <LengthValue
              label={said.labels.frame}
              metres={crop.frameHeight}
              purpose="frame"
              range={LIMITS.frameHeight}
              onCommit={(to) => act(setFrameHeight, { to })}
            />
          ),
          orientation: (
            <ChoiceValue
              label={said.labels.orientation}
              shown={said.orientations[crop.orientation]}
              chosen={crop.orientation}
              choices={(['portrait', 'landscape'] as const).map((id) => ({
                id,
                name: said.orientations[id],
              }))}
              onChoose={(to) => act(setOrientation, { to })}
            />
          ),
          format: (
            <ChoiceValue
              label={said.labels.format}
              shown={format?.name ?? ''}
              chosen={body.format}
              choices={[...models.formats.values()].map(({ id, name }) => ({ id, name }))}
              onChoose={(id) => act(setFormat, { format: id })}
            />
          ),
          eyes: (
            <TypedValue
              label={said.labels.eyes}
              shown={said.eyesAt(formatPercent(crop.eyesAt))}
              initial={formatPercent(crop.eyesAt)}
              parse={parseShare}
              range={LIMITS.eyesAt}
              show={(share) => formatPercent(share)}
              note={said.eyesNote}
              offers={[0.33, 0.4, 0.5].map((value) => ({ value, shown: formatPercent(value) }))}
              onCommit={(down) => act(setEyesAt, { down })}
            />
          ),
          hold: (
            <ChoiceValue
              label={said.labels.hold}
              shown={said.holds[crop.hold][0]}
              chosen={crop.hold}
              choices={HOLDS.map((id) => ({
                id,
                name: said.holds[id][0],
                note: said.holds[id][1],
              }))}
              onChoose={(to) => act(setHold, { to })}
            />
          ),
        })}
      </p>
      <Openings
        parts={[
          { name: said.whoSits, content: <People /> },
          { name: said.setupMore, content: <Surroundings /> },
          { name: said.kept, content: <Kept /> },
        ]}
      />
    </>
  );
}
