/** Saves as the user works: soon after each change, not within a drag, and when the page goes. */
import type { Saved, SessionStorage } from './storage';
import type { SessionStore } from './store';
import type { Session } from './types';

export interface AutosaveOptions {
  /** Told the outcome of every save, for the banner and for "Saved at 14:02". */
  readonly onSaved: (saved: Saved) => void;
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
  { onSaved, page, delay = USUAL_DELAY }: AutosaveOptions,
): Autosave {
  let saved: Session = store.getState().session;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** Saves follow one another, so that an older session never lands on a newer one. */
  let last: Promise<void> = Promise.resolve();

  const save = async () => {
    const { session } = store.getState();
    if (session === saved) return;
    const outcome = await storage.save(session);
    if (outcome.ok) saved = session;
    onSaved(outcome);
  };
  const flush = () => {
    clearTimeout(timer);
    last = last.then(save);
    return last;
  };
  const flushNow = () => void flush();
  const unsubscribe = store.subscribe(({ session, isDragging }) => {
    clearTimeout(timer);
    if (!isDragging && session !== saved) timer = setTimeout(flushNow, delay);
  });
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
