import {
  addObstacle,
  removeObstacle,
  setObstacle,
  setSitterPlace,
} from '../../session/actions/plan-page';
import { LIMITS, MOST } from '../../session/limits';
import type { Obstacle } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { TextValue } from '../controls/TextValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { plan as said } from '../words/plan.en';

const KINDS = ['thing', 'door'] as const;

function Thing(props: { thing: Obstacle }) {
  const { session, act } = useWorkbench();
  const { thing } = props;
  const { room } = session;
  const set = (change: Partial<Omit<Obstacle, 'id'>>) =>
    act(setObstacle, { obstacle: thing.id, ...change });
  const size = (name: 'length' | 'width') => (
    <LengthValue
      label={said.labels.thing[name]}
      metres={thing[name]}
      range={LIMITS.obstacleSize}
      onCommit={(to) => set({ [name]: to })}
    />
  );
  const place = (name: 'x' | 'y', most: number) => (
    <LengthValue
      label={said.labels.thing[name]}
      metres={thing[name]}
      range={{ least: 0, most }}
      onCommit={(to) => set({ [name]: to })}
    />
  );
  return (
    <li>
      {said.thing({
        name: (
          <TextValue
            label={said.labels.thing.name}
            text={thing.name}
            onCommit={(name) => set({ name })}
          />
        ),
        kind: (
          <ChoiceValue
            label={said.labels.thing.kind}
            shown={said.kinds[thing.kind]}
            chosen={thing.kind}
            choices={KINDS.map((id) => ({
              id,
              name: said.capital(said.kinds[id]),
              note: said.kindNotes[id],
            }))}
            onChoose={(kind) => set({ kind })}
          />
        ),
        length: size('length'),
        width: size('width'),
        height: (
          <LengthValue
            label={said.labels.thing.height}
            metres={thing.height}
            range={LIMITS.obstacleHeight}
            onCommit={(height) => set({ height })}
          />
        ),
        x: place('x', room.length),
        y: place('y', room.width),
      })}{' '}
      <Do
        aria-label={said.removeThing(thing.name)}
        onPress={() => act(removeObstacle, { obstacle: thing.id })}
      >
        {said.remove}
      </Do>
    </li>
  );
}

/** What stands in the room, and where the camera's axis lies beside the middle. */
export default function Things() {
  const { session, act } = useWorkbench();
  const { room } = session;
  const isFull = room.obstacles.length >= MOST.obstacles;
  return (
    <div className="setup-more">
      <p>
        {said.aside(
          <LengthValue
            label={said.labels.aside}
            metres={room.aside}
            shown={said.asideShown(room.aside, session.units)}
            range={{ least: -LIMITS.besideAxis.most, most: LIMITS.besideAxis.most }}
            offers={[0]}
            onCommit={(aside) => act(setSitterPlace, { aside })}
          />,
        )}
      </p>
      <ul className="plain-list">
        {room.obstacles.map((thing) => (
          <Thing key={thing.id} thing={thing} />
        ))}
      </ul>
      <div className="row">
        <Do isDisabled={isFull} onPress={() => act(addObstacle, { kind: 'thing' })}>
          {said.addThing}
        </Do>
        <Do isDisabled={isFull} onPress={() => act(addObstacle, { kind: 'door' })}>
          {said.addDoor}
        </Do>
      </div>
    </div>
  );
}
