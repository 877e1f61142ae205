import { useEffect, useMemo, useRef, useState } from 'react';
import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import type { Person, PersonId, Session } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import { buildKey, wantedFor } from './person';
import type { Shaping } from './shaping';
import { shareMeshes } from './shareMeshes';
import type { SitterWorkshop } from './sitterWorkshop';

/** Pause after which somebody shaped by a slider is built exactly, milliseconds. */
const REST = 250;

/** Somebody as last built, and of which person. */
interface Made {
  readonly key: string;
  readonly sitter: Sitter;
}

/** Why somebody cannot be shown as asked. */
export interface Failure {
  readonly why: string;
  /** The dimensions contradict each other; else something did not come. */
  readonly impossible: boolean;
}

export interface CastState {
  /** The people of the session as last built; null until the first is there. */
  readonly cast: Cast | null;
  readonly failed: Failure | null;
  /** Everybody in it is built as asked. */
  readonly isExact: boolean;
}

/**
 * Builds the people of a session as they change. While one is built the last one stays; what changes
 * meanwhile waits, and only the newest of it is built. Who is shaped by a slider is shown at once, between
 * builds made beforehand.
 */
export function useCast(
  { people }: Pick<Session, 'people'>,
  models: Models,
  workshop: SitterWorkshop,
  shaping: Shaping,
): CastState {
  const [made, setMade] = useState<Partial<Record<PersonId, Made>>>({});
  const [failed, setFailed] = useState<Failure | null>(null);
  const busy = useRef(new Set<PersonId>());
  const done = useRef<Partial<Record<PersonId, string>>>({});
  const shown = useRef<Partial<Record<PersonId, Sitter>>>({});
  const latest = useRef(people);
  latest.current = people;

  useEffect(() => {
    const work = async (id: PersonId) => {
      if (busy.current.has(id)) return;
      busy.current.add(id);
      for (;;) {
        const person = latest.current.find((each) => each.id === id);
        const key = person && buildKey(person);
        if (!person || key === undefined || key === done.current[id]) break;
        // Whoever is shaped meanwhile is built when the hand rests.
        if (done.current[id] !== undefined && shaping.at(person)) {
          await new Promise((resolve) => setTimeout(resolve, REST));
          if (latest.current.find((each) => each.id === id) !== person) continue;
        }
        const answer = await workshop.build(wantedFor(person, models));
        done.current[id] = key;
        if ('sitter' in answer) {
          const sitter = shareMeshes(shown.current[id], answer.sitter);
          shown.current[id] = sitter;
          shaping.show(id, sitter);
          setMade((all) => ({ ...all, [id]: { key, sitter } }));
          setFailed(null);
        } else setFailed({ why: answer.failed, impossible: answer.impossible });
      }
      busy.current.delete(id);
    };
    for (const { id } of people) void work(id);
  }, [people, models, workshop, shaping]);

  return useMemo(() => {
    const sitterOf = (person: Person | undefined): Sitter | undefined => {
      if (!person) return undefined;
      const own = made[person.id];
      if (!own || own.key === buildKey(person)) return own?.sitter;
      return shaping.at(person) ?? own.sitter;
    };
    const first = sitterOf(people[0]);
    const second = sitterOf(people[1]);
    const isExact = people.every((person) => made[person.id]?.key === buildKey(person));
    return { cast: first ? castOf(first, second) : null, failed, isExact };
  }, [people, made, failed, shaping]);
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
