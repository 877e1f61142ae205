import './sessions.css';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { setTitle } from '../../session/actions';
import { COLLECTION_EXTENSION, exportSessions, importSessions } from '../../session/collection';
import type { Database } from '../../session/database';
import { FILE_TYPE } from '../../session/file';
import {
  bringBack,
  clearDeleted,
  deleteSession,
  duplicateSession,
  type Listed,
  rawSession,
  readSession,
  renameSession,
} from '../../session/library';
import type { SessionStorage } from '../../session/storage';
import { Sheet } from '../controls/Sheet';
import { Do } from '../controls/words';
import { offerFile } from '../state/offerFile';
import { useWorkbench } from '../state/workbench';
import { fileName } from '../takeaway/fileName';
import { sessions as said } from '../words/sessions.en';
import { DeletedLately } from './DeletedLately';
import { openKept } from './openKept';
import { AsideLine, RemovedLine, SessionLine } from './SessionLine';
import { useSessions } from './useSessions';

const offerText = (text: string, name: string) =>
  offerFile(new Blob([text], { type: FILE_TYPE }), name);

const EXTENSION = COLLECTION_EXTENSION.replace(/^\./, '');

interface Props {
  readonly storage: SessionStorage;
  /** Saves what is on the page. */
  readonly flush: () => Promise<void>;
  readonly onClose: () => void;
}

/** The user's own sessions in this browser. */
export default function Sessions(props: Props) {
  const { database } = props.storage;
  return (
    <Sheet title={said.title} open onClose={props.onClose}>
      {database ? <Library {...props} database={database} /> : <p>{said.nothingKept}</p>}
    </Sheet>
  );
}

function Library({ database, storage, flush, onClose }: Props & { database: Database }) {
  const { store, state, models, act } = useWorkbench();
  const { listed, told, run } = useSessions(database, flush);
  /** Deleted while the sheet is open: each stays in its place with an undo. */
  const [removed, setRemoved] = useState<ReadonlySet<string>>(new Set());
  const here = storage.recordOf(state.document);

  const open = ({ id }: Listed) =>
    run(async (tell) => {
      const decoded = await readSession(database, id, models);
      if (!decoded.ok) return tell(decoded.sentence);
      await openKept(store, storage, id, decoded.session, said.opened);
      onClose();
    });
  const rename = ({ id }: Listed, title: string) =>
    run(async (tell) => {
      if (id === here) {
        act(setTitle, { to: title });
        return flush();
      }
      const wrong = await renameSession(database, id, title, models);
      if (wrong) tell(wrong);
    });
  const duplicate = ({ id }: Listed) =>
    run(async (tell) => {
      const wrong = await duplicateSession(database, id, said.copyOf, models);
      if (wrong) tell(wrong);
    });
  const remove = ({ id }: Listed) => {
    setRemoved((all) => new Set(all).add(id));
    run(() => deleteSession(database, id));
  };
  const exportAll = () =>
    run(async (tell) => {
      const { text, count } = await exportSessions(database);
      const name = fileName(`sessions ${new Date().toISOString().slice(0, 10)}`, EXTENSION);
      offerText(text, name);
      tell(said.exported(count, name));
    });
  const importAll = (files: FileList | null) => {
    const file = files?.[0];
    if (!file) return;
    run(async (tell) => {
      const text = await file.text().catch(() => null);
      if (text === null) return tell(said.unread);
      const result = await importSessions(database, text, models);
      if (!result.ok) return tell(result.sentence);
      tell(
        said.imported(result.added, result.same),
        ...result.wrong.map(({ place, sentence }) => said.leftOut(place, sentence)),
      );
    });
  };

  const line = (each: Listed) => {
    const { id, title } = each;
    if (each.deletedAt !== null)
      return (
        <RemovedLine key={id} listed={each} onUndo={() => run(() => bringBack(database, id))} />
      );
    if (each.aside !== null)
      return (
        <AsideLine
          key={id}
          listed={each}
          onRaw={() =>
            run(async () => offerText(await rawSession(database, id), fileName(title, 'json')))
          }
          onDelete={() => remove(each)}
        />
      );
    return (
      <SessionLine
        key={id}
        listed={each}
        open={id === here ? 'here' : each.isOpen && !storage.holds(id) ? 'elsewhere' : null}
        onOpen={() => open(each)}
        onRename={(to) => rename(each, to)}
        onDuplicate={() => duplicate(each)}
        onDelete={() => remove(each)}
      />
    );
  };

  if (listed === null)
    return <p role="status">{told.length === 0 ? said.fetching : told.join(' ')}</p>;
  const isListed = ({ id, deletedAt }: Listed) => deletedAt === null || removed.has(id);
  const lines = listed.filter(isListed);
  return (
    <>
      <p className="slip-note">{said.about}</p>
      <div className="row">
        <Do onPress={exportAll} isDisabled={lines.length === 0}>
          {said.exportAll}
        </Do>
        <FileTrigger acceptedFileTypes={[FILE_TYPE, COLLECTION_EXTENSION]} onSelect={importAll}>
          <Do>{said.importAll}</Do>
        </FileTrigger>
      </div>
      <div role="status">
        {told.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      {lines.length === 0 ? (
        <p>{said.none}</p>
      ) : (
        <ul className="session-list">{lines.map(line)}</ul>
      )}
      <DeletedLately
        deleted={listed.filter((each) => !isListed(each))}
        onBringBack={(id) => run(() => bringBack(database, id))}
        onClear={() => run(() => clearDeleted(database, Date.now()))}
      />
    </>
  );
}
