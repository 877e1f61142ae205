import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = fileURLToPath(new URL('.', import.meta.url));
/** Outside this folder: what places the body's joints, and the dimensions the body is built to. */
const BODY = [
  '../../src/sitter/landmarks-body.ts',
  '../../models/sitters/adult-woman.json',
  '../../models/sitters/adult-man.json',
];

/** Folders of sources that each kind of file does not depend on. */
const WITHOUT = {
  figure: ['hair/'],
  hair: [],
  clothes: ['hair/'],
} as const;
export type Kind = keyof typeof WITHOUT;

function hashOf(kind: Kind): string {
  const hash = createHash('sha256');
  const unused = ['preview/', ...WITHOUT[kind]];
  const files = readdirSync(HERE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(HERE, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .filter((path) => !unused.some((folder) => path.startsWith(folder)))
    .sort();
  for (const path of [...files, ...BODY])
    hash.update(`${path}\n`).update(readFileSync(join(HERE, path)));
  return hash.digest('hex').slice(0, 32);
}

/** Taken as this program starts: sources edited while it runs are not what it ran. */
const HASHES: Readonly<Record<Kind, string>> = {
  figure: hashOf('figure'),
  hair: hashOf('hair'),
  clothes: hashOf('clothes'),
};

/** Hash of every source that files of one kind are made from. */
export const sourceHash = (kind: Kind): string => HASHES[kind];
