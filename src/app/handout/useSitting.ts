import { useEffect, useMemo, useState } from 'react';
import type { Cast } from '../../session/cast';
import { sessionWith } from '../../session/comparison';
import type { Session } from '../../session/types';
import { pronounOf, type Shown, showPictures } from '../compare/shown';
import type { Darkroom } from '../darkroom/useDarkroom';
import { useWorkbench } from '../state/workbench';

/** A comparison as a page shows it: its session, who is in it and its pictures, measured. */
export interface PageSitting {
  readonly session: Session;
  readonly cast: Cast;
  readonly pictures: readonly [Shown, ...Shown[]];
  readonly pronoun: 'her' | 'him' | 'them';
}

export type Sat =
  | { readonly is: 'waiting' }
  | { readonly is: 'there'; readonly sitting: PageSitting }
  | { readonly is: 'failed'; readonly why: string };

const WAITING: Sat = { is: 'waiting' };

/** The comparison a page is about, once everybody in it is built; while they are, the last one stays. */
export function useSitting(darkroom: Darkroom, comparison: string | null): Sat {
  const { session: own, models } = useWorkbench();
  const session = useMemo(() => sessionWith(own, comparison), [own, comparison]);
  const [built, setBuilt] = useState<{ of: Session['people']; cast: Cast } | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  const { people } = session;
  useEffect(() => {
    let wanted = true;
    darkroom.cast({ people }).then(
      (cast) => {
        if (!wanted) return;
        setBuilt({ of: people, cast });
        setWhy(null);
      },
      (error) => wanted && setWhy(String((error as Error).message)),
    );
    return () => {
      wanted = false;
    };
  }, [darkroom, people]);
  return useMemo((): Sat => {
    if (why !== null) return { is: 'failed', why };
    if (!built || built.of.length !== people.length) return WAITING;
    const { cast } = built;
    const pictures = showPictures(
      session,
      models,
      cast,
      null,
    ) as unknown as PageSitting['pictures'];
    const subjects = pictures.flatMap((shown) => shown.subjects);
    return {
      is: 'there',
      sitting: { session, cast, pictures, pronoun: pronounOf(subjects, session, models) },
    };
  }, [why, built, people, session, models]);
}
