/** Depth of the eye plane along the level axis and standpoint distance: d^2 = s^2 + height^2. Metres. */
import type { Interval } from './intervals';
import type { Condition, Span } from './types';

export const standpointAt = (depth: number, height: number): number =>
  Math.sqrt(depth * depth + height * height);

/** 0 where no camera of that height stands so near. */
export const depthAt = (standpoint: number, height: number): number =>
  Math.sqrt(Math.max(0, standpoint * standpoint - height * height));

/** What is named where nothing but the depths looked at ends an interval. */
const FIRST: Condition = { name: 'clearance' };
const LAST: Condition = { name: 'wall-behind-camera' };

/** Depths -> standpoint distances. */
export const spanOf = ({ from, to, fromBy, toBy }: Interval, height: number): Span => ({
  from: standpointAt(from, height),
  to: standpointAt(to, height),
  fromBy: fromBy ?? FIRST,
  toBy: toBy ?? LAST,
});
