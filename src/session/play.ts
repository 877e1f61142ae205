/** The move from one standpoint to the other with the crop held. */
import type { Picture, Session } from './types';

/**
 * even in metres: as one walks, so that most of the change comes near the sitter;
 * even in look: 1/d runs evenly, and with it, nearly, the proportions of the face.
 */
export type Pace = 'metres' | 'look';

const between = (from: number, to: number, t: number): number => from + (to - from) * t;

/** Standpoint at time t, 0..1, on the way between two distances, metres. */
export function standpointAlong(from: number, to: number, t: number, pace: Pace): number {
  const time = Math.min(1, Math.max(0, t));
  if (time === 0) return from;
  if (time === 1) return to;
  return pace === 'metres' ? between(from, to, time) : 1 / between(1 / from, 1 / to, time);
}

/** Where on the way, 0..1, a standpoint lies: the inverse of `standpointAlong`. */
export function timeAlong(from: number, to: number, standpoint: number, pace: Pace): number {
  const at = pace === 'metres' ? (d: number) => d : (d: number) => 1 / d;
  const whole = at(to) - at(from);
  if (whole === 0) return 0;
  return Math.min(1, Math.max(0, (at(standpoint) - at(from)) / whole));
}

/** The picture on the way at time t: always the session's crop, by whatever lens that needs. */
export function pictureAlong(session: Session, t: number, pace: Pace): Picture | null {
  const end = (letter: string) => session.pictures.find((each) => each.letter === letter);
  const from = end(session.play.from);
  const to = end(session.play.to);
  if (!from || !to) return null;
  const time = Math.min(1, Math.max(0, t));
  return {
    letter: from.letter,
    of: from.of,
    standpoint: standpointAlong(from.standpoint, to.standpoint, time, pace),
    view: { by: 'crop' },
    fNumber: between(from.fNumber, to.fNumber, time),
    cameraHeight: between(from.cameraHeight, to.cameraHeight, time),
    tilt: between(from.tilt, to.tilt, time),
    lens: null,
  };
}
