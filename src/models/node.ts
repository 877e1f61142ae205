/** models/ from disk: the command line, the scripts and the tests. */
import { readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { ModelsError, parseModels } from './parse';
import type { Models } from './types';

const FOLDER = fileURLToPath(new URL('../../models/', import.meta.url));

/** The parsed JSON files, keyed by path below models/. Throws a ModelsError on text that is not JSON. */
export function readModelFiles(folder = FOLDER): Record<string, unknown> {
  const files: Record<string, unknown> = {};
  for (const entry of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    const path = entry.replaceAll('\\', '/');
    if (!path.endsWith('.json') || path.startsWith('sculpture/')) continue;
    try {
      files[path] = JSON.parse(readFileSync(`${folder}/${path}`, 'utf8'));
    } catch (error) {
      throw new ModelsError([`models/${path}: expected JSON: ${(error as Error).message}`]);
    }
  }
  return files;
}

/** Everything in models/. Throws a ModelsError that names file, field and what was expected. */
export const loadModels = (folder = FOLDER): Models => parseModels(readModelFiles(folder));

/** Bytes of a file of models/sculpture/, by its name. */
export const readSculpture = (name: string): Promise<Uint8Array> =>
  readFile(new URL(`../../models/sculpture/${name}`, import.meta.url));
