/** Convex polygons: of floor points (x, z), or of points in the room. */

/** The part of a convex polygon where a linear function is not negative. */
export function cut<Point extends readonly number[]>(
  polygon: readonly Point[],
  inside: (point: Point) => number,
): Point[] {
  return polygon.flatMap((p, i): Point[] => {
    const q = polygon[(i + 1) % polygon.length] as Point;
    const [u, v] = [inside(p), inside(q)];
    const kept: Point[] = u >= 0 ? [p] : [];
    if (u * v >= 0) return kept;
    const t = u / (u - v);
    return [...kept, p.map((a, j) => a + t * ((q[j] as number) - a)) as unknown as Point];
  });
}

/** Where an outline crosses the line on which one coordinate (0 is x, 1 is z) has a value: the other one. */
export function crossings(
  outline: readonly (readonly [x: number, z: number])[],
  axis: 0 | 1,
  at: number,
): number[] {
  const other = axis === 0 ? 1 : 0;
  return outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length] as typeof p;
    const [from, to] = [p[axis], q[axis]];
    if (from === to || (from - at) * (to - at) > 0) return [];
    return [p[other] + ((at - from) / (to - from)) * (q[other] - p[other])];
  });
}
