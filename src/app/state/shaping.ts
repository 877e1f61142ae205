import type { Models } from '../../models/types';
import type { Person, PersonId } from '../../session/types';
import { type BlendNode, blend } from '../../sitter/blend';
import type { DimensionName, Sitter } from '../../sitter/types';
import { wantedFor } from './person';
import { shareMeshes } from './shareMeshes';
import type { SitterWorkshop } from './sitterWorkshop';

/** Everything of a person but one dimension. */
function keyWithout(person: Person, dimension: DimensionName): string {
  const { [dimension]: _moving, ...others } = person.changes;
  return JSON.stringify([person.id, person.model, others, person.pose, person.looks, dimension]);
}

/**
 * What lets a slider shape somebody at once: the person is built at some values of one dimension before it
 * moves, and what lies between is interpolated. The exact build follows when the hand rests.
 */
export class Shaping {
  private key = '';
  private dimension: DimensionName | null = null;
  private nodes: readonly BlendNode[] = [];
  private readonly present = new Map<PersonId, Sitter>();
  private last: { readonly value: number; readonly sitter: Sitter } | null = null;

  constructor(
    private readonly workshop: SitterWorkshop,
    private readonly models: Models,
  ) {}

  /**
   * Builds the person at some values of a dimension, in this order, unless they are there or on their way.
   * What is built serves at once; each further one brings what lies between nearer to the exact build.
   */
  async prepare(
    person: Person,
    dimension: DimensionName,
    values: readonly number[],
  ): Promise<void> {
    const key = keyWithout(person, dimension);
    if (key === this.key) return;
    this.key = key;
    this.dimension = dimension;
    this.nodes = [];
    this.last = null;
    const found: BlendNode[] = [];
    for (const value of values) {
      const changed = { ...person, changes: { ...person.changes, [dimension]: value } };
      const built = await this.workshop.build(wantedFor(changed, this.models));
      if (key !== this.key) return;
      if (!('sitter' in built)) continue;
      const like = found[0]?.sitter ?? this.present.get(person.id);
      found.push({ value, sitter: shareMeshes(like, built.sitter) });
      this.nodes = [...found].sort((a, b) => a.value - b.value);
      this.last = null;
    }
  }

  /** Somebody as shown now: meshes that do not move are taken from there. */
  show(id: PersonId, sitter: Sitter): void {
    this.present.set(id, sitter);
  }

  /** The person between the prepared ones; null when it is not of their kind. */
  at(person: Person): Sitter | null {
    const { dimension, nodes } = this;
    if (dimension === null || nodes.length < 2) return null;
    const value = person.changes[dimension];
    if (value === undefined || keyWithout(person, dimension) !== this.key) return null;
    const [least, most] = [nodes[0], nodes.at(-1)] as [BlendNode, BlendNode];
    if (value < least.value || value > most.value) return null;
    if (this.last?.value !== value) this.last = { value, sitter: blend(nodes, value) };
    return this.last.sitter;
  }
}
