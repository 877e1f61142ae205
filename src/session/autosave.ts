/** Saves as the user works: soon after each change, not within a drag, and when the page goes. */
import type { Saved, SessionStorage } from './storage';
import type { SessionState, SessionStore } from './store';
import type { Session } from './types';

export interface AutosaveOptions {
  /** Told the outcome of every save, for the banner and for "Saved at 14:02". */
  readonly onSaved: (saved: Saved) => void;
  /** What is kept already, or not worth keeping. */
  readonly saved: Session;
  /** Where the page says that it goes: window. */
  readonly page: Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;
  /** Pause after a change, milliseconds. */
  readonly delay?: number;
}

export interface Autosave {
  /** Saves now what is not saved yet. */
  flush(): Promise<void>;
  stop(): void;
}

const USUAL_DELAY = 400;
/** A hidden page may be closed without a further word. */
const GOING = ['pagehide', 'visibilitychange'] as const;

export function autosave(
  store: SessionStore,
  storage: Pick<SessionStorage, 'save'>,
  { onSaved, page, delay = USUAL_DELAY, ...options }: AutosaveOptions,
): Autosave {
  let seen = store.getState();
  let { saved } = options;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** Saves follow one another, so that an older session never lands on a newer one. */
  let last: Promise<void> = Promise.resolve();

  const save = async ({ session, document }: SessionState) => {
    if (session === saved) return;
    const outcome = await storage.save(session, document);
    if (outcome.ok) saved = session;
    onSaved(outcome);
  };
  const flush = () => {
    clearTimeout(timer);
    last = last.then(() => save(store.getState()));
    return last;
  };
  const flushNow = () => void flush();
  const saveSoon = ({ isDragging, session }: SessionState) => {
    clearTimeout(timer);
    if (!isDragging && session !== saved) timer = setTimeout(flushNow, delay);
  };
  const unsubscribe = store.subscribe((state) => {
    const before = seen;
    seen = state;
    // What was not saved yet belongs to the document that is left.
    if (state.document !== before.document) last = last.then(() => save(before));
    saveSoon(state);
  });
  saveSoon(seen);
  for (const event of GOING) page.addEventListener(event, flushNow);
  return {
    flush,
    stop: () => {
      clearTimeout(timer);
      unsubscribe();
      for (const event of GOING) page.removeEventListener(event, flushNow);
    },
  };
}
