import { useEffect, useRef, useState } from 'react';
import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import { known } from '../../session/known';
import { personLooks } from '../../session/person';
import type { Person, PersonId, Session } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { Wanted } from './sitter.worker';
import type { SitterWorkshop } from './sitterWorkshop';

const wantedFor = (person: Person, models: Models): Wanted => {
  const { sculpture, forms, dimensions } = known(models.sitters, person.model);
  return {
    model: { sculpture, forms, dimensions },
    looks: personLooks(person, models),
    changes: person.changes,
    pose: person.pose,
  };
};

/** What of a person its build hangs on; gaze turns the eyes afterwards. */
const keyOf = ({ model, changes, pose, looks }: Person): string =>
  JSON.stringify([model, changes, pose, looks]);

export interface CastState {
  /** The people of the session as last built; null until the first is there. */
  readonly cast: Cast | null;
  /** Why somebody cannot be shown as asked. */
  readonly failed: string | null;
}

interface Shop {
  /** What is being built, and what was built last. */
  busy: string | null;
  done: string | null;
}
const idle = (): Shop => ({ busy: null, done: null });

/**
 * Builds the people of a session as they change. While one is built the last one stays; what changes
 * meanwhile waits, and only the newest of it is built.
 */
export function useCast(
  { people }: Pick<Session, 'people'>,
  models: Models,
  workshop: SitterWorkshop,
): CastState {
  const [built, setBuilt] = useState<Partial<Record<PersonId, Sitter>>>({});
  const [failed, setFailed] = useState<string | null>(null);
  const shops = useRef<Record<PersonId, Shop>>({ '1': idle(), '2': idle() });
  const latest = useRef(people);
  latest.current = people;

  useEffect(() => {
    const work = async (id: PersonId) => {
      const shop = shops.current[id];
      if (shop.busy !== null) return;
      for (;;) {
        const person = latest.current.find((each) => each.id === id);
        const key = person && keyOf(person);
        if (!person || !key || key === shop.done) return;
        shop.busy = key;
        const answer = await workshop.build(wantedFor(person, models));
        shop.busy = null;
        shop.done = key;
        if ('sitter' in answer) {
          setBuilt((all) => ({ ...all, [id]: answer.sitter }));
          setFailed(null);
        } else setFailed(answer.failed);
      }
    };
    for (const { id } of people) void work(id);
  }, [people, models, workshop]);

  const { '1': first, '2': second } = built;
  const hasSecond = people.length > 1 && second !== undefined;
  return { cast: first ? castOf(first, hasSecond ? second : undefined) : null, failed };
}

const casts = new WeakMap<Sitter, { second: Sitter | undefined; cast: Cast }>();

/** The same cast for the same sitters. */
function castOf(first: Sitter, second: Sitter | undefined): Cast {
  const known = casts.get(first);
  if (known && known.second === second) return known.cast;
  const cast: Cast = second ? { '1': first, '2': second } : { '1': first };
  casts.set(first, { second, cast });
  return cast;
}
