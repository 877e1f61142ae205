import { useState } from 'react';
import { Slip } from './controls/Slip';
import { Do } from './controls/words';
import { linkCodec, SessionActs } from './headOnDemand';
import type { Started } from './state/start';
import { useHistoryKeys } from './state/useHistoryKeys';
import { PLACES, type Place, present } from './state/usePlace';
import { useWorkbench } from './state/workbench';
import { words } from './words';

const clock = new Intl.DateTimeFormat(undefined, {
  hour: '2-digit',
  minute: '2-digit',
  hourCycle: 'h23',
});

/** The running head: whose session it is, whether it is kept, and what can be done with the whole. */
export function Head(props: {
  place: Place;
  savedAt: number | null;
  open: Started['open'];
  onStill: () => void;
  onSessions: () => void;
  onNotice: (sentence: string) => void;
}) {
  const { session, state, store } = useWorkbench();
  const [copied, setCopied] = useState(false);
  useHistoryKeys(store);
  const said = words.head;
  const copyLink = async () => {
    const { encodeLink } = await linkCodec();
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
      <nav className="head-places" aria-label={said.places}>
        {PLACES.map((place) => (
          <a
            key={place}
            href={`#${place}`}
            aria-current={place === props.place ? 'page' : undefined}
          >
            {said.placeNames[place]}
          </a>
        ))}
      </nav>
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
        {props.place === 'compare' && <Do onPress={props.onStill}>{said.still}</Do>}
        {props.place !== 'plan' && <Do onPress={present}>{said.present}</Do>}
        <Do onPress={copyLink}>{said.link}</Do>
        <span role="status" className="unseen">
          {copied && said.linkCopied}
        </span>
        {copied && <span aria-hidden="true">{said.linkCopied}</span>}
        <Slip label={said.session} shown={said.session}>
          {(close) => (
            <SessionActs
              open={props.open}
              onNotice={props.onNotice}
              onSessions={props.onSessions}
              close={close}
            />
          )}
        </Slip>
      </span>
    </header>
  );
}
