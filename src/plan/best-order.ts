/**
 * The order in which the changes from one to the next cost least, by the exact search over subsets of Held and
 * Karp (1962): twelve are a matter of milliseconds. Of equal orders, the first in the order of a dictionary: it
 * keeps to the order they are listed in for as long as it can.
 */
export function bestOrder(cost: readonly (readonly number[])[]): number[] {
  const n = cost.length;
  const everything = 2 ** n - 1;
  // The least cost of taking a set that begins with one of it.
  const least = new Float64Array(n * 2 ** n);
  const leastOf = (set: number, first: number) => least[set * n + first] as number;
  /** Whom to take first out of a set, `before` being taken before it; -1 for nobody. */
  const firstOf = (set: number, before: number): number => {
    let [best, found] = [-1, Number.POSITIVE_INFINITY];
    for (let next = 0; next < n; next++) {
      if (!(set & (1 << next))) continue;
      const whole = leastOf(set, next) + (before < 0 ? 0 : (cost[before]?.[next] ?? 0));
      if (whole < found) [best, found] = [next, whole];
    }
    return best;
  };
  for (let set = 1; set <= everything; set++)
    for (let first = 0; first < n; first++) {
      const others = set & ~(1 << first);
      if (others === set || others === 0) continue;
      const next = firstOf(others, first);
      least[set * n + first] = (cost[first]?.[next] ?? 0) + leastOf(others, next);
    }
  const order: number[] = [];
  for (let set = everything; set > 0; set &= ~(1 << (order.at(-1) as number)))
    order.push(firstOf(set, order.at(-1) ?? -1));
  return order;
}
