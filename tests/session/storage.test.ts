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
import { context, models } from './fixtures';

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
    expect(await storage.save(titled('One'))).toMatchObject({ ok: true });
    const reloaded = await openStorage(models, tab);
    expect(await reloaded.restore()).toMatchObject({ kind: 'session', session: titled('One') });
    await reloaded.save(titled('Two'));
    expect(await reloaded.list()).toHaveLength(1);
  });

  it('by version 2 come back too', async () => {
    const old = new URL('./files/version-2.standpoint.json', import.meta.url);
    const document = JSON.parse(readFileSync(old, 'utf8')) as ReturnType<typeof envelope>;
    const storage = await openStorage(models);
    await storage.save(demo);
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
    await first.save(titled('Left'));
    const second = await openStorage(models, right);
    expect(await second.restore()).toMatchObject({ session: titled('Left') });
    await second.save(titled('Right'));
    expect(await (await openStorage(models, left)).restore()).toMatchObject({
      session: titled('Left'),
    });
    expect((await first.list()).map(({ title }) => title).sort()).toEqual(['Left', 'Right']);
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
    await original.save(titled('Original'));
    const copy = await openStorage(models, tab);
    expect(await copy.restore()).toMatchObject({ session: titled('Original') });
    await copy.save(titled('Copy'));
    expect((await original.list()).map(({ title }) => title).sort()).toEqual(['Copy', 'Original']);
  });

  it('stay when another one is begun, and open again', async () => {
    const storage = await openStorage(models, tabMemory());
    await storage.save(titled('Mine'));
    storage.startRecord();
    await storage.save(titled('From a link'));
    const mine = (await storage.list()).find(({ title }) => title === 'Mine');
    expect(await storage.open(mine?.id ?? '')).toEqual({ ok: true, session: titled('Mine') });
    expect(await storage.open('gone')).toMatchObject({ ok: false });
  });

  it('that cannot be read are set aside, not deleted', async () => {
    const tab = tabMemory();
    await (await openStorage(models, tab)).save(titled('Sound'));
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
    await storage.save(titled('After'));
    const records = await allRecords();
    expect(records).toHaveLength(2);
    expect(records).toContainEqual({ ...broken, aside: expect.any(String) });
    expect(await (await openStorage(models, tab)).restore()).toMatchObject({
      session: titled('After'),
    });
  });

  it('of a newer version are left as they are', async () => {
    const tab = tabMemory();
    await (await openStorage(models, tab)).save(titled('Sound'));
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
    expect(await storage.save(demo)).toMatchObject({ ok: false, reason: 'missing' });
    expect(await storage.list()).toEqual([]);
    expect(await storage.open('x')).toMatchObject({ ok: false });
  });

  it('with a full disk says so, whether the request fails or the transaction after it', async () => {
    const storage = await openStorage(models, tabMemory());
    await storage.save(titled('Before'));
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(await storage.save(titled('Lost?'))).toMatchObject({
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
    expect(await storage.save(titled('Lost?'))).toMatchObject({ ok: false, reason: 'failed' });
    vi.restoreAllMocks();
    expect(await storage.restore()).toMatchObject({ session: titled('Before') });
    expect(await storage.save(titled('After'))).toMatchObject({ ok: true });
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
    await (await openStorage(models, barred)).save(titled('Kept'));
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
      { page, onSaved: (saved) => outcomes.push(saved), delay: 100 },
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
    expect(save).toHaveBeenCalledWith(store.getState().session);
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

  it('stops', async () => {
    const { store, save, running } = setUp();
    move(store, 0.5);
    running.stop();
    await vi.advanceTimersByTimeAsync(500);
    expect(save).not.toHaveBeenCalled();
  });
});
