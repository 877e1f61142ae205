/** The handout: its sheet, who signs it, its pages and their words. */
import type { Handout, HandoutPage, PagePart } from '../handout';
import { pageOf, templatePages } from '../handout-template';
import { MOST, NAME_LENGTH, PAGE_WORDS_LENGTH } from '../limits';
import type { Session } from '../types';
import { action } from './action';
import { freeId } from './kit-edit';

const edit = (session: Session, change: Partial<Handout>): Session => ({
  ...session,
  handout: { ...session.handout, ...change },
});

const editPage = (
  session: Session,
  id: string,
  change: (page: HandoutPage) => HandoutPage,
): Session =>
  edit(session, {
    pages: session.handout.pages.map((page) => (page.id === id ? change(page) : page)),
  });

/** Paper, orientation. */
export const setSheet = action<Partial<Pick<Handout, 'paper' | 'orientation'>>>({
  edit: (session, change) => edit(session, change),
  label: () => 'Sheet changed',
});

export const setAuthor = action<Partial<Handout['author']>>({
  edit: (session, change) => {
    const { name, words, logo } = { ...session.handout.author, ...change };
    return edit(session, {
      author: { name: name.slice(0, NAME_LENGTH), words: words.slice(0, PAGE_WORDS_LENGTH), logo },
    });
  },
  label: (_, change) => (change.logo === undefined ? 'Signature changed' : 'Logo changed'),
});

/** The pages of a template in place of those there are. */
export const setTemplate = action<Pick<Handout, 'template'>>({
  edit: (session, { template }) =>
    edit(session, {
      template,
      pages: templatePages(
        template,
        session.comparisons.map(({ id }) => id),
      ).slice(0, MOST.pages),
    }),
  label: (_, { template }) =>
    ({
      comparisons: 'One comparison a page',
      lesson: 'A lesson',
      client: 'A client sheet',
      day: 'A plan for the day',
    })[template],
});

export const addPage = action<Pick<HandoutPage, 'kind' | 'comparison'> & { at?: number }>({
  edit: (session, { kind, comparison, at }) => {
    const { pages } = session.handout;
    if (pages.length >= MOST.pages) return session;
    const added = { ...pageOf(kind, comparison), id: freeId('page', pages) };
    return edit(session, { pages: pages.toSpliced(at ?? pages.length, 0, added) });
  },
  label: () => 'Page added',
});

export const removePage = action<{ id: string }>({
  edit: (session, { id }) =>
    edit(session, { pages: session.handout.pages.filter((page) => page.id !== id) }),
  label: () => 'Page taken out',
});

export const movePage = action<{ id: string; by: number }>({
  edit: (session, { id, by }) => {
    const { pages } = session.handout;
    const from = pages.findIndex((page) => page.id === id);
    const to = Math.min(pages.length - 1, Math.max(0, from + by));
    const page = pages[from];
    if (!page || to === from) return session;
    return edit(session, { pages: pages.toSpliced(from, 1).toSpliced(to, 0, page) });
  },
  label: () => 'Pages in another order',
});

/** Which comparison a page is about; null: the one on the wall. */
export const setPageComparison = action<{ id: string; to: string | null }>({
  edit: (session, { id, to }) => editPage(session, id, (page) => ({ ...page, comparison: to })),
  label: () => 'Page about another comparison',
});

export const setPagePart = action<{ id: string; part: PagePart; shown: boolean }>({
  edit: (session, { id, part, shown }) =>
    editPage(session, id, (page) => ({
      ...page,
      parts: shown
        ? page.parts.includes(part)
          ? page.parts
          : [...page.parts, part]
        : page.parts.filter((each) => each !== part),
    })),
  label: () => 'Page changed',
});

/** Words at one place of a page; null brings back those that follow the pictures. */
export const setPageWords = action<{ id: string; place: string; to: string | null }>({
  edit: (session, { id, place, to }) =>
    editPage(session, id, (page) => {
      const { [place]: _, ...others } = page.words;
      return {
        ...page,
        words: to === null ? others : { ...others, [place]: to.slice(0, PAGE_WORDS_LENGTH) },
      };
    }),
  label: () => 'Words changed',
});
