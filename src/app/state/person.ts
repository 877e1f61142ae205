import type { Models } from '../../models/types';
import { known } from '../../session/known';
import { personLooks } from '../../session/person';
import type { Person } from '../../session/types';
import type { Wanted } from './sitter.worker';

/** What the worker is asked for to have a person built; gaze turns the eyes afterwards. */
export function wantedFor(person: Person, models: Models): Wanted {
  const { sculpture, forms, dimensions } = known(models.sitters, person.model);
  return {
    model: { sculpture, forms, dimensions },
    looks: personLooks(person, models),
    changes: person.changes,
    pose: person.pose,
  };
}

/** What of a person a build hangs on. */
export const buildKey = ({ model, changes, pose, looks }: Person): string =>
  JSON.stringify([model, changes, pose, looks]);
