import { Suspense, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { models } from '../models/browser';
import type { Autosave } from '../session/autosave';
import type { Cast } from '../session/cast';
import type { Unavailable } from '../stage';
import { Compare, type Saving } from './compare/Compare';
import { Do } from './controls/words';
import { Head } from './Head';
import { DropAnywhere, Handout, Keeping, Plan, Present, Sessions } from './headOnDemand';
import { Shaping } from './state/shaping';
import type { SitterWorkshop } from './state/sitterWorkshop';
import { openLinked, type Started } from './state/start';
import { useCast } from './state/useCast';
import { usePlace } from './state/usePlace';
import { type Workbench, WorkbenchProvider } from './state/workbench';
import { words } from './words';

/** The whole page around one session. */
export function App(props: {
  started: Started;
  workshop: SitterWorkshop;
  holdCast: (cast: Cast) => void;
}) {
  const { store, storage, open, keep } = props.started;
  const state = useStore(store);
  const { session } = state;
  const [notices, setNotices] = useState<readonly string[]>(props.started.notices);
  const [savedAt, setSavedAt] = useState(props.started.savedAt);
  const [showsSessions, setShowsSessions] = useState(false);
  const kept = useRef<Autosave | null>(null);
  const [saving, setSaving] = useState<Saving>('none');
  const [unavailable, setUnavailable] = useState<Unavailable | null>(null);
  const [shaping] = useState(() => new Shaping(props.workshop, models));
  const { cast, failed, isExact } = useCast(session, models, props.workshop, shaping);
  if (cast) props.holdCast(cast);

  const notice = useCallback(
    (sentence: string) => setNotices((all) => (all.includes(sentence) ? all : [...all, sentence])),
    [],
  );
  useEffect(() => {
    const running = keep((outcome) => {
      if (outcome.ok) setSavedAt(outcome.savedAt);
      else notice(outcome.sentence);
    });
    kept.current = running;
    return running.stop;
  }, [keep, notice]);
  const flush = useCallback(async () => kept.current?.flush(), []);
  useEffect(() => {
    const follow = async () => {
      const sentence = await openLinked(open);
      if (sentence) notice(sentence);
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [open, notice]);
  const place = usePlace();
  const workplace = useRef(place);
  if (place !== 'present') workplace.current = place;

  const workbench = useMemo<Workbench>(
    () => ({ session, state, models, store, shaping, act: store.act }),
    [session, state, store, shaping],
  );
  const told = [
    ...notices,
    ...(failed === null
      ? []
      : [words.notices[failed.impossible ? 'impossible' : 'noSculpture'](failed.why)]),
    ...(unavailable === null ? [] : [words.notices.noPictures[unavailable]]),
  ];
  return (
    <WorkbenchProvider value={workbench}>
      {place !== 'present' && (
        <Head
          place={place}
          open={open}
          savedAt={savedAt}
          onStill={() => setSaving('all')}
          onSessions={() => setShowsSessions(true)}
          onNotice={notice}
        />
      )}
      {(place === 'present' ? [] : told).map((sentence) => (
        <div key={sentence} className="notice" role="alert">
          <p>{sentence}</p>
          {notices.includes(sentence) && (
            <Do onPress={() => setNotices((all) => all.filter((each) => each !== sentence))}>
              {words.notices.dismiss}
            </Do>
          )}
        </div>
      ))}
      {cast && place === 'plan' && (
        <Suspense fallback={<p className="waiting">{words.notices.place}</p>}>
          <Plan cast={cast} onUnavailable={setUnavailable} />
        </Suspense>
      )}
      {cast && place === 'handout' && (
        <Suspense fallback={<p className="waiting">{words.notices.place}</p>}>
          <Handout />
        </Suspense>
      )}
      {cast && place === 'present' && (
        <Suspense fallback={<p className="waiting">{words.notices.place}</p>}>
          <Present cast={cast} leaveTo={workplace.current} />
        </Suspense>
      )}
      {cast && place === 'compare' && (
        <Compare cast={cast} saving={saving} onSaving={setSaving} onUnavailable={setUnavailable} />
      )}
      <Suspense fallback={null}>
        {savedAt !== null && savedAt !== props.started.savedAt && (
          <Keeping
            storage={storage}
            savedAt={savedAt}
            isDrawn={isExact && place === 'compare'}
            onNotice={notice}
          />
        )}
        {showsSessions && (
          <Sessions storage={storage} flush={flush} onClose={() => setShowsSessions(false)} />
        )}
      </Suspense>
      {cast && (
        <Suspense fallback={null}>
          <DropAnywhere open={open} onNotice={notice} />
        </Suspense>
      )}
      {cast === null && failed === null && <p className="waiting">{words.notices.loading}</p>}
    </WorkbenchProvider>
  );
}
