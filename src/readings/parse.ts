/**
 * What people type -> SI values. Both decimal separators, metric and feet with inches.
 * Whatever can be read in two ways is refused with the readings named, never guessed.
 */

export const LENGTH_UNITS = ['m', 'cm', 'mm', 'ft', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** Metres in one unit; the foot and the inch are exact by definition (1959). */
export const METRES_PER: Readonly<Record<LengthUnit, number>> = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  ft: 0.3048,
  in: 0.0254,
};

/** What a length without a unit is taken in, by the units that lengths are shown in. */
export const PLAIN_UNIT = { metric: 'm', imperial: 'ft' } as const satisfies Record<
  string,
  LengthUnit
>;

export interface Unreadable {
  readonly ok: false;
  /** One sentence for the screen: what is wrong and what would do. */
  readonly why: string;
}
/** `value` in SI: metres, radians, or a plain number. */
export type Parsed = { readonly ok: true; readonly value: number } | Unreadable;

const SPELLINGS: Readonly<Record<LengthUnit, string>> = {
  mm: 'mm|millimet(?:re|er)s?',
  cm: 'cm|centimet(?:re|er)s?',
  m: 'm|met(?:re|er)s?',
  ft: "ft|foot|feet|'",
  in: 'in|inch|inches|"',
};
const NUMBER = String.raw`\d+\s+\d+/\d+|\d+/\d+|\d[\d.,]*|[.,]\d+`;
const TERM = new RegExp(
  String.raw`^\s*(?<number>${NUMBER})\s*(?:(?<mm>${SPELLINGS.mm})|(?<cm>${SPELLINGS.cm})|(?<ft>${SPELLINGS.ft})|(?<in>${SPELLINGS.in})|(?<m>${SPELLINGS.m}))?\.?(?=$|[\s\d,])`,
  'i',
);

/** One kind of dash, quote and fraction, so that the grammar stays small. */
function plain(text: string): string {
  return text
    .replace(/[\u2018\u2019\u2032\u00b4]/g, "'")
    .replace(/''|[\u201c\u201d\u2033]/g, '"')
    .replace(/[\u2212\u2010-\u2015]/g, '-')
    .replace(/(\d)(?=[\u00bc-\u00be\u2150-\u215e])/g, '$1 ')
    .normalize('NFKC')
    .replace(/\u2044/g, '/')
    .trim();
}

type NumberReading =
  | { readonly value: number }
  | { readonly twoWays: readonly [number, number] }
  | null;

/** A decimal number, a fraction or a whole number with a fraction. */
function readNumber(text: string): NumberReading {
  const fraction = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(text);
  if (fraction) {
    const [, whole = '0', over = '0', under = '0'] = fraction;
    return Number(under) === 0 ? null : { value: Number(whole) + Number(over) / Number(under) };
  }
  // 1,200 is 1.2 to one reader and 1200 to another; 0,200 and 12,5 are one thing to both.
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    return { twoWays: [Number(text.replace(',', '.')), Number(text.replace(',', ''))] };
  }
  if (/^(\d+[.,]?\d*|[.,]\d+)$/.test(text)) return { value: Number(text.replace(',', '.')) };
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) return { value: Number(text.replaceAll(',', '')) };
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) {
    return { value: Number(text.replaceAll('.', '').replace(',', '.')) };
  }
  return null;
}

interface Term {
  readonly number: string;
  readonly unit: LengthUnit | null;
}

/** Splits "7 ft 6 1/2 in" into its terms; null when something is left over. */
function terms(text: string): Term[] | null {
  const found: Term[] = [];
  let rest = text;
  while (rest.trim() !== '') {
    const match = TERM.exec(rest);
    if (!match) return null;
    const groups = match.groups ?? {};
    found.push({
      number: groups.number ?? '',
      unit: LENGTH_UNITS.find((unit) => groups[unit] !== undefined) ?? null,
    });
    rest = rest.slice(match[0].length).replace(/^\s*,\s+/, '');
  }
  return found.length > 0 ? found : null;
}

const METRIC: readonly (LengthUnit | null)[] = ['m', 'cm', 'mm'];

