import { Fragment } from 'react';
import { formatLength } from '../../readings/format';
import { addPerson, removePerson, setBeside } from '../../session/actions';
import { LIMITS } from '../../session/limits';
import { peopleNames } from '../compare/shown';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';
import { CompanyValue } from './CompanyValue';

/** Adds a second person, or tells who is in which picture and how the two stand. */
export function SecondPerson() {
  const { session, models, act } = useWorkbench();
  if (session.people.length < 2)
    return (
      <p>
        <ChoiceValue
          label={panel.addLabel}
          shown={panel.add}
          chosen=""
          choices={[...models.sitters.values()].map(({ id, name }) => ({ id, name }))}
          onChoose={(model) => act(addPerson, { model })}
        />
        <span className="slip-note"> {panel.addNote}</span>
      </p>
    );
  const { right, forward } = session.beside;
  const distance = (metres: number) => formatLength(Math.abs(metres), session.units, 'distance');
  return (
    <>
      <p>
        {session.pictures.map((picture, i) => (
          <Fragment key={picture.letter}>
            {i > 0 && ', '}
            {panel.company.shows(picture.letter, <CompanyValue picture={picture} />)}
          </Fragment>
        ))}
        .
      </p>
      <p>
        {panel.beside({
          who: peopleNames(session, models).the('2'),
          right: (
            <LengthValue
              label={panel.rightLabel}
              metres={right}
              shown={panel.right(distance(right), right < 0 ? 'left' : 'right')}
              range={LIMITS.besideRight}
              offers={[-0.45, 0.45]}
              onCommit={(to) => act(setBeside, { right: to })}
            />
          ),
          forward: (
            <LengthValue
              label={panel.forwardLabel}
              metres={forward}
              shown={
                forward === 0
                  ? panel.level
                  : panel.forward(distance(forward), forward > 0 ? 'nearer' : 'farther')
              }
              range={LIMITS.besideForward}
              offers={[-0.3, 0, 0.3]}
              onCommit={(to) => act(setBeside, { forward: to })}
            />
          ),
        })}
      </p>
      <Do onPress={() => act(removePerson, {})}>{panel.remove}</Do>
    </>
  );
}
