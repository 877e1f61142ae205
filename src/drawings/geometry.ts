/** Plane geometry of the drawings: clipping and overlap. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Segment = readonly [Point, Point];

/**
 * The part of a segment inside a box, or null when it misses it. The box's axes may run either
 * way up; its sides count as inside. Method: Liang and Barsky 1984, "A new concept and method for
 * line clipping".
 */
export function clipSegment([from, to]: Segment, box: Box): Segment | null {
  const along = { x: to.x - from.x, y: to.y - from.y };
  let enter = 0;
  let leave = 1;
  const sides = [
    [-along.x, from.x - box.x],
    [along.x, box.x + box.width - from.x],
    [-along.y, from.y - box.y],
    [along.y, box.y + box.height - from.y],
  ] as const;
  for (const [towards, room] of sides) {
    if (towards === 0) {
      if (room < 0) return null;
    } else if (towards < 0) {
      enter = Math.max(enter, room / towards);
    } else {
      leave = Math.min(leave, room / towards);
    }
  }
  if (enter > leave) return null;
  const at = (share: number): Point =>
    share === 0
      ? from
      : share === 1
        ? to
        : { x: from.x + share * along.x, y: from.y + share * along.y };
  return [at(enter), at(leave)];
}

/** Whether a segment touches a box. */
export function segmentMeetsBox(segment: Segment, box: Box): boolean {
  return clipSegment(segment, box) !== null;
}

/** Whether two boxes share area, or come nearer than `gap`. */
export function boxesOverlap(a: Box, b: Box, gap = 0): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap &&
    b.y < a.y + a.height + gap
  );
}

/** The box with `by` more on every side. */
export function grow({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

/** Whether `inner` lies wholly inside `outer`. */
export function boxInside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** The point of a box that is nearest to a point. */
export const intoBox = ({ x, y }: Point, box: Box): Point => ({
  x: Math.min(Math.max(x, box.x), box.x + box.width),
  y: Math.min(Math.max(y, box.y), box.y + box.height),
});

/** The chain of segments through a list of points. */
export function segmentsOf(points: readonly Point[]): Segment[] {
  return points.slice(1).map((point, i) => [points[i] ?? point, point]);
}

/** Area inside a closed ring by the shoelace formula; counter-clockwise (y up) is positive. */
export function ringArea(ring: readonly Point[]): number {
  let twice = 0;
  for (const [i, point] of ring.entries()) {
    const next = ring[(i + 1) % ring.length] ?? point;
    twice += point.x * next.y - next.x * point.y;
  }
  return twice / 2;
}

/** SVG path data of an open chain, to a tenth of a pixel. */
export function chainPath(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`).join('');
}

/** SVG path data of closed rings, to a tenth of a pixel. */
export function ringsPath(rings: readonly (readonly Point[])[]): string {
  return rings.map((ring) => `${chainPath(ring)}Z`).join('');
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
