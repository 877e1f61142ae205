/**
 * When a thing on the floor is in the picture: some point of its outline lies, seen from above, inside the
 * field between backdrop and lens, and its top, seen from the side, above the field's lower edge there. Both
 * ask for the same: the nearer to the sitter a point of it lies, the wider and deeper is the field. So the
 * corners decide, and the places where its sides pass the lower edge of the field.
 */
import type { Scene, Solved } from './conditions';
import { both, either, type Interval, outside, where } from './intervals';
import { cut } from './polygon';
import { less, linear, type Polynomial, product, sum, times } from './polynomial';
import type { PlanObstacle } from './types';

type Point = readonly [x: number, z: number];

const S: Polynomial = [0, 1];

/** One half of the field: `share` of the frame's width to that side, x counted outwards. */
function seenAt(each: Scene, outline: readonly Point[], share: number, top: number): Interval[] {
  const { upper, lower, sensor, wanted } = each;
  const edge = times(upper, (share * sensor.width) / sensor.height);
  const below = times(upper, 1 - wanted.eyesAt);
  // The field's lower edge passes the height `top` at z = s over / under.
  const over = sum(below, times(lower, top));
  const under = sum(below, times(lower, wanted.cameraHeight));
  const corners = outline.map(([x, z]) => {
    const before = linear(-z, 1);
    const inField = less(product(edge, before), times(product(lower, S), x));
    const above = less(product(over, S), times(under, z));
    return both(both(where(before, null), where(inField, null)), where(above, null));
  });
  const sides = outline.map(([x1, z1], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length] as Point;
    if (z1 === z2) return [];
    const slope = (x2 - x1) / (z2 - z1);
    const onSide = (z: number, sign: 1 | -1) =>
      where(times(less(product(over, S), times(under, z)), sign), null);
    // x of the side at that z, times `under`.
    const x = sum(times(under, x1 - slope * z1), times(product(over, S), slope));
    return both(
      both(onSide(Math.min(z1, z2), 1), onSide(Math.max(z1, z2), -1)),
      where(less(product(edge, less(under, over)), product(lower, x)), null),
    );
  });
  return [...corners, ...sides].flat();
}

/** Depths from which the thing is not in the picture. */
export function obstacleInPicture(each: Scene, obstacle: PlanObstacle): Solved {
  const by = { name: 'obstacle-in-picture', of: obstacle.id } as const;
  const { wanted, room } = each;
  const before = cut(obstacle.outline, ([, z]) => z + room.backdrop.behind);
  const top = room.floor + obstacle.height;
  const right = cut(before, ([x]) => x);
  const left = cut(before, ([x]) => -x).map(([x, z]): Point => [-x, z]);
  const seen = either(
    seenAt(each, right, 1 - wanted.eyesAcross, top),
    seenAt(each, left, wanted.eyesAcross, top),
  );
  return { by, at: outside(seen, by) };
}
