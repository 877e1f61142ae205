import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveFNumber,
  exposureLossStops,
  focalForImageDistance,
  focusForMarkDistance,
  imageDistance,
  magnification,
  markDistance,
} from '../../src/optics/lens';
import { metres, mmToM } from '../../src/optics/units';
import { always, length, refusal, value } from './value';

const focals = length(0.008, 0.8);
/** Focus distances beyond twice the focal length, in focal lengths. */
const beyondLifeSize = fc.double({ min: 2.0001, max: 1000, noNaN: true });

describe('thin lens', () => {
  it('draws life size at twice the focal length', () => {
    expect(value(imageDistance(mmToM(100), mmToM(200)))).toBeCloseTo(0.2, 12);
    expect(value(magnification(mmToM(100), mmToM(200)))).toBeCloseTo(1, 12);
    expect(value(markDistance(mmToM(100), mmToM(200)))).toBeCloseTo(0.4, 12);
  });

  it('solves the lens equation: 1/f = 1/s + 1/s', () => {
    always(
      fc.property(focals, beyondLifeSize, (f, times) => {
        const s = metres(f * times);
        const image = value(imageDistance(f, s));
        expect(1 / s + 1 / image).toBeCloseTo(1 / f, 9);
        expect(value(magnification(f, s)) / (image / s)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('solves back for focal length, focus and tape distance', () => {
    always(
      fc.property(focals, beyondLifeSize, (f, times) => {
        const s = metres(f * times);
        const image = value(imageDistance(f, s));
        expect(value(focalForImageDistance(image, s)) / f).toBeCloseTo(1, 10);
        // Near 2f the two roots meet, which costs half the digits.
        expect(value(focusForMarkDistance(f, value(markDistance(f, s)))) / s).toBeCloseTo(1, 6);
      }),
    );
  });

  it('refuses a focus inside the focal length, and names it', () => {
    expect(refusal(imageDistance(mmToM(85), mmToM(85)))).toMatchObject({
      reason: 'inside-focal-length',
      limit: 0.085,
      asked: 0.085,
    });
  });

  it('refuses a tape distance under four focal lengths, where s + s has no root', () => {
    expect(refusal(focusForMarkDistance(mmToM(100), metres(0.399)))).toEqual({
      ok: false,
      reason: 'too-near-to-focus',
      limit: 0.4,
      asked: 0.399,
    });
    expect(value(focusForMarkDistance(mmToM(100), metres(0.4)))).toBeCloseTo(0.2, 7);
  });

  it('loses two stops at life size, none far away', () => {
    expect(value(exposureLossStops(1))).toBe(2);
    expect(value(exposureLossStops(0))).toBe(0);
    expect(value(effectiveFNumber(4, 1))).toBe(8);
    expect(value(effectiveFNumber(4, 1, 0.5))).toBe(12);
  });
});
