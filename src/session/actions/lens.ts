/** Focal lengths, named lenses, and the wider picture that a crop is cut from. */
import { formatFocal, formatLength } from '../../readings/format';
import { type ActionContext, frameHeightForFocal, standpointForFocal } from '../follow';
import { lensesOf } from '../kit';
import { known } from '../known';
import { clamp, LIMITS } from '../limits';
import { resolvePicture } from '../resolve';
import type { Kept, Letter, Picture, Session, View } from '../types';
import { action, editPictures, pictureOf } from './action';

/** The picture with its present focal length locked; a lens that is named keeps its mark. */
function freeze(session: Session, picture: Picture, context: ActionContext): Picture {
  if (picture.view.by !== 'crop') return picture;
  const { focal, lensMark } = resolvePicture(session, picture, context.models, context.cast);
  const locked = picture.lens === null ? focal : (lensMark ?? focal);
  return { ...picture, view: { by: 'lens', focal: locked } };
}

const unlock = (picture: Picture): Picture =>
  picture.view.by === 'lens' ? { ...picture, view: { by: 'crop' } } : picture;

const KEPT_WORDS: Readonly<Record<Kept, string>> = {
  crop: 'the crop',
  lens: 'the lens',
  standpoint: 'the standpoint',
};

/**
 * What stays while a handle moves. The lens: each picture's present focal length is locked, and
 * the crop follows. Else the pictures return to the session's crop. A cut keeps its lens in any case.
 */
export const setKept = action<{ to: Kept }>({
  edit: (session, { to }, context) => ({
    ...editPictures(session, {}, (picture) =>
      to === 'lens' ? freeze(session, picture, context) : unlock(picture),
    ),
    kept: to,
  }),
  label: (_, { to }) => `Moving keeps ${KEPT_WORDS[to]}`,
});

/**
 * Sets the focal length. A locked or cut lens just takes it. Otherwise the third quantity
 * follows: the standpoint while the crop is kept, the crop while the standpoint is.
 */
export const setFocal = action<{ letter: Letter; to: number }>({
  edit: (session, { letter, to }, context) => {
    const picture = pictureOf(session, letter);
    if (!picture) return session;
    const focal = clamp(to, LIMITS.focal);
    const { view } = picture;
    if (view.by !== 'crop') {
      return editPictures(session, { letter }, () => ({ ...picture, view: { ...view, focal } }));
    }
    if (session.kept === 'standpoint') {
      const frame = frameHeightForFocal(session, picture, focal, context);
      const frameHeight = clamp(frame ?? LIMITS.frameHeight.least, LIMITS.frameHeight);
      return { ...session, crop: { ...session.crop, frameHeight, framing: null } };
    }
    const standpoint = standpointForFocal(session, picture, focal, context);
    return editPictures(session, { letter }, () => ({ ...picture, standpoint }));
  },
  label: (after, { letter, to }) => {
    const set = `${letter} set to ${formatFocal(clamp(to, LIMITS.focal))}`;
    const picture = pictureOf(after, letter);
    if (after.kept !== 'crop' || picture?.view.by !== 'crop') return set;
    return `${set} at ${formatLength(picture.standpoint, after.units, 'distance')}`;
  },
});

/** The nearest focal length a lens has. */
const onLens = (
  session: Session,
  focal: number,
  lens: string,
  { models }: ActionContext,
): number => {
  const [least, most] = known(lensesOf(session, models), lens).focal;
  return clamp(focal, { least, most });
};

/** A fixed view on another lens: on a named one its nearest mark, on none the focal length it acts as. */
export function viewOn(
  session: Session,
  picture: Picture,
  lens: string | null,
  context: ActionContext,
): View {
  const { view } = picture;
  if (view.by === 'crop') return view;
  const focal =
    lens === null
      ? resolvePicture(session, picture, context.models, context.cast).focal
      : onLens(session, view.focal, lens, context);
  return { ...view, focal };
}

/** Names the lens that must take a picture, or leaves it to whichever of the kit can (null). */
export const setLens = action<{ letter: Letter; lens: string | null }>({
  edit: (session, { letter, lens }, context) => {
    if (lens !== null && !lensesOf(session, context.models).has(lens)) return session;
    return editPictures(session, { letter }, (picture) =>
      picture.lens === lens
        ? picture
        : { ...picture, lens, view: viewOn(session, picture, lens, context) },
    );
  },
  label: (after, { letter, lens }, { models }) =>
    lens === null
      ? `${letter} taken by any lens of the kit`
      : `${letter} taken with the ${lensesOf(after, models).get(lens)?.name ?? lens}`,
});

/** "Stay back and crop": the session's crop out of the wider picture of a fixed focal length. */
export const cutFromLens = action<{ letter: Letter; focal: number; lens?: string }>({
  edit: (session, { letter, focal, lens }, context) => {
    if (lens !== undefined && !lensesOf(session, context.models).has(lens)) return session;
    const set = lens === undefined ? focal : onLens(session, focal, lens, context);
    return editPictures(session, { letter }, (picture) => ({
      ...picture,
      view: { by: 'cut', focal: set },
      lens: lens ?? null,
    }));
  },
  label: (after, { letter }) => {
    const view = pictureOf(after, letter)?.view;
    return view?.by === 'cut' ? `${letter} cut from ${formatFocal(view.focal)}` : `${letter} cut`;
  },
});

/** Ends a cut: the crop by the focal length it needs, locked when lenses are kept. */
export const endCut = action<{ letter: Letter }>({
  edit: (session, { letter }, context) =>
    editPictures(session, { letter }, (picture) => {
      if (picture.view.by !== 'cut') return picture;
      const whole: Picture = { ...picture, view: { by: 'crop' } };
      return session.kept === 'lens' ? freeze(session, whole, context) : whole;
    }),
  label: (_, { letter }) => `${letter} no longer cut`,
});
