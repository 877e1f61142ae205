import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { focusForMarkDistance, magnification } from '../../src/optics/lens';
import {
  effectiveFocalAt,
  focusForMagnification,
  lensMarkDistance,
  lensRefusal,
  lensStateAt,
  magnificationWithPupils,
  markedFocalFor,
  nearestFocusAt,
  widestApertureAt,
} from '../../src/optics/real-lens';
import type { Lens } from '../../src/optics/types';
import { metres, mmToM } from '../../src/optics/units';
import { always, length, refusal, value } from './value';

const plain: Lens = {
  id: 'prime-85',
  name: '85 mm f/1.8',
  focal: [mmToM(85), mmToM(85)],
  widest: [1.8, 1.8],
  smallest: 16,
  nearestFocus: [metres(0.8), metres(0.8)],
  length: mmToM(120),
};
const zoom: Lens = {
  id: 'zoom-70-200',
  name: '70-200 mm f/2.8-4',
  focal: [mmToM(70), mmToM(200)],
  widest: [2.8, 4],
  smallest: 32,
  nearestFocus: [metres(0.7), metres(1)],
  length: mmToM(220),
  largestMagnification: 0.25,
};
/** Focuses nearer than a thin lens of its focal length could: D < 4f. */
const macro: Lens = {
  ...plain,
  id: 'macro-100',
  focal: [mmToM(100), mmToM(100)],
  nearestFocus: [metres(0.3), metres(0.3)],
  largestMagnification: 1,
};

describe('lens with data', () => {
  it('gives the figures of its ends at its ends, and equal stops for equal zoom factors', () => {
    expect(value(widestApertureAt(zoom, mmToM(70)))).toBe(2.8);
    expect(value(widestApertureAt(zoom, mmToM(200)))).toBeCloseTo(4, 12);
    const middle = metres(Math.sqrt(0.07 * 0.2));
    expect(value(widestApertureAt(zoom, middle))).toBeCloseTo(Math.sqrt(2.8 * 4), 12);
    expect(value(nearestFocusAt(zoom, middle))).toBeCloseTo(Math.sqrt(0.7), 12);
    expect(value(widestApertureAt(plain, mmToM(85)))).toBe(1.8);
  });

  it('keeps its marked focal length far away and reaches its largest magnification near', () => {
    expect(value(effectiveFocalAt(zoom, mmToM(200), metres(1e9)))).toBeCloseTo(0.2, 8);
    expect(value(lensStateAt(zoom, mmToM(200), metres(1))).magnification).toBeCloseTo(0.25, 12);
  });

  it('does not fail where a thin lens of its mark would', () => {
    expect(focusForMarkDistance(mmToM(100), metres(0.3)).ok).toBe(false);
    const state = value(lensStateAt(macro, mmToM(100), metres(0.3)));
    // The two roots of s + s' = D meet at life size: half the digits are left.
    expect(state.magnification).toBeCloseTo(1, 6);
    expect(state.focal).toBeCloseTo(0.075, 12);
  });

  it('reaches its largest magnification by its own pupils where they are known', () => {
    const known: Lens = { ...macro, entrancePupil: mmToM(90), pupilMagnification: 0.8 };
    const state = value(lensStateAt(known, mmToM(100), metres(0.3)));
    expect(state.magnification).toBeCloseTo(1, 12);
    expect(state.focus).toBeCloseTo(0.21, 12);
    expect(value(lensMarkDistance(known, state.focal, state.focus))).toBeCloseTo(0.3, 12);
  });

  it('is the thin lens where nothing is known', () => {
    const state = value(lensStateAt(plain, mmToM(85), metres(2)));
    expect(state.focal).toBe(0.085);
    expect(state.focus + state.imageDistance).toBeCloseTo(2, 12);
    expect(value(lensMarkDistance(plain, state.focal, state.focus))).toBeCloseTo(2, 12);
    expect(state.magnification).toBeCloseTo(value(magnification(mmToM(85), state.focus)), 12);
  });

  it('solves back for the mark and for the magnification', () => {
    always(
      fc.property(length(0.07, 0.2), length(1, 20), (marked, tape) => {
        const acting = value(effectiveFocalAt(zoom, marked, tape));
        expect(value(markedFocalFor(zoom, acting, tape)) / marked).toBeCloseTo(1, 12);
      }),
    );
    always(
      fc.property(length(0.05, 0.3), length(0.01, 1), length(0.3, 3), (f, m, p) => {
        const focus = value(focusForMagnification(f, m, p));
        expect(value(magnificationWithPupils(f, focus, p)) / m).toBeCloseTo(1, 10);
      }),
    );
  });

  it('names each limit that a request passes', () => {
    const at = (focal: number, tape: number, n: number) =>
      lensRefusal(zoom, mmToM(focal), metres(tape), n);
    expect(at(135, 2, 5.6)).toBeNull();
    expect(at(200, 1, 4)).toBeNull();
    expect(at(50, 2, 5.6)).toMatchObject({ reason: 'lens-too-long', limit: 0.07, asked: 0.05 });
    expect(at(300, 2, 5.6)).toMatchObject({ reason: 'lens-too-short', limit: 0.2, asked: 0.3 });
    expect(at(200, 0.9, 5.6)).toMatchObject({ reason: 'too-near-to-focus', limit: 1 });
    expect(at(200, 2, 2.8)).toMatchObject({ reason: 'aperture-too-wide', asked: 2.8 });
    expect(at(200, 2, 45)).toMatchObject({ reason: 'aperture-too-small', limit: 32, asked: 45 });
    expect(at(Number.NaN, 2, 4)).toMatchObject({ reason: 'not-a-number' });
  });

  it('takes a solved value that misses an end by rounding alone', () => {
    expect(lensRefusal(zoom, metres(0.2 * (1 + 1e-12)), metres(1 - 1e-12), 4)).toBeNull();
  });

  it('refuses a focus inside the lens', () => {
    const long: Lens = { ...plain, entrancePupil: mmToM(760) };
    expect(refusal(lensStateAt(long, mmToM(85), metres(0.8))).reason).toBe('inside-focal-length');
    expect(refusal(magnificationWithPupils(mmToM(100), mmToM(50))).reason).toBe(
      'inside-focal-length',
    );
  });
});
