/** How a value is written in the table. */
import {
  formatAngle,
  formatChange,
  formatFNumber,
  formatFocal,
  formatLength,
  formatNumber,
  formatPercent,
  formatRatio,
  type LengthPurpose,
} from './format';
import type { Say, Words } from './words';

export type Show =
  | LengthPurpose
  | 'focal'
  | 'angle'
  | 'percent'
  | 'change'
  | 'gain'
  | 'ratio'
  | 'scale'
  | 'stops'
  | 'f-number'
  | 'megapixels'
  | 'text'
  | 'yes-or-no';

/** A value as the table shows it. */
export function showValue(
  value: number | string | boolean,
  show: Show,
  { units }: Pick<Say, 'units'>,
  words: Words,
): string {
  const { locale } = words;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'string') return words.codes[value] ?? value;
  if (value === Number.POSITIVE_INFINITY) return words.infinite;
  switch (show) {
    case 'focal':
      return formatFocal(value, locale);
    case 'angle':
      return formatAngle(value, locale);
    case 'percent':
      return formatPercent(value, locale);
    case 'change':
      return formatChange(value, locale);
    case 'gain':
      return formatChange(1 + value, locale);
    case 'stops':
      return words.stops(value);
    case 'f-number':
      return formatFNumber(value, locale);
    case 'megapixels':
      return words.megapixels(value);
    case 'distance':
    case 'frame':
    case 'depth':
    case 'sensor':
      return formatLength(value, units, show, locale);
    case 'scale':
      return formatNumber(value, 3, locale);
    default:
      return formatRatio(value, locale);
  }
}
