/** Marks and numbers along the distance line. */
import { formatLength, formatNumber, METRES_PER, type Units } from '../readings/quantities';
import type { DistanceScale, Extent } from './scale';

interface TickUnit {
  readonly metres: number;
  /** Steps from coarse to fine, in units; each divides the one before. */
  readonly steps: readonly number[];
  /** Finest step that is ever numbered. */
  readonly finestNumber: number;
}

const TICK_UNITS: Readonly<Record<Units, TickUnit>> = {
  // centimetres: 10 m, 5 m, 1 m, 0.5 m, 0.1 m, 5 cm, 1 cm
  metric: { metres: METRES_PER.cm, steps: [1000, 500, 100, 50, 10, 5, 1], finestNumber: 10 },
  // inches: 10 ft, 5 ft, 1 ft, 6 in, 3 in, 1 in
  imperial: { metres: METRES_PER.in, steps: [120, 60, 12, 6, 3, 1], finestNumber: 3 },
};

/** The whole metre or foot is the last step that may end within an interval: a number tells where. */
const LAST_PARTLY = 2;

export interface Tick {
  readonly distance: number;
  /** Index of the coarsest step it belongs to; 0 is the coarsest. */
  readonly level: number;
}

interface TickRule {
  /** Least distance between neighbours, CSS pixels. */
  readonly minGap: number;
  /** Finest step, in the units of the unit's steps. */
  readonly finest?: number;
  /** Whether an interval may be divided up to where the stretched scale grows too dense. */
  readonly partly?: boolean;
}

/**
 * Round distances from 0 to `extent.to`, as fine as the scale allows. An interval between two
 * neighbours is divided where its parts, as far as they are shown, are at least `minGap` wide.
 */
export function ticks(
  scale: Pick<DistanceScale, 'toX'>,
  extent: Pick<Extent, 'to'>,
  units: Units,
  { minGap, finest = 0, partly = false }: TickRule,
): Tick[] {
  const { metres, steps } = TICK_UNITS[units];
  const end = extent.to / metres + 1e-9;
  const gap = (from: number, to: number) => scale.toX(to * metres) - scale.toX(from * metres);
  const found: Tick[] = [];
  const divide = (from: number, to: number, level: number): void => {
    const step = steps[level];
    if (step === undefined || step < finest || from >= end) return;
    const inner = Array.from({ length: (to - from) / step - 1 }, (_, i) => from + (i + 1) * step);
    const shown = inner.filter((edge) => edge <= end);
    const fits = (edge: number) =>
      gap(edge - step, edge) >= minGap && (to > end || gap(edge, to) >= minGap);
    const tooDense = shown.findIndex((edge) => !fits(edge));
    if (tooDense >= 0 && !(partly && level <= LAST_PARTLY)) return;
    const chosen = tooDense < 0 ? shown : shown.slice(0, tooDense);
    if (chosen.length === 0 && tooDense >= 0) return;
    found.push(...chosen.map((edge) => ({ distance: edge * metres, level })));
    for (const edge of [from, ...chosen]) divide(edge, edge + step, level + 1);
  };
  const coarsest = steps[0] ?? 1;
  for (let edge = 0; edge <= end; edge += coarsest) {
    found.push({ distance: edge * metres, level: 0 });
    divide(edge, edge + coarsest, 1);
  }
  return found.sort((a, b) => a.distance - b.distance);
}

/** The ticks that carry a number, with the text; the widest text needs `minGap`. */
export function numberedTicks(
  scale: Pick<DistanceScale, 'toX'>,
  extent: Pick<Extent, 'to'>,
  units: Units,
  minGap: number,
): { readonly distance: number; readonly text: string }[] {
  const unit = TICK_UNITS[units];
  const chosen = ticks(scale, extent, units, {
    minGap,
    finest: unit.finestNumber,
    partly: true,
  });
  const whole = chosen.every(({ distance }) => Math.abs(distance - Math.round(distance)) < 1e-9);
  return chosen.map(({ distance }, i) => {
    if (distance === 0) return { distance, text: '0' };
    if (units === 'imperial') return { distance, text: formatLength(distance, units, 'distance') };
    const number = formatNumber(distance, whole ? 0 : 1);
    return { distance, text: i === chosen.length - 1 ? `${number} m` : number };
  });
}
