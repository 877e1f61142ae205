/** A session inside an address: deflated JSON in base64url, with a checksum. */
import { strFromU8, strToU8, unzlibSync, zlibSync } from 'fflate';
import type { Models } from '../models/types';
import { type Decoded, envelope, failed } from './decode';
import { decodeText } from './file';
import type { Session } from './types';
import { USUAL } from './usual';

const KEY = 'session=';
/** Characters of a fragment that messengers and browsers still pass on. */
export const LONGEST_LINK = 32_000;
/** Bytes of JSON in a link; a small link must not unpack to more. */
const LARGEST_CONTENT = 256_000;

/** Two bytes of header, an empty block, four of checksum: nothing shorter is a zlib stream. */
const SHORTEST_STREAM = 8;

const ADLER_PRIME = 65521;

/** Adler-32, which ends every zlib stream (RFC 1950); fflate writes it but does not check it. */
function adler32(bytes: Uint8Array): number {
  let a = 1;
  let b = 0;
  for (const byte of bytes) {
    a = (a + byte) % ADLER_PRIME;
    b = (b + a) % ADLER_PRIME;
  }
  return b * 65536 + a;
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromBase64Url(text: string): Uint8Array {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}

export type Linked =
  | { readonly ok: true; readonly fragment: string }
  | { readonly ok: false; readonly sentence: string };

/** What of a session goes into a link: all but the logo, and nothing that is as usual. */
function linked(session: Session): object {
  const { author } = session.handout;
  const parts = { ...session, handout: { ...session.handout, author: { ...author, logo: null } } };
  const usual = (name: string): boolean =>
    name in USUAL &&
    JSON.stringify(parts[name as keyof typeof USUAL]) ===
      JSON.stringify(USUAL[name as keyof typeof USUAL]);
  return Object.fromEntries(Object.entries(parts).filter(([name]) => !usual(name)));
}

/** The fragment of an address ("#session=..."), or why it would be too long. */
export function encodeLink(session: Session): Linked {
  const json = strToU8(JSON.stringify(envelope(linked(session))));
  const fragment = `#${KEY}${toBase64Url(zlibSync(json, { level: 9 }))}`;
  if (json.length > LARGEST_CONTENT || fragment.length > LONGEST_LINK) {
    return { ok: false, sentence: 'The session holds too much for a link. Save a file instead.' };
  }
  return { ok: true, fragment };
}

/** Does this fragment mean to carry a session? */
export const isLink = (fragment: string): boolean => fragment.replace(/^#/, '').startsWith(KEY);

/** A fragment back to a session. */
export function decodeLink(fragment: string, models: Models): Decoded {
  const text = fragment.replace(/^#/, '');
  if (!text.startsWith(KEY)) return failed('not-a-session', 'This link holds no session.');
  if (text.length > LONGEST_LINK) return failed('too-large', 'This link is too long.');
  let bytes: Uint8Array;
  let packed: Uint8Array;
  try {
    packed = fromBase64Url(text.slice(KEY.length));
    if (packed.length < SHORTEST_STREAM) return failed('damaged', 'This link is damaged.');
    // One byte over the limit shows that there is more.
    bytes = unzlibSync(packed, { out: new Uint8Array(LARGEST_CONTENT + 1) });
  } catch {
    return failed('damaged', 'This link is damaged.');
  }
  if (bytes.length > LARGEST_CONTENT) return failed('too-large', 'This link holds too much.');
  const tail = packed.slice(-4);
  const checksum = new DataView(tail.buffer, tail.byteOffset, tail.length).getUint32(0);
  if (checksum !== adler32(bytes)) return failed('damaged', 'This link is damaged.');
  return decodeText(strFromU8(bytes), 'link', models);
}
