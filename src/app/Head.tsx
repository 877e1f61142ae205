import { useState } from 'react';
import { FileTrigger, Input, Label, TextField } from 'react-aria-components';
import { resetToDemo, setTitle } from '../session/actions';
import { decodeFile, encodeFile, FILE_EXTENSION, FILE_TYPE } from '../session/file';
import { encodeLink } from '../session/link';
import { Slip } from './controls/Slip';
import { Do } from './controls/words';
import { offerFile } from './state/offerFile';
import type { Started } from './state/start';
import { useWorkbench } from './state/workbench';
import { words } from './words';

const clock = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' });

/** The running head: whose session it is, whether it is kept, and what can be done with the whole. */
export function Head(props: {
  savedAt: number | null;
  open: Started['open'];
  onStill: () => void;
  onNotice: (sentence: string) => void;
}) {
  const { session, state, store } = useWorkbench();
  const [copied, setCopied] = useState(false);
  const said = words.head;
  const copyLink = async () => {
    const link = encodeLink(session);
    if (!link.ok) return props.onNotice(link.sentence);
    const { origin, pathname } = window.location;
    try {
      await navigator.clipboard.writeText(origin + pathname + link.fragment);
      setCopied(true);
      setTimeout(() => setCopied(false), 4000);
    } catch {
      history.replaceState(null, '', link.fragment);
      props.onNotice(said.linkNotCopied);
    }
  };
  return (
    <header className="head">
      <span className="head-name">{words.name}</span>
      <span className="head-about">
        {session.title}.{' '}
        {props.savedAt === null ? said.unsaved : said.saved(clock.format(props.savedAt))}
      </span>
      <span className="head-acts">
        <Do
          isDisabled={state.undoLabel === null}
          onPress={store.undo}
          aria-label={state.undoLabel === null ? said.undo : said.undoOf(state.undoLabel)}
        >
          {said.undo}
        </Do>
        <Do
          isDisabled={state.redoLabel === null}
          onPress={store.redo}
          aria-label={state.redoLabel === null ? said.redo : said.redoOf(state.redoLabel)}
        >
          {said.redo}
        </Do>
        <Do onPress={props.onStill}>{said.still}</Do>
        <Do onPress={copyLink}>{said.link}</Do>
        <span role="status" className="unseen">
          {copied && said.linkCopied}
        </span>
        {copied && <span aria-hidden="true">{said.linkCopied}</span>}
        <SessionSlip open={props.open} onNotice={props.onNotice} />
      </span>
    </header>
  );
}

/** The session as a whole: its title, a file of it, and the demo again. */
function SessionSlip(props: { open: Started['open']; onNotice: (sentence: string) => void }) {
  const { session, models, act } = useWorkbench();
  const { onNotice } = props;
  const said = words.head;
  const open = async (files: FileList | null, close: () => void) => {
    const file = files?.[0];
    if (!file) return;
    const text = await file.text().catch(() => null);
    close();
    if (text === null) return onNotice(said.fileUnread);
    const decoded = decodeFile(text, models);
    if (decoded.ok) props.open(decoded.session, said.fileOpened);
    else onNotice(decoded.sentence);
  };
  const save = () => {
    const name = session.title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-') || 'session';
    offerFile(new Blob([encodeFile(session)], { type: FILE_TYPE }), name + FILE_EXTENSION);
  };
  return (
    <Slip label={said.session} shown={said.session}>
      {(close) => (
        <>
          <TextField
            className="field"
            defaultValue={session.title}
            onBlur={(event) => act(setTitle, { to: (event.target as HTMLInputElement).value })}
          >
            <Label>{said.title}</Label>
            <Input />
          </TextField>
          <Do onPress={save}>{said.saveFile}</Do>
          <FileTrigger
            acceptedFileTypes={[FILE_TYPE, FILE_EXTENSION]}
            onSelect={(files) => open(files, close)}
          >
            <Do>{said.openFile}</Do>
          </FileTrigger>
          <Do
            onPress={() => {
              act(resetToDemo, {});
              close();
            }}
          >
            {said.startAgain}
          </Do>
          <p className="slip-note">{said.startAgainNote}</p>
        </>
      )}
    </Slip>
  );
}
