import { readFileSync } from 'node:fs';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import * as actions from '../../src/session/actions/plan-page';
import { autosave } from '../../src/session/autosave';
import { envelope } from '../../src/session/decode';
import { demoSession } from '../../src/session/demo';
import { openStorage, type Saved } from '../../src/session/storage';
import { createSessionStore } from '../../src/session/store';
import { SESSION_VERSION } from '../../src/session/types';
import { context, models, must } from './fixtures';

const demo = demoSession();
const titled = (title: string) => ({ ...demo, title });

/** What a tab remembers. */
function tabMemory(): Pick<Storage, 'getItem' | 'setItem'> {
  const values = new Map<string, string>();
  return {
    getItem: (key) => values.get(key) ?? null,
    setItem: (key, value) => void values.set(key, value),
  };
}

/** A locked record belongs to a living tab; in these tests a tab dies when its store is dropped. */
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  vi.stubGlobal('navigator', {});
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const allRecords = async () => (await openDB('standpoint')).getAll('sessions');

describe('sessions kept in the browser', () => {
  it('come back after a reload', async () => {
    const tab = tabMemory();
    const storage = await openStorage(models, tab);
    expect(await storage.restore()).toEqual({ kind: 'none' });
    expect(await storage.save(titled('One'), 0)).toMatchObject({ ok: true });
    const reloaded = await openStorage(models, tab);
    expect(await reloaded.restore()).toMatchObject({ kind: 'session', session: titled('One') });
    await reloaded.save(titled('Two'), 0);
    expect(await allRecords()).toHaveLength(1);
  });

  it('by version 2 come back too', async () => {
    const old = new URL('./files/version-2.standpoint.json', import.meta.url);
    const document = JSON.parse(readFileSync(old, 'utf8')) as ReturnType<typeof envelope>;
    const storage = await openStorage(models);
    await storage.save(demo, 0);
    const database = await openDB('standpoint');
    const [record] = await database.getAll('sessions');
    await database.put('sessions', { ...record, document });
    expect(await (await openStorage(models)).restore()).toMatchObject({
      kind: 'session',
      session: { version: SESSION_VERSION, title: 'Two sisters, autumn' },
    });
  });

  it('of two tabs do not overwrite each other', async () => {
    const [left, right] = [tabMemory(), tabMemory()];
    const first = await openStorage(models, left);
    await first.save(titled('Left'), 0);
    const second = await openStorage(models, right);
    expect(await second.restore()).toMatchObject({ session: titled('Left') });
    await second.save(titled('Right'), 0);
    expect(await (await openStorage(models, left)).restore()).toMatchObject({
      session: titled('Left'),
    });
    expect((await allRecords()).map(({ title }) => title).sort()).toEqual(['Left', 'Right']);
  });

  it('of a duplicated tab do not overwrite each other either', async () => {
    const held = new Set<string>();
    vi.stubGlobal('navigator', {
      locks: {
        request: async (name: string, _: unknown, then: (lock: object | null) => unknown) => {
          if (held.has(name)) return then(null);
          held.add(name);
          return then({});
        },
      },
    });
    const tab = tabMemory();
    const original = await openStorage(models, tab);
    await original.save(titled('Original'), 0);
    const copy = await openStorage(models, tab);
    expect(await copy.restore()).toMatchObject({ session: titled('Original') });
    await copy.save(titled('Copy'), 0);
    expect((await allRecords()).map(({ title }) => title).sort()).toEqual(['Copy', 'Original']);
  });

  it('stay when another document is opened over them', async () => {
    const storage = await openStorage(models, tabMemory());
    await storage.save(titled('Mine'), 0);
    await storage.save(titled('From a link'), 1);
    // Undo goes back to the document before it.
    await storage.save(titled('Mine again'), 0);
    expect((await allRecords()).map(({ title }) => title).sort()).toEqual([
      'From a link',
      'Mine again',
    ]);
    expect(storage.recordOf(1)).not.toBe(storage.recordOf(0));
  });

  it('that cannot be read are set aside, not deleted', async () => {
    const tab = tabMemory();
    await (await openStorage(models, tab)).save(titled('Sound'), 0);
    const database = await openDB('standpoint');
    const [record] = await database.getAll('sessions');
    const broken = {
      ...record,
      document: { ...envelope(demo), session: { ...demo, title: 7 } },
    };
    await database.put('sessions', broken);

    const storage = await openStorage(models, tab);
    const restored = await storage.restore();
    expect(restored).toMatchObject({
      kind: 'unreadable',
      sentence: expect.stringMatching(/^This saved session is damaged at /),
    });
    await storage.save(titled('After'), 0);
    const records = await allRecords();
    expect(records).toHaveLength(2);
    expect(records).toContainEqual({ ...broken, aside: expect.any(String) });
    expect(await (await openStorage(models, tab)).restore()).toMatchObject({
      session: titled('After'),
    });
  });

  it('that were set aside are not written over by what comes back in their stead', async () => {
    const tab = tabMemory();
    await (await openStorage(models, tabMemory())).save(titled('Of another tab'), 0);
    await (await openStorage(models, tab)).save(titled('Mine'), 0);
    const database = await openDB('standpoint');
    const mine = must((await allRecords()).find(({ title }) => title === 'Mine'));
    await database.put('sessions', { ...mine, aside: 'Damaged.' });
    const storage = await openStorage(models, tab);
    expect(await storage.restore()).toMatchObject({ session: titled('Of another tab') });
    await storage.save(titled('Edited'), 0);
    expect(await database.get('sessions', mine.id)).toEqual({ ...mine, aside: 'Damaged.' });
  });

  it('by a database of version 1 stay when pictures are added to it', async () => {
    const old = await openDB('standpoint', 1, {
      upgrade: (database) => void database.createObjectStore('sessions', { keyPath: 'id' }),
    });
    const record = { id: 'old', title: 'Mine', savedAt: 5, document: envelope(titled('Mine')) };
    await old.put('sessions', record);
    old.close();
    const { database, restore } = await openStorage(models, tabMemory());
    expect(database?.version).toBe(2);
    expect([...(database?.objectStoreNames ?? [])]).toEqual(['pictures', 'sessions']);
    expect(await allRecords()).toEqual([record]);
    expect(await restore()).toMatchObject({ session: titled('Mine'), savedAt: 5 });
  });

  it('of a newer version are left as they are', async () => {
    const tab = tabMemory();
    await (await openStorage(models, tab)).save(titled('Sound'), 0);
    const database = await openDB('standpoint');
    const [record] = await database.getAll('sessions');
    const newer = { ...record, document: { ...envelope(demo), session: { ...demo, version: 99 } } };
    await database.put('sessions', newer);
    expect(await (await openStorage(models, tab)).restore()).toMatchObject({
      kind: 'unreadable',
      sentence: 'This saved session comes from a newer version. Nothing was changed.',
    });
    expect((await allRecords())[0]).toMatchObject({ document: newer.document });
  });
});

