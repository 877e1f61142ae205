/**
 * The one document in use and its history. Sessions are immutable, so a step of the history is
 * the session after it with the words for it; a drag is one step however often it moves.
 */
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Action } from './actions/action';
import type { ActionContext } from './follow';
import type { Session } from './types';

/** A session and how it came about. */
interface Step {
  readonly session: Session;
  /** Of the step that made it, null for the first. */
  readonly label: string | null;
  readonly document: number;
}

export interface SessionState {
  readonly session: Session;
  /** Which document it is: 0, until another one is opened over it. Undo goes back to the former one. */
  readonly document: number;
  /** What undo would take back and redo would bring again, in words; null when there is nothing. */
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
  /** A drag is going on: its end is worth saving, its middle is not. */
  readonly isDragging: boolean;
}

/** One drag: any number of changes that undo takes back at once. */
export interface Drag {
  act<Args>(action: Action<Args>, args: Args): void;
  end(): void;
  /** Back to where it began, with nothing to redo. */
  cancel(): void;
}

export interface SessionStore extends StoreApi<SessionState> {
  /** One change, one step. */
  act<Args>(action: Action<Args>, args: Args): void;
  /** Starts a drag; another one that still goes on ends first. */
  drag(): Drag;
  undo(): void;
  redo(): void;
  /** Another document (a file, a link) as one step that can be undone; nothing when it is the same session. */
  open(session: Session, label: string): void;
  /** The same even for an equal session. Gives the document's number. */
  openAnother(session: Session, label: string): number;
}

/** Steps kept: hours of work, and well below a megabyte. */
const LONGEST_HISTORY = 500;

const isSame = (a: Session, b: Session): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * A store that starts with `initial`. `context` gives what actions need beside the document, as
 * it is when they act.
 */
export function createSessionStore(initial: Session, context: () => ActionContext): SessionStore {
  let past: readonly Step[] = [];
  let present: Step = { session: initial, label: null, document: 0 };
  let future: readonly Step[] = [];
  let dragged: Drag | null = null;
  let documents = 1;

  const state = (): SessionState => ({
    session: present.session,
    document: present.document,
    undoLabel: past.length > 0 ? present.label : null,
    redoLabel: future[0]?.label ?? null,
    isDragging: dragged !== null,
  });
  const store = createStore<SessionState>(state);
  const publish = () => store.setState(state(), true);

  const push = (step: Step) => {
    past = [...past, present].slice(-LONGEST_HISTORY);
    present = step;
    future = [];
  };

  const stepOf = <Args>({ edit, label }: Action<Args>, args: Args): Step | null => {
    const around = context();
    const session = edit(present.session, args, around);
    if (session === present.session) return null;
    return { session, label: label(session, args, around), document: present.document };
  };

  const endDrag = () => {
    dragged?.end();
  };

  const openAnother = (session: Session, label: string): number => {
    endDrag();
    const document = documents++;
    push({ session, label, document });
    publish();
    return document;
  };

  return {
    ...store,
    openAnother,
    act: (action, args) => {
      endDrag();
      const step = stepOf(action, args);
      if (step === null) return;
      push(step);
      publish();
    },
    drag: () => {
      endDrag();
      const before = { past, present, future };
      const drag: Drag = {
        act: (action, args) => {
          if (dragged !== drag) return;
          const step = stepOf(action, args);
          if (step === null) return;
          if (past === before.past) push(step);
          else present = step;
          publish();
        },
        end: () => {
          if (dragged !== drag) return;
          dragged = null;
          // A drag that came back to where it began is no step.
          if (isSame(present.session, before.present.session)) ({ past, present, future } = before);
          publish();
        },
        cancel: () => {
          if (dragged !== drag) return;
          dragged = null;
          ({ past, present, future } = before);
          publish();
        },
      };
      dragged = drag;
      publish();
      return drag;
    },
    undo: () => {
      endDrag();
      const before = past.at(-1);
      if (before === undefined) return;
      future = [present, ...future];
      present = before;
      past = past.slice(0, -1);
      publish();
    },
    redo: () => {
      endDrag();
      const [after, ...rest] = future;
      if (after === undefined) return;
      past = [...past, present];
      present = after;
      future = rest;
      publish();
    },
    open: (session, label) => {
      endDrag();
      if (!isSame(session, present.session)) openAnother(session, label);
    },
  };
}
