/** Where a chart measures its curves: closely, and closer where they bend. Metres. */

/** Points of a curve: the readings run nearly evenly in 1/d, so these keep within a third of a pixel of it. */
const POINTS = 65;

/** Standpoints from the nearest to the farthest of those given, even in 1/d, the given ones among them. */
export function curveStandpoints(standpoints: readonly number[], points = POINTS): number[] {
  if (standpoints.length === 0) return [];
  const nearest = Math.min(...standpoints);
  const farthest = Math.max(...standpoints);
  const between =
    farthest > nearest
      ? Array.from({ length: points }, (_, i) => {
          const share = i / (points - 1);
          return 1 / ((1 - share) / nearest + share / farthest);
        }).slice(1, -1)
      : [];
  return [...new Set([...standpoints, ...between])].sort((a, b) => a - b);
}
