/** What a thing of the drawing is moved by: its numbers, the ways they grow on the sheet, and the keys. */
import type { Units } from '../../readings/quantities';
import type { Box, Point } from '../geometry';
import { distanceAfterKey, snap } from '../steps';
import type { Move, Moved, PlanThing } from './types';

export interface GripAxis {
  readonly name: string;
  readonly value: number;
  readonly move: Move;
  /** Unit vector on the sheet (y down) in which the value grows. */
  readonly way: Point;
  /** The value in words. */
  readonly spoken: string;
}

export interface GripPlace {
  readonly id: string;
  readonly what: PlanThing;
  readonly axes: readonly [GripAxis] | readonly [GripAxis, GripAxis];
  readonly pxPerMetre: number;
  /** Where a finger or mouse takes hold. */
  readonly targets: readonly Box[];
  /** What the focus ring goes round. */
  readonly ring: Box;
  /** Where the reason of a limit stands. */
  readonly near: Point;
}

/** A number's way on the sheet counts for an arrow key when it runs at least so far along it. */
const ALONG = 0.3;

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowRight: { x: 1, y: 0 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** The numbers after a key pressed on the `focused`th, or null when the key is none of the slider's. */
export function afterKey(
  { axes }: Pick<GripPlace, 'axes'>,
  focused: 0 | 1,
  event: { readonly key: string; readonly shiftKey: boolean },
  units: Units,
): Moved | null {
  const arrow = ARROWS[event.key];
  const [first, second] = axes;
  const which =
    arrow && second && Math.abs(dot(arrow, second.way)) > Math.abs(dot(arrow, first.way))
      ? 1
      : arrow && second
        ? 0
        : focused;
  const axis = which === 1 && second ? second : first;
  const along = arrow ? dot(arrow, axis.way) : 0;
  const key =
    Math.abs(along) < ALONG ? event.key : along > 0 ? ('ArrowRight' as const) : 'ArrowLeft';
  const next = distanceAfterKey({ ...event, key }, axis.value, units, axis.move);
  if (next === null) return null;
  if (!second) return [next];
  return which === 1 ? [first.value, next] : [next, second.value];
}

/** The numbers after the hand has carried the thing by (dx, dy) pixels from where it had `from`. */
export function afterCarry(
  { axes, pxPerMetre }: Pick<GripPlace, 'axes' | 'pxPerMetre'>,
  from: Moved,
  carried: Point,
  units: Units,
): Moved {
  const next = (axis: GripAxis, start: number) =>
    snap(start + dot(carried, axis.way) / pxPerMetre, units, axis.move);
  const [first, second] = axes;
  const along = next(first, from[0]);
  return second ? [along, next(second, from[1] ?? second.value)] : [along];
}

export const valuesOf = ({ axes: [first, second] }: Pick<GripPlace, 'axes'>): Moved =>
  second ? [first.value, second.value] : [first.value];

/** A box about a point. */
export const boxAbout = ({ x, y }: Point, width: number, height = width): Box => ({
  x: x - width / 2,
  y: y - height / 2,
  width,
  height,
});
