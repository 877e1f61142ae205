import { useEffect, useState } from 'react';
import type { Session } from '../../session/types';
import { pronounOf, type Shown } from '../compare/shown';
import { useTold } from '../compare/useTold';
import type { Darkroom } from '../darkroom/useDarkroom';
import { keepLatest } from '../state/keepLatest';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { page as said } from '../words/page.en';
import { jpegOf, type PhotographRequest, photograph, photographKey } from './photographs';
import { HAS_FAILED, IS_PENDING } from './whole';

/** Rendered pictures by their keys, the latest used last. */
const rendered = new Map<string, string>();
const KEPT = 120;

function keep(key: string, url: string): void {
  for (const old of keepLatest(rendered, key, url, KEPT)) URL.revokeObjectURL(old);
}

/** What each picture on a page is of, so that it can be rendered again at the size of the print. */
const requests = new WeakMap<HTMLImageElement, PhotographRequest>();
export const requestOf = (image: HTMLImageElement): PhotographRequest | undefined =>
  requests.get(image);

/** Pause after a change before a picture is rendered, milliseconds. */
const REST = 200;

/** A picture on a page; while it is rendered anew the last one stays. `width` is pixels on the screen. */
export function Photograph(props: {
  darkroom: Darkroom;
  session: Session;
  shown: Shown;
  width: number;
}) {
  const { models } = useWorkbench();
  const { darkroom, session, shown, width } = props;
  const key = photographKey({ session, shown, width });
  const [url, setUrl] = useState(rendered.get(key) ?? null);
  const [why, setWhy] = useState<string | null>(null);
  const told = useTold(shown, {
    units: session.units,
    pronoun: pronounOf(shown.subjects, session, models),
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the picture
  useEffect(() => {
    setWhy(null);
    const known = rendered.get(key);
    if (known) {
      keep(key, known);
      setUrl(known);
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(
      () =>
        photograph(darkroom, { session, shown, width, signal: stop.signal })
          .then(jpegOf)
          .then((blob) => {
            const made = URL.createObjectURL(blob);
            keep(key, made);
            if (!stop.signal.aborted) setUrl(made);
            setWhy(null);
          })
          .catch((error) => {
            if (!stop.signal.aborted) setWhy(String((error as Error).message));
          }),
      REST,
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [key, darkroom]);
  const { sensor } = shown.resolved.camera;
  const box = { aspectRatio: `${sensor.width} / ${sensor.height}` };
  // An old picture must not stand under a new caption.
  if (url === null || why !== null)
    return (
      <div
        className="photograph-waiting"
        style={box}
        role="status"
        {...(why === null ? IS_PENDING : HAS_FAILED)}
      >
        {why === null ? said.waiting : said.failed(why)}
      </div>
    );
  return (
    <img
      ref={(image) => {
        if (image) requests.set(image, { session, shown, width });
      }}
      className="photograph"
      style={box}
      src={url}
      alt={words.alt(shown.letter, told)}
    />
  );
}
