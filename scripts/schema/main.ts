/** `npm run schema`: writes docs/session.schema.json and the figures in docs/session-file.md anew. */
import { readFileSync, writeFileSync } from 'node:fs';
import { sessionJsonSchema } from './json-schema';
import { withFigures } from './tables';

const docs = new URL('../../docs/', import.meta.url);
const page = new URL('session-file.md', docs);
const schema = new URL('session.schema.json', docs);

writeFileSync(schema, `${JSON.stringify(sessionJsonSchema(), null, 2)}\n`);
writeFileSync(page, withFigures(readFileSync(page, 'utf8')));
