/** What a session starts with beside its comparison, room and kit; a link leaves it out. */
import type { Handout } from './handout';
import { templatePages } from './handout-template';
import type { Session } from './types';

const HANDOUT: Handout = {
  template: 'client',
  paper: 'a4',
  orientation: 'portrait',
  author: { name: '', words: '', logo: null },
  pages: templatePages('client', []),
};

export const USUAL: Pick<Session, 'comparisons' | 'series' | 'tabled' | 'handout'> = {
  comparisons: [],
  series: [0.3, 0.4, 0.6, 1, 1.6, 2.4, 4.8],
  tabled: [0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4],
  handout: HANDOUT,
};
