/** Damaged session files, many and at random: nothing is lost, and a sentence says where the damage is. */
import { readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { importSessions } from '../../src/session/collection';
import type { Database } from '../../src/session/database';
import { envelope, FORMAT } from '../../src/session/decode';
import { decodeFile, encodeFile } from '../../src/session/file';
import { openStorage } from '../../src/session/storage';
import { createSessionStore } from '../../src/session/store';
import { SESSION_VERSION } from '../../src/session/types';
import { context, models, must } from './fixtures';
import { rich } from './rich';
import { placesOf, replaced } from './spoil';

/** Sessions of every version that a file may hold, as text. */
const WHOLE: readonly string[] = [
  encodeFile(rich),
  ...[1, 2, 3].map((version) =>
    readFileSync(new URL(`./files/version-${version}.standpoint.json`, import.meta.url), 'utf8'),
  ),
];

const toText = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const nested = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);

/** Values that no field of a session holds, as JSON. */
const strange = fc.constantFrom(
  'null',
  'true',
  '-1e308',
  '1e999',
  '123456789012345678901234567890',
  '""',
  '"\\u0000"',
  '"__proto__"',
  '[]',
  '{}',
  '{"__proto__": {"polluted": true}}',
  '{"constructor": {"prototype": {"polluted": true}}}',
  '{"length": 4294967295}',
  nested(20_000),
  `"${'a'.repeat(400_000)}"`,
);

const whole = fc.constantFrom(...WHOLE);
const place = fc.nat();

/** One field of a session replaced by a strange value, or taken away, or one added beside it. */
const field = fc
  .tuple(whole, place, strange, fc.constantFrom('replace', 'remove', 'add', 'proto'))
  .map(([text, at, value, how]) => {
    const document = JSON.parse(text);
    const places = placesOf(document);
    const where = must(places[at % places.length]);
    if (how === 'remove') return JSON.stringify(replaced(document, where, undefined), null, 2);
    const mark = '"\u2020"';
    const marked = JSON.stringify(replaced(document, where, '\u2020'), null, 2);
    if (how === 'replace') return marked.replace(mark, () => value);
    const key = how === 'proto' ? '__proto__' : 'further';
    return marked.replace(mark, () => `{"${key}": ${value}}`);
  });

/** Some bytes of a file flipped. */
const flipped = fc
  .tuple(whole, fc.array(fc.tuple(place, fc.integer({ min: 1, max: 255 })), { minLength: 1 }))
  .map(([text, flips]) => {
    const bytes = new TextEncoder().encode(text);
    for (const [at, by] of flips) bytes[at % bytes.length] = (bytes[at % bytes.length] ?? 0) ^ by;
    return toText(bytes);
  });

/** A file that breaks off, or lacks a piece in the middle, or has one twice. */
const torn = fc
  .tuple(whole, place, place, fc.constantFrom('end', 'hole', 'twice'))
  .map(([text, a, b, how]) => {
    const [from, to] = [a % text.length, b % text.length].sort((x, y) => x - y);
    if (how === 'end') return text.slice(0, from);
    return text.slice(0, how === 'hole' ? from : to) + text.slice(how === 'hole' ? to : from);
  });

/** What is no session file at all. */
const foreign = fc.oneof(
  fc.json(),
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.constantFrom(nested(100_000), '['.repeat(100_000), `{"format":"${FORMAT}","session":[]}`),
);

const damaged = fc.oneof(
  { weight: 4, arbitrary: field },
  { weight: 3, arbitrary: flipped },
  { weight: 2, arbitrary: torn },
  { weight: 1, arbitrary: foreign },
);

/** The line or the field, or what the file is instead of a session. */
const WHERE =
  /^This (file|saved session) (is damaged at line \d+|is damaged at [\w.]+: expected .+|is damaged: it names no version|holds no session|comes from a newer version|is of a version that was never released|is too large to be a session|asks for the \w+ ".*", which is not here)\. Nothing was changed\.$|^No such sitter can be: .+ Nothing was changed\.$/s;

const RUNS = { seed: 12, numRuns: 400 } as const;

