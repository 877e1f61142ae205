/** Parts of pages that are not there yet, and the wait for them: nothing half done is printed. */
import type { Session } from '../../session/types';
import type { Darkroom } from '../darkroom/useDarkroom';
import { page as said } from '../words/page.en';

/** Attributes of what stands in the place of a part that is being worked out, or could not be. */
export const IS_PENDING = { 'data-pending': '' } as const;
export const HAS_FAILED = { 'data-failed': '' } as const;

/** What puts the pages on paper is given. */
export interface ToPaper {
  readonly session: Session;
  readonly darkroom: Darkroom;
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/** Between two looks, milliseconds. */
const LOOK_AGAIN = 100;

/** The pages once every part of them is there. @throws when one could not be made; AbortError on the signal. */
export async function wholePages(signal: AbortSignal): Promise<HTMLElement[]> {
  for (;;) {
    signal.throwIfAborted();
    if (document.querySelector('.paper [data-failed]')) throw new Error(said.partMissing);
    if (!document.querySelector('.paper [data-pending]'))
      return [...document.querySelectorAll<HTMLElement>('.paper')];
    await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN));
  }
}
