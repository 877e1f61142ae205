import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatAngle,
  formatChange,
  formatFNumber,
  formatFocal,
  formatLength,
  formatPercent,
  formatStops,
  type LengthPurpose,
  parseAngle,
  parseFNumber,
  parseLength,
  parseShare,
} from '../../src/readings/quantities';

function metres(text: string, unit?: 'm' | 'cm' | 'mm' | 'ft' | 'in'): number {
  const parsed = parseLength(text, unit ? { unit } : {});
  if (!parsed.ok) throw new Error(parsed.why);
  return parsed.value;
}
const why = (text: string): string => {
  const parsed = parseLength(text);
  return parsed.ok ? `read as ${parsed.value} m` : parsed.why;
};

describe('parseLength', () => {
  // The foot is 0.3048 m and the inch 25.4 mm exactly (international yard and pound, 1959).
  it.each([
    ['2.4', 2.4],
    ['2.4 m', 2.4],
    ['2,4 m', 2.4],
    ['.5m', 0.5],
    [' 240 cm ', 2.4],
    ['34 mm', 0.034],
    ['2 metres', 2],
    ['1.5 meter', 1.5],
    ['2 m 40 cm', 2.4],
    ['7 ft 6 in', 7 * 0.3048 + 6 * 0.0254],
    ['7 ft, 6 in', 7 * 0.3048 + 6 * 0.0254],
    ['7ft6in', 7 * 0.3048 + 6 * 0.0254],
    ['7 feet 6 inches', 7 * 0.3048 + 6 * 0.0254],
    ['7\'6"', 7 * 0.3048 + 6 * 0.0254],
    ['7′ 6″', 7 * 0.3048 + 6 * 0.0254],
    ['7’6”', 7 * 0.3048 + 6 * 0.0254],
    ["7' 6''", 7 * 0.3048 + 6 * 0.0254],
    ["7'6", 7 * 0.3048 + 6 * 0.0254],
    ['7 ft 6', 7 * 0.3048 + 6 * 0.0254],
    ['7.5 ft', 7.5 * 0.3048],
    ['1/2 in', 0.0127],
    ['½ in', 0.0127],
    ['6½"', 6.5 * 0.0254],
    ['7 ft 6 1/2 in', 7 * 0.3048 + 6.5 * 0.0254],
    ['-0.10 m', -0.1],
    ['−10 cm', -0.1],
    ['+10 cm', 0.1],
    ['0,400 m', 0.4],
    ['1,200.5 mm', 1.2005],
    ['1.200,5 mm', 1.2005],
    ['2.400 m', 2.4],
  ])('reads %s', (text, expected) => {
    expect(metres(text)).toBeCloseTo(expected, 12);
  });

  it('gives a bare number the unit it is told', () => {
    expect(metres('42', 'cm')).toBeCloseTo(0.42, 12);
    expect(metres('5', 'ft')).toBeCloseTo(1.524, 12);
    expect(metres('5 m', 'ft')).toBe(5);
  });

  it('refuses what is not a length, with the text and what would do', () => {
    expect(why('2,4o m')).toBe('"2,4o m" is not a distance. Try 2.4 m, 240 cm or 7 ft 10 in.');
  });

  it.each(['', '   ', 'm', '2.4 km', '1.5.2 m', '2 m 3 ft', '6 in 2 ft', '7 6', '1 m 80', '1/0 m'])(
    'refuses "%s"',
    (text) => {
      expect(why(text)).toContain('is not a distance');
    },
  );

  it('refuses what can be read in two ways, naming both', () => {
    expect(why('1,200 m')).toBe('"1,200 m" can be read in two ways. Write 1.2 m or 1200 m.');
  });
});

describe('the other quantities', () => {
  it.each([
    ['f/5.6', 5.6],
    ['F5,6', 5.6],
    ['ƒ/2', 2],
    ['11', 11],
  ])('reads the f-number %s', (text, expected) => {
    expect(parseFNumber(text)).toEqual({ ok: true, value: expected });
  });
  it.each(['0', 'f/0', '-4', 'f/', 'wide'])('refuses the f-number %s', (text) => {
    expect(parseFNumber(text)).toEqual({
      ok: false,
      why: `"${text}" is not an f-number. Try f/5.6.`,
    });
  });
  it.each([
    ['180', Math.PI],
    ['−90°', -Math.PI / 2],
    ['45 deg', Math.PI / 4],
    ['0.2 rad', 0.2],
  ])('reads the angle %s', (text, expected) => {
    const parsed = parseAngle(text);
    expect(parsed.ok && parsed.value).toBeCloseTo(expected, 12);
  });
  it('reads shares', () => {
    expect(parseShare('0,33')).toEqual({ ok: true, value: 0.33 });
    expect(parseShare('33 %')).toEqual({ ok: true, value: 0.33 });
    expect(parseShare('a third').ok).toBe(false);
  });
});

describe('formats', () => {
  it('writes a unit with each number and the true minus', () => {
    expect(formatLength(0.4, 'metric', 'distance')).toBe('0.40 m');
    expect(formatLength(2.4, 'imperial', 'distance')).toBe('7 ft 10.5 in');
    expect(formatLength(0.42, 'imperial', 'frame')).toBe('16.5 in');
    expect(formatLength(0.0342, 'metric', 'depth')).toBe('34 mm');
    expect(formatLength(-0.1, 'metric', 'distance')).toBe('−0.10 m');
    expect(formatLength(-0.001, 'metric', 'distance')).toBe('0.00 m');
    expect(formatLength(0.034342, 'metric', 'sensor')).toBe('34.3 mm');
    expect(formatFocal(0.0315789)).toBe('31.6 mm');
    expect(formatAngle(Math.PI / 4)).toBe('45.0°');
    expect(formatPercent(0.3146)).toBe('31 %');
    expect(formatPercent(0.0042)).toBe('0.4 %');
    expect(formatPercent(0.9972)).toBe('99.7 %');
    expect(formatPercent(1)).toBe('100 %');
    expect(formatChange(1.094)).toBe('+9 %');
    expect(formatChange(0.832)).toBe('−17 %');
    expect(formatChange(1.0001)).toBe('0 %');
    expect(formatStops(0.25)).toBe('0.3');
    expect(formatFNumber(5.6)).toBe('f/5.6');
    expect(formatLength(2.4, 'metric', 'distance', 'de')).toBe('2,40 m');
  });

  it('writes what it reads back, within half of the last step shown', () => {
    const halfStep = { metric: 0.005, imperial: 0.0254 / 4 };
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.constantFrom<LengthPurpose>('distance', 'frame', 'depth'),
        fc.constantFrom('metric' as const, 'imperial' as const),
        fc.constantFrom('en', 'de'),
        (value, purpose, units, locale) => {
          const back = metres(formatLength(value, units, purpose, locale));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(halfStep[units] + 1e-9);
        },
      ),
    );
  });

  it('reads every decimal number with either separator as the same length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.constantFrom(1, 2), (whole, digits) => {
        const text = (whole / 10 ** digits).toFixed(digits);
        expect(metres(`${text} m`)).toBe(metres(`${text.replace('.', ',')} m`));
        expect(metres(`${text} m`)).toBeCloseTo(whole / 10 ** digits, 12);
      }),
    );
  });

  it('answers any text with a length or a sentence', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const parsed = parseLength(text);
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.why.endsWith('.')).toBe(true);
      }),
    );
  });
});
