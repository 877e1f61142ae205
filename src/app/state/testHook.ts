/** What browser tests reach into, present only when the address carries ?test. */
import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import type { SessionStore } from '../../session/store';
import { LANDMARKS } from '../../sitter/types';
import type { Look, StageHandle } from '../../stage';
import type { Shown } from '../compare/shown';

export interface TestHook {
  readonly store: SessionStore;
  readonly models: Models;
  readonly cast: Cast;
  readonly pictures: readonly Shown[];
  readonly stage: StageHandle | null;
}

declare global {
  interface Window {
    standpoint?: TestHook;
  }
}

const parameters = new URLSearchParams(window.location.search);

export function exposeForTests(hook: TestHook): void {
  if (parameters.has('test')) window.standpoint = hook;
}

/** ?test=landmarks shows the landmarks of the very mesh instead of the picture. */
export function lookForTests(): { look?: Look; landmarks?: typeof LANDMARKS } {
  return parameters.get('test') === 'landmarks' ? { look: 'landmarks', landmarks: LANDMARKS } : {};
}
