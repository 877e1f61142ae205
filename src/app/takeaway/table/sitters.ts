/** Who can be tabled: the session's own people as they are, and all of models/sitters in the first one's pose. */
import type { Tabled } from '../../../handout/range-table';
import type { Models } from '../../../models/types';
import { inPlaceOf, measuredAlone } from '../../../session/one-sitter';
import type { Person, Session } from '../../../session/types';
import { peopleNames } from '../../compare/shown';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { table as said } from '../../words/table.en';

export interface TabledChoice {
  readonly id: string;
  readonly name: string;
  readonly person: Person;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A session's person as a table's head names it. */
export const personName = (session: Session, models: Models, { id }: Person): string =>
  capital(peopleNames(session, models).name(id));

export function tabledChoices(session: Session, models: Models): readonly TabledChoice[] {
  const [first] = session.people;
  return [
    ...session.people.map((person) => ({
      id: `person ${person.id}`,
      name: said.inPictures(personName(session, models, person)),
      person,
    })),
    ...[...models.sitters.values()].map(({ id, name }) => ({
      id: `model ${id}`,
      name,
      person: inPlaceOf(first, id),
    })),
  ];
}

/** Longest stretch of measuring that the page is kept waiting for, milliseconds. */
const STRETCH = 24;
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

/**
 * Builds and measures the chosen ones from every standpoint (metres), in short stretches.
 * @throws AbortError when the signal is raised, Error when somebody cannot be built
 */
export async function measureTabled(
  asked: {
    readonly session: Session;
    readonly models: Models;
    readonly darkroom: Pick<Darkroom, 'cast'>;
    readonly chosen: readonly TabledChoice[];
    readonly standpoints: readonly number[];
  },
  signal: AbortSignal,
): Promise<readonly Tabled[]> {
  const { session, models, darkroom, chosen, standpoints } = asked;
  const sitters: Tabled[] = [];
  for (const { name, person } of chosen) {
    const { '1': sitter } = await darkroom.cast({ people: [person] });
    const at = measuredAlone(session, models, person, sitter);
    let since = performance.now();
    for (const standpoint of standpoints) {
      at(standpoint);
      if (performance.now() - since < STRETCH) continue;
      await nextTurn();
      signal.throwIfAborted();
      since = performance.now();
    }
    signal.throwIfAborted();
    sitters.push({ name, at });
  }
  return sitters;
}
