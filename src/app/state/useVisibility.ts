import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Vec3 } from '../../optics/types';
import type { Visibility } from '../../readings/visibility';
import type { Cast } from '../../session/cast';
import type { PersonId } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { Seen, Shown } from '../compare/shown';
import type { Answer, Ask, Look } from './visibility.worker';

/** Rays are cast once the hand rests, milliseconds. */
const REST = 300;
/** Places remembered: a picture that comes back is known at once. */
const REMEMBERED = 200;

type Known = ReadonlyMap<string, Visibility>;
const NOTHING: Known = new Map();

/** What is seen of one sitter, with another beside or not, in each of the looks; absent until it is known. */
function useSeen(
  sitter: Sitter | undefined,
  other: Sitter | undefined,
  looks: readonly string[],
): Known {
  const [known, setKnown] = useState<Known>(NOTHING);
  const worker = useRef<{ of: Sitter; and: Sitter | undefined; worker: Worker } | null>(null);
  const asks = useCallback((whom: Sitter, and: Sitter | undefined): Worker => {
    if (worker.current?.of === whom && worker.current.and === and) return worker.current.worker;
    worker.current?.worker.terminate();
    const started = new Worker(new URL('./visibility.worker.ts', import.meta.url), {
      type: 'module',
    });
    started.onmessage = ({ data: { look, value } }: MessageEvent<Answer>) =>
      setKnown((all) => new Map([...[...all].slice(-REMEMBERED), [JSON.stringify(look), value]]));
    const seen = ({ meshes, landmarks }: Sitter) => ({ meshes, landmarks });
    started.postMessage({ sitter: seen(whom), other: and ? seen(and) : null } satisfies Ask);
    worker.current = { of: whom, and, worker: started };
    return started;
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was seen of another sitter says nothing of this one
  useEffect(() => () => setKnown(NOTHING), [sitter, other]);
  useEffect(
    () => () => {
      worker.current?.worker.terminate();
      worker.current = null;
    },
    [],
  );

  const wanted = looks.filter((look) => !known.has(look)).join('|');
  useEffect(() => {
    if (wanted === '' || !sitter) return;
    const timer = setTimeout(() => {
      const asking = asks(sitter, other);
      for (const look of wanted.split('|'))
        asking.postMessage({ look: JSON.parse(look) as Look } satisfies Ask);
    }, REST);
    return () => clearTimeout(timer);
  }, [wanted, sitter, other, asks]);
  return known;
}

/** What each camera sees of the ears and face of everybody in its picture; absent until it is known. */
export function useVisibility(pictures: readonly Shown[], cast: Cast): Seen {
  const views = pictures.flatMap(({ subjects, company }) =>
    subjects.map(({ person, picture, camera, sitter, at }) => {
      const other = company.find((one) => one.sitter !== sitter);
      const beside = other
        ? (other.at.map((value, j) => value - (at[j] as number)) as unknown as Vec3)
        : null;
      const look: Look = { place: camera.position, beside };
      return { person, key: `${picture}${person}` as const, look: JSON.stringify(look), beside };
    }),
  );
  const looksOf = (id: PersonId) =>
    views.filter(({ person }) => person === id).map(({ look }) => look);
  /** The other one, where any picture of this one shows both. */
  const beside = (id: PersonId): Sitter | undefined =>
    views.some(({ person, beside: at }) => person === id && at)
      ? cast[id === '1' ? '2' : '1']
      : undefined;
  const first = useSeen(cast['1'], beside('1'), looksOf('1'));
  const second = useSeen(cast['2'], beside('2'), looksOf('2'));
  const key = views.map(({ key: own, look }) => `${own} ${look}`).join('|');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the views
  return useMemo(
    () =>
      Object.fromEntries(
        views.flatMap(({ person, key: own, look }) => {
          const value = (person === '1' ? first : second).get(look);
          return value ? [[own, value]] : [];
        }),
      ),
    [key, first, second],
  );
}
