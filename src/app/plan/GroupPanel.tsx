import type { PlanRequest } from '../../plan/types';
import { addRow, addWanted, removeRow, setGroup, setRow } from '../../session/actions/plan-page';
import { LIMITS, MOST } from '../../session/limits';
import type { Group, GroupRow } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { Slip } from '../controls/Slip';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { group as said } from '../words/group.en';
import { GroupDoes } from './GroupDoes';

const PLACES = ['seated', 'standing', 'step'] as const;
const CURVES = ['straight', 'curved'] as const;
const times = (n: number, ...models: readonly string[]): string[] =>
  Array.from({ length: n }, (_, i) => models[i % models.length] as string);

const countOf = ({ rows }: Pick<Group, 'rows'>): number =>
  rows.reduce((sum, { models }) => sum + models.length, 0);

/** Who is in a row, so many of each. */
function RowPeople(props: { row: GroupRow; place: number; isFull: boolean }) {
  const { models, act } = useWorkbench();
  const { row, place } = props;
  const set = (next: readonly string[]) => act(setRow, { row: place, models: next });
  return (
    <Slip label={said.labels.people} shown={said.people(row.models.length)}>
      {() => (
        <>
          <ul className="plain-list">
            {[...models.sitters.values()].map(({ id, name }) => {
              const count = row.models.filter((each) => each === id).length;
              return (
                <li key={id} className="row">
                  <span>
                    {name}: {count}
                  </span>
                  <Do
                    isDisabled={count === 0}
                    aria-label={said.fewerOf(name)}
                    onPress={() => set(row.models.toSpliced(row.models.lastIndexOf(id), 1))}
                  >
                    {said.fewer}
                  </Do>
                  <Do
                    isDisabled={props.isFull}
                    aria-label={said.moreOf(name)}
                    onPress={() => set([...row.models, id])}
                  >
                    {said.more}
                  </Do>
                </li>
              );
            })}
          </ul>
          {props.isFull && <p className="slip-note">{said.full(MOST.group)}</p>}
        </>
      )}
    </Slip>
  );
}

function Row(props: { row: GroupRow; place: number; isFull: boolean }) {
  const { act } = useWorkbench();
  const { row, place } = props;
  return (
    <li>
      {said.row({
        number: place + 1,
        place: (
          <ChoiceValue
            label={said.labels.place}
            shown={said.places[row.place]}
            chosen={row.place}
            choices={PLACES.map((id) => ({ id, name: said.places[id] }))}
            onChoose={(to) => act(setRow, { row: place, place: to })}
          />
        ),
        people: <RowPeople {...props} />,
        spacing: (
          <LengthValue
            label={said.labels.spacing}
            metres={row.spacing}
            range={LIMITS.personSpacing}
            offers={[0.5, 0.6, 0.7]}
            onCommit={(spacing) => act(setRow, { row: place, spacing })}
          />
        ),
      })}{' '}
      <Do aria-label={said.removeRow(place + 1)} onPress={() => act(removeRow, { row: place })}>
        {said.remove}
      </Do>
    </li>
  );
}

/** Spacing, curve and steps of the whole group. */
function Whole(props: { group: Group }) {
  const { act } = useWorkbench();
  const { group } = props;
  return (
    <p>
      {said.whole({
        rows: (
          <LengthValue
            label={said.labels.rows}
            metres={group.rowSpacing}
            range={LIMITS.rowSpacing}
            offers={[0.5, 0.7, 0.9]}
            onCommit={(rowSpacing) => act(setGroup, { to: { rowSpacing } })}
          />
        ),
        curve: (
          <ChoiceValue
            label={said.labels.curve}
            shown={said.curves[group.curve]}
            chosen={group.curve}
            choices={CURVES.map((id) => ({
              id,
              name: said.curves[id],
              note: said.curveNotes[id],
            }))}
            onChoose={(curve) => act(setGroup, { to: { curve } })}
          />
        ),
        step: group.rows.some(({ place }) => place === 'step') ? (
          <LengthValue
            label={said.labels.step}
            metres={group.step}
            range={LIMITS.step}
            offers={[0.2, 0.25]}
            onCommit={(step) => act(setGroup, { to: { step } })}
          />
        ) : null,
      })}
    </p>
  );
}

/** A group in rows: who stands where, and what it does to heads and sharpness. */
export default function GroupPanel(props: { request: PlanRequest }) {
  const { session, store, act } = useWorkbench();
  const { group, wanted } = session.plan;
  if (group === null) {
    return (
      <div className="setup-more">
        <p>{said.none}</p>
        <Do
          onPress={() => {
            // Three actions, one step to undo.
            const step = store.drag();
            step.act(addRow, { place: 'seated', models: times(6, 'adult-woman', 'adult-man') });
            step.act(addRow, { place: 'standing', models: times(6, 'adult-man', 'adult-woman') });
            step.act(addWanted, { framing: null, of: 'group' });
            step.end();
          }}
        >
          {said.make}
        </Do>
      </div>
    );
  }
  const isFull = countOf(group) >= MOST.group;
  return (
    <div className="setup-more">
      <ol className="plain-list">
        {group.rows.map((row, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
          <Row key={place} row={row} place={place} isFull={isFull} />
        ))}
      </ol>
      <Whole group={group} />
      <div className="row">
        <Do
          isDisabled={isFull || group.rows.length >= MOST.rows}
          onPress={() => act(addRow, { place: 'step', models: times(4, 'adult-man') })}
        >
          {said.addRow}
        </Do>
        <Do onPress={() => act(setGroup, { to: null })}>{said.dissolve}</Do>
        {!wanted.some(({ of }) => of === 'group') && (
          <Do onPress={() => act(addWanted, { framing: null, of: 'group' })}>{said.addWanted}</Do>
        )}
      </div>
      <GroupDoes request={props.request} />
    </div>
  );
}
