/** How much larger a nose is drawn than the ears, of each person of a framing, at any depth. Metres. */
import { type Polynomial, valueAt } from './polynomial';
import type { PlanPerson, Wanted } from './types';

/**
 * |C|^2 - C . P for a camera C = (0, h, s), both told from a person's eyes: the distance to the eyes times the
 * depth of P before the lens, along the line to the eyes. Its quotient for two points is the ratio of their
 * sizes (optics/perspective).
 */
function depthTimesDistance(
  { eyes: [x, y, z] }: PlanPerson,
  point: PlanPerson['noseTip'],
  height: number,
): Polynomial {
  const up = height - y;
  const [px, py, pz] = [point[0] - x, point[1] - y, point[2] - z];
  // C told from the eyes is (-x, up, s - z).
  return [x * x + up * up + z * z + x * px - up * py + z * pz, -2 * z - pz, 1];
}

/** An ear's quotient over the nose's is the nose-to-ear ratio. */
export interface NoseAndEars {
  readonly id: string;
  readonly nose: Polynomial;
  readonly ears: readonly [right: Polynomial, left: Polynomial];
}

export const nosesAndEars = ({ people, cameraHeight }: Wanted): NoseAndEars[] =>
  people.map((person) => ({
    id: person.id,
    nose: depthTimesDistance(person, person.noseTip, cameraHeight),
    ears: [
      depthTimesDistance(person, person.ears[0], cameraHeight),
      depthTimesDistance(person, person.ears[1], cameraHeight),
    ],
  }));

/** The largest nose-to-ear ratio less 1 of anybody, with the eye plane at `depth`. */
export function noseGainAt(people: readonly NoseAndEars[], depth: number): number {
  let largest = Number.NEGATIVE_INFINITY;
  for (const { nose, ears } of people) {
    const ear = Math.max(valueAt(ears[0], depth), valueAt(ears[1], depth));
    largest = Math.max(largest, ear / valueAt(nose, depth) - 1);
  }
  return largest;
}