/** A compound must fall from larger to smaller units of one system, each once. */
function compoundFits(units: readonly (LengthUnit | null)[]): boolean {
  return units.every((unit, i) => {
    const before = i > 0 ? units[i - 1] : undefined;
    if (before === undefined) return true;
    if (!unit || !before) return false;
    return (
      METRIC.includes(unit) === METRIC.includes(before) && METRES_PER[unit] < METRES_PER[before]
    );
  });
}

const notALength = (text: string): Unreadable => ({
  ok: false,
  why: `"${text.trim()}" is not a distance. Try 2.4 m, 240 cm or 7 ft 10 in.`,
});

/**
 * A length as typed: "2.4 m", "2,4 m", "240 cm", "7 ft 6 in", 7'6", "1/2 in", "-10 cm".
 * A number without a unit takes `unit` (metres unless told); after feet it means inches.
 * The sign may be a hyphen or a minus; what range makes sense is the caller's to say.
 */
export function parseLength(text: string, { unit = 'm' }: { unit?: LengthUnit } = {}): Parsed {
  const tidy = plain(text);
  const signed = /^([+-]?)\s*(.*)$/s.exec(tidy);
  const sign = signed?.[1] === '-' ? -1 : 1;
  const found = terms(signed?.[2] ?? '');
  if (!found) return notALength(text);
  const units = found.map(({ unit: own }, i) => {
    if (own || found.length === 1) return own ?? unit;
    return i > 0 && found[i - 1]?.unit === 'ft' ? ('in' as const) : null;
  });
  if (!compoundFits(units)) return notALength(text);
  let metres = 0;
  for (const [i, term] of found.entries()) {
    const own = units[i] ?? unit;
    const number = readNumber(term.number);
    if (!number) return notALength(text);
    if ('twoWays' in number) return eitherWay(text, number.twoWays, own);
    metres += number.value * METRES_PER[own];
  }
  return { ok: true, value: sign * metres };
}

function eitherWay(
  text: string,
  [small, large]: readonly [number, number],
  unit: string,
): Unreadable {
  const suffix = unit === '' ? '' : ` ${unit}`;
  return {
    ok: false,
    why: `"${text.trim()}" can be read in two ways. Write ${small}${suffix} or ${large}${suffix}.`,
  };
}

/** One number with an optional mark after it; shared by the simple quantities. */
function parseMarked(
  text: string,
  pattern: RegExp,
  convert: (value: number, mark: string) => number,
  refusal: string,
): Parsed {
  const groups = pattern.exec(plain(text))?.groups;
  const number = readNumber(groups?.number ?? '');
  if (!groups || !number) return { ok: false, why: `"${text.trim()}" ${refusal}` };
  if ('twoWays' in number) return eitherWay(text, number.twoWays, '');
  const value = convert(number.value, (groups.mark ?? '').toLowerCase());
  return { ok: true, value: groups.sign === '-' ? -value : value };
}

/** An f-number: "f/5.6", "f5.6", "5,6". Greater than zero. */
export function parseFNumber(text: string): Parsed {
  const refusal = 'is not an f-number. Try f/5.6.';
  const pattern = /^(?:[f\u0192]\s*\/?\s*)?(?<number>\d[\d.,]*|[.,]\d+)$/i;
  const parsed = parseMarked(text, pattern, (value) => value, refusal);
  return parsed.ok && parsed.value <= 0
    ? { ok: false, why: `"${text.trim()}" ${refusal}` }
    : parsed;
}

/** An angle in degrees ("12", "12°", "-5 deg") or radians ("0.2 rad") -> radians. */
export function parseAngle(text: string): Parsed {
  return parseMarked(
    text,
    /^(?<sign>[+-]?)\s*(?<number>\d[\d.,]*|[.,]\d+)\s*(?<mark>\u00b0|deg(?:rees?)?|rad(?:ians?)?)?$/i,
    (value, mark) => (mark.startsWith('rad') ? value : (value * Math.PI) / 180),
    'is not an angle. Try 15°.',
  );
}

/** A share as "0.33" or "33 %" -> 0.33. */
export function parseShare(text: string): Parsed {
  return parseMarked(
    text,
    /^(?<sign>[+-]?)\s*(?<number>\d[\d.,]*|[.,]\d+)\s*(?<mark>%)?$/,
    (value, mark) => (mark === '%' ? value / 100 : value),
    'is not a share. Try 0.33 or 33 %.',
  );
}
