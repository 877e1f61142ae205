import type { Models } from '../models/types';
import { DIMENSIONS } from '../sitter/types';
import { LANDMARKS } from './landmarks';

const named = (models: ReadonlyMap<string, { readonly name: string }>): string[] =>
  [...models].map(([id, { name }]) => `  ${id.padEnd(24)}${name}`);

/** The text of `--list`. */
export function listText(models: Models): string {
  return [
    'Sitters',
    ...named(models.sitters),
    'Formats',
    ...named(models.formats),
    'Lenses',
    ...named(models.lenses),
    'Dimensions',
    ...DIMENSIONS.map((name) => `  ${name.padEnd(36)}${models.dimensions[name].definition}`),
    'Landmarks',
    ...LANDMARKS.map((name) => `  ${name}`),
  ].join('\n');
}
