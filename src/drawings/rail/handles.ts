/** The handles' places: stems, tabs that fan out, values and targets. */
import type { Letter } from '../../session/types';
import type { Box, Point } from '../geometry';
import { spreadWithSides } from '../spread';
import type { MeasureText } from '../text-width';
import { type RailGround, TARGET, TYPE } from './ground';
import { distanceArc } from './sight';
import type { RailContent, RailPicture } from './types';
import { showDistance } from './words';

export interface HandlePlace {
  readonly letter: Letter;
  readonly picture: RailPicture;
  /** Exact place on the distance line. */
  readonly x: number;
  readonly pupil: Point;
  /** From the pupil to the foot of the room's drawing. */
  readonly stem: readonly Point[];
  /** Where the stem meets the block of value and tab. */
  readonly head: Point;
  /** The tab's body; its tip points at `x` on the line. */
  readonly tab: Box;
  readonly value: {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly anchor: 'start' | 'middle' | 'end';
    /** Text size in pixels. */
    readonly size: number;
    readonly box: Box;
  };
  /** Where a finger or mouse takes hold. */
  readonly targets: readonly Box[];
}

/** Gap between tab and value, rem. */
const VALUE_GAP = 0.5;
/** Least gap between two handles' blocks, rem. */
const BLOCK_GAP = 0.4;

/** Places every handle; in order of distance, then letter. */
export function placeHandles(
  { pictures, units }: RailContent,
  ground: RailGround,
  measure: MeasureText,
): HandlePlace[] {
  const { rem, tab, narrow, scale, line, band } = ground;
  const sorted = [...pictures].sort(
    (a, b) => a.standpoint - b.standpoint || a.letter.localeCompare(b.letter),
  );
  const texts = sorted.map(({ standpoint }) => showDistance(standpoint, units));
  const full = texts.map((text) => measure(text, TYPE.value * rem, TYPE.bold));
  // Long values above narrow tabs shrink together until they fit side by side.
  const taken = full.reduce((sum, width) => sum + width, 0);
  const free = ground.width - (sorted.length - 1) * BLOCK_GAP * rem;
  const shrink = narrow ? Math.min(1, free / taken) : 1;
  const size = TYPE.value * rem * shrink;
  const widths = full.map((width) => width * shrink);
  const xs = sorted.map(({ standpoint }) => scale.toX(standpoint));
  const half = Math.max(TARGET / 2, tab.half);
  const places = spreadWithSides(
    sorted.map((_, i) => {
      const width = widths[i] ?? 0;
      return narrow
        ? { at: xs[i] ?? 0, half: Math.max(half, width / 2), text: 0 }
        : { at: xs[i] ?? 0, half, text: Math.max(0, tab.half + VALUE_GAP * rem + width - half) };
    }),
    BLOCK_GAP * rem,
    0,
    ground.width,
  );
  return sorted.map((picture, i) => {
    const x = xs[i] ?? 0;
    const { at, side } = places[i] ?? { at: x, side: 'right' as const };
    const arc = distanceArc(picture).map(ground.place);
    const pupil = ground.place({
      x: Math.sqrt(Math.max(0, picture.standpoint ** 2 - picture.cameraHeight ** 2)),
      y: picture.cameraHeight,
    });
    const text = texts[i] ?? '';
    const width = widths[i] ?? 0;
    return {
      letter: picture.letter,
      picture,
      x,
      pupil,
      stem: [...arc, { x, y: band.y + band.height }],
      head: { x: at, y: narrow ? ground.valueAbove - 0.8 * TYPE.value * rem : tab.top },
      tab: { x: at - tab.half, y: tab.top, width: 2 * tab.half, height: tab.height },
      value: { text, ...valuePlace(ground, at, narrow ? 'above' : side, width, size) },
      targets: [
        { x: at - half, y: line - TARGET, width: 2 * half, height: TARGET + 0.25 * rem },
        stemTarget(xs, i, ground),
      ],
    };
  });
}

function valuePlace(
  { rem, tab, valueAbove }: RailGround,
  at: number,
  side: 'above' | 'left' | 'right',
  width: number,
  size: number,
) {
  const y = side === 'above' ? valueAbove : tab.top + tab.height / 2 + 0.35 * size;
  const reach = tab.half + VALUE_GAP * rem;
  const x = side === 'above' ? at : side === 'right' ? at + reach : at - reach;
  const anchor = ({ above: 'middle', right: 'start', left: 'end' } as const)[side];
  const start = { middle: x - width / 2, start: x, end: x - width }[anchor];
  return { x, y, anchor, size, box: { x: start, y: y - size, width, height: 1.3 * size } };
}

/** A strip about the stem, up to halfway to the neighbours. */
function stemTarget(xs: readonly number[], i: number, { band }: RailGround): Box {
  const x = xs[i] ?? 0;
  const before = xs[i - 1];
  const after = xs[i + 1];
  const left = before === undefined ? x - TARGET / 2 : Math.max(x - TARGET / 2, (before + x) / 2);
  const right = after === undefined ? x + TARGET / 2 : Math.min(x + TARGET / 2, (after + x) / 2);
  return { x: left, y: band.y, width: right - left, height: band.height };
}
