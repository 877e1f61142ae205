/** How much of the sitter the frame holds and where the eyes sit in it. */
import { formatLength } from '../../readings/format';
import { type ActionContext, standpointForFrame } from '../follow';
import { usualFrameHeight } from '../framed';
import { clamp, LIMITS } from '../limits';
import { personOf } from '../person';
import type { Crop, Hold, Person, Session } from '../types';
import { action, editPictures, type Whose } from './action';

/** Whom a named framing is measured by: the first in the first picture. */
export const framedPerson = (session: Session): Person =>
  personOf(session, session.pictures[0]?.of[0] ?? '1');

/** The crop changed. A locked lens cannot follow, so its picture moves to where it frames that. */
function reframe(session: Session, crop: Crop, which: Whose, context: ActionContext): Session {
  const changed = { ...session, crop };
  return editPictures(changed, which, (picture) =>
    picture.view.by === 'lens'
      ? {
          ...picture,
          standpoint: standpointForFrame(
            changed,
            picture,
            picture.view.focal,
            crop.frameHeight,
            context,
          ),
        }
      : picture,
  );
}

/**
 * Sets the frame height at the eye plane. The focal length follows; while lenses are kept, the
 * standpoint does, of one picture or of all.
 */
export const setFrameHeight = action<Whose & { to: number }>({
  edit: (session, { to, ...which }, context) => {
    const frameHeight = clamp(to, LIMITS.frameHeight);
    return reframe(session, { ...session.crop, frameHeight, framing: null }, which, context);
  },
  label: (after) => `Frame set to ${formatLength(after.crop.frameHeight, after.units, 'frame')}`,
});

/** Takes a named framing: its usual height for this sitter, its orientation, the eyes' usual place. */
export const setFraming = action<{ framing: string }>({
  edit: (session, { framing: id }, context) => {
    const framing = context.models.framings.get(id);
    if (!framing) return session;
    const crop: Crop = {
      ...session.crop,
      framing: id,
      frameHeight: usualFrameHeight(framedPerson(session), framing, context.models),
      orientation: framing.orientation,
      eyesAt: framing.eyesAt,
      eyesAcross: 0.5,
    };
    return reframe(session, crop, {}, context);
  },
  label: (_, { framing }, { models }) =>
    `Framing: ${models.framings.get(framing)?.name ?? framing}`,
});

const HOLD_WORDS: Readonly<Record<Hold, string>> = {
  'frame-height': 'frame height',
  'head-height': 'head height',
  'pupil-distance': 'the distance between the pupils',
};

/** What two pictures have equal when their crops match. */
export const setHold = action<{ to: Hold }>({
  edit: (session, { to }) => ({ ...session, crop: { ...session.crop, hold: to } }),
  label: (_, { to }) => `Crop held by ${HOLD_WORDS[to]}`,
});

export const setOrientation = action<{ to: Crop['orientation'] }>({
  edit: (session, { to }) => ({ ...session, crop: { ...session.crop, orientation: to } }),
  label: (_, { to }) => (to === 'portrait' ? 'Frame upright' : 'Frame lying'),
});

/** Where the eyes sit: shares of the frame, `down` from the top and `across` from the left. */
export const setEyesAt = action<{ down?: number; across?: number }>({
  edit: (session, { down, across }) => ({
    ...session,
    crop: {
      ...session.crop,
      eyesAt: down ?? session.crop.eyesAt,
      eyesAcross: across ?? session.crop.eyesAcross,
    },
  }),
  label: () => 'Eyes placed in the frame',
});
