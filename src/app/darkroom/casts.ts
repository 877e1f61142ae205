import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import type { Person, Session } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import { keepLatest } from '../state/keepLatest';
import { buildKey, wantedFor } from '../state/person';
import type { SitterWorkshop } from '../state/sitterWorkshop';

/** Builds kept, the latest used last: two people in each of some comparisons. */
const KEPT = 12;

/** Builds whoever is in a comparison that does not hang on the wall, each person once. */
export class Casts {
  private readonly built = new Map<string, Promise<Sitter>>();

  constructor(
    private readonly workshop: Pick<SitterWorkshop, 'build'>,
    private readonly models: Models,
  ) {}

  /** @throws Error with what is wrong when somebody cannot be built. */
  async of({ people }: Pick<Session, 'people'>): Promise<Cast> {
    const [first, second] = await Promise.all(people.map((person) => this.sitter(person)));
    return second ? { '1': first as Sitter, '2': second } : { '1': first as Sitter };
  }

  private sitter(person: Person): Promise<Sitter> {
    const key = buildKey(person);
    const sitter =
      this.built.get(key) ??
      this.workshop.build(wantedFor(person, this.models)).then((answer) => {
        if ('sitter' in answer) return answer.sitter;
        this.built.delete(key);
        throw new Error(answer.failed);
      });
    keepLatest(this.built, key, sitter, KEPT);
    return sitter;
  }
}
