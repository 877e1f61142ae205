import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleOfView,
  focalForFrame,
  focusForFrame,
  frameForFocal,
  frustumFor,
  imageDistanceForAngles,
  jitterFrustum,
  partOfFrustum,
  sensorSides,
} from '../../src/optics/framing';
import { imageDistance } from '../../src/optics/lens';
import type { Frustum, SensorFormat } from '../../src/optics/types';
import { metres, mmToM, radToDeg } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, refusal, value } from './value';

const format: SensorFormat = {
  id: 'full-frame',
  name: '36 x 24',
  longSide: mmToM(36),
  shortSide: mmToM(24),
  circleOfConfusion: mmToM(0.03),
};

const frustums = fc
  .tuple(length(0.01, 0.5), length(-0.02, 0.02), length(-0.02, 0.02))
  .map(([image, u, v]) => value(frustumFor(image, FULL_FRAME_PORTRAIT, { u, v })));

const edges = ({ left, right, bottom, top }: Frustum) => [left, right, bottom, top];

describe('framing', () => {
  it('turns the sensor with the picture', () => {
    expect(sensorSides(format, 'portrait')).toEqual({ width: 0.024, height: 0.036 });
    expect(sensorSides(format, 'landscape')).toEqual({ width: 0.036, height: 0.024 });
  });

  it('holds the frame height for every standpoint in range', () => {
    always(
      fc.property(length(0.1, 3), length(0.15, 20), length(0.005, 0.1), (frame, s, h) => {
        const f = value(focalForFrame(frame, s, h));
        expect(f).toBeLessThan(s);
        // Drawn size of the frame, from the lens equation alone.
        const drawn = (frame * value(imageDistance(f, s))) / s;
        expect(drawn / h).toBeCloseTo(1, 9);
        expect(value(frameForFocal(f, s, h)) / frame).toBeCloseTo(1, 9);
        expect(value(focusForFrame(frame, f, h)) / s).toBeCloseTo(1, 9);
      }),
    );
  });

  it('draws two seen points as far apart as asked', () => {
    const image = value(imageDistanceForAngles(mmToM(20), 0.1, 0.15));
    expect(image * 0.1 + image * 0.15).toBeCloseTo(0.02, 12);
    expect(value(imageDistanceForAngles(mmToM(20), 0.3, -0.05))).toBeCloseTo(0.08, 12);
    expect(refusal(imageDistanceForAngles(mmToM(20), 0.1, -0.1)).reason).toBe('not-positive');
  });

  it('has the angle of view of its frustum', () => {
    always(
      fc.property(length(0.01, 0.5), (image) => {
        const { top, bottom } = value(frustumFor(image, FULL_FRAME_PORTRAIT));
        const angle = value(angleOfView(FULL_FRAME_PORTRAIT.height, image));
        expect(Math.atan(top) - Math.atan(bottom)).toBeCloseTo(angle, 12);
      }),
    );
    expect(radToDeg(value(angleOfView(metres(2), metres(1))))).toBeCloseTo(90, 12);
  });

  it('places the frame by shift without changing its size', () => {
    const straight = value(frustumFor(metres(0.1), FULL_FRAME_PORTRAIT));
    const shifted = value(
      frustumFor(metres(0.1), FULL_FRAME_PORTRAIT, { u: mmToM(2), v: mmToM(-5) }),
    );
    expect(shifted.right - straight.right).toBeCloseTo(0.02, 12);
    expect(shifted.left - straight.left).toBeCloseTo(0.02, 12);
    expect(shifted.top - straight.top).toBeCloseTo(-0.05, 12);
    expect(shifted.bottom - straight.bottom).toBeCloseTo(-0.05, 12);
  });
});

describe('parts of a frustum', () => {
  it('reassemble it, edge on edge', () => {
    const count = fc.integer({ min: 1, max: 9 });
    always(
      fc.property(frustums, count, count, (whole, columns, rows) => {
        const tile = (column: number, row: number) =>
          partOfFrustum(whole, {
            x0: column / columns,
            x1: (column + 1) / columns,
            y0: row / rows,
            y1: (row + 1) / rows,
          });
        for (let row = 0; row < rows; row++) {
          for (let column = 0; column < columns; column++) {
            // Neighbours share the very same number, so that no seam can open.
            const here = tile(column, row);
            if (column > 0) expect(here.left).toBe(tile(column - 1, row).right);
            if (row > 0) expect(here.top).toBe(tile(column, row - 1).bottom);
          }
        }
        const first = tile(0, 0);
        const last = tile(columns - 1, rows - 1);
        const rejoined = [first.left, last.right, last.bottom, first.top];
        edges(whole).forEach((edge, i) => {
          expect(rejoined[i]).toBeCloseTo(edge, 12);
        });
      }),
    );
  });

  it('nest: a part of a part is a part', () => {
    const outer = { x0: 0.2, x1: 0.8, y0: 0.1, y1: 0.5 };
    always(
      fc.property(frustums, (whole) => {
        const once = partOfFrustum(whole, { x0: 0.5, x1: 0.8, y0: 0.1, y1: 0.2 });
        const twice = partOfFrustum(partOfFrustum(whole, outer), {
          x0: 0.5,
          x1: 1,
          y0: 0,
          y1: 0.25,
        });
        edges(once).forEach((edge, i) => {
          expect(edges(twice)[i]).toBeCloseTo(edge, 12);
        });
      }),
    );
  });

  it('jitter moves the frame and comes back', () => {
    always(
      fc.property(frustums, length(-1, 1), length(-1, 1), (frustum, x, y) => {
        const moved = jitterFrustum(frustum, x, y);
        expect(moved.right - moved.left).toBeCloseTo(frustum.right - frustum.left, 12);
        expect(moved.top - moved.bottom).toBeCloseTo(frustum.top - frustum.bottom, 12);
        edges(jitterFrustum(moved, -x, -y)).forEach((edge, i) => {
          expect(edge).toBeCloseTo(edges(frustum)[i] ?? Number.NaN, 12);
        });
      }),
    );
    expect(jitterFrustum({ left: -1, right: 1, bottom: -2, top: 2 }, 0.5, 0.25)).toEqual({
      left: 0,
      right: 2,
      bottom: -1,
      top: 3,
    });
  });
});
