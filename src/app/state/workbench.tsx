import { createContext, type ReactNode, useContext } from 'react';
import type { Models } from '../../models/types';
import type { Action } from '../../session/actions/action';
import type { SessionState, SessionStore } from '../../session/store';
import type { Session } from '../../session/types';
import type { Shaping } from './shaping';

/** What every part of the page works with. */
export interface Workbench {
  readonly session: Session;
  readonly state: SessionState;
  readonly models: Models;
  readonly store: SessionStore;
  /** Shows at once whom a slider shapes. */
  readonly shaping: Shaping;
  readonly act: <Args>(action: Action<Args>, args: Args) => void;
}

const Context = createContext<Workbench | null>(null);

export function WorkbenchProvider(props: { value: Workbench; children: ReactNode }) {
  return <Context value={props.value}>{props.children}</Context>;
}

export function useWorkbench(): Workbench {
  const workbench = useContext(Context);
  if (!workbench) throw new Error('useWorkbench is used outside its provider.');
  return workbench;
}
