import './people.css';
import { resetLooks } from '../../session/actions';
import { peopleNames } from '../compare/shown';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';
import { isChildSitter } from './child';
import { PersonDimensions } from './PersonDimensions';
import { PersonLooks } from './PersonLooks';
import { SecondPerson } from './SecondPerson';

/** Who sits: looks and dimensions of everybody, and who is in which picture. */
export default function People() {
  const { session, models, act } = useWorkbench();
  const { name } = peopleNames(session, models);
  const several = session.people.length > 1;
  const hasChild = session.people.some(({ model }) => isChildSitter(models.sitters.get(model)));
  return (
    <div className="people setup-more">
      <SecondPerson />
      {hasChild && <p className="caution">{panel.childCaution}</p>}
      {session.people.map((person) => {
        const who = several ? name(person.id) : null;
        return (
          <section key={person.id} className="person">
            {who !== null && (
              <h3>
                {panel.personHeading(person.id, models.sitters.get(person.model)?.name ?? '')}
              </h3>
            )}
            <PersonLooks person={person} who={who} />
            {Object.keys(person.looks).length > 0 && (
              <Do onPress={() => act(resetLooks, { person: person.id })}>{panel.ownLooks}</Do>
            )}
            <PersonDimensions person={person} who={who} />
          </section>
        );
      })}
    </div>
  );
}
