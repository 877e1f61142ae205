/** The person of a session: the sitter's own dimensions with the changes made to them. */
import { dimensionsOf } from '../models/framing';
import type { Models } from '../models/types';
import { resolveDimensions } from '../sitter/resolve';
import type { Dimensions } from '../sitter/types';
import { known } from './known';
import type { Session } from './types';

/** Dimensions after changes, those that follow a changed one included, millimetres. */
export const personDimensions = (
  { model, changes }: Pick<Session['sitter'], 'model' | 'changes'>,
  models: Models,
): Dimensions => resolveDimensions(dimensionsOf(known(models.sitters, model)), changes);
