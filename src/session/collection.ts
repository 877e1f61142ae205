/**
 * All sessions as one file, and such a file back. One JSON document rather than an archive of many: a session
 * is a few kilobytes, and so the whole can be read, mended and compared as one session can.
 */
import type { Models } from '../models/types';
import { type Database, latestFirst } from './database';
import { decodeEnvelope, envelope, FORMAT } from './decode';
import { damagedAt, LARGEST_FILE, withoutMark } from './file';
import { type Added, addSessions } from './library';
import { isRecord } from './record';
import type { Session } from './types';

export const COLLECTION_FORMAT = 'standpoint-sessions';
export const COLLECTION_EXTENSION = '.standpoints.json';

/** Characters; some thousands of sessions. */
export const LARGEST_COLLECTION = 25 * LARGEST_FILE;

/** Of a small picture's data address. */
const PICTURE_LENGTH = 60_000;
const PICTURE = /^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/;

/** Every session that is not deleted, those that cannot be read included, word for word. */
export async function exportSessions(
  database: Database,
): Promise<{ readonly text: string; readonly count: number }> {
  const [records, keys, addresses] = await Promise.all([
    database.getAll('sessions'),
    database.getAllKeys('pictures'),
    database.getAll('pictures'),
  ]);
  const pictureOf = new Map(keys.map((key, i) => [key, addresses[i]]));
  const sessions = records
    .filter(({ deletedAt }) => deletedAt === undefined)
    .sort(latestFirst)
    .map(({ id, savedAt, document }) => ({ savedAt, document, picture: pictureOf.get(id) }));
  const text = `${JSON.stringify({ format: COLLECTION_FORMAT, sessions }, null, 2)}\n`;
  return { text, count: sessions.length };
}

export interface Imported {
  readonly added: number;
  /** There already, word for word. */
  readonly same: number;
  /** What is wrong with each that was left out, by its place in the file, from 1. */
  readonly wrong: readonly { readonly place: number; readonly sentence: string }[];
}

export type ImportResult =
  | ({ readonly ok: true } & Imported)
  | { readonly ok: false; readonly sentence: string };

const wrong = (sentence: string): ImportResult => ({
  ok: false,
  sentence: `${sentence} Nothing was changed.`,
});

/** The list that a file holds: of a collection, or of one session alone; null when it is neither. */
function entriesOf(value: unknown): readonly unknown[] | null {
  if (!isRecord(value)) return null;
  if (value.format === FORMAT) return [{ document: value }];
  return value.format === COLLECTION_FORMAT && Array.isArray(value.sessions)
    ? value.sessions
    : null;
}

/** When it was saved, unless that cannot be. */
const savedAtOf = (value: unknown, now: number): number =>
  typeof value === 'number' && value >= 0 && value <= now ? value : now;

const pictureOf = (value: unknown): string | undefined =>
  typeof value === 'string' && value.length <= PICTURE_LENGTH && PICTURE.test(value)
    ? value
    : undefined;

/** The same for two sessions that are word for word the same. */
const keyOf = (session: Session): string => JSON.stringify(session);

/**
 * Adds the sessions of a file to those that are there: none is overwritten. What is damaged is left out and
 * told.
 * @throws DOMException as IndexedDB does; nothing is added then.
 */
export async function importSessions(
  database: Database,
  text: string,
  models: Models,
): Promise<ImportResult> {
  if (text.length > LARGEST_COLLECTION) return wrong('This file is too large.');
  const json = withoutMark(text);
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return wrong(damagedAt(json, 'file'));
  }
  const entries = entriesOf(value);
  if (!entries) return wrong('This file holds no sessions.');
  const there = new Set<string>();
  for (const { document, deletedAt } of await database.getAll('sessions')) {
    if (deletedAt !== undefined) continue;
    const decoded = decodeEnvelope(document, 'saved session', models);
    if (decoded.ok) there.add(keyOf(decoded.session));
  }
  const now = Date.now();
  const added: Added[] = [];
  const left: { place: number; sentence: string }[] = [];
  let same = 0;
  for (const [i, entry] of entries.entries()) {
    const held = isRecord(entry) ? entry : {};
    const decoded = decodeEnvelope(held.document, 'saved session', models);
    if (!decoded.ok) {
      left.push({ place: i + 1, sentence: decoded.what });
      continue;
    }
    const { session } = decoded;
    const key = keyOf(session);
    if (there.has(key)) {
      same++;
      continue;
    }
    there.add(key);
    added.push({
      title: session.title,
      savedAt: savedAtOf(held.savedAt, now),
      document: envelope(session),
      picture: pictureOf(held.picture),
    });
  }
  if (added.length > 0) await addSessions(database, added);
  return { ok: true, added: added.length, same, wrong: left };
}
