/** A file that somebody brings: a session's, or a still that carries one. */
import { findState } from '../../handout/metadata/find';
import type { Models } from '../../models/types';
import type { Action } from '../../session/actions/action';
import { hangStill } from '../../session/actions/still';
import type { Decoded } from '../../session/decode';
import { decodeFile, LARGEST_FILE } from '../../session/file';
import { unpackSession } from '../../session/pack';
import type { Session } from '../../session/types';
import { words } from '../words';
import { stills as said } from '../words/stills.en';

/** What a file holds, or a sentence on why nothing was taken from it. */
export type FileContent =
  | { readonly holds: 'session' | 'pictures'; readonly session: Session; readonly still: boolean }
  | { readonly holds: 'nothing'; readonly sentence: string };

/** UTF-8 has up to four bytes a character: a longer file is no session, and its rest need not be read. */
const ENOUGH = 4 * (LARGEST_FILE + 1);

const nothing = (sentence: string): FileContent => ({ holds: 'nothing', sentence });

const contentOf = (decoded: Decoded, holds: 'session' | 'pictures', still: boolean): FileContent =>
  decoded.ok ? { holds, session: decoded.session, still } : nothing(decoded.sentence);

/** Never throws. */
export async function readFile(file: Blob, models: Models): Promise<FileContent> {
  try {
    const found = await findState(file);
    switch (found.is) {
      case 'state': {
        const { packed, holds } = found.state;
        return contentOf(unpackSession(packed, 'picture', models), holds, true);
      }
      case 'bare':
        return nothing(said.foreign);
      case 'damaged':
        return nothing(said.damaged);
      case 'no-picture':
        return /^(image|video|audio)\//.test(file.type)
          ? nothing(said.foreign)
          : contentOf(decodeFile(await file.slice(0, ENOUGH).text(), models), 'session', false);
    }
  } catch {
    return nothing(words.head.fileUnread);
  }
}

/** What opening changes. */
export interface Opening {
  readonly models: Models;
  readonly open: (session: Session, label: string) => void;
  readonly act: <Args>(action: Action<Args>, args: Args) => void;
  readonly onNotice: (sentence: string) => void;
}

/**
 * Opens a file as one step that undo takes back: a session in the place of the one in use, a still's
 * pictures on its wall. Whatever cannot be opened changes nothing and says why.
 * @returns what is told of it, null when nothing was opened
 */
export async function openFile(file: Blob, opening: Opening): Promise<string | null> {
  const content = await readFile(file, opening.models);
  if (content.holds === 'nothing') {
    opening.onNotice(content.sentence);
    return null;
  }
  const { session, still } = content;
  const label = still ? said.opened : words.head.fileOpened;
  if (content.holds === 'session') opening.open(session, label);
  else {
    opening.act(hangStill, { still: session });
    window.location.hash = 'compare';
  }
  return label;
}
