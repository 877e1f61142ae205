/** models/ in the page: the JSON is bundled. */
import { parseModels } from './parse';
import type { Models } from './types';

const json = import.meta.glob<unknown>(
  ['../../models/*.json', '../../models/*/*.json', '!../../models/sculpture/**'],
  { eager: true, import: 'default' },
);

export const models: Models = parseModels(
  Object.fromEntries(
    Object.entries(json).map(([path, file]) => [path.replace('../../models/', ''), file]),
  ),
);

export { sculptureUrls } from './sculptures';
