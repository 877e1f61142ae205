import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backgroundSize } from '../../src/optics/background';
import {
  airyDisc,
  blurDisc,
  blurInPicture,
  blurOnBackdrop,
  depthOfField,
  fNumberForDepth,
  focusForTwoPlanes,
  hyperfocal,
  naturalVignettingStops,
} from '../../src/optics/focus';
import { focalForFrame } from '../../src/optics/framing';
import { magnification } from '../../src/optics/lens';
import { degToRad, metres, mmToM } from '../../src/optics/units';
import { always, length, refusal, value } from './value';

const focals = length(0.016, 0.3);
const fNumbers = fc.double({ min: 1, max: 32, noNaN: true });
const circles = length(0.00001, 0.0001);
const times = fc.double({ min: 2, max: 300, noNaN: true });

describe('depth of field', () => {
  it('ends where the blur disc has grown to the circle of confusion', () => {
    always(
      fc.property(focals, fNumbers, times, circles, (focal, fNumber, multiple, c) => {
        const lens = { focal, fNumber, focus: metres(focal * multiple) };
        const { near, far } = value(depthOfField({ ...lens, circleOfConfusion: c }));
        expect(value(blurDisc(lens, near)) / c).toBeCloseTo(1, 6);
        const atFar = value(blurDisc(lens, far));
        if (Number.isFinite(far)) expect(atFar / c).toBeCloseTo(1, 6);
        else expect(atFar).toBeLessThanOrEqual(c * (1 + 1e-9));
        expect(near).toBeLessThan(lens.focus);
        expect(far).toBeGreaterThan(lens.focus);
      }),
    );
  });

  it('reaches to infinity from the hyperfocal distance on', () => {
    always(
      fc.property(focals, fNumbers, circles, (focal, fNumber, c) => {
        const limit = value(hyperfocal(focal, fNumber, c));
        const farAt = (focus: number) =>
          value(depthOfField({ focal, fNumber, focus: metres(focus), circleOfConfusion: c })).far;
        expect(farAt(limit * 1.0001)).toBe(Number.POSITIVE_INFINITY);
        expect(farAt(limit * 0.9999)).toBeLessThan(Number.POSITIVE_INFINITY);
      }),
    );
  });

  it('shares two planes and holds them with the least f-number', () => {
    always(
      fc.property(focals, times, times, circles, (focal, one, other, c) => {
        fc.pre(Math.abs(one - other) > 0.01);
        const a = metres(focal * one);
        const b = metres(focal * other);
        const focus = value(focusForTwoPlanes(a, b));
        const fNumber = value(fNumberForDepth(focal, a, b, c));
        const discs = [a, b].map((x) => value(blurDisc({ focal, fNumber, focus }, x)) / c);
        for (const disc of discs) expect(disc).toBeCloseTo(1, 6);
      }),
    );
    expect(value(fNumberForDepth(mmToM(85), metres(2), metres(2), mmToM(0.03)))).toBe(0);
    // Published as 45 % into the depth for rows at 4.0 and 4.8 m.
    expect(value(focusForTwoPlanes(metres(4), metres(4.8)))).toBeCloseTo(4 + 0.8 * 0.4545, 3);
  });
});

describe('blur', () => {
  it('of a backdrop, measured on it, is the same from every standpoint at equal crop', () => {
    always(
      fc.property(
        length(0.4, 10),
        length(0.2, 2),
        length(0.1, 5),
        fNumbers,
        (standpoint, frame, behind, fNumber) => {
          const h = mmToM(36);
          const focal = value(focalForFrame(frame, standpoint, h));
          const lens = { focal, fNumber, focus: standpoint };
          const disc = value(blurDisc(lens, metres(standpoint + behind)));
          // From the sensor back to the backdrop: over m, and over the backdrop's relative size.
          const m = value(magnification(focal, standpoint));
          const onBackdrop = disc / m / value(backgroundSize(standpoint, behind));
          expect(onBackdrop / value(blurOnBackdrop(behind, h, fNumber, frame))).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  it('vanishes in focus and tends to f m / N far behind', () => {
    const lens = { focal: mmToM(85), fNumber: 2, focus: metres(2) };
    expect(value(blurDisc(lens, metres(2)))).toBe(0);
    const m = value(magnification(lens.focal, lens.focus));
    const far = value(blurDisc(lens, metres(Number.POSITIVE_INFINITY)));
    expect(far).toBeCloseTo((0.085 * m) / 2, 12);
    expect(value(blurInPicture(lens, metres(Number.POSITIVE_INFINITY), mmToM(36)))).toBeCloseTo(
      far / 0.036,
      12,
    );
  });

  it('of diffraction grows with the effective f-number', () => {
    expect(value(airyDisc(8, 1))).toBeCloseTo(2 * value(airyDisc(8, 0)), 12);
  });

  it('refuses a lens that cannot focus there', () => {
    const lens = { focal: mmToM(85), fNumber: 2, focus: mmToM(60) };
    expect(refusal(blurDisc(lens, metres(2))).reason).toBe('inside-focal-length');
    expect(refusal(blurDisc({ ...lens, focus: metres(2) }, metres(0))).reason).toBe('not-positive');
  });
});

describe('natural vignetting', () => {
  it('is two stops at 45 degrees', () => {
    expect(value(naturalVignettingStops(degToRad(45)))).toBeCloseTo(2, 12);
    expect(value(naturalVignettingStops(degToRad(0)))).toBeCloseTo(0, 12);
    expect(refusal(naturalVignettingStops(degToRad(90))).reason).toBe('behind-camera');
  });
});
