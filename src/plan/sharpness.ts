/**
 * What the aperture must do: a point at depth x is drawn as a disc f^2 |x - F| / (N x (F - f)), with the lens
 * focused on F (optics/focus). F is the eye plane, or for rows the plane that shares the nearest and the farthest
 * of them, 2 a b / (a + b).
 */
import type { Quotient, Scene, Solved } from './conditions';
import { where } from './intervals';
import { less, linear, type Polynomial, product, sum, times } from './polynomial';
import type { PlanPerson, Sharp } from './types';

const S: Polynomial = [0, 1];

/** H + h, times Q. */
export const frameAndSensor = ({ upper, lower, sensor }: Scene): Polynomial =>
  sum(upper, times(lower, sensor.height));

/** How far before (+) or behind (-) the first person's eyes the parts lie that are to be sharp. */
export function sharpDepths(people: readonly PlanPerson[], sharp: Sharp): number[] {
  return people.flatMap(({ pupils, noseTip, ears }) => {
    const eyes = pupils.map(([, , z]) => z);
    return sharp === 'nose-to-ears' ? [...eyes, noseTip[2], ...ears.map(([, , z]) => z)] : eyes;
  });
}

/** Rows that are focused between; null when the focus is on the first person's eyes. */
export function sharedRows(
  people: readonly PlanPerson[],
  sharp: Sharp | null,
): { readonly near: number; readonly far: number } | null {
  if (sharp !== 'rows') return null;
  const depths = sharpDepths(people, sharp);
  return { near: Math.max(...depths), far: Math.min(...depths) };
}

/** N times the disc at depth x, for x behind (sign 1) or before (sign -1) the plane in focus. */
function discTimesN(each: Scene, x: Polynomial, sign: 1 | -1): Quotient {
  const { lower, sensor, wanted, asked } = each;
  const acting = product(times(lower, sensor.height), S);
  const whole = frameAndSensor(each);
  const rows = sharedRows(wanted.people, asked.sharp);
  if (rows === null) {
    // Focus on the eyes: U s - f U = P s, and s is left out above and below.
    return {
      over: times(product(product(times(lower, sensor.height), acting), less(x, S)), sign),
      under: product(product(x, whole), each.upper),
    };
  }
  const [a, b] = [linear(-rows.near, 1), linear(-rows.far, 1)];
  const [over, under] = [times(product(a, b), 2), sum(a, b)];
  return {
    over: times(product(product(acting, acting), less(product(x, under), over)), sign),
    under: product(product(x, whole), less(product(whole, over), product(acting, under))),
  };
}

/** f-numbers from which each part that is asked for is sharp. */
export function sharpFNumbers(each: Scene): Quotient[] {
  const { asked, wanted, circleOfConfusion: circle } = each;
  if (asked.sharp === null) return [];
  const rows = sharedRows(wanted.people, asked.sharp);
  const depths = sharpDepths(wanted.people, asked.sharp);
  const [near, far] = [Math.max(...depths), Math.min(...depths)];
  // Between rows the discs at both ends are equal.
  const ends: [number, 1 | -1][] = rows
    ? [[near, -1]]
    : [
        [near, near > 0 ? -1 : 1],
        [far, far > 0 ? -1 : 1],
      ];
  return ends
    .filter(([z]) => z !== 0 || rows)
    .map(([z, sign]) => {
      const { over, under } = discTimesN(each, linear(-z, 1), sign);
      return { over, under: times(under, circle) };
    });
}

/** The largest f-number at which the backdrop is as soft as asked; null where that is not asked. */
export function softFNumber(each: Scene): Quotient | null {
  const { softness } = each.asked;
  if (softness === null) return null;
  const { over, under } = discTimesN(each, linear(each.room.backdrop.behind, 1), 1);
  return { over, under: times(under, softness * each.sensor.height) };
}

/** Where an aperture no smaller than `smallest` is small enough. */
export const sharpConditions = (needs: readonly Quotient[], smallest: number): Solved[] =>
  needs.map(({ over, under }) => {
    const by = { name: 'sharpness' } as const;
    return { by, at: where(less(times(under, smallest), over), by) };
  });

/** Where one aperture can be both sharp and soft. */
export const sharpAndSoftConditions = (
  needs: readonly Quotient[],
  soft: Quotient | null,
): Solved[] =>
  soft === null
    ? []
    : needs.map(({ over, under }) => {
        const by = { name: 'sharp-and-soft' } as const;
        return { by, at: where(less(product(soft.over, under), product(over, soft.under)), by) };
      });
