import { setGaze, setPose, setSitter } from '../../session/actions';
import { LIMITS } from '../../session/limits';
import type { Gaze, Person } from '../../session/types';
import { ARMS, STANCES } from '../../sitter/types';
import { AngleValue, showAngle } from '../controls/AngleValue';
import { ChoiceValue } from '../controls/ChoiceValue';
import { ChoiceList } from '../controls/onDemand';
import { Slip } from '../controls/Slip';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { Facing } from './Facing';

const said = words.people;

/** Standing or seated, the arms and the lean of the trunk. */
function Stance({ person: { id, pose }, label }: { person: Person; label: string }) {
  const { act } = useWorkbench();
  const { stance, arms, lean } = pose;
  return (
    <Slip label={label} shown={said.stanceWords(stance, arms, lean === 0 ? null : showAngle(lean))}>
      {() =>
        said.stanceSentence({
          stance: (
            <ChoiceValue
              label={said.stance}
              shown={said.stances[stance]}
              chosen={stance}
              choices={STANCES.map((each) => ({ id: each, name: said.stances[each] }))}
              onChoose={(to) => act(setPose, { person: id, stance: to })}
            />
          ),
          arms: (
            <ChoiceValue
              label={said.arms}
              shown={said.armsWords[arms][0]}
              chosen={arms}
              choices={ARMS.map((each) => {
                const [name, note] = said.armsWords[each];
                return { id: each, name, note };
              })}
              onChoose={(to) => act(setPose, { person: id, arms: to })}
            />
          ),
          lean: (
            <AngleValue
              label={said.lean}
              radians={lean}
              shown={lean === 0 ? said.upright : said.leaning(showAngle(lean))}
              range={LIMITS.lean}
              note={said.leanNote}
              onCommit={(to) => act(setPose, { person: id, lean: to })}
            />
          ),
        })
      }
    </Slip>
  );
}

type GazeKind = 'lens' | 'ahead' | 'turned';
const GAZES: readonly GazeKind[] = ['lens', 'ahead', 'turned'];
/** Where turned eyes begin: a little aside, so that the choice shows. */
const ASIDE = { yaw: (15 * Math.PI) / 180, pitch: 0 } as const;
const kindOf = (gaze: Gaze): GazeKind => (typeof gaze === 'string' ? gaze : 'turned');

/** Where the eyes look. */
function Eyes({ person: { id, gaze }, label }: { person: Person; label: string }) {
  const { act } = useWorkbench();
  const kind = kindOf(gaze);
  const turn = typeof gaze === 'string' ? null : gaze;
  return (
    <Slip label={label} shown={said.gazes[kind][0]}>
      {(close) => (
        <>
          <ChoiceList
            label={label}
            mode="single"
            chosen={[kind]}
            choices={GAZES.map((each) => {
              const [name, note] = said.gazes[each];
              return { id: each, name, note };
            })}
            onChange={([to]) => {
              if (to === undefined) return;
              act(setGaze, { person: id, to: to === 'turned' ? (turn ?? ASIDE) : to });
              if (to !== 'turned') close();
            }}
          />
          {turn &&
            (
              [
                ['yaw', said.gazeYaw, LIMITS.gazeYaw],
                ['pitch', said.gazePitch, LIMITS.gazePitch],
              ] as const
            ).map(([name, field, range]) => (
              <p key={name}>
                {field}:{' '}
                <AngleValue
                  label={field}
                  radians={turn[name]}
                  shown={showAngle(turn[name])}
                  range={range}
                  onCommit={(to) => act(setGaze, { person: id, to: { ...turn, [name]: to } })}
                />
              </p>
            ))}
        </>
      )}
    </Slip>
  );
}

/** One person in the set-up's sentence: who it is, how it stands, is turned and looks. */
export function WhoSits({ person }: { person: Person }) {
  const { session, models, act } = useWorkbench();
  const { id, model } = person;
  const several = session.people.length > 1;
  const label = (name: string) => (several ? said.labelOf(name, id) : name);
  const name = models.sitters.get(model)?.name ?? '';
  return said.who({
    name,
    sitter: (
      <ChoiceValue
        label={label(words.compare.labels.sitter)}
        shown={name.toLowerCase()}
        chosen={model}
        choices={[...models.sitters.values()].map((each) => ({ id: each.id, name: each.name }))}
        onChoose={(to) => act(setSitter, { person: id, model: to })}
      />
    ),
    stance: <Stance person={person} label={label(said.stanceLabel)} />,
    turned: <Facing person={person} label={label(words.compare.labels.turn)} />,
    gaze: <Eyes person={person} label={label(said.gazeLabel)} />,
  });
}
