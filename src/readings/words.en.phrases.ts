/** English turns of phrase that several readings share. */
import { formatPercent } from './format';
import type { Measures } from './measures';
import type { Lettered } from './words';

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "31 % in A and 5 % in B". */
export function each(pictures: readonly Lettered[], say: (m: Measures) => string): string {
  const parts = pictures.map(({ letter, measures }) => `${say(measures)} in ${letter}`);
  const last = parts.pop() ?? '';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}

/** What is told of all pictures, once when it is the same for all. */
export function alike(pictures: readonly Lettered[], say: (m: Measures) => string): string {
  const [only, another] = new Set(pictures.map(({ measures }) => say(measures)));
  return only !== undefined && another === undefined ? only : each(pictures, say);
}

const shares = (ratio: number): string => formatPercent(Math.abs(ratio - 1));
const rounds = (ratio: number): boolean => Math.abs(ratio - 1) < 0.0005;

/** "31 % too large", "4 % too small", "in true proportion". */
export function tooLarge(ratio: number | null): string {
  if (ratio === null) return 'beyond measure';
  if (rounds(ratio)) return 'in true proportion';
  return `${shares(ratio)} too ${ratio < 1 ? 'small' : 'large'}`;
}

/** "9 % larger", "17 % smaller", "equally large". */
export function larger(ratio: number | null): string {
  if (ratio === null) return 'beyond measure';
  if (rounds(ratio)) return 'equally large';
  return `${shares(ratio)} ${ratio < 1 ? 'smaller' : 'larger'}`;
}
