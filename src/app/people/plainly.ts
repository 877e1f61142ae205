import type { Models } from '../../models/types';
import { DIMENSIONS, LANDMARKS } from '../../sitter/types';
import { landmarkWords } from '../words/landmarks.en';

/** Longest first, so that no name is taken for the beginning of another. */
const byLength = (a: readonly [string, string], b: readonly [string, string]): number =>
  b[0].length - a[0].length;

/** A reason that names dimensions and landmarks by their ids, in plain words. */
export function plainly(reason: string, models: Pick<Models, 'dimensions'>): string {
  const names = [
    ...DIMENSIONS.map((id) => [id, models.dimensions[id].name.toLowerCase()] as const),
    ...LANDMARKS.map((id) => {
      const plain = landmarkWords.find((each) => each.id === id)?.name ?? id;
      // Both sides are alike, so none is named.
      return [id, `the ${plain.replace(/, (left|right)$/, '')}`] as const;
    }),
  ].sort(byLength);
  return names.reduce(
    (text, [id, name]) => text.replace(new RegExp(`\\b${id}\\b`, 'g'), name),
    reason,
  );
}
