import { type Metre, metres } from '../optics/units';
import { METRES_PER } from './parse';

export type PersonalDistance = 'intimate' | 'personal' | 'social' | 'public';

const feet = (value: number): Metre => metres(value * METRES_PER.ft);

/**
 * Bands of distance between two people, each with its outer limit.
 * Source: Hall ET. 1966. The Hidden Dimension. Doubleday: 1.5, 4 and 12 feet.
 */
export const PERSONAL_DISTANCES: readonly {
  readonly band: PersonalDistance;
  readonly upTo: Metre;
}[] = [
  { band: 'intimate', upTo: feet(1.5) },
  { band: 'personal', upTo: feet(4) },
  { band: 'social', upTo: feet(12) },
  { band: 'public', upTo: metres(Number.POSITIVE_INFINITY) },
];

/** The band in which a photographer at that standpoint stands; a limit belongs to the nearer band. */
export function personalDistance(standpoint: number): PersonalDistance {
  return PERSONAL_DISTANCES.find(({ upTo }) => standpoint <= upTo)?.band ?? 'public';
}
