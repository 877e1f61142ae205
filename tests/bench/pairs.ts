/**
 * Two ways of doing a thing, timed in turns on one machine. Each pair gives one ratio, so that what slows
 * both sides alike (other programs, heat) cancels; the median of the ratios is the result.
 */
export type Work = () => unknown;

export interface Ratio {
  readonly median: number;
  /** First and third quartile of the pairs' ratios: the noise of the run. */
  readonly from: number;
  readonly to: number;
  readonly pairs: number;
}

/** A shorter batch is lost in the clock's steps and in one turn of another program, milliseconds. */
const SHORTEST_BATCH = 150;

async function time(work: Work, times: number): Promise<number> {
  const start = performance.now();
  for (let i = 0; i < times; i++) {
    const done = work();
    if (done instanceof Promise) await done;
  }
  return performance.now() - start;
}

/** How often work is done in a batch that the clock can measure. Warms it up besides. */
async function batchOf(work: Work): Promise<number> {
  for (let times = 1; ; times *= 2) if ((await time(work, times)) >= SHORTEST_BATCH) return times;
}

function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const [below, above] = [sorted[Math.floor(at)] as number, sorted[Math.ceil(at)] as number];
  return below + (above - below) * (at - Math.floor(at));
}

export function summary(ratios: readonly number[]): Ratio {
  const sorted = [...ratios].sort((a, b) => a - b);
  const [from, median, to] = [0.25, 0.5, 0.75].map((share) => quantile(sorted, share)) as [
    number,
    number,
    number,
  ];
  return { median, from, to, pairs: ratios.length };
}

/** Cost of `ours` over that of `plain`, pair by pair, the first of each pair changing in turns. */
export async function compareCost(ours: Work, plain: Work, pairs: number): Promise<Ratio> {
  const [many, few] = [await batchOf(ours), await batchOf(plain)];
  const ratios: number[] = [];
  for (let pair = 0; pair < pairs; pair++) {
    const plainFirst = pair % 2 === 0 ? await time(plain, few) : null;
    const own = (await time(ours, many)) / many;
    ratios.push(own / ((plainFirst ?? (await time(plain, few))) / few));
  }
  return summary(ratios);
}
