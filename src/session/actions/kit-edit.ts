import { sessionWith } from '../comparison';
import type { ActionContext } from '../follow';
import { kitOf, lensesOf } from '../kit';
import type { Kit, Picture, Session } from '../types';
import { viewOn } from './lens';

/** A list with at least one part, each part edited. */
export const mapSome = <T>(
  [first, ...others]: readonly [T, ...T[]],
  edit: (part: T) => T,
): readonly [T, ...T[]] => [edit(first), ...others.map(edit)];

/** What is left of a list without one part; null when nothing would be. */
export function withoutOne<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
): readonly [T, ...T[]] | null {
  const [first, ...others] = list.filter((each) => each.id !== id);
  return first === undefined ? null : [first, ...others];
}

/** "thing-2": the first of these names that nothing of a list has. */
export function freeId(what: string, taken: readonly { readonly id: string }[]): string {
  for (let i = 1; ; i++) {
    const id = `${what}-${i}`;
    if (taken.every((each) => each.id !== id)) return id;
  }
}

/** Edits a kit: the one in use unless another is named. */
export function editKit(
  session: Session,
  edit: (kit: Kit) => Kit,
  id = kitOf(session).id,
): Session {
  return { ...session, kits: mapSome(session.kits, (kit) => (kit.id === id ? edit(kit) : kit)) };
}

/**
 * Pictures whose named lens is not `has` are taken by any lens of the kit, those of kept comparisons too; what
 * they show stays.
 */
export function freeLenses(
  session: Session,
  has: (lens: string) => boolean,
  context: ActionContext,
): Pick<Session, 'pictures' | 'comparisons'> {
  const freed = (on: Session): readonly Picture[] =>
    on.pictures.map((picture) =>
      picture.lens === null || has(picture.lens)
        ? picture
        : { ...picture, lens: null, view: viewOn(on, picture, null, context) },
    );
  return {
    pictures: freed(session),
    comparisons: session.comparisons.map((kept) => ({
      ...kept,
      pictures: freed(sessionWith(session, kept.id)),
    })),
  };
}

/** Name of a lens of models/ or of one's own. */
export const lensName = (session: Session, id: string, { models }: ActionContext): string =>
  lensesOf(session, models).get(id)?.name ?? id;
