import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIMITS, MOST } from '../../src/session/limits';
import {
  parseStandpointList,
  parseStandpointRange,
  type Standpoints,
  standpointsBetween,
} from '../../src/session/standpoint-list';

const list = (found: Standpoints): readonly number[] => {
  if (!found.ok) throw new Error(found.refused.kind);
  return found.value;
};
const refusal = (found: Standpoints): string => (found.ok ? 'read' : found.refused.kind);
const { least, most } = LIMITS.standpoint;

describe('a range in steps', () => {
  it('counts from the start to the end, both ends there where the step reaches them', () => {
    expect(list(standpointsBetween(0.3, 0.7, 0.1))).toEqual([0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(list(standpointsBetween(0.3, 0.75, 0.1))).toEqual([0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(list(standpointsBetween(0.3, 4, 0.1))).toHaveLength(38);
    expect(list(standpointsBetween(0.5, 0.5, 0.1))).toEqual([0.5]);
    expect(list(standpointsBetween(4, 1, 1))).toEqual([1, 2, 3, 4]);
  });

  it('reads metric and feet', () => {
    const texts = { start: '2 ft', end: '4', step: '6 in' };
    expect(list(parseStandpointRange(texts, 'ft'))).toEqual(
      [2, 2.5, 3, 3.5, 4].map((feet) => Number((feet * 0.3048).toFixed(9))),
    );
    expect(list(parseStandpointRange({ start: '0,3', end: '60 cm', step: '0.1 m' }, 'm'))).toEqual([
      0.3, 0.4, 0.5, 0.6,
    ]);
  });

  it('refuses, saying why, before it makes anything', () => {
    expect(refusal(standpointsBetween(0.3, 4, 0))).toBe('step');
    expect(refusal(standpointsBetween(0.3, 4, -1))).toBe('step');
    expect(refusal(standpointsBetween(0.3, 4, Number.NaN))).toBe('step');
    expect(refusal(standpointsBetween(0.3, 30, 1e-300))).toBe('many');
    expect(refusal(standpointsBetween(0.01, 4, 0.1))).toBe('outside');
    expect(refusal(standpointsBetween(0.3, Number.POSITIVE_INFINITY, 0.1))).toBe('outside');
    expect(refusal(standpointsBetween(Number.NaN, 4, 0.1))).toBe('outside');
    const wide = { start: '0.3', end: '4', step: '9'.repeat(400) };
    expect(refusal(parseStandpointRange(wide, 'm'))).toBe('step');
    expect(list(standpointsBetween(0.3, 4, 1e9))).toEqual([0.3]);
    expect(refusal(parseStandpointRange({ start: 'near', end: '4', step: '1' }, 'm'))).toBe(
      'unreadable',
    );
  });

  it('always gives at most so many, rising and legal, or a reason', () => {
    const any = fc.double();
    fc.assert(
      fc.property(any, any, any, (start, end, step) => {
        const found = standpointsBetween(start, end, step);
        if (!found.ok) return;
        expect(found.value.length).toBeLessThanOrEqual(MOST.tabled);
        for (const [i, each] of found.value.entries()) {
          expect(each >= least - 1e-9 && each <= most + 1e-9).toBe(true);
          if (i > 0) expect(each).toBeGreaterThan(found.value[i - 1] as number);
        }
      }),
    );
  });
});

describe('a typed list', () => {
  it('reads units, both decimal marks and any order, each place once', () => {
    expect(list(parseStandpointList('0.4, 60 cm, 2 ft', 'm'))).toEqual([0.4, 0.6, 0.6096]);
    expect(list(parseStandpointList('1,2; 0,4;0,4', 'm'))).toEqual([0.4, 1.2]);
    expect(list(parseStandpointList('0.4,0.6,0.8', 'm'))).toEqual([0.4, 0.6, 0.8]);
    expect(list(parseStandpointList('2 ft 6 in\n3', 'ft'))).toEqual([0.762, 0.9144]);
  });

  it('refuses, saying why', () => {
    expect(refusal(parseStandpointList('', 'm'))).toBe('none');
    expect(refusal(parseStandpointList(' , ;', 'm'))).toBe('none');
    expect(refusal(parseStandpointList('0.4, far', 'm'))).toBe('unreadable');
    expect(refusal(parseStandpointList('0.4, 0', 'm'))).toBe('outside');
    expect(refusal(parseStandpointList('-1', 'm'))).toBe('outside');
    const many = Array.from({ length: 201 }, (_, i) => `${1 + i / 100} m`).join('; ');
    expect(refusal(parseStandpointList(many, 'm'))).toBe('many');
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const found = parseStandpointList(text, 'm');
        if (found.ok) expect(found.value.every((each) => each >= least && each <= most)).toBe(true);
      }),
    );
  });
});
