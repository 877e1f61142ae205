import { useEffect } from 'react';
import { formatPercent } from '../../readings/format';
import { keepPicture } from '../../session/library';
import { isNearlyFull, spaceOf } from '../../session/space';
import type { SessionStorage } from '../../session/storage';
import { useWorkbench } from '../state/workbench';
import { sessions as said } from '../words/sessions.en';
import { wallPicture } from './wallPicture';

/** After the last change the pictures are drawn by then, milliseconds. */
const REST = 1000;

/** A browser that asks its user whether to keep data is asked once for each page. */
let asked = false;

/** Asks that the browser never clears what is kept to make room. */
async function askToPersist(): Promise<void> {
  const { storage } = navigator;
  if (asked || !storage?.persist) return;
  asked = true;
  if (!(await storage.persisted())) await storage.persist();
}

/**
 * What follows each save: a small picture of the session, the first time a request that the browser keeps it,
 * and a warning when the space runs out. Shows nothing.
 */
export default function Keeping(props: {
  storage: SessionStorage;
  savedAt: number;
  /** The pictures on the wall are those of the session. */
  isDrawn: boolean;
  onNotice: (sentence: string) => void;
}) {
  const { state } = useWorkbench();
  const { storage, savedAt, isDrawn, onNotice } = props;

  useEffect(() => {
    if (!isDrawn || state.isDragging) return;
    const timer = setTimeout(() => {
      const record = storage.recordOf(state.document);
      const picture = record === null ? null : wallPicture(document);
      // A picture that cannot be kept is only missing in the list.
      if (storage.database && record !== null && picture !== null)
        keepPicture(storage.database, record, picture).catch(() => undefined);
    }, REST);
    return () => clearTimeout(timer);
  }, [storage, state, isDrawn]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each save asks anew
  useEffect(() => {
    askToPersist().catch(() => undefined);
    const watch = async () => {
      const space = spaceOf((await navigator.storage?.estimate?.()) ?? {});
      if (space && isNearlyFull(space))
        onNotice(said.nearlyFull(formatPercent(space.usage / space.quota)));
    };
    watch().catch(() => undefined);
  }, [savedAt, onNotice]);
  return null;
}
