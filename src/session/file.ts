/** A session as a text file: JSON that a person can read and mend. */
import type { Models } from '../models/types';
import { type Carrier, type Decoded, decodeEnvelope, envelope, failed } from './decode';
import { jsonFaultLine } from './json-fault';
import type { Session } from './types';

export const FILE_EXTENSION = '.standpoint.json';
export const FILE_TYPE = 'application/json';

/** Characters. A session is a few kilobytes, and less than this with every text and list at its longest. */
export const LARGEST_FILE = 4_000_000;

export const encodeFile = (session: Session): string =>
  `${JSON.stringify(envelope(session), null, 2)}\n`;

/** Text without the byte order mark that some editors put before it. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** That JSON text is damaged, and where. */
export function damagedAt(text: string, carrier: Carrier): string {
  const line = jsonFaultLine(text);
  return line === null
    ? `This ${carrier} is damaged.`
    : `This ${carrier} is damaged at line ${line}.`;
}

/** A file's text (or a link's) back to a session. A fault names the line or the field. */
export function decodeText(text: string, carrier: Carrier, models: Models): Decoded {
  if (text.length > LARGEST_FILE) {
    return failed('too-large', `This ${carrier} is too large to be a session.`);
  }
  const json = withoutMark(text);
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return failed('damaged', damagedAt(json, carrier));
  }
  return decodeEnvelope(value, carrier, models);
}

export const decodeFile = (text: string, models: Models): Decoded =>
  decodeText(text, 'file', models);
