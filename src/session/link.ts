/** A session inside an address. */
import type { Models } from '../models/types';
import { type Decoded, failed } from './decode';
import { LONGEST_PACKED, packSession, unpackSession } from './pack';
import type { Session } from './types';

const KEY = 'session=';
export const LONGEST_LINK = LONGEST_PACKED;

export type Linked =
  | { readonly ok: true; readonly fragment: string }
  | { readonly ok: false; readonly sentence: string };

/** The fragment of an address ("#session=..."), or why it would be too long. */
export function encodeLink(session: Session): Linked {
  const packed = packSession(session);
  const fragment = `#${KEY}${packed}`;
  if (packed === null || fragment.length > LONGEST_LINK) {
    return { ok: false, sentence: 'The session holds too much for a link. Save a file instead.' };
  }
  return { ok: true, fragment };
}

/** Does this fragment mean to carry a session? */
export const isLink = (fragment: string): boolean => fragment.replace(/^#/, '').startsWith(KEY);

/** A fragment back to a session. */
export function decodeLink(fragment: string, models: Models): Decoded {
  if (!isLink(fragment)) return failed('not-a-session', 'This link holds no session.');
  const text = fragment.replace(/^#/, '');
  if (text.length > LONGEST_LINK) return failed('too-large', 'This link is too long.');
  return unpackSession(text.slice(KEY.length), 'link', models);
}
