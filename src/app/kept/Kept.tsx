import './kept.css';
import { useState } from 'react';
import { formatLength } from '../../readings/format';
import {
  hangComparison,
  keepComparison,
  moveComparison,
  removeComparison,
  replaceComparison,
  setComparison,
} from '../../session/actions/handout-page';
import { isKept } from '../../session/comparison';
import { MOST, NAME_LENGTH } from '../../session/limits';
import type { Comparison, Session } from '../../session/types';
import { TextValue } from '../controls/TextValue';
import { TypedText } from '../controls/TypedText';
import { Do, Toggle } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { kept as said } from '../words/kept.en';

/** "Headshot, A 0.40 m and B 2.40 m": what a comparison is called until it is named. */
function usualName({ crop, pictures, units }: Session, framing: string | undefined): string {
  const places = pictures.map(
    ({ letter, standpoint }) => `${letter} ${formatLength(standpoint, units, 'distance')}`,
  );
  const name = said.usual(
    words.compare.list(places),
    framing ?? (crop.framing === null ? said.ownFraming : crop.framing),
  );
  return name.slice(0, NAME_LENGTH);
}

function KeepThis() {
  const { session, models, act } = useWorkbench();
  const [typed, setTyped] = useState<string | null>(null);
  const usual = usualName(session, models.framings.get(session.crop.framing ?? '')?.name);
  if (isKept(session)) return <p>{said.already}</p>;
  if (session.comparisons.length >= MOST.comparisons)
    return <p role="status">{said.full(MOST.comparisons)}</p>;
  return (
    <TypedText
      label={said.name}
      text={typed ?? usual}
      onText={setTyped}
      why={typed?.trim() === '' ? words.controls.empty : null}
      onSend={() => {
        const name = (typed ?? usual).trim();
        if (name === '') return;
        act(keepComparison, { name });
        setTyped(null);
      }}
    >
      <div className="row">
        <Do main type="submit">
          {said.keep}
        </Do>
      </div>
    </TypedText>
  );
}

function KeptLine(props: { kept: Comparison; place: number; count: number }) {
  const { act } = useWorkbench();
  const { id, name, presented, asks, pictures } = props.kept;
  return (
    <li className="kept-line">
      <TextValue
        label={said.name}
        text={name}
        onCommit={(to) => act(setComparison, { id, name: to })}
      />{' '}
      <span className="kept-acts">
        <Do aria-label={said.hangOf(name)} onPress={() => act(hangComparison, { id })}>
          {said.hang}
        </Do>
        <Do aria-label={said.renewOf(name)} onPress={() => act(replaceComparison, { id })}>
          {said.renew}
        </Do>
        <Do
          aria-label={said.earlierOf(name)}
          isDisabled={props.place === 0}
          onPress={() => act(moveComparison, { id, by: -1 })}
        >
          {said.earlier}
        </Do>
        <Do
          aria-label={said.laterOf(name)}
          isDisabled={props.place === props.count - 1}
          onPress={() => act(moveComparison, { id, by: 1 })}
        >
          {said.later}
        </Do>
        <Toggle
          label={said.presentedOf(name)}
          on={presented}
          onChange={(on) => act(setComparison, { id, presented: on })}
        >
          {said.presented}
        </Toggle>
        {pictures.length > 1 && (
          <Toggle
            label={said.asksOf(name)}
            on={asks}
            onChange={(on) => act(setComparison, { id, asks: on })}
          >
            {said.asks}
          </Toggle>
        )}
        <Do aria-label={said.removeOf(name)} onPress={() => act(removeComparison, { id, name })}>
          {said.remove}
        </Do>
      </span>
    </li>
  );
}

/** The comparisons kept for the handout and the talk, and the one on the wall to be kept too. */
export default function Kept() {
  const { session } = useWorkbench();
  const { comparisons } = session;
  return (
    <div className="kept">
      {comparisons.length === 0 ? (
        <p>{said.none}</p>
      ) : (
        <ol className="plain-list">
          {comparisons.map((kept, i) => (
            <KeptLine key={kept.id} kept={kept} place={i} count={comparisons.length} />
          ))}
        </ol>
      )}
      <KeepThis />
    </div>
  );
}
