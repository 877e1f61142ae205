/** The whole rail as places and paths: a pure function of what it is told. */
import type { Letter } from '../../session/types';
import { type Point, segmentsOf } from '../geometry';
import type { PlacedLabel } from '../labels';
import { chooseTexts } from '../labels';
import { numberedTicks, ticks } from '../ticks';
import { type RailGround, railGround, TYPE } from './ground';
import { type HandlePlace, placeHandles } from './handles';
import { type FramePlace, gatherFocus, placeFrames, sharesFrame } from './marks';
import { type FocusPlace, placeRailLabels } from './room-labels';
import { sightLines } from './sight';
import type { RailContent, RailSheet } from './types';
import { noteSentences, STRETCHED_TEXTS, ZONES, zoneTexts } from './words';

export interface RailLayout {
  readonly ground: RailGround;
  readonly sight: readonly { readonly letter: Letter; readonly points: readonly Point[] }[];
  /** The floor, where it is seen. */
  readonly floor: readonly [Point, Point] | null;
  readonly frames: readonly FramePlace[];
  readonly focus: readonly FocusPlace[];
  readonly handles: readonly HandlePlace[];
  readonly labels: readonly PlacedLabel[];
  readonly marks: readonly { readonly x: number; readonly length: number }[];
  readonly numbers: readonly { readonly x: number; readonly text: string }[];
  readonly zones: readonly ZonePlace[];
  /** Said beside the stretched line, left of its zero: lines about their right end. */
  readonly aside: {
    readonly x: number;
    readonly y: number;
    readonly lines: readonly string[];
  } | null;
  /** Sentences for the note under the drawing: what found no room in it. */
  readonly notes: readonly string[];
  /** The reasons among them stand first. */
  readonly reasons: readonly { readonly letter: Letter; readonly text: string }[];
}

export interface ZonePlace {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly text: { readonly at: number; readonly text: string } | null;
  readonly thickness: number;
}

/** Pixels between samples of a sight line that the stretched scale bends. */
const BEND_STEP = 12;
/** From the zero to the text left of it, rem: clear of the first number and zone. */
const ASIDE_GAP = 2;
/** Half the gap between two zones' bars, CSS pixels. */
const ZONE_GAP = 1.5;
/** Thickness of the zones' bars: nearer is heavier. */
const ZONE_THICKNESS = { intimate: 6, personal: 4, social: 2, public: 1 } as const;

/** Lays out the rail. Pure; all texts are placed by their measured widths. */
export function layoutRail(content: RailContent, sheet: RailSheet): RailLayout {
  const ground = railGround(content, sheet);
  const sight = content.pictures.flatMap((picture) =>
    sightLines(picture, picture.frame, ground.room).map(([from, to]) => ({
      letter: picture.letter,
      points: bend(ground, from, to),
    })),
  );
  const floor = placeFloor(content, ground);
  const handles = placeHandles(content, ground, sheet.measure);
  const frames = placeFrames(content, ground);
  const { labels, focus, reasonsLeft } = placeRailLabels(content, ground, sheet.measure, {
    handles,
    lines: [
      ...sight.map(({ points }) => points),
      ...frames.map(({ points }) => points),
      ...(floor ? [floor] : []),
    ].flatMap(segmentsOf),
  });
  return {
    ground,
    sight,
    floor,
    frames,
    focus,
    handles,
    labels,
    ...placeTicks(content, ground, sheet),
    zones: placeZones(content, ground, sheet),
    aside: placeAside(content, ground, sheet),
    reasons: reasonsLeft,
    notes: ground.narrow
      ? noteSentences(content, sharesFrame(content), gatherFocus(content.focus, ground.extent.to))
      : [],
  };
}

/** A straight line of the room as the scale draws it. */
function bend(ground: RailGround, from: Point, to: Point): Point[] {
  const start = ground.scale.toX(from.x);
  const end = ground.scale.toX(to.x);
  const steps =
    ground.scale.kind === 'even' || from.x === to.x
      ? 1
      : Math.max(1, Math.ceil(Math.abs(end - start) / BEND_STEP));
  return Array.from({ length: steps + 1 }, (_, i) => {
    if (i === 0) return ground.place(from);
    if (i === steps) return ground.place(to);
    const x = ground.scale.toDistance(start + ((end - start) * i) / steps);
    const share = (x - from.x) / (to.x - from.x);
    return ground.place({ x, y: from.y + share * (to.y - from.y) });
  });
}

function placeFloor({ figure }: RailContent, ground: RailGround): readonly [Point, Point] | null {
  if (!figure || figure.floor < ground.room.y) return null;
  const { from, to } = ground.extent;
  return [ground.place({ x: from, y: figure.floor }), ground.place({ x: to, y: figure.floor })];
}

/** The warning of the stretched scale; the narrow rail has it in its note. */
function placeAside(
  content: RailContent,
  { narrow, scale, rem, numbers }: RailGround,
  { measure }: RailSheet,
): RailLayout['aside'] {
  if (content.scale === 'even' || narrow) return null;
  const x = scale.toX(0) - ASIDE_GAP * rem;
  const lines = STRETCHED_TEXTS.find((option) =>
    option.every((text) => measure(text, TYPE.note * rem) <= x),
  );
  return { x, y: numbers, lines: lines ?? STRETCHED_TEXTS[STRETCHED_TEXTS.length - 1] ?? [] };
}

function placeTicks(content: RailContent, ground: RailGround, { measure }: RailSheet) {
  const { scale, extent, rem } = ground;
  const widest = measure(content.units === 'metric' ? '0.5 m' : '1 ft 6 in', TYPE.tick * rem);
  const numbered = numberedTicks(scale, extent, content.units, widest + 1.25 * rem);
  const marks = ticks(scale, extent, content.units, { minGap: 0.375 * rem });
  const finest = Math.max(...marks.map(({ level }) => level));
  const isNumbered = (distance: number) =>
    numbered.some((other) => Math.abs(other.distance - distance) < 1e-9);
  return {
    numbers: numbered.map(({ distance, text }) => ({ x: scale.toX(distance), text })),
    marks: marks.map(({ distance, level }) => ({
      x: scale.toX(distance),
      length: (isNumbered(distance) ? 0.5 : level === finest ? 0.2 : 0.3) * rem,
    })),
  };
}

/** Bars and texts: every zone's name first, then the limits from the nearest zone outwards. */
function placeZones(content: RailContent, ground: RailGround, { measure }: RailSheet): ZonePlace[] {
  const { scale, extent, rem, width } = ground;
  const shown = ZONES.filter(({ from }) => from < extent.to).map((zone) => ({
    zone,
    from: scale.toX(zone.from) + ZONE_GAP,
    to: scale.toX(Math.min(zone.to, extent.to)) - ZONE_GAP,
  }));
  const wishes = shown.map(({ zone, from, to }) => ({
    from,
    to,
    texts: zoneTexts(zone, content.units),
  }));
  const texts = chooseTexts(wishes, {
    widthOf: (text) => measure(text, TYPE.note * rem),
    gap: 0.6 * rem,
    from: 0,
    to: width,
  });
  return shown.map(({ zone, from, to }, i) => ({
    name: zone.name,
    from,
    to,
    text: texts[i] ?? null,
    thickness: ZONE_THICKNESS[zone.name],
  }));
}
