import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { models } from '../models/browser';
import type { Outlined } from '../session/hold';
import type { Unavailable } from '../stage';
import { Compare, type Saving } from './compare/Compare';
import { Do } from './controls/words';
import { Head } from './Head';
import { openLinked, type Started } from './state/start';
import { useHistoryKeys } from './state/useHistoryKeys';
import { useSitter } from './state/useSitter';
import { type Workbench, WorkbenchProvider } from './state/workbench';
import { words } from './words';

/** The whole page around one session. */
export function App(props: { started: Started; holdSitter: (sitter: Outlined) => void }) {
  const { store, open, keep } = props.started;
  const state = useStore(store);
  const { session } = state;
  const [notices, setNotices] = useState<readonly string[]>(props.started.notices);
  const [savedAt, setSavedAt] = useState(props.started.savedAt);
  const [saving, setSaving] = useState<Saving>('none');
  const [unavailable, setUnavailable] = useState<Unavailable | null>(null);
  const { sitter, failed } = useSitter(session.sitter, models);
  const shownSitter = useRef(sitter);
  // While another person is fetched the pictures keep the one they show.
  if (sitter) shownSitter.current = sitter;
  const present = shownSitter.current;
  if (present) props.holdSitter(present);

  const notice = useCallback(
    (sentence: string) => setNotices((all) => (all.includes(sentence) ? all : [...all, sentence])),
    [],
  );
  useEffect(() => {
    const kept = keep((outcome) => {
      if (outcome.ok) setSavedAt(outcome.savedAt);
      else notice(outcome.sentence);
    });
    return kept.stop;
  }, [keep, notice]);
  useEffect(() => {
    const follow = async () => {
      const sentence = await openLinked(open);
      if (sentence) notice(sentence);
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [open, notice]);
  useHistoryKeys(store);

  const workbench = useMemo<Workbench>(
    () => ({ session, state, models, store, act: store.act }),
    [session, state, store],
  );
  const told = [
    ...notices,
    ...(failed === null ? [] : [words.notices.noSculpture(failed)]),
    ...(unavailable === null ? [] : [words.notices.noPictures[unavailable]]),
  ];
  return (
    <WorkbenchProvider value={workbench}>
      <Head open={open} savedAt={savedAt} onStill={() => setSaving('all')} onNotice={notice} />
      {told.map((sentence) => (
        <div key={sentence} className="notice" role="alert">
          <p>{sentence}</p>
          {notices.includes(sentence) && (
            <Do onPress={() => setNotices((all) => all.filter((each) => each !== sentence))}>
              {words.notices.dismiss}
            </Do>
          )}
        </div>
      ))}
      {present ? (
        <Compare
          sitter={present}
          saving={saving}
          onSaving={setSaving}
          onUnavailable={setUnavailable}
        />
      ) : (
        failed === null && <p className="waiting">{words.notices.loading}</p>
      )}
    </WorkbenchProvider>
  );
}
