/** One standpoint for the sitting: each lens's reach for each framing along the distance, as places. */
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import type { Box } from '../geometry';
import { type DistanceScale, evenScale } from '../scale';
import type { MeasureText } from '../text-width';
import { numberedTicks, ticks } from '../ticks';
import { chartGrips, placeTabsUnder, placeZoneNames } from './chart-marks';
import { placeBands, type RowPlace } from './chart-rows';
import type { GripPlace } from './grips';
import { TAB, TEXT } from './sheet';
import type { Move } from './types';
import type { PlanWords } from './words';

export interface ChartSpan {
  readonly from: number;
  readonly to: number;
}

export interface ChartLens {
  readonly id: string;
  readonly name: string;
  /** Standpoints the lens reaches, and those where everything asked is met. Metres, nearest first. */
  readonly reach: readonly ChartSpan[];
  readonly works: readonly ChartSpan[];
}

export interface ChartFraming {
  readonly id: string;
  readonly name: string;
  /** Null: it follows from the group. */
  readonly frameHeight: number | null;
  readonly lenses: readonly ChartLens[];
}

/** Standpoints that a condition rules out for every lens of a framing. */
export interface ChartZone {
  readonly id: string;
  /** What rules them out: "nose gains over 8 %". */
  readonly name: string;
  readonly spans: readonly (ChartSpan & { readonly framing: string })[];
}

export interface ChartPicture {
  readonly letter: Letter;
  readonly standpoint: number;
  readonly move?: Move | undefined;
}

export interface ChartContent {
  readonly units: Units;
  /** Farthest distance shown. */
  readonly farthest: number;
  readonly framings: readonly ChartFraming[];
  readonly zones: readonly ChartZone[];
  readonly pictures: readonly ChartPicture[];
}

export interface ChartSheet {
  readonly width: number;
  readonly rem: number;
  readonly measure: MeasureText;
}

export interface ChartGround {
  readonly narrow: boolean;
  readonly rem: number;
  readonly width: number;
  readonly plot: { readonly left: number; readonly right: number; readonly top: number };
  readonly scale: DistanceScale;
}

export interface ChartTab {
  readonly letter: Letter;
  /** Exact place on the distance axis. */
  readonly x: number;
  readonly tab: Box;
  readonly value: {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly anchor: 'start' | 'end';
    readonly box: Box;
  };
}

export interface ChartLayout {
  readonly ground: ChartGround;
  readonly height: number;
  readonly rows: readonly RowPlace[];
  readonly zones: readonly { readonly id: string; readonly index: number; readonly box: Box }[];
  /** About their middles, over the middle of their zones as far as the sheet lets them. */
  readonly zoneNames: readonly {
    readonly id: string;
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
  }[];
  readonly line: number;
  readonly marks: readonly { readonly x: number; readonly long: boolean }[];
  readonly numbers: readonly { readonly x: number; readonly text: string }[];
  readonly tabs: readonly ChartTab[];
  readonly grips: readonly GripPlace[];
}

/** Below this width framings stand over their rows. */
export const NARROW_CHART = 560;
/** Heights in rem. */
const TOP = 1.5;
const NUMBERS = 2.1;
const NAME = 1.1;

export function layoutChart(
  content: ChartContent,
  { width, rem, measure }: ChartSheet,
  words: PlanWords,
): ChartLayout {
  const narrow = width < NARROW_CHART;
  const names = content.framings.map(({ name, frameHeight }) =>
    Math.max(
      measure(name, TEXT.dimension * rem, TEXT.bold),
      frameHeight === null
        ? 0
        : measure(words.chart.frame(words.distance(frameHeight, content.units)), TEXT.note * rem),
    ),
  );
  const left = narrow ? 0.6 * rem : Math.min(0.4 * width, Math.max(0, ...names) + 1.2 * rem);
  const right = width - 0.8 * rem;
  const scale = evenScale(left, (right - left) / content.farthest);
  const clip = (span: ChartSpan) => ({
    from: scale.toX(Math.max(0, span.from)),
    to: scale.toX(Math.min(content.farthest, span.to)),
  });
  const zoneNames = placeZoneNames(content, clip, width, (text) => measure(text, TEXT.note * rem));
  const lines = Math.max(1, ...zoneNames.map(({ row }) => row + 1));
  const top = (TOP + (lines - 1) * NAME) * rem;
  const ground = { narrow, rem, width, plot: { left, right, top }, scale };
  const xs = content.pictures.map(({ standpoint }) => scale.toX(standpoint));
  const rows = placeBands(content, ground, measure, words, xs);
  const line = rows.at(-1)?.bottom ?? ground.plot.top;
  const zones = content.zones.flatMap(({ id, spans }, index) =>
    spans.flatMap((span) => {
      const row = rows.find(({ id: framing }) => framing === span.framing);
      const { from, to } = clip(span);
      return row && to > from
        ? [
            {
              id,
              index,
              box: { x: from, y: row.top, width: to - from, height: row.bottom - row.top },
            },
          ]
        : [];
    }),
  );
  const extent = { from: 0, to: content.farthest };
  const widest = measure(content.units === 'metric' ? '10 m' : '10 ft 6 in', TEXT.note * rem);
  const numbered = numberedTicks(scale, extent, content.units, widest + rem);
  const isNumbered = (distance: number) =>
    numbered.some((other) => Math.abs(other.distance - distance) < 1e-9);
  const tabs = placeTabsUnder(content, ground, measure, words, line + NUMBERS * rem);
  return {
    ground,
    height: line + (NUMBERS + (content.pictures.length > 0 ? TAB.height + 1 : 0)) * rem,
    rows,
    zones,
    zoneNames: zoneNames.map(({ id, text, x, row }) => ({
      id,
      text,
      x,
      y: top - (0.5 + (lines - 1 - row) * NAME) * rem,
      width: measure(text, TEXT.note * rem),
    })),
    line,
    marks: ticks(scale, extent, content.units, { minGap: 0.4 * rem }).map(({ distance }) => ({
      x: scale.toX(distance),
      long: isNumbered(distance),
    })),
    numbers: numbered.map(({ distance, text }) => ({ x: scale.toX(distance), text })),
    tabs,
    grips: chartGrips(content, ground, tabs, words),
  };
}
