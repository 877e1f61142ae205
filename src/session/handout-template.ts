/** The pages that each template starts with. */
import type { HandoutPage, PageKind, PagePart, Template } from './handout';

const PARTS: Readonly<Record<PageKind, readonly PagePart[]>> = {
  comparison: ['rail', 'readings', 'cautions', 'computed'],
  lesson: ['rail', 'readings', 'computed'],
  answers: ['series', 'chart', 'computed'],
  client: ['rail', 'readings', 'series', 'cautions', 'computed'],
  day: ['room', 'cautions', 'computed'],
  cards: ['cautions', 'computed'],
  numbers: ['chart', 'computed'],
  notes: [],
};

/** A page of a kind, about a kept comparison or, for null, the one on the wall. */
export const pageOf = (kind: PageKind, comparison: string | null): Omit<HandoutPage, 'id'> => ({
  kind,
  comparison,
  parts: PARTS[kind],
  words: {},
});

/** `comparisons`: ids of those kept; with none kept, pages are about the one on the wall. */
export function templatePages(
  template: Template,
  comparisons: readonly string[],
): readonly HandoutPage[] {
  const chosen = comparisons.length > 0 ? comparisons : [null];
  const first = chosen[0] ?? null;
  const pages = {
    comparisons: () => chosen.map((id) => pageOf('comparison', id)),
    lesson: () => [
      ...chosen.map((id) => pageOf('lesson', id)),
      ...chosen.map((id) => pageOf('answers', id)),
    ],
    client: () => [pageOf('client', first), pageOf('day', null)],
    day: () => [pageOf('day', null), pageOf('cards', null)],
  }[template]();
  return pages.map((page, i) => ({ ...page, id: `page-${i + 1}` }));
}
