/** What a page's charts and table are made from: its comparison's people, each measured alone. */
import type { Tabled } from '../../../handout/range-table';
import type { Models } from '../../../models/types';
import { measuredAlone } from '../../../session/one-sitter';
import { personName } from '../../takeaway/table/sitters';
import type { PageSitting } from '../useSitting';

const made = new WeakMap<PageSitting, readonly Tabled[]>();

/** Once for each sitting: the parts of a page share what is measured. */
export function tabledOf(sitting: PageSitting, models: Models): readonly Tabled[] {
  const known = made.get(sitting);
  if (known) return known;
  const { session, cast } = sitting;
  const fresh = session.people.flatMap((person): Tabled[] => {
    const sitter = cast[person.id];
    return sitter
      ? [
          {
            name: personName(session, models, person),
            at: measuredAlone(session, models, person, sitter),
          },
        ]
      : [];
  });
  made.set(sitting, fresh);
  return fresh;
}
