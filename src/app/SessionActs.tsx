import { useEffect, useRef, useState } from 'react';
import { FileTrigger, Input, Label, TextField } from 'react-aria-components';
import { MIME } from '../handout/encode/types';
import { setTitle } from '../session/actions';
import { demoSession } from '../session/demo';
import { encodeFile, FILE_EXTENSION, FILE_TYPE } from '../session/file';
import { Do } from './controls/words';
import { openFile } from './open/openFile';
import { offerFile } from './state/offerFile';
import type { Started } from './state/start';
import { useWorkbench } from './state/workbench';
import { words } from './words';

/** The session as a whole: its title, a file of it, and the demo again. */
export default function SessionActs(props: {
  open: Started['open'];
  onNotice: (sentence: string) => void;
  onSessions: () => void;
  close: () => void;
}) {
  const { session, models, act } = useWorkbench();
  const { onNotice, close } = props;
  const said = words.head;
  const open = async (files: FileList | null) => {
    const file = files?.[0];
    if (!file) return;
    close();
    await openFile(file, { models, act, onNotice, open: props.open });
  };
  const save = () => {
    const name = session.title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-') || 'session';
    offerFile(new Blob([encodeFile(session)], { type: FILE_TYPE }), name + FILE_EXTENSION);
  };
  return (
    <>
      <Title close={close} />
      <Do
        onPress={() => {
          close();
          props.onSessions();
        }}
      >
        {said.sessions}
      </Do>
      <Do onPress={save}>{said.saveFile}</Do>
      <FileTrigger
        acceptedFileTypes={[FILE_TYPE, FILE_EXTENSION, ...Object.values(MIME)]}
        onSelect={open}
      >
        <Do>{said.openFile}</Do>
      </FileTrigger>
      <Do
        onPress={() => {
          props.open(demoSession(), said.startAgain);
          close();
        }}
      >
        {said.startAgain}
      </Do>
      <p className="slip-note">{said.startAgainNote}</p>
    </>
  );
}

/** The session's title. What is typed is kept however the slip is closed, as one step that undo takes back. */
function Title({ close }: { close: () => void }) {
  const { session, act } = useWorkbench();
  const [text, setText] = useState(session.title);
  const kept = useRef(session.title);
  const keep = useRef(() => {});
  keep.current = () => {
    if (text === kept.current) return;
    kept.current = text;
    act(setTitle, { to: text });
  };
  useEffect(() => () => keep.current(), []);
  return (
    <TextField
      className="field"
      value={text}
      onChange={setText}
      onBlur={() => keep.current()}
      onKeyDown={(event) => {
        // A key that is handled here goes no further, so Escape must be heard here too.
        if (event.key === 'Enter' || event.key === 'Escape') close();
        else event.continuePropagation();
      }}
    >
      <Label>{words.head.title}</Label>
      <Input />
    </TextField>
  );
}
