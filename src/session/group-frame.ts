/** Where a session's group stands, and how a named framing holds it: the lower edge, and where the eyes sit. Metres. */
import { dimensionsOf, frameHeightOf } from '../models/framing';
import type { FramingModel, Models } from '../models/types';
import type { Vec3 } from '../optics/types';
import { type MemberPlace, USUAL_GROUP } from '../plan/group';
import { known } from './known';
import { clamp, LIMITS } from './limits';
import { type Gathered, gathered } from './plan-people';
import type { Group, Session } from './types';

/** From the camera of the picture that results are hung in to the eye plane, along the level axis. */
export function hungDepth({ plan, pictures }: Pick<Session, 'plan' | 'pictures'>): number {
  const hung = pictures.find(({ letter }) => letter === plan.picture) ?? pictures[0];
  if (!hung) return 1;
  const { standpoint, cameraHeight } = hung;
  return Math.sqrt(Math.max(0, standpoint ** 2 - cameraHeight ** 2)) || standpoint;
}

/** The session's group, a curved one bent about the picture that results are hung in; null without one. */
export function gatheredGroup(
  session: Pick<Session, 'plan' | 'pictures'>,
  models: Models,
): Gathered | null {
  const { group } = session.plan;
  if (group === null) return null;
  const depth = hungDepth(session);
  return gathered(group, depth, models) ?? gathered({ ...group, curve: 'straight' }, depth, models);
}

/** The edges of one sitter's picture, from the eyes of somebody who stands. */
interface Edges {
  readonly above: number;
  readonly below: number;
}

function edgesOf(
  { rows }: Group,
  { row, across }: MemberPlace,
  framing: FramingModel,
  models: Models,
): Edges {
  const model = known(models.sitters, rows[row]?.models[across] as string);
  const { usual } = frameHeightOf(framing, dimensionsOf(model));
  return { above: framing.eyesAt * usual, below: (1 - framing.eyesAt) * usual };
}

const frontOf = ({ places }: Gathered): MemberPlace[] =>
  places.members.filter(({ row }) => row === 0);

/**
 * What the frame reaches down to: under each of the front row as far as in a picture of one sitter. Of somebody
 * seated it shows as much, but no more of the floor under the feet.
 */
export function downTo(
  group: Group,
  together: Gathered,
  framing: FramingModel,
  models: Models,
): readonly Vec3[] {
  return frontOf(together).map((place) => {
    const { member, eyes } = place;
    const { below } = edgesOf(group, place, framing, models);
    const feet =
      place.place === 'seated' ? member.seatedEyes + USUAL_GROUP.seat.value : member.standingEyes;
    const underFeet = Math.max(0, below - member.standingEyes);
    return [eyes[0], eyes[1] - Math.min(below, feet + underFeet), eyes[2]];
  });
}

/**
 * Where the first person's eyes sit, as a share of the frame's height from the top, when the frame reaches as
 * far over the highest crown as over that of one sitter, and down to the framing's lower edge.
 */
export function groupEyesAt(
  group: Group,
  together: Gathered,
  framing: FramingModel,
  models: Models,
): number {
  const { members } = together.places;
  const room = Math.max(
    ...frontOf(together).map(
      (place) => edgesOf(group, place, framing, models).above - place.member.crown,
    ),
  );
  const top = Math.max(...members.map(({ eyes, member }) => eyes[1] + member.crown)) + room;
  const bottom = Math.max(...downTo(group, together, framing, models).map(([, y]) => -y));
  return clamp(Math.round((100 * top) / (top + bottom)) / 100, LIMITS.eyesAt);
}
