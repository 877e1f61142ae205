/** Who sits and how. */
import type { DimensionName, Pose } from '../../sitter/types';
import { clampDimension } from '../clamp';
import type { ActionContext } from '../follow';
import { known } from '../known';
import { impossibility } from '../person';
import type { Session } from '../types';
import { action } from './action';
import { usualFrameHeight } from './crop';

/** Another sitter, or the same with other dimensions: a named framing follows the person. */
function withSitter(
  session: Session,
  sitter: Session['sitter'],
  { models }: ActionContext,
): Session {
  const { framing: id } = session.crop;
  const framing = id === null ? undefined : models.framings.get(id);
  if (!framing) return { ...session, sitter };
  const frameHeight = usualFrameHeight(sitter, framing, models);
  return { ...session, sitter, crop: { ...session.crop, frameHeight } };
}

/** Another sitter, with that sitter's own dimensions; the pose stays. */
export const setSitter = action<{ model: string }>({
  edit: (session, { model }, context) =>
    context.models.sitters.has(model) && model !== session.sitter.model
      ? withSitter(session, { model, changes: {}, pose: session.sitter.pose }, context)
      : session,
  label: (after, _, { models }) => `Sitter: ${known(models.sitters, after.sitter.model).name}`,
});

/**
 * Changes one dimension, millimetres; null gives the sitter's own back. What no person can have
 * together changes nothing (`impossibility` says why).
 */
export const setDimension = action<{ dimension: DimensionName; to: number | null }>({
  edit: (session, { dimension, to }, context) => {
    const { [dimension]: _changed, ...others } = session.sitter.changes;
    const { model } = session.sitter;
    const changes =
      to === null
        ? others
        : { ...others, [dimension]: clampDimension(to, dimension, model, context.models) };
    const sitter = { ...session.sitter, changes };
    return impossibility(sitter, context.models) ? session : withSitter(session, sitter, context);
  },
  label: (after, { dimension }, { models }) => {
    const { name } = models.dimensions[dimension];
    const mm = after.sitter.changes[dimension];
    return mm === undefined ? `${name} as measured` : `${name} set to ${Math.round(mm)} mm`;
  },
});

/** Turns, nods and tilts, radians; what is left out stays. */
export const setPose = action<Partial<Pose>>({
  edit: (session, pose) => ({
    ...session,
    sitter: { ...session.sitter, pose: { ...session.sitter.pose, ...pose } },
  }),
  label: () => 'Sitter turned',
});
