/** A session as short text: deflated JSON in base64url, with a checksum. Links and pictures carry it. */
import { strFromU8, strToU8, unzlibSync, zlibSync } from 'fflate';
import type { Models } from '../models/types';
import { type Carrier, type Decoded, envelope, failed } from './decode';
import { decodeText } from './file';
import type { Session } from './types';
import { USUAL } from './usual';

/** Characters of a fragment that messengers and browsers still pass on. */
export const LONGEST_PACKED = 32_000;
/** Bytes of JSON; a short text must not unpack to more. */
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

/** What of a session is packed: all but the logo, and nothing that is as usual. */
function packed(session: Session): object {
  const { author } = session.handout;
  const parts = { ...session, handout: { ...session.handout, author: { ...author, logo: null } } };
  const usual = (name: string): boolean =>
    name in USUAL &&
    JSON.stringify(parts[name as keyof typeof USUAL]) ===
      JSON.stringify(USUAL[name as keyof typeof USUAL]);
  return Object.fromEntries(Object.entries(parts).filter(([name]) => !usual(name)));
}

/** Null when it would be longer than `LONGEST_PACKED`. */
export function packSession(session: Session): string | null {
  const json = strToU8(JSON.stringify(envelope(packed(session))));
  const text = toBase64Url(zlibSync(json, { level: 9 }));
  return json.length > LARGEST_CONTENT || text.length > LONGEST_PACKED ? null : text;
}

/** Such a text back to a session. */
export function unpackSession(text: string, carrier: Carrier, models: Models): Decoded {
  if (text.length > LONGEST_PACKED) return failed('too-large', `This ${carrier} is too long.`);
  const damaged = failed('damaged', `This ${carrier} is damaged.`);
  let bytes: Uint8Array;
  let stream: Uint8Array;
  try {
    stream = fromBase64Url(text);
    if (stream.length < SHORTEST_STREAM) return damaged;
    // One byte over the limit shows that there is more.
    bytes = unzlibSync(stream, { out: new Uint8Array(LARGEST_CONTENT + 1) });
  } catch {
    return damaged;
  }
  if (bytes.length > LARGEST_CONTENT) return failed('too-large', `This ${carrier} holds too much.`);
  const tail = stream.slice(-4);
  const checksum = new DataView(tail.buffer, tail.byteOffset, tail.length).getUint32(0);
  if (checksum !== adler32(bytes)) return damaged;
  return decodeText(strFromU8(bytes), carrier, models);
}
