/** Comparisons kept beside the one on the wall. */
import type { Compared, Comparison, Session } from './types';

/** What a comparison's pictures hang on, out of a session or of a kept comparison. */
export const comparedOf = ({
  people,
  beside,
  crop,
  pictures,
  light,
  play,
}: Compared): Compared => ({
  people,
  beside,
  crop,
  pictures,
  light,
  play,
});

export const comparisonOf = (
  { comparisons }: Pick<Session, 'comparisons'>,
  id: string | null,
): Comparison | undefined => comparisons.find((kept) => kept.id === id);

/** The session with a kept comparison on its wall; as it is for null, or one that is gone. */
export function sessionWith(session: Session, id: string | null): Session {
  const kept = comparisonOf(session, id);
  return kept ? { ...session, ...comparedOf(kept) } : session;
}

/** Whether the comparison on the wall is kept already, unchanged. */
export const isKept = (session: Session): boolean => {
  const now = JSON.stringify(comparedOf(session));
  return session.comparisons.some((kept) => JSON.stringify(comparedOf(kept)) === now);
};
