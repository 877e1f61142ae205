import { useEffect, useState } from 'react';
import type { Letter } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import type { StageHandle } from '../../stage';
import type { Mask } from './over/outline';
import type { Shown } from './shown';

/** Width of the mask that an outline is traced from, pixels. */
const WIDTH = 480;

/** Each picture's mask while outlines are wanted, drawn anew when its camera or the sitter changes. */
export function useOutlines(
  on: boolean,
  pictures: readonly Shown[],
  stage: StageHandle | null,
  sitter: Sitter | null,
): Readonly<Partial<Record<Letter, Mask>>> {
  const [masks, setMasks] = useState<Readonly<Partial<Record<Letter, Mask>>>>({});
  const key = pictures.map(({ resolved }) => JSON.stringify(resolved.camera)).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the cameras
  useEffect(() => {
    if (!on || !stage || !sitter) {
      setMasks({});
      return;
    }
    setMasks(
      Object.fromEntries(
        pictures.map(({ letter, resolved }) => [letter, stage.silhouette(resolved.camera, WIDTH)]),
      ),
    );
  }, [on, key, stage, sitter]);
  return masks;
}
