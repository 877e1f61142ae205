import { useEffect, useState } from 'react';
import type { Letter } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { Silhouette, StageHandle } from '../../stage';
import type { Shown } from './shown';

/** Width of the silhouette that an outline is traced from, pixels. */
const WIDTH = 480;

/** Each picture's silhouette while outlines are wanted, drawn anew when its camera or the sitter changes. */
export function useOutlines(
  on: boolean,
  pictures: readonly Shown[],
  stage: StageHandle | null,
  sitter: Sitter,
): Readonly<Partial<Record<Letter, Silhouette>>> {
  const [silhouettes, setSilhouettes] = useState<Readonly<Partial<Record<Letter, Silhouette>>>>({});
  const key = pictures.map(({ resolved }) => JSON.stringify(resolved.camera)).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the cameras
  useEffect(() => {
    if (!on || !stage) {
      setSilhouettes({});
      return;
    }
    const drawn: Partial<Record<Letter, Silhouette>> = {};
    for (const { letter, resolved } of pictures)
      drawn[letter] = stage.silhouette(resolved.camera, WIDTH);
    setSilhouettes(drawn);
  }, [on, key, stage, sitter]);
  return silhouettes;
}
