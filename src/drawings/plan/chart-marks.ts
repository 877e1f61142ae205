/** The chart's names of zones, and the standpoints' tabs under its scale. */
import { TARGET } from '../rail/ground';
import { spreadWithSides } from '../spread';
import type { MeasureText } from '../text-width';
import type { ChartContent, ChartGround, ChartSpan, ChartTab } from './chart';
import { boxAbout, type GripPlace } from './grips';
import { TAB, TEXT } from './sheet';
import type { PlanWords } from './words';

/** Least gap between two names of zones, pixels. */
const NAME_GAP = 10;

/** Each in the first row where it covers no other. */
export function placeZoneNames(
  { zones }: ChartContent,
  clip: (span: ChartSpan) => ChartSpan,
  width: number,
  widthOf: (text: string) => number,
) {
  const placed: { id: string; text: string; x: number; row: number }[] = [];
  for (const { id, name, spans } of zones) {
    const shown = spans.map(clip).filter(({ from, to }) => to > from);
    if (shown.length === 0) continue;
    const from = Math.min(...shown.map((span) => span.from));
    const to = Math.max(...shown.map((span) => span.to));
    const half = widthOf(name) / 2;
    const x = Math.max(half, Math.min((from + to) / 2, width - half));
    const taken = new Set(
      placed
        .filter((other) => Math.abs(other.x - x) < half + widthOf(other.text) / 2 + NAME_GAP)
        .map(({ row }) => row),
    );
    const row = Array.from({ length: zones.length }, (_, i) => i).find((i) => !taken.has(i)) ?? 0;
    placed.push({ id, text: name, x, row });
  }
  return placed;
}

export function placeTabsUnder(
  { pictures, units }: ChartContent,
  { rem, scale, width }: ChartGround,
  measure: MeasureText,
  words: PlanWords,
  top: number,
): ChartTab[] {
  const sorted = [...pictures].sort((a, b) => a.standpoint - b.standpoint);
  const half = (TAB.width / 2) * rem;
  const gap = 0.4 * rem;
  const size = TEXT.dimension * rem;
  const texts = sorted.map(({ standpoint }) => words.distance(standpoint, units));
  const widths = texts.map((text) => measure(text, size, TEXT.bold));
  const places = spreadWithSides(
    sorted.map(({ standpoint }, i) => ({
      at: scale.toX(standpoint),
      half,
      text: gap + (widths[i] ?? 0),
    })),
    gap,
    0,
    width,
  );
  return sorted.map(({ letter, standpoint }, i) => {
    const { at, side } = places[i] ?? { at: scale.toX(standpoint), side: 'right' as const };
    const w = widths[i] ?? 0;
    const x = side === 'right' ? at + half + gap : at - half - gap;
    const y = top + 0.6 * rem;
    return {
      letter,
      x: scale.toX(standpoint),
      tab: { x: at - half, y, width: 2 * half, height: TAB.height * rem },
      value: {
        text: texts[i] ?? '',
        x,
        y: y + (TAB.height / 2) * rem + 0.35 * size,
        anchor: side === 'right' ? ('start' as const) : ('end' as const),
        box: { x: side === 'right' ? x : x - w, y, width: w, height: size },
      },
    };
  });
}

export function chartGrips(
  { pictures, units }: ChartContent,
  { scale }: ChartGround,
  tabs: readonly ChartTab[],
  words: PlanWords,
): GripPlace[] {
  return tabs.flatMap(({ letter, tab, x }): GripPlace[] => {
    const picture = pictures.find((other) => other.letter === letter);
    if (!picture?.move) return [];
    const middle = { x: tab.x + tab.width / 2, y: tab.y + tab.height / 2 };
    return [
      {
        id: `camera-${letter}`,
        what: { kind: 'camera', letter },
        axes: [
          {
            name: words.names.camera(letter),
            value: picture.standpoint,
            move: picture.move,
            way: { x: 1, y: 0 },
            spoken: words.values.fromEyes(words.spoken(picture.standpoint, units)),
          },
        ],
        pxPerMetre: scale.pxPerMetreAtEyes,
        targets: [boxAbout(middle, Math.max(tab.width, TARGET), TARGET)],
        ring: { x: tab.x - 3, y: tab.y - 3, width: tab.width + 6, height: tab.height + 6 },
        near: { x, y: tab.y },
      },
    ];
  });
}
