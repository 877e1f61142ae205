/** How a named framing holds a group: its lower edge under the front row, and where the eyes then sit. Metres. */
import { dimensionsOf, frameHeightOf } from '../models/framing';
import type { FramingModel, Models } from '../models/types';
import type { Vec3 } from '../optics/types';
import { type MemberPlace, USUAL_GROUP } from '../plan/group';
import { known } from './known';
import { clamp, LIMITS } from './limits';
import type { Gathered } from './plan-people';
import type { Group } from './types';

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
  gathered: Gathered,
  framing: FramingModel,
  models: Models,
): readonly Vec3[] {
  return frontOf(gathered).map((place) => {
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
  gathered: Gathered,
  framing: FramingModel,
  models: Models,
): number {
  const { members } = gathered.places;
  const room = Math.max(
    ...frontOf(gathered).map(
      (place) => edgesOf(group, place, framing, models).above - place.member.crown,
    ),
  );
  const top = Math.max(...members.map(({ eyes, member }) => eyes[1] + member.crown)) + room;
  const bottom = Math.max(...downTo(group, gathered, framing, models).map(([, y]) => -y));
  return clamp(Math.round((100 * top) / (top + bottom)) / 100, LIMITS.eyesAt);
}
