/** The written-down schema of the session file: made from the one that reads, and read by another validator. */
import { readdirSync, readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { sessionJsonSchema } from '../../scripts/schema/json-schema';
import { withFigures } from '../../scripts/schema/tables';
import { decodeFile, encodeFile } from '../../src/session/file';
import { sessionSchema } from '../../src/session/schema';
import { DIMENSIONS } from '../../src/sitter/types';
import { models } from './fixtures';
import { rich } from './rich';
import { placesOf, replaced } from './spoil';

const read = (name: string): string =>
  readFileSync(new URL(`../../docs/${name}`, import.meta.url), 'utf8');
const schema = JSON.parse(read('session.schema.json'));
const page = read('session-file.md');

const validate = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false }).compile(
  schema,
);

/** Names of all fields anywhere in a JSON Schema. */
function fieldsOf(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => [
    ...(key === 'properties' ? Object.keys(part) : []),
    ...(key === 'default' ? [] : fieldsOf(part)),
  ]);
}

describe('the written schema of a session file', () => {
  it('is what `npm run schema` makes', () => {
    expect(schema).toEqual(JSON.parse(JSON.stringify(sessionJsonSchema())));
    expect(page).toBe(withFigures(page));
  });

  it('is told field by field on its page', () => {
    const told = new Set(
      [...page.matchAll(/`([\w.]+)`/g)].flatMap(([, name]) => (name as string).split('.')),
    );
    const dimensions: readonly string[] = DIMENSIONS;
    const untold = fieldsOf(schema).filter((name) => !told.has(name) && !dimensions.includes(name));
    expect([...new Set(untold)]).toEqual([]);
  });

  it('holds for the demo, a rich session and every old file once it is migrated', () => {
    const folder = new URL('./files/', import.meta.url);
    const old = readdirSync(folder).filter((name) => name.endsWith('.standpoint.json'));
    expect(old).toHaveLength(3);
    for (const text of [
      encodeFile(rich),
      ...old.map((name) => {
        const decoded = decodeFile(readFileSync(new URL(name, folder), 'utf8'), models);
        if (!decoded.ok) throw new Error(decoded.sentence);
        return encodeFile(decoded.session);
      }),
    ])
      expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
  });

  it('and the one that reads agree on any JSON in any place, but for what stands as a comment', () => {
    const document = JSON.parse(encodeFile(rich));
    const places = placesOf(document.session);
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.jsonValue({ maxDepth: 2 }), (place, value) => {
        // Through text, as a file goes: JSON has no -0 and no key without a value.
        const session = JSON.parse(JSON.stringify(replaced(document.session, place, value)));
        const here = v.safeParse(sessionSchema, session);
        const there = validate({ ...document, session });
        // The reading one opens an empty list, where only optional fields may stand, as an empty object.
        if (here.success) return there || JSON.stringify(value) === '[]';
        if (!there) refused++;
        return !there || here.issues.every(({ type }) => type === 'check');
      }),
      { seed: 4, numRuns: 1500 },
    );
    expect(refused).toBeGreaterThan(1000);
  });
});
