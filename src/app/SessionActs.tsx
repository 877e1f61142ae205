import { FileTrigger, Input, Label, TextField } from 'react-aria-components';
import { resetToDemo, setTitle } from '../session/actions';
import { decodeFile, encodeFile, FILE_EXTENSION, FILE_TYPE } from '../session/file';
import { Do } from './controls/words';
import { offerFile } from './state/offerFile';
import type { Started } from './state/start';
import { useWorkbench } from './state/workbench';
import { words } from './words';

/** The session as a whole: its title, a file of it, and the demo again. */
export default function SessionActs(props: {
  open: Started['open'];
  onNotice: (sentence: string) => void;
  close: () => void;
}) {
  const { session, models, act } = useWorkbench();
  const { onNotice, close } = props;
  const said = words.head;
  const open = async (files: FileList | null) => {
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
    <>
      <TextField
        className="field"
        defaultValue={session.title}
        onBlur={(event) => act(setTitle, { to: (event.target as HTMLInputElement).value })}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          act(setTitle, { to: (event.target as HTMLInputElement).value });
          close();
        }}
      >
        <Label>{said.title}</Label>
        <Input />
      </TextField>
      <Do onPress={save}>{said.saveFile}</Do>
      <FileTrigger acceptedFileTypes={[FILE_TYPE, FILE_EXTENSION]} onSelect={open}>
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
  );
}
