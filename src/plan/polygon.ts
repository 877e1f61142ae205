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
