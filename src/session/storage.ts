/**
 * Sessions kept in the browser. Each tab writes its own record, so that two tabs never overwrite
 * each other; a record that cannot be read is set aside, not deleted. Nothing here rejects.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Models } from '../models/types';
import { type Decoded, decodeEnvelope, envelope, failed } from './decode';
import type { Session } from './types';

interface SavedRecord {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly document: unknown;
  /** Why it could not be read, once that was found. */
  readonly aside?: string;
}

interface Schema extends DBSchema {
  sessions: { key: string; value: SavedRecord };
}

const DATABASE = 'standpoint';
const DATABASE_VERSION = 1;
const TAB_KEY = 'standpoint-record';

export type Saved =
  | { readonly ok: true; readonly savedAt: number }
  | {
      readonly ok: false;
      readonly reason: 'missing' | 'full' | 'failed';
      /** For a banner: what is wrong and what keeps the work. */
      readonly sentence: string;
    };

export type Restored =
  | { readonly kind: 'session'; readonly session: Session; readonly savedAt: number }
  | { readonly kind: 'none' }
  /** The record stays, set aside; `sentence` says what is wrong with it. */
  | { readonly kind: 'unreadable'; readonly sentence: string }
  | { readonly kind: 'missing'; readonly sentence: string };

export interface Earlier {
  readonly id: string;
  readonly title: string;
  readonly savedAt: number;
  readonly isReadable: boolean;
}

export interface SessionStorage {
  /** This tab's last session, else the last one of any tab. */
  restore(): Promise<Restored>;
  save(session: Session): Promise<Saved>;
  /** The next save makes a new record: what was saved so far stays as it is. */
  startRecord(): void;
  /** All records, the latest first. */
  list(): Promise<readonly Earlier[]>;
  open(id: string): Promise<Decoded>;
}

/** What a tab remembers across a reload; window.sessionStorage. */
type TabMemory = Pick<Storage, 'getItem' | 'setItem'>;

const MISSING = 'This browser keeps nothing here. Save a file before you leave.';
const SENTENCES = {
  missing: MISSING,
  full: 'The disk space of this browser is full: changes are not kept. Save a file before you leave.',
  failed: 'The last change could not be kept. Save a file before you leave.',
} as const;

const notSaved = (reason: keyof typeof SENTENCES): Saved => ({
  ok: false,
  reason,
  sentence: SENTENCES[reason],
});

function remembered(tab: TabMemory | null): string | null {
  try {
    return tab?.getItem(TAB_KEY) ?? null;
  } catch {
    return null;
  }
}

function remember(tab: TabMemory | null, id: string): void {
  try {
    tab?.setItem(TAB_KEY, id);
  } catch {
    // Without the tab's memory a reload takes the latest record instead.
  }
}

/** A duplicated tab remembers the same record: only the first of them may go on writing it. */
async function isOurs(id: string): Promise<boolean> {
  const locks = globalThis.navigator?.locks;
  if (!locks) return true;
  return new Promise((resolve) => {
    locks
      .request(`${TAB_KEY} ${id}`, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        // Held until the tab closes.
        return lock === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(() => resolve(true));
  });
}

async function openDatabase(): Promise<IDBPDatabase<Schema> | null> {
  try {
    return await openDB<Schema>(DATABASE, DATABASE_VERSION, {
      upgrade: (database) => {
        database.createObjectStore('sessions', { keyPath: 'id' });
      },
      blocking: (_current, _blocked, event) => {
        (event.target as IDBDatabase).close();
      },
    });
  } catch {
    return null;
  }
}

/** Unlike crypto.randomUUID, this is there on a page without a certificate too. */
const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

const latestFirst = (a: SavedRecord, b: SavedRecord): number => b.savedAt - a.savedAt;

/** Opens the browser's store. Where there is none, every call says so. */
export async function openStorage(
  models: Models,
  tab: TabMemory | null = null,
): Promise<SessionStorage> {
  const database = await openDatabase();
  const own = remembered(tab);
  let writing = own !== null && (await isOurs(own)) ? own : null;

  const startRecord = () => {
    writing = null;
  };

  const claim = (): string => {
    if (writing !== null) return writing;
    writing = newId();
    void isOurs(writing);
    remember(tab, writing);
    return writing;
  };

  const read = ({ document }: SavedRecord): Decoded =>
    decodeEnvelope(document, 'saved session', models);

  const setAside = async (record: SavedRecord, sentence: string) => {
    if (writing === record.id) startRecord();
    await database?.put('sessions', { ...record, aside: sentence }).catch(() => undefined);
  };

  return {
    startRecord,
    restore: async () => {
      if (!database) return { kind: 'missing', sentence: MISSING };
      try {
        const records = (await database.getAll('sessions')).filter(({ aside }) => !aside);
        const record = records.find(({ id }) => id === own) ?? records.toSorted(latestFirst)[0];
        if (!record) return { kind: 'none' };
        const decoded = read(record);
        if (decoded.ok) {
          return { kind: 'session', session: decoded.session, savedAt: record.savedAt };
        }
        await setAside(record, decoded.sentence);
        return { kind: 'unreadable', sentence: decoded.sentence };
      } catch {
        return { kind: 'missing', sentence: MISSING };
      }
    },
    save: async (session) => {
      if (!database) return notSaved('missing');
      const savedAt = Date.now();
      const record = { id: claim(), title: session.title, savedAt, document: envelope(session) };
      try {
        const transaction = database.transaction('sessions', 'readwrite');
        // A full disk may let the request pass and abort the transaction after it.
        await Promise.all([transaction.store.put(record), transaction.done]);
        return { ok: true, savedAt };
      } catch (error) {
        return notSaved((error as Error).name === 'QuotaExceededError' ? 'full' : 'failed');
      }
    },
    list: async () => {
      const records = await database?.getAll('sessions').catch(() => []);
      return (records ?? []).sort(latestFirst).map(({ id, title, savedAt, aside }) => ({
        id,
        title,
        savedAt,
        isReadable: aside === undefined,
      }));
    },
    open: async (id) => {
      const record = await database?.get('sessions', id).catch(() => undefined);
      if (!record) return failed('not-a-session', 'This saved session is gone.');
      return read(record);
    },
  };
}
