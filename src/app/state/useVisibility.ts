import { useEffect, useRef, useState } from 'react';
import type { Visibility } from '../../readings/visibility';
import type { ResolvedPicture } from '../../session/resolve';
import type { Letter } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { Answer, Ask } from './visibility.worker';

/** Rays are cast once the hand rests, milliseconds. */
const REST = 300;
/** Places remembered: a picture that comes back is known at once. */
const REMEMBERED = 200;

export type Visibilities = Readonly<Partial<Record<Letter, Visibility>>>;

const placeOf = ({ camera }: ResolvedPicture): string => camera.position.join(' ');

/** What each camera sees of ears and face; absent until it is known. */
export function useVisibility(
  pictures: readonly { readonly letter: Letter; readonly resolved: ResolvedPicture }[],
  sitter: Sitter,
): Visibilities {
  const [known, setKnown] = useState<ReadonlyMap<string, Visibility>>(new Map());
  const worker = useRef<Worker | null>(null);

  useEffect(() => {
    const started = new Worker(new URL('./visibility.worker.ts', import.meta.url), {
      type: 'module',
    });
    started.onmessage = ({ data: { place, value } }: MessageEvent<Answer>) =>
      setKnown((all) => new Map([...[...all].slice(-REMEMBERED), [place.join(' '), value]]));
    const { meshes, landmarks } = sitter;
    started.postMessage({ sitter: { meshes, landmarks } } satisfies Ask);
    worker.current = started;
    return () => {
      started.terminate();
      worker.current = null;
      setKnown(new Map());
    };
  }, [sitter]);

  const wanted = pictures
    .map(({ resolved }) => placeOf(resolved))
    .filter((place) => !known.has(place))
    .join('|');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another sitter's worker is asked anew
  useEffect(() => {
    if (wanted === '') return;
    const asking = worker.current;
    const timer = setTimeout(() => {
      for (const place of wanted.split('|')) {
        const [x = 0, y = 0, z = 0] = place.split(' ').map(Number);
        asking?.postMessage({ place: [x, y, z] } satisfies Ask);
      }
    }, REST);
    return () => clearTimeout(timer);
  }, [wanted, sitter]);

  return Object.fromEntries(
    pictures.flatMap(({ letter, resolved }) => {
      const value = known.get(placeOf(resolved));
      return value ? [[letter, value]] : [];
    }),
  );
}
