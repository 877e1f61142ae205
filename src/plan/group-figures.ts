/** What rows, spacing and curve of a group do to heads and sharpness from one standpoint. */
import { fNumberForDepth, focusForTwoPlanes } from '../optics/focus';
import { focalForFrame } from '../optics/framing';
import { offAxisStretch } from '../optics/off-axis';
import { must } from '../optics/result';
import type { SensorFormat } from '../optics/types';
import { metres, radians } from '../optics/units';
import { PEOPLE_MARGIN } from './conditions';
import type { PlanPerson } from './types';

export interface GroupFigures {
  /** Width of the frame at the front row, margins with it, metres. */
  readonly width: number;
  /** From the lens to the front row, and from there to the back row, metres. */
  readonly front: number;
  readonly rowsApart: number;
  /** By how much heads of the front row are drawn larger than those of the back row: (s - zb) / (s - zf) - 1. */
  readonly headDifference: number;
  /** Focus that shares the front and the back row, from the lens, and the f-number from which both are sharp. */
  readonly shared: { readonly focus: number; readonly fNumber: number } | null;
  /** The outermost head's image across the picture over the same on the axis: sec t and sec^2 t. */
  readonly ends: { readonly straight: number; readonly curved: number };
  /** How far from the middle the ends may stand, and how many so fit in a row; null where it is not asked. */
  readonly limit: { readonly half: number; readonly people: number } | null;
}

/** How far the outermost shoulders are drawn to either side of the axis, which runs through the first person. */
function reach(people: readonly PlanPerson[], s: number): number {
  return Math.max(
    ...people.map(({ eyes: [x, , z], halfBreadth }) => ((Math.abs(x) + halfBreadth) * s) / (s - z)),
  );
}

/** From head to head in the front row; one person alone has none. */
function frontSpacing(people: readonly PlanPerson[]): number | null {
  const across = people.filter(({ row }) => row === 0).map(({ eyes: [x] }) => x);
  return across.length < 2
    ? null
    : (Math.max(...across) - Math.min(...across)) / (across.length - 1);
}

/**
 * Half a row's width under a stretch limit at depth s: a straight row's heads are drawn sec t wider, so
 * tan t may be sqrt((1 + most)^2 - 1).
 */
export const halfWidthFor = (s: number, most: number): number => s * Math.sqrt((1 + most) ** 2 - 1);

/** Least depth from which two rows `apart` differ by at most a share: (s + apart) / s - 1 = apart / s. */
export const depthForHeads = (apart: number, most: number): number => apart / most;

/** Greatest way from row to row that keeps within it. */
export const rowsApartFor = (s: number, most: number): number => s * most;

/**
 * From `s` before the first person. The frame's width runs over the long side of the format; sharpness is
 * that of the focal length which frames so.
 */
export function groupFigures(
  people: readonly PlanPerson[],
  s: number,
  format: SensorFormat,
  mostStretch: number | null,
): GroupFigures | null {
  const depths = people.map(({ eyes: [, , z] }) => z);
  const [near, far] = [Math.max(...depths), Math.min(...depths)];
  if (people.length === 0 || near >= s) return null;
  const width = (2 * reach(people, s)) / (1 - 2 * PEOPLE_MARGIN);
  const height = (width * format.shortSide) / format.longSide;
  const focal = must(focalForFrame(metres(height), metres(s), format.shortSide));
  const [a, b] = [metres(s - near), metres(s - far)];
  const fNumber = must(fNumberForDepth(focal, a, b, format.circleOfConfusion));
  const angle = Math.max(...people.map(({ eyes: [x, , z] }) => Math.atan(Math.abs(x) / (s - z))));
  const stretch = must(offAxisStretch(radians(angle)));
  const spacing = frontSpacing(people);
  const half = mostStretch === null ? null : halfWidthFor(s - near, mostStretch);
  return {
    width,
    front: s - near,
    rowsApart: near - far,
    headDifference: (s - far) / (s - near) - 1,
    shared: near === far ? null : { focus: must(focusForTwoPlanes(a, b)), fNumber },
    ends: {
      straight: stretch.equalDepth.radial,
      curved: stretch.equalDistance.radial,
    },
    limit:
      half === null || spacing === null
        ? null
        : { half, people: Math.floor((2 * half) / spacing) + 1 },
  };
}
