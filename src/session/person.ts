/** A person of a session: the model's own dimensions and looks with the changes made to them. */
import { dimensionsOf } from '../models/framing';
import type { Models } from '../models/types';
import { ImpossibleDimensions } from '../sitter/impossible';
import { landmarksFor } from '../sitter/landmarks';
import { resolveDimensions } from '../sitter/resolve';
import type { Dimensions, Looks } from '../sitter/types';
import { known } from './known';
import type { Person, PersonId, Session } from './types';

/** Dimensions after changes, those that follow a changed one included, millimetres. */
export const personDimensions = (
  { model, changes }: Pick<Person, 'model' | 'changes'>,
  models: Models,
): Dimensions => resolveDimensions(dimensionsOf(known(models.sitters, model)), changes);

/** Why no such person can be: the dimension and the limit it passes. Null when one can. */
export function impossibility(
  person: Pick<Person, 'model' | 'changes'>,
  models: Models,
): string | null {
  try {
    landmarksFor(personDimensions(person, models));
    return null;
  } catch (error) {
    if (error instanceof ImpossibleDimensions) return error.message;
    throw error;
  }
}

/** How a person looks: the model's looks with the changes made to them. */
export function personLooks(
  { model, looks }: Pick<Person, 'model' | 'looks'>,
  models: Models,
): Looks {
  const own = known(models.sitters, model).looks;
  return { ...own, ...looks, colours: { ...own.colours, ...looks.colours } };
}

/** A person of the session; the first where there is no such one. */
export const personOf = ({ people }: Pick<Session, 'people'>, id: PersonId): Person =>
  people.find((person) => person.id === id) ?? people[0];
