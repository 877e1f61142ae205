/** What the words of a page are made from. Pure. */
import { distanceForGain } from '../../optics/perspective';
import { metres } from '../../optics/units';
import { gainAgainst } from '../../readings/compare';
import { formatLength, formatPercent } from '../../readings/format';
import type { SpokenPair } from '../words/page.en';
import type { PageSitting } from './useSitting';

/** Frames of two pictures that differ by less are the same crop. */
const ALIKE = 0.01;

/** The first picture against the last; null where only one hangs. */
export function spokenPair({ session, pictures, pronoun }: PageSitting): SpokenPair | null {
  const first = pictures[0];
  const last = pictures.at(-1);
  if (!last || last === first) return null;
  const show = (length: number, purpose: 'distance' | 'frame') =>
    formatLength(length, session.units, purpose);
  const [near, far] =
    first.resolved.standpoint <= last.resolved.standpoint ? [first, last] : [last, first];
  const gain = gainAgainst(near.measures, far.measures);
  return {
    a: first.letter,
    b: last.letter,
    from: show(first.resolved.standpoint, 'distance'),
    to: show(last.resolved.standpoint, 'distance'),
    frame: show(first.resolved.frameHeight, 'frame'),
    person: pronoun,
    alike: Math.abs(first.resolved.frameHeight / last.resolved.frameHeight - 1) < ALIKE,
    gain: gain === null ? null : `${formatPercent(gain)} larger`,
    nearer: near.letter,
  };
}

/** Where the nose gains half as much over the ears as in the nearest picture, as shown; null where nowhere. */
export function halfGain({ session, pictures }: PageSitting): string | null {
  const nearest = [...pictures].sort((a, b) => a.resolved.standpoint - b.resolved.standpoint)[0];
  const { noseToEar, depth } = nearest?.measures.face ?? pictures[0].measures.face;
  if (noseToEar.mean === null) return null;
  const where = distanceForGain(metres(depth.nose), metres(depth.ears), (noseToEar.mean - 1) / 2);
  return where.ok ? formatLength(where.value, session.units, 'distance') : null;
}
