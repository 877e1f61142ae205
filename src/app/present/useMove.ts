import { pictureAlong } from '../../session/play';
import type { Picture, Session } from '../../session/types';
import { useMedia } from '../state/useMedia';
import { usePlay } from '../state/usePlay';
import type { Moving } from './offered';

export interface Move {
  readonly is: Moving;
  /** The picture on the way; null while everything hangs where it belongs. */
  readonly picture: Picture | null;
  /** One key for it all: plays, pauses, goes on, and at the end puts the picture back. */
  press(): void;
  putBack(): void;
}

/** The move of a slide, crop held; by steps where motion is not wanted. `allowed` once nothing is asked. */
export function useMove(session: Session, allowed: boolean): Move {
  const play = usePlay(session.play.seconds);
  const reduced = useMedia('(prefers-reduced-motion: reduce)');
  const { from, to } = session.play;
  const possible = allowed && from !== to && pictureAlong(session, 0, 'metres') !== null;
  const { at, playing } = play;
  const stands = at === null ? 'ready' : at < 1 ? 'stopped' : 'done';
  const is: Moving = !possible ? 'none' : playing ? 'running' : stands;
  const press = () => {
    if (is === 'running') play.pause();
    else if (is === 'done') play.scrub(null);
    else if (is !== 'none') (reduced ? play.step : play.start)();
  };
  return {
    is,
    picture: possible && at !== null ? pictureAlong(session, at, 'metres') : null,
    press,
    putBack: () => play.scrub(null),
  };
}
