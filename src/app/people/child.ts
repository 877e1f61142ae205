import type { SitterModel } from '../../sitter/types';

/** Is this a child, for whom other cautions hold and no survey of adults speaks? */
export const isChildSitter = (sitter: Pick<SitterModel, 'forms'> | undefined): boolean =>
  (sitter?.forms.child ?? 0) > 0;
