/** Comparisons kept for the handout and the talk. */
import { comparedOf, comparisonOf, sessionWith } from '../comparison';
import { MOST, NAME_LENGTH } from '../limits';
import type { Comparison, Session } from '../types';
import { action } from './action';
import { freeId } from './kit-edit';

const nameOf = (session: Session, id: string): string => comparisonOf(session, id)?.name ?? id;

const edit = (session: Session, id: string, change: Partial<Comparison>): Session => ({
  ...session,
  comparisons: session.comparisons.map((kept) => (kept.id === id ? { ...kept, ...change } : kept)),
});

/** Keeps the comparison on the wall, last in the order. */
export const keepComparison = action<{ name: string }>({
  edit: (session, { name }) =>
    session.comparisons.length >= MOST.comparisons
      ? session
      : {
          ...session,
          comparisons: [
            ...session.comparisons,
            {
              id: freeId('comparison', session.comparisons),
              name: name.trim().slice(0, NAME_LENGTH),
              presented: true,
              asks: false,
              ...comparedOf(session),
            },
          ],
        },
  label: (_, { name }) => `Kept: ${name.trim()}`,
});

/** Puts the comparison on the wall in the place of a kept one. */
export const replaceComparison = action<{ id: string }>({
  edit: (session, { id }) => edit(session, id, comparedOf(session)),
  label: (after, { id }) => `Kept anew: ${nameOf(after, id)}`,
});

/** Hangs a kept comparison on the wall. */
export const hangComparison = action<{ id: string }>({
  edit: (session, { id }) => sessionWith(session, id),
  label: (after, { id }) => `Hung: ${nameOf(after, id)}`,
});

export const setComparison = action<
  { id: string } & Partial<Pick<Comparison, 'name' | 'presented' | 'asks'>>
>({
  edit: (session, { id, ...change }) =>
    edit(session, id, {
      ...change,
      ...(change.name === undefined ? {} : { name: change.name.trim().slice(0, NAME_LENGTH) }),
    }),
  label: (after, { id }) => `Changed: ${nameOf(after, id)}`,
});

/** Moves a kept comparison by so many places in the order. */
export const moveComparison = action<{ id: string; by: number }>({
  edit: (session, { id, by }) => {
    const from = session.comparisons.findIndex((kept) => kept.id === id);
    const to = Math.min(session.comparisons.length - 1, Math.max(0, from + by));
    const kept = session.comparisons[from];
    if (!kept || to === from) return session;
    const comparisons = session.comparisons.toSpliced(from, 1).toSpliced(to, 0, kept);
    return { ...session, comparisons };
  },
  label: (after, { id }) => `Order changed: ${nameOf(after, id)}`,
});

export const removeComparison = action<{ id: string; name: string }>({
  edit: (session, { id }) => ({
    ...session,
    comparisons: session.comparisons.filter((kept) => kept.id !== id),
  }),
  label: (_, { name }) => `No longer kept: ${name}`,
});

/** Standpoints of the strip, metres. */
export const setSeries = action<{ to: readonly number[] }>({
  edit: (session, { to }) => ({ ...session, series: to.slice(0, MOST.series) }),
  label: (after) => `Strip of ${after.series.length} standpoints`,
});

/** Standpoints of the table and the charts, metres. */
export const setTabled = action<{ to: readonly number[] }>({
  edit: (session, { to }) => ({ ...session, tabled: to.slice(0, MOST.tabled) }),
  label: (after) => `Table of ${after.tabled.length} standpoints`,
});
