/**
 * SI values -> text with a unit. Numbers follow the language, units stay symbols.
 * Signs are the true minus; a value that rounds to nothing carries no sign.
 */
import { METRES_PER } from './parse';

export type Units = 'metric' | 'imperial';

/**
 * What a length is, which sets its unit and how fine it is written:
 * distance: across the room, to the centimetre or half inch;
 * frame: what a frame spans, to the centimetre or half inch, in inches below six feet;
 * depth: along the face or a depth of field, to the millimetre below a metre;
 * sensor: on the sensor, always millimetres, three figures.
 */
export type LengthPurpose = 'distance' | 'frame' | 'depth' | 'sensor';

const DEFAULT_LOCALE = 'en';
const HALF_INCH = 0.5;

const formats = new Map<string, Intl.NumberFormat>();

function write(value: number, locale: string, options: Intl.NumberFormatOptions): string {
  const key = `${locale} ${JSON.stringify(options)}`;
  const format =
    formats.get(key) ??
    new Intl.NumberFormat(locale, { useGrouping: false, signDisplay: 'negative', ...options });
  formats.set(key, format);
  return format.format(value).replace('-', '\u2212');
}

/** A plain number with exactly `digits` decimals. */
export function formatNumber(value: number, digits: number, locale = DEFAULT_LOCALE): string {
  return write(value, locale, { minimumFractionDigits: digits, maximumFractionDigits: digits });
}

function upTo(value: number, digits: number, locale: string): string {
  return write(value, locale, { maximumFractionDigits: digits });
}

function feetAndInches(metres: number, locale: string): string {
  const halves = Math.round(Math.abs(metres) / METRES_PER.in / HALF_INCH);
  const sign = metres < 0 && halves > 0 ? '\u2212' : '';
  const inches = halves * HALF_INCH;
  const feet = Math.floor(inches / 12);
  const rest = `${upTo(inches - 12 * feet, 1, locale)} in`;
  if (feet === 0) return sign + rest;
  return inches === 12 * feet ? `${sign}${feet} ft` : `${sign}${feet} ft ${rest}`;
}

/** A length in the units people use for that purpose. */
export function formatLength(
  metres: number,
  units: Units,
  purpose: LengthPurpose,
  locale = DEFAULT_LOCALE,
): string {
  if (purpose === 'sensor') {
    return `${write(metres * 1000, locale, { maximumSignificantDigits: 3 })} mm`;
  }
  if (units === 'metric') {
    const fine = purpose === 'depth' && Math.abs(metres) < 0.9995;
    return fine
      ? `${formatNumber(metres * 1000, 0, locale)} mm`
      : `${formatNumber(metres, 2, locale)} m`;
  }
  const inches = metres / METRES_PER.in;
  if (purpose === 'frame' && Math.abs(inches) < 71.75) {
    return `${upTo(Math.round(inches / HALF_INCH) * HALF_INCH, 1, locale)} in`;
  }
  if (purpose === 'depth' && Math.abs(inches) < 11.995) {
    return `${formatNumber(inches, 2, locale)} in`;
  }
  return feetAndInches(metres, locale);
}

/** A focal length: millimetres to a tenth, whatever the units of the room. */
export function formatFocal(metres: number, locale = DEFAULT_LOCALE): string {
  return `${formatNumber(metres * 1000, 1, locale)} mm`;
}

/** Radians -> degrees to a tenth. */
export function formatAngle(radians: number, locale = DEFAULT_LOCALE): string {
  return `${formatNumber((radians * 180) / Math.PI, 1, locale)}°`;
}

/** A share of 1 -> percent: 0.31 -> "31 %"; next to nothing and next to the whole, to a tenth. */
export function formatPercent(share: number, locale = DEFAULT_LOCALE): string {
  const size = Math.abs(share);
  const isSmall = size >= 0.0005 && size < 0.00995;
  const isNearlyWhole = size > 0.985 && size < 0.9995;
  const digits = isSmall || isNearlyWhole ? 1 : 0;
  return `${formatNumber(share * 100, digits, locale)} %`;
}

/** A relative size as its difference from 1: 1.09 -> "+9 %", 0.83 -> "−17 %". */
export function formatChange(ratio: number, locale = DEFAULT_LOCALE): string {
  const shown = formatPercent(ratio - 1, locale);
  return ratio > 1 && !shown.startsWith('0 ') ? `+${shown}` : shown;
}

/** A ratio to two decimals. */
export function formatRatio(value: number, locale = DEFAULT_LOCALE): string {
  return formatNumber(value, 2, locale);
}

/** Exposure in stops, to a tenth; the word is the language's. */
export function formatStops(value: number, locale = DEFAULT_LOCALE): string {
  return formatNumber(value, 1, locale);
}

/** "f/5.6", "f/8". */
export function formatFNumber(value: number, locale = DEFAULT_LOCALE): string {
  return `f/${upTo(value, 1, locale)}`;
}
