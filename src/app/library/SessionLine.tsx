import type { ReactNode } from 'react';
import type { Listed } from '../../session/library';
import { TITLE_LENGTH } from '../../session/limits';
import { TextValue } from '../controls/TextValue';
import { Do } from '../controls/words';
import { COMMA } from '../words/marks';
import { sessions as said } from '../words/sessions.en';

const time = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
export const when = (at: number): string => time.format(at);

/** The frame of a line: the session's picture, what it is called, and what can be done with it. */
function Line(props: { listed: Listed; name: ReactNode; note: ReactNode; children?: ReactNode }) {
  const { picture, title } = props.listed;
  return (
    <li className="session-line">
      <div className="session-picture">
        {picture !== null && <img src={picture} alt={said.picture(title)} />}
      </div>
      <div>
        <p className="session-name">{props.name}</p>
        <p className="slip-note">{props.note}</p>
        <div className="row">{props.children}</div>
      </div>
    </li>
  );
}

/** A session that can be opened, renamed, copied and deleted. */
export function SessionLine(props: {
  listed: Listed;
  open: 'here' | 'elsewhere' | null;
  onOpen: () => void;
  onRename: (title: string) => void;
  onDuplicate: () => void;
  onDelete: () => void;
}) {
  const { listed, open } = props;
  const { title, savedAt } = listed;
  return (
    <Line
      listed={listed}
      name={
        <TextValue
          label={said.name}
          text={title}
          longest={TITLE_LENGTH}
          onCommit={props.onRename}
        />
      }
      note={
        <>
          {said.saved(when(savedAt))}
          {open !== null && (
            <>
              {COMMA} {open === 'here' ? said.openHere : said.openElsewhere}
            </>
          )}
        </>
      }
    >
      {open !== 'here' && (
        <Do
          aria-label={(open === 'elsewhere' ? said.openCopyOf : said.openOf)(title)}
          onPress={props.onOpen}
        >
          {open === 'elsewhere' ? said.openCopy : said.open}
        </Do>
      )}
      <Do aria-label={said.duplicateOf(title)} onPress={props.onDuplicate}>
        {said.duplicate}
      </Do>
      {open === null && (
        <Do aria-label={said.removeOf(title)} onPress={props.onDelete}>
          {said.remove}
        </Do>
      )}
    </Line>
  );
}

/** A session just deleted, in its place, until the sheet is closed. */
export function RemovedLine(props: { listed: Listed; onUndo: () => void }) {
  const { title } = props.listed;
  return (
    <li className="session-line removed">
      <p role="status">{said.removed(title)}</p>
      <Do autoFocus aria-label={said.undoOf(title)} onPress={props.onUndo}>
        {said.undo}
      </Do>
    </li>
  );
}

/** One deleted earlier. */
export function DeletedLine(props: { listed: Listed; onBringBack: () => void }) {
  const { title, deletedAt } = props.listed;
  return (
    <Line listed={props.listed} name={title} note={said.deleted(when(deletedAt ?? 0))}>
      <Do aria-label={said.bringBackOf(title)} onPress={props.onBringBack}>
        {said.bringBack}
      </Do>
    </Line>
  );
}

/** One that cannot be read: its content can be saved as it stands. */
export function AsideLine(props: { listed: Listed; onRaw: () => void; onDelete: () => void }) {
  const { title, aside } = props.listed;
  return (
    <Line listed={props.listed} name={title} note={`${said.unreadable}. ${aside}`}>
      <Do aria-label={said.rawOf(title)} onPress={props.onRaw}>
        {said.raw}
      </Do>
      <Do aria-label={said.removeOf(title)} onPress={props.onDelete}>
        {said.remove}
      </Do>
    </Line>
  );
}
