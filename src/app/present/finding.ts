/** What a slide's pictures teach, for the sentence that tells it. Pure. */
import { gainAgainst } from '../../readings/compare';
import { type Difference, differenceSentence, differences } from '../../session/differences';
import type { Letter } from '../../session/types';
import type { Shown } from '../compare/shown';

export type Finding =
  | { readonly kind: 'one' }
  /** All were taken from the same distance. */
  | { readonly kind: 'equal'; readonly standpoint: number; readonly count: number }
  | {
      readonly kind: 'pair';
      readonly nearest: Letter;
      readonly farthest: Letter;
      /** How much larger the nearest draws the nose for the ears; null where that has no measure. */
      readonly gain: number | null;
      readonly sameCrop: boolean;
      /** What else differs, told as a sentence: the distance is then not the only cause. */
      readonly others: string | null;
      readonly count: number;
    };

/** What does not change the look of a face: the standpoint is the cause, the crop only the frame. */
const HARMLESS: ReadonlySet<Difference> = new Set(['standpoint', 'crop']);

export function findingOf(pictures: readonly Shown[]): Finding {
  const sorted = [...pictures].sort((a, b) => a.resolved.standpoint - b.resolved.standpoint);
  const nearest = sorted[0];
  const farthest = sorted.at(-1);
  if (!nearest || !farthest || nearest === farthest) return { kind: 'one' };
  const count = pictures.length;
  const differ = differences(nearest.resolved, farthest.resolved);
  if (!differ.includes('standpoint'))
    return { kind: 'equal', standpoint: nearest.resolved.standpoint, count };
  return {
    kind: 'pair',
    nearest: nearest.letter,
    farthest: farthest.letter,
    gain: gainAgainst(nearest.measures, farthest.measures),
    sameCrop: !differ.includes('crop'),
    others: differ.every((each) => HARMLESS.has(each)) ? null : differenceSentence(differ),
    count,
  };
}
