import type { PlanRequest } from '../../plan/types';
import { formatPercent } from '../../readings/format';
import { parseShare } from '../../readings/parse';
import { addWanted, moveWanted, removeWanted, setWanted } from '../../session/actions/plan-page';
import { LIMITS, MOST } from '../../session/limits';
import type { PlanWanted } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { TypedValue } from '../controls/TypedValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { plan as said } from '../words/plan.en';

const OWN = 'own';

function WantedSentence(props: {
  wanted: PlanWanted;
  place: number;
  last: number;
  height: number | null;
}) {
  const { session, models, act } = useWorkbench();
  const { wanted } = props;
  const set = (change: Partial<Omit<PlanWanted, 'id'>>) =>
    act(setWanted, { wanted: wanted.id, ...change });
  const framing = wanted.framing === null ? undefined : models.framings.get(wanted.framing);
  const name = framing?.name ?? said.capital(words.compare.ownFraming);
  const who = [
    { id: '1', name: said.who['1'] },
    ...(session.people.length > 1
      ? [
          { id: '2', name: said.who['2'] },
          { id: 'both', name: said.who.both },
        ]
      : []),
    ...(session.plan.group ? [{ id: 'group', name: said.who.group }] : []),
  ] as { id: PlanWanted['of']; name: string }[];
  return (
    <li>
      {said.wanted({
        framing: (
          <ChoiceValue
            label={words.compare.labels.framing}
            shown={name}
            chosen={wanted.framing ?? OWN}
            choices={[
              ...[...models.framings.values()].map(({ id, name: each, cut }) => ({
                id,
                name: each,
                note: cut,
              })),
              { id: OWN, name: said.capital(words.compare.ownFraming) },
            ]}
            onChoose={(id) =>
              set(
                id === OWN
                  ? { framing: null, frameHeight: props.height ?? session.crop.frameHeight }
                  : { framing: id },
              )
            }
          />
        ),
        who:
          who.length > 1 ? (
            <ChoiceValue
              label={said.labels.who}
              shown={said.who[wanted.of]}
              chosen={wanted.of}
              choices={who}
              onChoose={(of) => set({ of })}
            />
          ) : null,
        height: (
          <LengthValue
            label={words.compare.labels.frame}
            metres={props.height ?? session.crop.frameHeight}
            {...(props.height === null ? { shown: said.everybody } : {})}
            purpose="frame"
            range={LIMITS.frameHeight}
            onCommit={(frameHeight) => set({ frameHeight })}
          />
        ),
        orientation: (
          <ChoiceValue
            label={words.compare.labels.orientation}
            shown={words.compare.orientations[wanted.orientation]}
            chosen={wanted.orientation}
            choices={(['portrait', 'landscape'] as const).map((id) => ({
              id,
              name: words.compare.orientations[id],
            }))}
            onChoose={(orientation) => set({ orientation })}
          />
        ),
        eyes: (
          <TypedValue
            label={words.compare.labels.eyes}
            shown={words.compare.eyesAt(formatPercent(wanted.eyesAt))}
            initial={formatPercent(wanted.eyesAt)}
            parse={parseShare}
            range={LIMITS.eyesAt}
            show={(share) => formatPercent(share)}
            onCommit={(eyesAt) => set({ eyesAt })}
          />
        ),
        camera: (
          <LengthValue
            label={said.labels.cameraHeight}
            metres={wanted.cameraHeight}
            shown={said.cameraHeight(wanted.cameraHeight, session.units)}
            range={LIMITS.cameraHeight}
            note={words.picture.height.caution}
            offers={[0]}
            onCommit={(cameraHeight) => set({ cameraHeight })}
          />
        ),
      })}{' '}
      <span className="nb">
        <Do
          isDisabled={props.place === 0}
          aria-label={said.earlierOf(name)}
          onPress={() => act(moveWanted, { wanted: wanted.id, to: props.place - 1 })}
        >
          {said.earlier}
        </Do>{' '}
        <Do
          isDisabled={props.place === props.last}
          aria-label={said.laterOf(name)}
          onPress={() => act(moveWanted, { wanted: wanted.id, to: props.place + 1 })}
        >
          {said.later}
        </Do>{' '}
        <Do aria-label={said.dropOf(name)} onPress={() => act(removeWanted, { wanted: wanted.id })}>
          {said.drop}
        </Do>
      </span>
    </li>
  );
}

/** The pictures that are wanted, in the order of shooting, a sentence each. */
export default function WantedPictures(props: { request: PlanRequest }) {
  const { session, models, act } = useWorkbench();
  const { wanted, group } = session.plan;
  return (
    <div className="setup-more">
      <ol className="wanted-list">
        {wanted.map((each, place) => (
          <WantedSentence
            key={each.id}
            wanted={each}
            place={place}
            last={wanted.length - 1}
            height={props.request.wanted.find(({ id }) => id === each.id)?.frameHeight ?? null}
          />
        ))}
      </ol>
      {wanted.length < MOST.wanted && (
        <p>
          {said.addWanted(
            <ChoiceValue
              label={said.labels.addWanted}
              shown={said.aFraming}
              chosen=""
              choices={[...models.framings.values()].map(({ id, name, cut }) => ({
                id,
                name,
                note: cut,
              }))}
              onChoose={(framing) => act(addWanted, { framing })}
            />,
            group && (
              <Do onPress={() => act(addWanted, { framing: null, of: 'group' })}>
                {said.addGroupPicture}
              </Do>
            ),
          )}
        </p>
      )}
    </div>
  );
}
