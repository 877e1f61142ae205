import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { exportSessions, importSessions, LARGEST_COLLECTION } from '../../src/session/collection';
import type { Database } from '../../src/session/database';
import { envelope } from '../../src/session/decode';
import { demoSession } from '../../src/session/demo';
import { encodeFile } from '../../src/session/file';
import {
  bringBack,
  clearDeleted,
  deleteSession,
  duplicateSession,
  keepPicture,
  listSessions,
  rawSession,
  readSession,
  renameSession,
} from '../../src/session/library';
import { openStorage, type SessionStorage } from '../../src/session/storage';
import { SESSION_VERSION } from '../../src/session/types';
import { models, must } from './fixtures';

const demo = demoSession();
const titled = (title: string) => ({ ...demo, title });
const PICTURE = 'data:image/jpeg;base64,/9j/4AAQSkZJRg==';

let storage: SessionStorage;
let database: Database;

beforeEach(async () => {
  vi.stubGlobal('navigator', {});
  globalThis.indexedDB = new IDBFactory();
  storage = await openStorage(models);
  database = must(storage.database);
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** Saves sessions of these titles, each a millisecond after the one before; gives their ids. */
async function keep(...titles: string[]): Promise<string[]> {
  const ids: string[] = [];
  for (const title of titles) {
    const document = ids.length;
    await storage.save(titled(title), document);
    const id = must(storage.recordOf(document));
    const record = must(await database.get('sessions', id));
    await database.put('sessions', { ...record, savedAt: 1_700_000_000_000 + document });
    ids.push(id);
  }
  return ids;
}
const titles = async () => (await listSessions(database)).map(({ title }) => title);
const everything = async () => [
  await database.getAll('sessions'),
  await database.getAll('pictures'),
];

describe('the user’s sessions', () => {
  it('are listed with the latest first, with their pictures', async () => {
    const [first] = await keep('One', 'Two');
    await keepPicture(database, must(first), PICTURE);
    expect(await listSessions(database)).toMatchObject([
      { title: 'Two', picture: null, aside: null, deletedAt: null, isOpen: false },
      { title: 'One', picture: PICTURE },
    ]);
  });

  it('say which of them a tab has open', async () => {
    const [first, second] = await keep('One', 'Two');
    vi.stubGlobal('navigator', {
      locks: { query: async () => ({ held: [{ name: `standpoint-record ${first}` }] }) },
    });
    const open = (await listSessions(database)).map(({ id, isOpen }) => [id, isOpen]);
    expect(open).toEqual([
      [second, false],
      [first, true],
    ]);
  });

  it('are renamed in the list and in the document', async () => {
    const [id] = await keep('One');
    expect(await renameSession(database, must(id), 'Autumn', models)).toBeNull();
    expect(await titles()).toEqual(['Autumn']);
    expect(await readSession(database, must(id), models)).toMatchObject({
      ok: true,
      session: titled('Autumn'),
    });
    expect(await renameSession(database, 'gone', 'x', models)).toMatch(/gone/);
  });

  it('are duplicated with their picture, the first one untouched', async () => {
    const [id] = await keep('One');
    await keepPicture(database, must(id), PICTURE);
    expect(await duplicateSession(database, must(id), (of) => `${of}, copy`, models)).toBeNull();
    const [copy, original] = await listSessions(database);
    expect([copy, original]).toMatchObject([
      { title: 'One, copy', picture: PICTURE },
      { title: 'One', id, picture: PICTURE },
    ]);
    expect(await readSession(database, must(copy).id, models)).toMatchObject({
      session: titled('One, copy'),
    });
  });

  it('are deleted so that they come back, and cleared away only later', async () => {
    const [first, second] = await keep('One', 'Two');
    await keepPicture(database, must(first), PICTURE);
    const before = await everything();
    await deleteSession(database, must(first));
    const deletedAt = (await listSessions(database)).find(({ id }) => id === first)?.deletedAt;
    expect(deletedAt).toEqual(expect.any(Number));
    // Neither the same tab nor a later one takes it up.
    expect(await (await openStorage(models)).restore()).toMatchObject({ session: titled('Two') });
    await bringBack(database, must(first));
    expect(await everything()).toEqual(before);
    await deleteSession(database, must(first));
    await clearDeleted(database, must(deletedAt) - 1);
    expect(await titles()).toEqual(['Two', 'One']);
    await clearDeleted(database, Date.now() + 1);
    expect((await listSessions(database)).map(({ id }) => id)).toEqual([second]);
    expect(await database.getAll('pictures')).toEqual([]);
  });

  it('that cannot be read give their content as it stands', async () => {
    const document = { format: 'standpoint-session', session: { version: 99, left: 'as is' } };
    await database.put('sessions', { id: 'x', title: 'X', savedAt: 1, document, aside: 'Newer.' });
    expect(JSON.parse(await rawSession(database, 'x'))).toEqual(document);
    expect(await listSessions(database)).toMatchObject([{ id: 'x', aside: 'Newer.' }]);
    expect(await renameSession(database, 'x', 'Y', models)).toMatch(/newer version/);
    expect(await database.get('sessions', 'x')).toMatchObject({ title: 'X', document });
  });
});

describe('all sessions in one file', () => {
  it('come back elsewhere as they were, with titles, dates and pictures', async () => {
    const [first, second] = await keep('One', 'Two', 'Three');
    await keepPicture(database, must(first), PICTURE);
    await deleteSession(database, must(second));
    const { text, count } = await exportSessions(database);
    expect(count).toBe(2);
    const here = await listSessions(database);

    globalThis.indexedDB = new IDBFactory();
    const other = must((await openStorage(models)).database);
    expect(await importSessions(other, text, models)).toEqual({
      ok: true,
      added: 2,
      same: 0,
      wrong: [],
    });
    const strip = ({ id: _, ...rest }: (typeof here)[number]) => rest;
    expect((await listSessions(other)).map(strip)).toEqual(
      here.filter(({ deletedAt }) => deletedAt === null).map(strip),
    );
  });

  it('are merged: what is there stays, the same is passed over, what is damaged is told', async () => {
    const [id] = await keep('One');
    const { text } = await exportSessions(database);
    const file = JSON.parse(text);
    const [own] = file.sessions;
    const broken = structuredClone(own);
    broken.document.session.pictures[1].standpoint = 'far';
    const newer = { document: envelope({ ...demo, version: SESSION_VERSION + 1 }) };
    const edited = { ...own, document: envelope({ ...titled('One'), notes: 'Later' }) };
    file.sessions = [own, broken, edited, newer, 7, null, edited];
    const before = await database.get('sessions', must(id));
    expect(await importSessions(database, JSON.stringify(file), models)).toEqual({
      ok: true,
      added: 1,
      same: 2,
      wrong: [
        { place: 2, sentence: expect.stringMatching(/damaged at pictures\.1\.standpoint/) },
        { place: 4, sentence: expect.stringMatching(/newer version/) },
        { place: 5, sentence: expect.stringMatching(/holds no session/) },
        { place: 6, sentence: expect.stringMatching(/holds no session/) },
      ],
    });
    expect(await database.get('sessions', must(id))).toEqual(before);
    expect(await titles()).toEqual(['One', 'One']);
  });

  it('may be one session’s file; nothing else is taken', async () => {
    expect(await importSessions(database, encodeFile(titled('Alone')), models)).toMatchObject({
      ok: true,
      added: 1,
    });
    expect(await titles()).toEqual(['Alone']);
    const before = await everything();
    for (const [text, sentence] of [
      ['{"format":"standpoint-sessions"}', /holds no sessions/],
      ['[]', /holds no sessions/],
      ['{"format":"standpoint-sessions",\n"sessions": [}', /damaged at line 2/],
      [' '.repeat(LARGEST_COLLECTION + 1), /too large/],
    ] as const) {
      const result = await importSessions(database, text, models);
      expect(result).toMatchObject({ ok: false, sentence: expect.stringMatching(sentence) });
      expect(result).toMatchObject({ sentence: expect.stringMatching(/Nothing was changed\.$/) });
    }
    expect(await everything()).toEqual(before);
  });

  it('bring no picture that is none', async () => {
    const entry = (picture: unknown) => ({ document: envelope(titled(String(picture))), picture });
    const pictures = ['javascript:alert(1)', 7, `${PICTURE}"`, 'data:text/html;base64,AA'];
    const text = JSON.stringify({ format: 'standpoint-sessions', sessions: pictures.map(entry) });
    expect(await importSessions(database, text, models)).toMatchObject({ added: 4 });
    expect(await database.getAll('pictures')).toEqual([]);
  });

  it('are added wholly or not at all when the disk is full', async () => {
    await keep('One');
    const before = await everything();
    const sessions = ['Two', 'Three', 'Four'].map((each) => ({ document: envelope(titled(each)) }));
    const { put } = IDBObjectStore.prototype;
    let puts = 0;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = put.apply(this, args);
      if (++puts === 3) request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
    const text = JSON.stringify({ format: 'standpoint-sessions', sessions });
    await expect(importSessions(database, text, models)).rejects.toThrow();
    vi.restoreAllMocks();
    expect(await everything()).toEqual(before);
  });
});
