/** The person of a session: the sitter's own dimensions with the changes made to them. */
import { dimensionsOf } from '../models/framing';
import type { Models } from '../models/types';
import { ImpossibleDimensions } from '../sitter/impossible';
import { landmarksFor } from '../sitter/landmarks';
import { resolveDimensions } from '../sitter/resolve';
import type { Dimensions } from '../sitter/types';
import { known } from './known';
import type { Session } from './types';

/** Dimensions after changes, those that follow a changed one included, millimetres. */
export const personDimensions = (
  { model, changes }: Pick<Session['sitter'], 'model' | 'changes'>,
  models: Models,
): Dimensions => resolveDimensions(dimensionsOf(known(models.sitters, model)), changes);

/** Why no such person can be: the dimension and the limit it passes. Null when one can. */
export function impossibility(sitter: Session['sitter'], models: Models): string | null {
  try {
    landmarksFor(personDimensions(sitter, models));
    return null;
  } catch (error) {
    if (error instanceof ImpossibleDimensions) return error.message;
    throw error;
  }
}
