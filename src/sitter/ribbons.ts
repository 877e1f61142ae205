import type { SitterMesh } from './types';

/** Whether a mesh is strips that stand for hairs: brows and lashes, or the locks over a volume of hair. */
export const isRibbons = ({ name, substance }: Pick<SitterMesh, 'name' | 'substance'>): boolean =>
  substance === 'brows' || name.endsWith('-locks');
