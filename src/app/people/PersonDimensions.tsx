import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { resetDimensions } from '../../session/actions';
import { known } from '../../session/known';
import { personDimensions } from '../../session/person';
import type { Person } from '../../session/types';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';
import { isChildSitter } from './child';
import { DimensionRow } from './DimensionRow';
import { GROUP_NAMES, GROUPS } from './groups';

/** Every dimension of a person, by groups that open. */
export function PersonDimensions({ person, who }: { person: Person; who: string | null }) {
  const { models, act } = useWorkbench();
  const model = known(models.sitters, person.model);
  const dimensions = personDimensions(person, models);
  const surveys = [
    ...new Set(Object.values(models.dimensions).flatMap(({ survey }) => survey ?? [])),
  ];
  const list = new Intl.ListFormat('en', { type: 'disjunction' }).format(surveys);
  const changed = Object.keys(person.changes);
  return (
    <section className="dimensions">
      <h3>{who === null ? panel.dimensions : panel.dimensionsOf(who)}</h3>
      <p className="slip-note">
        {isChildSitter(model) ? panel.childSays : panel.dimensionsSay(list)}
      </p>
      {GROUP_NAMES.map((group) => (
        <Disclosure key={group}>
          <Heading level={4} className="setup-heading">
            <Button slot="trigger" className="do">
              {panel.groups[group]}
            </Button>
            <span className="slip-note">
              {panel.changed(GROUPS[group].filter((name) => changed.includes(name)).length)}
            </span>
          </Heading>
          <DisclosurePanel>
            {GROUPS[group].map((name) => (
              <DimensionRow
                key={name}
                person={person}
                who={who}
                name={name}
                dimensions={dimensions}
              />
            ))}
          </DisclosurePanel>
        </Disclosure>
      ))}
      {changed.length > 0 && (
        <Do onPress={() => act(resetDimensions, { person: person.id })}>{panel.allAsMeasured}</Do>
      )}
    </section>
  );
}
