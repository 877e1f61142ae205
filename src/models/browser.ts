/** models/ in the page: the JSON is bundled, the sculptures are fetched from these addresses. */
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

/** Address of each file of models/sculpture/, by its name. */
export const sculptureUrls: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(
    import.meta.glob<string>('../../models/sculpture/*', {
      eager: true,
      query: '?url',
      import: 'default',
    }),
  ).map(([path, url]) => [path.replace('../../models/sculpture/', ''), url]),
);
