import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Models } from '../../models/types';
import { type Cast, leadOf } from '../../session/cast';
import { runOf } from '../../session/kit';
import type { Picture, Session } from '../../session/types';
import { Stage, type StageHandle } from '../../stage';
import { workshop } from '../state/workshop';
import { words } from '../words';
import { Casts } from './casts';

/** A comparison set up out of sight: its people, built, and the stage in its light and room. */
export interface Sitting {
  readonly cast: Cast;
  readonly stage: StageHandle;
}

/** Renders pictures of any comparison, one after another, out of sight of the page. */
export interface Darkroom {
  /** Who is in a session's comparison, built. @throws Error when somebody cannot be built. */
  cast(session: Pick<Session, 'people'>): Promise<Cast>;
  /**
   * Sets a session's comparison up and works with it while nobody else does.
   * @throws AbortError when the signal is raised, Error when somebody cannot be built or the browser draws
   * no pictures.
   */
  use<T>(
    session: Session,
    work: (sitting: Sitting) => Promise<T>,
    signal?: AbortSignal,
  ): Promise<T>;
}

interface SetUp {
  readonly session: Session;
  readonly cast: Cast;
  readonly ready: (stage: StageHandle) => void;
  readonly failed: (why: Error) => void;
}

/** A stage of its own for each light and room: it is ready once they are set. */
const stageKey = ({ light, room }: Session): string => JSON.stringify([light, runOf(room)]);

const out = { position: 'fixed', width: 1, height: 1, opacity: 0, pointerEvents: 'none' } as const;

/** A darkroom, and the element in which its stage is mounted while it is used. */
export function useDarkroom(models: Models): {
  readonly darkroom: Darkroom;
  readonly element: ReactNode;
} {
  const casts = useMemo(() => new Casts(workshop, models), [models]);
  const [setUp, setSetUp] = useState<SetUp | null>(null);
  const mounted = useRef<{ key: string; stage: StageHandle } | null>(null);
  const last = useRef<Promise<unknown>>(Promise.resolve());
  const current = useRef<SetUp | null>(null);

  const stageFor = useCallback((session: Session, cast: Cast): Promise<StageHandle> => {
    const key = stageKey(session);
    if (mounted.current?.key === key) return Promise.resolve(mounted.current.stage);
    return new Promise((ready, failed) => setSetUp({ session, cast, ready, failed }));
  }, []);

  const darkroom = useMemo<Darkroom>(
    () => ({
      cast: (session) => casts.of(session),
      use: (session, work, signal) => {
        const turn = last.current.then(async () => {
          signal?.throwIfAborted();
          const cast = await casts.of(session);
          signal?.throwIfAborted();
          return work({ cast, stage: await stageFor(session, cast) });
        });
        last.current = turn.catch(() => undefined);
        return turn;
      },
    }),
    [casts, stageFor],
  );
  current.current = setUp;
  useEffect(
    () => () => {
      mounted.current = null;
      current.current?.failed(new DOMException('the page was left', 'AbortError'));
    },
    [],
  );

  if (!setUp) return { darkroom, element: null };
  const { session, cast } = setUp;
  const key = stageKey(session);
  const element = (
    <div style={out} aria-hidden="true">
      <Stage
        key={key}
        pictures={[]}
        sitter={leadOf(cast, session.pictures[0] as Picture)}
        light={session.light}
        room={runOf(session.room)}
        onReady={(stage) => {
          mounted.current = { key, stage };
          setUp.ready(stage);
        }}
        onUnavailable={(reason) => {
          mounted.current = null;
          if (reason) setUp.failed(new Error(words.notices.noPictures[reason]));
        }}
      />
    </div>
  );
  return { darkroom, element };
}
