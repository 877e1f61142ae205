/**
 * The user's own sessions in the browser's store: listed, renamed, duplicated, deleted and brought back.
 * Every change of a record is one transaction, so that it is done wholly or not at all.
 * @throws DOMException as IndexedDB does: QuotaExceededError when the disk is full.
 */
import type { Models } from '../models/types';
import { type Database, latestFirst, newId, type SavedRecord } from './database';
import { type Decoded, decodeEnvelope, envelope, failed } from './decode';
import { TITLE_LENGTH } from './limits';
import { lockOf } from './storage';

/** A deleted session can be brought back for so long, milliseconds: 30 days. */
export const KEPT_DELETED = 30 * 24 * 60 * 60 * 1000;

export interface Listed {
  readonly id: string;
  readonly title: string;
  readonly savedAt: number;
  /** A small picture as a data address, or null. */
  readonly picture: string | null;
  /** Why it could not be read, or null. */
  readonly aside: string | null;
  readonly deletedAt: number | null;
  /** A tab has it open. */
  readonly isOpen: boolean;
}

/** Records that a tab writes; none are known where the browser has no locks. */
async function openRecords(): Promise<ReadonlySet<string>> {
  const locks = await globalThis.navigator?.locks?.query().catch(() => null);
  return new Set(locks?.held?.map(({ name }) => name ?? ''));
}

/** All sessions, the latest first. */
export async function listSessions(database: Database): Promise<readonly Listed[]> {
  const transaction = database.transaction(['sessions', 'pictures']);
  const pictures = transaction.objectStore('pictures');
  const [records, keys, addresses, open] = await Promise.all([
    transaction.objectStore('sessions').getAll(),
    pictures.getAllKeys(),
    pictures.getAll(),
    openRecords(),
  ]);
  const pictureOf = new Map(keys.map((key, i) => [key, addresses[i]]));
  return records.sort(latestFirst).map(({ id, title, savedAt, aside, deletedAt }) => ({
    id,
    title,
    savedAt,
    picture: pictureOf.get(id) ?? null,
    aside: aside ?? null,
    deletedAt: deletedAt ?? null,
    isOpen: open.has(lockOf(id)),
  }));
}

/** A session to be opened, renamed or copied. */
export async function readSession(
  database: Database,
  id: string,
  models: Models,
): Promise<Decoded> {
  const record = await database.get('sessions', id);
  if (!record) return failed('not-a-session', 'This saved session is gone.');
  return decodeEnvelope(record.document, 'saved session', models);
}

/** A record's content as it stands, whether it can be read or not, as the text of a file. */
export async function rawSession(database: Database, id: string): Promise<string> {
  const record = await database.get('sessions', id);
  return `${JSON.stringify(record?.document ?? null, null, 2)}\n`;
}

async function change(
  database: Database,
  id: string,
  to: (record: SavedRecord) => SavedRecord,
): Promise<void> {
  const transaction = database.transaction('sessions', 'readwrite');
  const record = await transaction.store.get(id);
  await Promise.all([record && transaction.store.put(to(record)), transaction.done]);
}

/** Gives a session another title; what is wrong with it, if it cannot be read. */
export async function renameSession(
  database: Database,
  id: string,
  title: string,
  models: Models,
): Promise<string | null> {
  const decoded = await readSession(database, id, models);
  if (!decoded.ok) return decoded.sentence;
  const document = envelope({ ...decoded.session, title });
  await change(database, id, (record) => ({ ...record, title, document }));
  return null;
}

/** Copies a session; `title` names the copy. What is wrong with it, if it cannot be read. */
export async function duplicateSession(
  database: Database,
  id: string,
  title: (of: string) => string,
  models: Models,
): Promise<string | null> {
  const decoded = await readSession(database, id, models);
  if (!decoded.ok) return decoded.sentence;
  const copy = {
    ...decoded.session,
    title: title(decoded.session.title).slice(0, TITLE_LENGTH),
  };
  const picture = await database.get('pictures', id);
  await addSessions(database, [
    { title: copy.title, savedAt: Date.now(), document: envelope(copy), picture },
  ]);
  return null;
}

/** What a new record is made from. */
export interface Added extends Omit<SavedRecord, 'id'> {
  readonly picture?: string | undefined;
}

/** Adds records: all of them or, when one fails, none. */
export async function addSessions(database: Database, added: readonly Added[]): Promise<void> {
  const transaction = database.transaction(['sessions', 'pictures'], 'readwrite');
  const puts = added.flatMap(({ picture, ...record }) => {
    const id = newId();
    return [
      transaction.objectStore('sessions').put({ id, ...record }),
      ...(picture === undefined ? [] : [transaction.objectStore('pictures').put(picture, id)]),
    ];
  });
  await Promise.all([...puts, transaction.done]);
}

/** Deletes a session so that it can be brought back. */
export const deleteSession = (database: Database, id: string): Promise<void> =>
  change(database, id, (record) => ({ ...record, deletedAt: Date.now() }));

export const bringBack = (database: Database, id: string): Promise<void> =>
  change(database, id, ({ deletedAt: _, ...record }) => record);

/** Clears away for good what was deleted before a time, milliseconds since 1970. */
export async function clearDeleted(database: Database, before: number): Promise<void> {
  const transaction = database.transaction(['sessions', 'pictures'], 'readwrite');
  const records = await transaction.objectStore('sessions').getAll();
  const gone = records.filter(({ deletedAt }) => deletedAt !== undefined && deletedAt < before);
  await Promise.all([
    ...gone.flatMap(({ id }) => [
      transaction.objectStore('sessions').delete(id),
      transaction.objectStore('pictures').delete(id),
    ]),
    transaction.done,
  ]);
}

/** The small picture shown with a session. */
export async function keepPicture(database: Database, id: string, picture: string): Promise<void> {
  await database.put('pictures', picture, id);
}
