/** The unit in which a reading stands along an axis: one plain number, where the table may mix feet and inches. */
import { METRES_PER, type Units } from './quantities';
import type { Row } from './rows';

export interface AxisUnit {
  /** "m", "%"; empty for a plain ratio. */
  readonly symbol: string;
  /** SI -> what the axis shows. */
  readonly of: (value: number) => number;
  /** More than nothing is written with a plus. */
  readonly signed: boolean;
}

const by = (symbol: string, factor: number, signed = false): AxisUnit => ({
  symbol,
  of: (value) => value * factor,
  signed,
});

/** Null for a reading that is no number. */
export function axisUnit(
  { unit, show }: Pick<Row, 'unit' | 'show'>,
  units: Units,
): AxisUnit | null {
  switch (show) {
    case 'text':
    case 'yes-or-no':
      return null;
    case 'focal':
    case 'sensor':
      return by('mm', 1000);
    case 'distance':
    case 'frame':
    case 'depth':
      return units === 'metric' ? by('m', 1) : by('ft', 1 / METRES_PER.ft);
    case 'angle':
      return by('°', 180 / Math.PI);
    case 'change':
      return { symbol: '%', of: (ratio) => 100 * (ratio - 1), signed: true };
    case 'gain':
      return by('%', 100, true);
    case 'percent':
      return by('%', 100);
    default:
      return by(unit === 'ratio' ? '' : unit, 1);
  }
}
