import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Visibility } from '../../readings/visibility';
import type { Cast } from '../../session/cast';
import type { PersonId } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { Seen, Shown } from '../compare/shown';
import type { Answer, Ask } from './visibility.worker';

/** Rays are cast once the hand rests, milliseconds. */
const REST = 300;
/** Places remembered: a picture that comes back is known at once. */
const REMEMBERED = 200;

type Known = ReadonlyMap<string, Visibility>;
const NOTHING: Known = new Map();

/** What is seen of one sitter from each of the places; absent until it is known. */
function useSeen(sitter: Sitter | undefined, places: readonly string[]): Known {
  const [known, setKnown] = useState<Known>(NOTHING);
  const worker = useRef<{ of: Sitter; worker: Worker } | null>(null);
  const asks = useCallback((whom: Sitter): Worker => {
    if (worker.current?.of === whom) return worker.current.worker;
    worker.current?.worker.terminate();
    const started = new Worker(new URL('./visibility.worker.ts', import.meta.url), {
      type: 'module',
    });
    started.onmessage = ({ data: { place, value } }: MessageEvent<Answer>) =>
      setKnown((all) => new Map([...[...all].slice(-REMEMBERED), [place.join(' '), value]]));
    const { meshes, landmarks } = whom;
    started.postMessage({ sitter: { meshes, landmarks } } satisfies Ask);
    worker.current = { of: whom, worker: started };
    return started;
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was seen of another sitter says nothing of this one
  useEffect(() => () => setKnown(NOTHING), [sitter]);
  useEffect(
    () => () => {
      worker.current?.worker.terminate();
      worker.current = null;
    },
    [],
  );

  const wanted = places.filter((place) => !known.has(place)).join('|');
  useEffect(() => {
    if (wanted === '' || !sitter) return;
    const timer = setTimeout(() => {
      const asking = asks(sitter);
      for (const place of wanted.split('|')) {
        const [x = 0, y = 0, z = 0] = place.split(' ').map(Number);
        asking.postMessage({ place: [x, y, z] } satisfies Ask);
      }
    }, REST);
    return () => clearTimeout(timer);
  }, [wanted, sitter, asks]);
  return known;
}

/** What each camera sees of the ears and face of everybody in its picture; absent until it is known. */
export function useVisibility(pictures: readonly Shown[], cast: Cast): Seen {
  const views = pictures.flatMap(({ subjects }) =>
    subjects.map(({ person, picture, camera }) => ({
      person,
      key: `${picture}${person}` as const,
      place: camera.position.join(' '),
    })),
  );
  const placesOf = (id: PersonId) =>
    views.filter(({ person }) => person === id).map(({ place }) => place);
  const first = useSeen(cast['1'], placesOf('1'));
  const second = useSeen(cast['2'], placesOf('2'));
  const key = views.map(({ key: own, place }) => `${own} ${place}`).join('|');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the views
  return useMemo(
    () =>
      Object.fromEntries(
        views.flatMap(({ person, key: own, place }) => {
          const value = (person === '1' ? first : second).get(place);
          return value ? [[own, value]] : [];
        }),
      ),
    [key, first, second],
  );
}