describe('a browser that does not keep', () => {
  it('without a store says so', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('no', 'SecurityError');
    });
    const storage = await openStorage(models, tabMemory());
    expect(await storage.restore()).toMatchObject({ kind: 'missing' });
    expect(await storage.save(demo, 0)).toMatchObject({ ok: false, reason: 'missing' });
    expect(storage.database).toBeNull();
  });

  it('with a full disk says so, whether the request fails or the transaction after it', async () => {
    const storage = await openStorage(models, tabMemory());
    await storage.save(titled('Before'), 0);
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(await storage.save(titled('Lost?'), 0)).toMatchObject({
      ok: false,
      reason: 'full',
      sentence: expect.stringMatching(/Save a file/),
    });
    full.mockRestore();

    const { put } = IDBObjectStore.prototype;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = put.apply(this, args);
      request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
    expect(await storage.save(titled('Lost?'), 0)).toMatchObject({ ok: false, reason: 'failed' });
    vi.restoreAllMocks();
    expect(await storage.restore()).toMatchObject({ session: titled('Before') });
    expect(await storage.save(titled('After'), 0)).toMatchObject({ ok: true });
  });

  it('forbids the tab a memory: the latest session comes back', async () => {
    const barred = {
      getItem: () => {
        throw new DOMException('no', 'SecurityError');
      },
      setItem: () => {
        throw new DOMException('no', 'SecurityError');
      },
    };
    await (await openStorage(models, barred)).save(titled('Kept'), 0);
    expect(await (await openStorage(models, barred)).restore()).toMatchObject({
      session: titled('Kept'),
    });
  });
});