describe('four hundred damaged session files', () => {
  it('open as a session or say where the damage is, and leave the document alone', () => {
    const store = createSessionStore(rich, () => context);
    const before = store.getState();
    let [opened, refused] = [0, 0];
    fc.assert(
      fc.property(damaged, (text) => {
        const decoded = decodeFile(text, models);
        if (decoded.ok) {
          opened++;
          // What opens is whole: it comes back as it is.
          expect(decodeFile(encodeFile(decoded.session), models)).toEqual(decoded);
        } else {
          refused++;
          expect(decoded.sentence).toMatch(WHERE);
          expect(decoded.sentence.length).toBeLessThan(400);
        }
        expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain('polluted');
      }),
      RUNS,
    );
    expect(store.getState()).toBe(before);
    // Enough of either kind, so that the check checks something.
    expect(refused).toBeGreaterThan(300);
    expect(opened).toBeGreaterThan(0);
  });

  it('are imported as a session or told, and leave every record as it was', async () => {
    vi.stubGlobal('navigator', {});
    globalThis.indexedDB = new IDBFactory();
    const storage = await openStorage(models);
    await storage.save(rich, 0);
    const database = must(storage.database);
    const id = must(storage.recordOf(0));
    const before = await database.get('sessions', id);
    await fc.assert(
      fc.asyncProperty(damaged, async (text) => {
        const count = await database.count('sessions');
        const result = await importSessions(database, text, models);
        const added = (await database.count('sessions')) - count;
        expect(added).toBe(result.ok ? result.added : 0);
        const told = result.ok
          ? result.wrong.map(({ sentence }) => `${sentence} Nothing was changed.`)
          : [result.sentence.replace('no sessions', 'no session')];
        for (const sentence of told) expect(sentence).toMatch(WHERE);
      }),
      { ...RUNS, numRuns: 200 },
    );
    expect(await database.get('sessions', id)).toEqual(before);
    vi.unstubAllGlobals();
  });
});

describe('two hundred damaged records of the store', () => {
  let database: Database;
  beforeAll(async () => {
    vi.stubGlobal('navigator', {});
    globalThis.indexedDB = new IDBFactory();
    database = must((await openStorage(models)).database);
  });

  it('are set aside as they stand, and the next session gets a record of its own', async () => {
    const sound = { id: 'sound', title: 'Sound', savedAt: 1, document: envelope(rich) };
    const parsed = (text: string): unknown => {
      try {
        return JSON.parse(text);
      } catch {
        return text;
      }
    };
    // What is nested deeper than any store takes cannot have come from one.
    const storable = damaged.filter((text) => !text.includes('['.repeat(500)));
    await fc.assert(
      fc.asyncProperty(storable, async (text) => {
        const document = parsed(text);
        await database.clear('sessions');
        await database.put('sessions', sound);
        await database.put('sessions', { id: 'bad', title: 'Bad', savedAt: 2, document });
        const memory = { getItem: () => 'bad', setItem: () => undefined };
        const storage = await openStorage(models, memory);
        const restored = await storage.restore();
        if (restored.kind === 'unreadable') {
          expect(restored.sentence).toMatch(WHERE);
          await storage.save(rich, 0);
          expect(await database.get('sessions', 'bad')).toMatchObject({ aside: restored.sentence });
        } else expect(restored.kind).toBe('session');
        const bad = await database.get('sessions', 'bad');
        expect(JSON.stringify(bad?.document)).toBe(JSON.stringify(document));
        expect(await database.get('sessions', 'sound')).toEqual(sound);
        storage.database?.close();
      }),
      { ...RUNS, numRuns: 200 },
    );
  });
});

describe('a version', () => {
  const of = (version: unknown) =>
    decodeFile(JSON.stringify({ format: FORMAT, session: { ...rich, version } }), models);

  it('before this one opens, a later one is refused, and neither is guessed', () => {
    for (const text of WHOLE) expect(decodeFile(text, models).ok).toBe(true);
    for (const later of [SESSION_VERSION + 1, 99, 2 ** 53])
      expect(of(later)).toMatchObject({
        fault: 'newer',
        sentence: 'This file comes from a newer version. Nothing was changed.',
      });
    for (const never of [0, -1]) expect(of(never)).toMatchObject({ fault: 'unknown-version' });
    for (const none of [null, '4', 1.5, undefined, [4]])
      expect(of(none)).toMatchObject({
        fault: 'damaged',
        sentence: 'This file is damaged: it names no version. Nothing was changed.',
      });
  });

  it('says what an old file lacks', () => {
    const old = JSON.parse(must(WHOLE[2]));
    delete old.session.light.key.softness;
    expect(decodeFile(JSON.stringify(old), models)).toMatchObject({
      fault: 'damaged',
      what: 'This file is damaged at light.key.softness: expected a number, as its version has it.',
    });
  });
});
