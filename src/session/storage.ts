/**
 * Sessions kept in the browser as they are worked on. Each document of a tab has a record of its own, so
 * that two tabs, or a session and the one opened after it, never overwrite each other; a record that cannot
 * be read is set aside, not deleted. Nothing here rejects.
 */
import type { Models } from '../models/types';
import { type Database, latestFirst, newId, openDatabase, type SavedRecord } from './database';
import { decodeEnvelope, envelope } from './decode';
import type { Session } from './types';

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

export interface SessionStorage {
  /** Null where the browser keeps nothing. */
  readonly database: Database | null;
  /** This tab's last session, else the last one of any tab. */
  restore(): Promise<Restored>;
  /** Into the document's record; a document without one is given a new one. */
  save(session: Session, document: number): Promise<Saved>;
  /** The record that a document of this tab is saved into; null before its first save. */
  recordOf(document: number): string | null;
  /** Takes a record for this tab; false when another tab has it open. */
  hold(id: string): Promise<boolean>;
  /** Does this tab hold it? What undo can go back to is held, too. */
  holds(id: string): boolean;
  /** A document is saved into a record that this tab holds. */
  assign(document: number, id: string): void;
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

export const lockOf = (id: string): string => `${TAB_KEY} ${id}`;

/** A duplicated tab remembers the same record: only the first of them may go on writing it. */
async function lock(id: string): Promise<boolean> {
  const locks = globalThis.navigator?.locks;
  if (!locks) return true;
  return new Promise((resolve) => {
    locks
      .request(lockOf(id), { ifAvailable: true }, (granted) => {
        resolve(granted !== null);
        // Held until the tab closes.
        return granted === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(() => resolve(true));
  });
}

/** Opens the browser's store. Where there is none, every call says so. */
export async function openStorage(
  models: Models,
  tab: TabMemory | null = null,
): Promise<SessionStorage> {
  const database = await openDatabase();
  const own = remembered(tab);
  const records = new Map<number, string>();
  const held = new Set<string>();

  const hold = async (id: string): Promise<boolean> => {
    if (held.has(id)) return true;
    const isOurs = await lock(id);
    if (isOurs) held.add(id);
    return isOurs;
  };
  // The document that the page begins with goes on in the tab's own record.
  if (own !== null && (await hold(own))) records.set(0, own);

  const claim = (document: number): string => {
    const id = records.get(document) ?? newId();
    if (!records.has(document)) {
      records.set(document, id);
      void hold(id);
    }
    remember(tab, id);
    return id;
  };

  const setAside = async (record: SavedRecord, sentence: string) => {
    records.delete(0);
    await database?.put('sessions', { ...record, aside: sentence }).catch(() => undefined);
  };

  return {
    database,
    hold,
    holds: (id) => held.has(id),
    recordOf: (document) => records.get(document) ?? null,
    assign: (document, id) => {
      records.set(document, id);
      remember(tab, id);
    },
    restore: async () => {
      if (!database) return { kind: 'missing', sentence: MISSING };
      try {
        const all = await database.getAll('sessions');
        const kept = all.filter(({ aside, deletedAt }) => !aside && deletedAt === undefined);
        const record = kept.find(({ id }) => id === own) ?? kept.sort(latestFirst)[0];
        // Whatever was set aside or deleted stays as it is.
        if (record?.id !== own) records.delete(0);
        if (!record) return { kind: 'none' };
        const decoded = decodeEnvelope(record.document, 'saved session', models);
        if (decoded.ok) {
          return { kind: 'session', session: decoded.session, savedAt: record.savedAt };
        }
        await setAside(record, decoded.sentence);
        return { kind: 'unreadable', sentence: decoded.sentence };
      } catch {
        return { kind: 'missing', sentence: MISSING };
      }
    },
    save: async (session, document) => {
      if (!database) return notSaved('missing');
      const savedAt = Date.now();
      const record = {
        id: claim(document),
        title: session.title,
        savedAt,
        document: envelope(session),
      };
      try {
        const transaction = database.transaction('sessions', 'readwrite');
        // A full disk may let the request pass and abort the transaction after it.
        await Promise.all([transaction.store.put(record), transaction.done]);
        return { ok: true, savedAt };
      } catch (error) {
        return notSaved((error as Error).name === 'QuotaExceededError' ? 'full' : 'failed');
      }
    },
  };
}
