/** One text of the command line -> one value, or a refusal in the option's name. */
import { type LengthUnit, type Parsed, parseLength } from '../readings/parse';
import { BadValue } from './bad-value';

/** @throws BadValue */
export function read(option: string, text: string, parse: (text: string) => Parsed): number {
  const parsed = parse(text);
  if (!parsed.ok) throw new BadValue(`--${option}: ${parsed.why}`);
  return parsed.value;
}

export const positive =
  (parse: (text: string) => Parsed) =>
  (text: string): Parsed => {
    const parsed = parse(text);
    return parsed.ok && parsed.value <= 0
      ? { ok: false, why: `"${text}" is not above 0.` }
      : parsed;
  };

export const length =
  (unit: LengthUnit = 'm') =>
  (text: string): Parsed =>
    parseLength(text, { unit });

/** @throws BadValue that lists what is known. */
export function choice<T>(option: string, text: string, known: ReadonlyMap<string, T>): T {
  const found = known.get(text);
  if (found !== undefined) return found;
  throw new BadValue(
    `--${option}: "${text}" is not known. Known: ${[...known.keys()].join(', ')}.`,
  );
}
