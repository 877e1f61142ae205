/** The order of shooting against every order there is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestOrder } from '../../src/plan/best-order';

const MOST_SHOTS = 7;

/** All orders of some things, as a dictionary lists them. */
const orders = (things: readonly number[]): number[][] =>
  things.length === 0
    ? [[]]
    : things.flatMap((first) =>
        orders(things.filter((one) => one !== first)).map((others) => [first, ...others]),
      );

const costOf = (order: readonly number[], cost: readonly (readonly number[])[]): number =>
  order.slice(1).reduce((sum, to, i) => sum + (cost[order[i] as number]?.[to] as number), 0);

/** Changes between shots cost whole numbers, and may cost more one way than the other. */
const costs = fc.integer({ min: 0, max: MOST_SHOTS }).chain((n) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 12 }), { minLength: n, maxLength: n }), {
    minLength: n,
    maxLength: n,
  }),
);

test('the order found is the first of those that cost least', () => {
  fc.assert(
    fc.property(costs, (cost) => {
      const all = orders(cost.map((_, i) => i));
      const least = Math.min(...all.map((order) => costOf(order, cost)));
      expect(bestOrder(cost)).toEqual(all.find((order) => costOf(order, cost) === least));
    }),
    { numRuns: 200, seed: 13 },
  );
});
