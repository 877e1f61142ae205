/** How a page begins: the tab's own session, else the last one, else the demo; a link comes on top. */
import { models } from '../../models/browser';
import { type Autosave, autosave } from '../../session/autosave';
import { demoSession } from '../../session/demo';
import type { ActionContext } from '../../session/follow';
import { openStorage, type Saved, type SessionStorage } from '../../session/storage';
import { createSessionStore, type SessionStore } from '../../session/store';
import type { Session } from '../../session/types';
import { linkCodec } from '../headOnDemand';
import { words } from '../words';

export interface Started {
  readonly store: SessionStore;
  readonly storage: SessionStorage;
  readonly notices: readonly string[];
  readonly savedAt: number | null;
  /** Opens another session as a step that undo takes back; what was kept so far stays as it is. */
  readonly open: (session: Session, label: string) => void;
  /** Keeps the session from now on. */
  readonly keep: (onSaved: (saved: Saved) => void) => Autosave;
}

const tabMemory = (): Storage | null => {
  try {
    return sessionStorage;
  } catch {
    return null; // a browser may refuse all storage
  }
};

export async function start(context: () => ActionContext): Promise<Started> {
  const storage = await openStorage(models, tabMemory());
  const restored = await storage.restore();
  const notices: string[] = [];
  if (restored.kind === 'unreadable' || restored.kind === 'missing')
    notices.push(restored.sentence);
  const initial = restored.kind === 'session' ? restored.session : demoSession();
  const store = createSessionStore(initial, context);
  const saving = (onSaved: (saved: Saved) => void) =>
    autosave(store, storage, { onSaved, page: window, saved: initial });
  const { open } = store;
  const sentence = await openLinked(open);
  if (sentence) notices.push(sentence);
  return {
    store,
    storage,
    open,
    notices,
    savedAt: restored.kind === 'session' ? restored.savedAt : null,
    keep: saving,
  };
}

/**
 * Opens the session that the address carries, as a step that undo takes back, and clears the address so
 * that a reload shows the work done since. Returns what is wrong with the link, if anything is.
 */
export async function openLinked(open: Started['open']): Promise<string | null> {
  const { hash } = window.location;
  if (hash === '') return null;
  const { decodeLink, isLink } = await linkCodec();
  if (!isLink(hash)) return null;
  history.replaceState(null, '', window.location.pathname + window.location.search);
  const decoded = decodeLink(hash, models);
  if (!decoded.ok) return decoded.sentence;
  open(decoded.session, words.head.linkOpened);
  return null;
}
