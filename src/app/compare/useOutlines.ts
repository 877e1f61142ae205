import { useEffect, useRef, useState } from 'react';
import type { Letter } from '../../session/types';
import type { Silhouette, StageHandle } from '../../stage';
import type { Shown } from './shown';

/** Width of the silhouette that an outline is traced from, pixels. */
const WIDTH = 480;

/** Each picture's silhouette while outlines are wanted, drawn anew when its camera or the sitter changes. */
export function useOutlines(
  on: boolean,
  pictures: readonly Shown[],
  stage: StageHandle | null,
): Readonly<Partial<Record<Letter, Silhouette>>> {
  const [silhouettes, setSilhouettes] = useState<Readonly<Partial<Record<Letter, Silhouette>>>>({});
  const key = pictures.map(({ resolved }) => JSON.stringify(resolved.camera)).join();
  const people = useSame(pictures.flatMap(({ subjects }) => subjects.map(({ sitter }) => sitter)));
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the cameras
  useEffect(() => {
    if (!on || !stage) {
      setSilhouettes({});
      return;
    }
    const drawn: Partial<Record<Letter, Silhouette>> = {};
    for (const { letter, resolved, company } of pictures)
      drawn[letter] = stage.silhouette(resolved.camera, WIDTH, { sitters: company });
    setSilhouettes(drawn);
  }, [on, key, stage, people]);
  return silhouettes;
}

/** The first list of those with the same members. */
function useSame<T>(list: readonly T[]): readonly T[] {
  const kept = useRef(list);
  const { current } = kept;
  if (current.length !== list.length || list.some((each, i) => each !== current[i]))
    kept.current = list;
  return kept.current;
}