describe('saving as the user works', () => {
  function setUp(save = vi.fn(async (): Promise<Saved> => ({ ok: true, savedAt: 1 }))) {
    vi.useFakeTimers();
    const store = createSessionStore(demo, () => context);
    const page = new EventTarget();
    const outcomes: Saved[] = [];
    const running = autosave(
      store,
      { save },
      { page, saved: demo, onSaved: (saved) => outcomes.push(saved), delay: 100 },
    );
    return { store, page, outcomes, running, save };
  }
  const move = (store: ReturnType<typeof setUp>['store'], to: number) =>
    store.act(actions.moveStandpoint, { letter: 'A', to });

  it('waits for a pause and saves the last state once', async () => {
    const { store, save } = setUp();
    move(store, 0.5);
    await vi.advanceTimersByTimeAsync(60);
    move(store, 0.6);
    await vi.advanceTimersByTimeAsync(60);
    expect(save).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(60);
    expect(save).toHaveBeenCalledTimes(1);
    expect(save).toHaveBeenCalledWith(store.getState().session, 0);
  });

  it('does not save within a drag, but after it', async () => {
    const { store, save } = setUp();
    const drag = store.drag();
    drag.act(actions.moveStandpoint, { letter: 'A', to: 0.5 });
    await vi.advanceTimersByTimeAsync(500);
    expect(save).not.toHaveBeenCalled();
    drag.end();
    await vi.advanceTimersByTimeAsync(500);
    expect(save).toHaveBeenCalledTimes(1);
  });

  it('saves at once when the page goes, and not what is saved already', async () => {
    const { store, page, save } = setUp();
    page.dispatchEvent(new Event('pagehide'));
    await vi.advanceTimersByTimeAsync(0);
    expect(save).not.toHaveBeenCalled();
    move(store, 0.5);
    page.dispatchEvent(new Event('pagehide'));
    page.dispatchEvent(new Event('visibilitychange'));
    await vi.advanceTimersByTimeAsync(500);
    expect(save).toHaveBeenCalledTimes(1);
  });

  it('tells a failure and tries again with the next change', async () => {
    const failing = vi
      .fn<() => Promise<Saved>>()
      .mockResolvedValueOnce({ ok: false, reason: 'full', sentence: 'Full.' })
      .mockResolvedValue({ ok: true, savedAt: 2 });
    const { store, outcomes, running } = setUp(failing);
    move(store, 0.5);
    await running.flush();
    move(store, 0.6);
    await running.flush();
    expect(outcomes).toEqual([
      { ok: false, reason: 'full', sentence: 'Full.' },
      { ok: true, savedAt: 2 },
    ]);
  });

  it('never lets an older save land on a newer one', async () => {
    const order: string[] = [];
    const slow = vi.fn(async (session = demo): Promise<Saved> => {
      const { standpoint } = session.pictures[0] ?? { standpoint: 0 };
      await new Promise((resolve) => setTimeout(resolve, standpoint === 0.5 ? 300 : 10));
      order.push(String(standpoint));
      return { ok: true, savedAt: 1 };
    });
    const { store } = setUp(slow);
    move(store, 0.5);
    await vi.advanceTimersByTimeAsync(120);
    move(store, 0.6);
    await vi.advanceTimersByTimeAsync(1000);
    expect(order).toEqual(['0.5', '0.6']);
  });

  it('saves what is not saved yet where it belongs when another document is opened', async () => {
    const { store, save } = setUp();
    move(store, 0.5);
    const before = store.getState().session;
    const linked = titled('From a link');
    store.open(linked, 'Link opened');
    await vi.advanceTimersByTimeAsync(500);
    expect(save.mock.calls).toEqual([
      [before, 0],
      [linked, 1],
    ]);
    store.undo();
    await vi.advanceTimersByTimeAsync(500);
    expect(save).toHaveBeenLastCalledWith(before, 0);
  });

  it('saves what a link brought before it began', async () => {
    vi.useFakeTimers();
    const store = createSessionStore(demo, () => context);
    const linked = titled('From a link');
    store.open(linked, 'Link opened');
    const save = vi.fn(async (): Promise<Saved> => ({ ok: true, savedAt: 1 }));
    const page = new EventTarget();
    autosave(store, { save }, { page, saved: demo, onSaved: () => undefined });
    await vi.advanceTimersByTimeAsync(1000);
    expect(save).toHaveBeenCalledExactlyOnceWith(linked, 1);
  });

  it('stops', async () => {
    const { store, save, running } = setUp();
    move(store, 0.5);
    running.stop();
    await vi.advanceTimersByTimeAsync(500);
    expect(save).not.toHaveBeenCalled();
  });
});
