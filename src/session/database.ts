/** The browser's own store of sessions, and what a record of it holds. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { randomHex } from './random';

export interface SavedRecord {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly document: unknown;
  /** Why it could not be read, once that was found. */
  readonly aside?: string;
  /** When it was deleted, milliseconds since 1970; it can be brought back until it is cleared away. */
  readonly deletedAt?: number;
}

interface Schema extends DBSchema {
  sessions: { key: string; value: SavedRecord };
  /** Small pictures of what hung last, as data addresses, by record. */
  pictures: { key: string; value: string };
}

export type Database = IDBPDatabase<Schema>;

const NAME = 'standpoint';

/** One step for each version, in order; what is there stays. Version 2 added the pictures. */
const UPGRADES: readonly ((database: Database) => void)[] = [
  (database) => {
    database.createObjectStore('sessions', { keyPath: 'id' });
  },
  (database) => {
    database.createObjectStore('pictures');
  },
];

/** Null where the browser keeps nothing. */
export async function openDatabase(): Promise<Database | null> {
  try {
    return await openDB<Schema>(NAME, UPGRADES.length, {
      upgrade: (database, from) => {
        for (const step of UPGRADES.slice(from)) step(database);
      },
      blocking: (_current, _blocked, event) => {
        (event.target as IDBDatabase).close();
      },
    });
  } catch {
    return null;
  }
}

export const newId = (): string => randomHex(12);

export const latestFirst = (a: SavedRecord, b: SavedRecord): number => b.savedAt - a.savedAt;
