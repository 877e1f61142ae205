/** A session as a text file: JSON that a person can read and mend. */
import type { Models } from '../models/types';
import { type Carrier, type Decoded, decodeEnvelope, envelope, failed } from './decode';
import type { Session } from './types';

export const FILE_EXTENSION = '.standpoint.json';
export const FILE_TYPE = 'application/json';

/** Characters. A session is a few kilobytes, and less than this with every text and list at its longest. */
export const LARGEST_FILE = 4_000_000;

export const encodeFile = (session: Session): string =>
  `${JSON.stringify(envelope(session), null, 2)}\n`;

/**
 * Line at which JSON text breaks off, from 1, or null where the engine does not say: engines
 * name a position, a line, or the end of the text, each in its own words.
 */
function brokenLine(text: string, message: string): number | null {
  const line = /line (\d+)/.exec(message)?.[1];
  if (line !== undefined) return Number(line);
  const position = /position (\d+)/.exec(message)?.[1];
  if (position !== undefined) return text.slice(0, Number(position)).split('\n').length;
  return /end of|EOF|unterminated/i.test(message) ? text.trimEnd().split('\n').length : null;
}

/** A file's text (or a link's) back to a session. A fault names the line or the field. */
export function decodeText(text: string, carrier: Carrier, models: Models): Decoded {
  if (text.length > LARGEST_FILE) {
    return failed('too-large', `This ${carrier} is too large to be a session.`);
  }
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const line = brokenLine(text, (error as Error).message);
    return failed(
      'damaged',
      line === null ? `This ${carrier} is damaged.` : `This ${carrier} is damaged at line ${line}.`,
    );
  }
  return decodeEnvelope(value, carrier, models);
}

export const decodeFile = (text: string, models: Models): Decoded =>
  decodeText(text, 'file', models);
