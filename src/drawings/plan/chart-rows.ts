/** The chart's rows: a band for each lens, and a name that covers none. */
import type { Box } from '../geometry';
import type { MeasureText } from '../text-width';
import type { ChartContent, ChartFraming, ChartGround, ChartLens, ChartSpan } from './chart';
import { TEXT } from './sheet';
import type { PlanWords } from './words';

export interface BandPlace {
  readonly id: string;
  readonly reach: readonly Box[];
  readonly works: readonly Box[];
  readonly name: {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly anchor: 'start' | 'end';
    readonly box: Box;
  };
}

export interface RowPlace {
  readonly id: string;
  readonly top: number;
  readonly bottom: number;
  readonly title: { readonly text: string; readonly x: number; readonly y: number };
  readonly frame: { readonly text: string; readonly x: number; readonly y: number } | null;
  readonly bands: readonly BandPlace[];
}

/** Heights in rem. */
const LINE = 1.2;
const BAR = 0.7;
const TITLE = 1.35;
const PAD = 0.35;
/** A single standpoint is still seen: least width of a band, pixels. */
const LEAST = 6;

export function placeBands(
  content: ChartContent,
  ground: ChartGround,
  measure: MeasureText,
  words: PlanWords,
  crossings: readonly number[],
): RowPlace[] {
  const { rem, narrow, plot } = ground;
  let top = plot.top;
  return content.framings.map((framing) => {
    const frame =
      framing.frameHeight === null
        ? null
        : words.chart.frame(words.distance(framing.frameHeight, content.units));
    const size = TEXT.dimension * rem;
    const start = top + (PAD + (narrow ? TITLE : 0)) * rem;
    let y = start;
    const bands = framing.lenses.map((lens) => {
      const { band, height } = placeBand(lens, content, ground, measure, words, crossings, y);
      y += height;
      return band;
    });
    const least = narrow ? start : top + (PAD + 2 * TITLE) * rem;
    const bottom = Math.max(y, least) + PAD * rem;
    const titleY = top + PAD * rem + size;
    const row = {
      id: framing.id,
      top,
      bottom,
      title: { text: framing.name, x: 0, y: titleY },
      frame: frame === null ? null : framePlace(frame, framing, titleY),
      bands,
    };
    top = bottom;
    return row;
  });

  function framePlace(text: string, { name }: ChartFraming, titleY: number) {
    const size = TEXT.dimension * rem;
    return narrow
      ? { text, x: measure(name, size, TEXT.bold) + 0.5 * rem, y: titleY }
      : { text, x: 0, y: titleY + 1.2 * size };
  }
}

function placeBand(
  lens: ChartLens,
  { farthest, units }: ChartContent,
  { rem, plot, scale }: ChartGround,
  measure: MeasureText,
  words: PlanWords,
  crossings: readonly number[],
  top: number,
): { readonly band: BandPlace; readonly height: number } {
  const gap = 0.35 * rem;
  const size = TEXT.note * rem;
  const inside = (spans: readonly ChartSpan[]) =>
    spans
      .filter(({ from, to }) => from <= farthest && to >= 0)
      .map(({ from, to }) => {
        const [a, b] = [scale.toX(Math.max(0, from)), scale.toX(Math.min(farthest, to))];
        const width = Math.max(LEAST, b - a);
        return { x: Math.min((a + b) / 2 - width / 2, plot.right - width), width };
      });
  const reach = inside(lens.reach);
  const first = reach[0];
  const last = reach.at(-1);
  const beyond = lens.reach[0];
  const text = first
    ? lens.name
    : `${lens.name}: ${
        beyond ? words.chart.fromOn(words.distance(beyond.from, units)) : words.chart.nowhere
      }`;
  const width = measure(text, size);

  // Beside the band, clear of the standpoints' lines if it can be; else over it.
  const sides =
    first && last
      ? [
          { from: last.x + last.width + gap, anchor: 'start' as const },
          { from: first.x - gap - width, anchor: 'end' as const },
        ]
      : [{ from: plot.right - width, anchor: 'end' as const }];
  const fits = sides.filter(({ from }) => from >= plot.left && from + width <= plot.right + 0.01);
  const clear = fits.find(
    ({ from }) => !crossings.some((x) => x > from - gap / 2 && x < from + width + gap / 2),
  );
  const side = clear ?? fits[0] ?? null;
  const over = side === null ? LINE * rem : 0;
  const from = side?.from ?? Math.max(plot.left, Math.min(first?.x ?? 0, plot.right - width));
  const anchor = side?.anchor ?? 'start';
  const bar = (box: { x: number; width: number }): Box => ({
    ...box,
    y: top + over + ((LINE - BAR) / 2) * rem,
    height: BAR * rem,
  });
  const baseline = top + (LINE / 2) * rem + 0.35 * size;
  return {
    height: over + LINE * rem,
    band: {
      id: lens.id,
      reach: reach.map(bar),
      works: inside(lens.works).map(bar),
      name: {
        text,
        x: anchor === 'start' ? from : from + width,
        y: baseline,
        anchor,
        box: { x: from, y: baseline - 0.8 * size, width, height: size },
      },
    },
  };
}
