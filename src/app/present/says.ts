/** What is read on a slide, by what of it is told. Pure. */

import { formatLength } from '../../readings/format';
import type { Speaking } from '../../readings/read';
import { rowSentence } from '../../readings/read';
import type { Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import { present as said } from '../words/present.en';
import { findingOf } from './finding';
import type { Slide } from './slides';
import type { Talk } from './talk';

interface Spoken {
  readonly slide: Slide;
  readonly session: Session;
  /** As they hang, no move played. */
  readonly pictures: readonly Shown[];
  readonly speaking: Speaking;
}

/** The slide's sentence. A question says nothing that gives its answer away. */
export function sentenceOf(
  { part, numbers }: Pick<Talk, 'part' | 'numbers'>,
  { slide, session, pictures, speaking }: Spoken,
): string {
  if (part === 'question') return said.question(slide.letters.length);
  const found = findingOf(pictures);
  if (part === 'plain' && !numbers) return slide.name ?? said.shows(found);
  if (found.kind === 'one') {
    const subjects = pictures.flatMap((shown) => shown.subjects);
    return rowSentence('nose_to_ear_ratio', subjects, speaking);
  }
  const standpoint = found.kind === 'equal' ? found.standpoint : 0;
  const distance = formatLength(standpoint, session.units, 'distance');
  return part === 'told' ? said.answer(found, distance) : said.tells(found, distance);
}

/** What the class answered to a slide's question; null where nobody counted. */
export function tallyOf({ votes, at }: Pick<Talk, 'votes' | 'at'>, slide: Slide): string | null {
  const own = votes[at] ?? {};
  const counted = slide.letters.map((letter) => [letter, own[letter] ?? 0] as const);
  return counted.some(([, n]) => n > 0) ? said.tally(counted) : null;
}
