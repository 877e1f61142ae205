/** Sizes and scales of the rail: everything else is placed by these. */
import type { Box, Point } from '../geometry';
import { type DistanceScale, type Extent, evenScale, stretchedScale } from '../scale';
import type { RailContent, RailSheet } from './types';

/** Below this width the figures' labels stand in a note under the drawing. */
export const NARROW = 700;
/** Smallest side of a handle's target, CSS pixels. */
export const TARGET = 44;

/** Text sizes and weights, in rem where sizes. */
export const TYPE = { tick: 0.75, note: 0.8125, value: 0.9375, letter: 1.0625, bold: 650 } as const;

/** Heights in rem. */
const ROW = {
  edge: 0.25,
  narrowBand: 5.5,
  wideBand: 6.5,
  value: 1.125,
  leader: 0.375,
  tab: 1.5625,
  tip: 0.625,
  numbers: 1.3,
  zones: 1.75,
  zoneText: 2.7,
  end: 3,
} as const;
/** Half a tab's width, rem. */
const TAB_HALF = 0.9375;
/** Air around the figure and the frame, metres. */
const AIR = 0.02;
/** Width of the hatching that stands for a wall, CSS pixels. */
export const HATCH = 8;
/** Breadth of a body from the eyes backwards while the figure is not there yet, metres. */
const BODY_BEHIND = 0.25;

export interface RailGround {
  readonly narrow: boolean;
  readonly width: number;
  readonly height: number;
  readonly rem: number;
  readonly extent: Extent;
  readonly scale: DistanceScale;
  /** Scale of heights, and of the figure in both directions. */
  readonly pxPerMetre: number;
  /** The eyes. */
  readonly origin: Point;
  /** The room's drawing. */
  readonly band: Box;
  /** The same in metres of the side view, as far as a sight line may run. */
  readonly room: Box;
  /** Height at which the figure is cut, metres. */
  readonly cut: number;
  readonly tab: { readonly top: number; readonly height: number; readonly half: number };
  /** Where the value's line stands when it is above the tab (narrow). */
  readonly valueAbove: number;
  /** Height of the distance line, the numbers' and zone texts' base lines, the zones' bars. */
  readonly line: number;
  readonly numbers: number;
  readonly zones: number;
  readonly zoneText: number;
  /** Side view, metres -> drawing. */
  place(point: Point): Point;
}

/** What heights must be seen, in metres: frames, crown, and the figure down to its cut. */
function heights({ figure, pictures }: RailContent) {
  const bottoms = pictures.map(({ frame }) => frame.bottom);
  const cut = Math.max(figure?.floor ?? -Infinity, Math.min(figure?.chest ?? -0.3, ...bottoms));
  const pupils = pictures.map(({ cameraHeight }) => cameraHeight);
  return {
    cut,
    top:
      Math.max(figure?.crown ?? 0.15, ...pupils, ...pictures.map(({ frame }) => frame.top)) + AIR,
    bottom: Math.min(cut, ...bottoms, ...pupils) - AIR,
  };
}

/** Lays out the rows and fits the scales. */
export function railGround(content: RailContent, sheet: RailSheet): RailGround {
  const { width, rem } = sheet;
  const { room, figure } = content;
  const narrow = width < NARROW;
  const rear = Math.max(room.backdrop, room.rearWall ?? 0);
  const behind = narrow ? Math.min(rear, -(figure?.back ?? -BODY_BEHIND) + 2 * AIR) : rear;
  // A standpoint beyond the wall is still shown where it is.
  const farthest = Math.max(...content.pictures.map(({ standpoint }) => standpoint + AIR));
  const extent = { from: -behind, to: Math.max(room.cameraWall, farthest) };
  const left = narrow ? 0 : HATCH;
  const right = width - HATCH;

  const { cut, top, bottom } = heights(content);
  const need = top - bottom;
  const least = (narrow ? ROW.narrowBand : ROW.wideBand) * rem;
  const most = Math.max(
    least,
    sheet.maxBand ?? Math.min(Math.max(0.2 * width, 10 * rem), 18 * rem),
  );
  const fitWidth = (right - left) / (extent.to - extent.from);
  const evenPxPerMetre = Math.min(fitWidth, most / need);
  // The same band on both scales, so that the page keeps still when the scale is changed.
  const bandHeight = Math.max(least, need * evenPxPerMetre);
  const spare = right - left - evenPxPerMetre * (extent.to - extent.from);
  const scale =
    content.scale === 'even'
      ? evenScale(left + spare / 2 + evenPxPerMetre * behind, evenPxPerMetre)
      : stretchedScale(extent, left, right);
  const pxPerMetre =
    content.scale === 'even' ? evenPxPerMetre : Math.min(scale.pxPerMetreAtEyes, bandHeight / need);

  const band = {
    x: scale.toX(extent.from),
    y: ROW.edge * rem,
    width: scale.toX(extent.to) - scale.toX(extent.from),
    height: bandHeight,
  };
  const origin = {
    x: scale.toX(0),
    y: band.y + bandHeight / 2 + ((top + bottom) / 2) * pxPerMetre,
  };
  const bandEnd = band.y + bandHeight;
  const tabTop = bandEnd + ((narrow ? ROW.value : 0) + ROW.leader) * rem;
  const line = tabTop + (ROW.tab + ROW.tip) * rem;
  const lowest = (origin.y - bandEnd) / pxPerMetre;
  const from = Math.max(extent.from, -room.backdrop);
  return {
    narrow,
    width,
    height: line + ROW.end * rem,
    rem,
    extent,
    scale,
    pxPerMetre,
    origin,
    band,
    room: { x: from, y: lowest, width: extent.to - from, height: bandHeight / pxPerMetre },
    cut,
    tab: { top: tabTop, height: ROW.tab * rem, half: TAB_HALF * rem },
    valueAbove: tabTop - 0.3 * rem,
    line,
    numbers: line + ROW.numbers * rem,
    zones: line + ROW.zones * rem,
    zoneText: line + ROW.zoneText * rem,
    place: ({ x, y }) => ({ x: scale.toX(x), y: origin.y - y * pxPerMetre }),
  };
}
