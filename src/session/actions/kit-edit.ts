import { kitOf } from '../kit';
import type { Kit, Session } from '../types';

/** A list with at least one part, each part edited. */
export const mapSome = <T>(
  [first, ...others]: readonly [T, ...T[]],
  edit: (part: T) => T,
): readonly [T, ...T[]] => [edit(first), ...others.map(edit)];

/** Edits a kit: the one in use unless another is named. */
export function editKit(
  session: Session,
  edit: (kit: Kit) => Kit,
  id = kitOf(session).id,
): Session {
  return { ...session, kits: mapSome(session.kits, (kit) => (kit.id === id ? edit(kit) : kit)) };
}
