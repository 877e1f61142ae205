import type { SessionStorage } from '../../session/storage';
import type { SessionStore } from '../../session/store';
import type { Session } from '../../session/types';

/**
 * Opens a kept session as a step that undo takes back, and goes on writing its record; while another tab
 * writes that, what is opened becomes a session of its own.
 */
export async function openKept(
  store: SessionStore,
  storage: SessionStorage,
  id: string,
  session: Session,
  label: string,
): Promise<void> {
  const isOurs = await storage.hold(id);
  const document = store.openAnother(session, label);
  if (isOurs) storage.assign(document, id);
}
