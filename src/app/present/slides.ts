/** What a talk shows, one comparison after another. Pure. */
import type { Letter, Session } from '../../session/types';

export interface Slide {
  /** A kept comparison; null for the one on the wall. */
  readonly id: string | null;
  /** Null where there is none, or where it would tell a number that is not asked for yet. */
  readonly name: string | null;
  readonly letters: readonly Letter[];
  /** The class answers before it is told. */
  readonly asks: boolean;
}

const hasNumber = (name: string): boolean => /\p{N}/u.test(name);

/** The comparisons chosen for the talk in their order; where none is, the one on the wall. */
export function slidesOf({
  comparisons,
  pictures,
}: Pick<Session, 'comparisons' | 'pictures'>): readonly [Slide, ...Slide[]] {
  const [first, ...others] = comparisons
    .filter(({ presented }) => presented)
    .map((kept): Slide => {
      const letters = kept.pictures.map(({ letter }) => letter);
      const name = hasNumber(kept.name) ? null : kept.name;
      return { id: kept.id, name, letters, asks: kept.asks && letters.length > 1 };
    });
  if (first) return [first, ...others];
  const letters = pictures.map(({ letter }) => letter);
  return [{ id: null, name: null, letters, asks: false }];
}
