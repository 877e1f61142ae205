import { useEffect, useState } from 'react';
import { type Visibility, visibility } from '../../readings/visibility';
import type { ResolvedPicture } from '../../session/resolve';
import type { Letter } from '../../session/types';
import type { Sitter } from '../../sitter/types';

/** Rays cost more than all other readings together: they are cast once the hand rests, in seconds. */
const REST = 0.4;

interface Seen {
  readonly sitter: Sitter;
  readonly position: readonly [number, number, number];
  readonly value: Visibility;
}
export type Visibilities = Readonly<Partial<Record<Letter, Visibility>>>;

const at = (camera: ResolvedPicture['camera']) => camera.position.join(' ');

/** What each camera sees of ears and face, computed at rest; absent while a picture moves. */
export function useVisibility(
  pictures: readonly { readonly letter: Letter; readonly resolved: ResolvedPicture }[],
  sitter: Sitter | null,
): Visibilities {
  const [seen, setSeen] = useState<Readonly<Partial<Record<Letter, Seen>>>>({});
  const key = pictures
    .map(({ letter, resolved: { camera } }) => `${letter} ${at(camera)}`)
    .join('|');

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the cameras' places
  useEffect(() => {
    if (!sitter) return;
    const timers: ReturnType<typeof setTimeout>[] = [];
    pictures.forEach(({ letter, resolved: { camera } }, i) => {
      const old = seen[letter];
      if (old?.sitter === sitter && old.position.join(' ') === at(camera)) return;
      // One picture at a time, so that the page answers in between.
      timers.push(
        setTimeout(
          () => {
            const value = visibility(sitter.meshes, camera.position);
            setSeen((all) => ({
              ...all,
              [letter]: { sitter, position: [...camera.position], value },
            }));
          },
          1000 * REST + 50 * i,
        ),
      );
    });
    return () => timers.forEach(clearTimeout);
  }, [key, sitter]);

  return Object.fromEntries(
    pictures.flatMap(({ letter, resolved: { camera } }) => {
      const own = seen[letter];
      return own && own.sitter === sitter && own.position.join(' ') === at(camera)
        ? [[letter, own.value]]
        : [];
    }),
  );
}
