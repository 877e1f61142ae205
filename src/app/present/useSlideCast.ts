import { useEffect, useMemo, useState } from 'react';
import type { Models } from '../../models/types';
import type { Cast } from '../../session/cast';
import type { Session } from '../../session/types';
import { Casts } from '../darkroom/casts';
import { workshop } from '../state/workshop';

type Peopled = Pick<Session, 'people'>;

const keyOf = ({ people }: Peopled): string => JSON.stringify(people);

export type SlideCast =
  | { readonly is: 'waiting' }
  | { readonly is: 'there'; readonly cast: Cast }
  | { readonly is: 'failed'; readonly why: string };

const WAITING: SlideCast = { is: 'waiting' };

/**
 * Who is in a slide, built: those on the wall already are. The next slide's people are built while this
 * one is shown.
 */
export function useSlideCast(
  slide: Peopled,
  next: Peopled | null,
  wall: Peopled & { readonly cast: Cast },
  models: Models,
): SlideCast {
  const casts = useMemo(() => new Casts(workshop, models), [models]);
  const [built, setBuilt] = useState<{ key: string; cast: SlideCast } | null>(null);
  const hanging = keyOf(wall);
  const key = keyOf(slide);
  const nextKey = next && keyOf(next);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the people
  useEffect(() => {
    let wanted = true;
    const show = (cast: SlideCast) => wanted && setBuilt({ key, cast });
    const prepare = () => {
      if (wanted && next && nextKey !== hanging) casts.of(next).catch(() => undefined);
    };
    if (key === hanging) prepare();
    else
      casts
        .of(slide)
        .then(
          (cast) => show({ is: 'there', cast }),
          (error) => show({ is: 'failed', why: String((error as Error).message) }),
        )
        .then(prepare);
    return () => {
      wanted = false;
    };
  }, [key, nextKey, hanging, casts]);
  const { cast } = wall;
  const own = useMemo<SlideCast>(() => ({ is: 'there', cast }), [cast]);
  if (key === hanging) return own;
  return built?.key === key ? built.cast : WAITING;
}
