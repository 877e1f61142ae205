import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = fileURLToPath(new URL('.', import.meta.url));
/** Outside this folder: what places the body's joints, and the dimensions the body is built to. */
const ALSO = [
  '../../src/sitter/landmarks-body.ts',
  '../../models/sitters/adult-woman.json',
  '../../models/sitters/adult-man.json',
];

/** Hash of every source the sculptures are made from: this folder without its previews, and ALSO. */
export function sourceHash(): string {
  const hash = createHash('sha256');
  const files = readdirSync(HERE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(HERE, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .filter((path) => !path.startsWith('preview/'))
    .sort();
  for (const path of [...files, ...ALSO])
    hash.update(`${path}\n`).update(readFileSync(join(HERE, path)));
  return hash.digest('hex').slice(0, 32);
}
