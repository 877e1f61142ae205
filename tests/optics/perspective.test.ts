import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cameraAt, project } from '../../src/optics/camera';
import {
  depthBefore,
  distanceForGain,
  distanceToMatch,
  gain,
  gainPerStep,
  ratioOf,
  sizeAtDepth,
} from '../../src/optics/perspective';
import type { Vec3 } from '../../src/optics/types';
import { metres, mmToM, radians } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, refusal, value } from './value';

const nose = length(0.01, 0.06);
const ear = length(-0.13, -0.05);

describe('size at depth', () => {
  it('is what a camera draws: similar triangles from the entrance pupil', () => {
    always(
      fc.property(length(0.2, 10), length(-0.3, 0.15), (d, z) => {
        const camera = value(
          cameraAt({ standpoint: d, focal: mmToM(50), sensor: FULL_FRAME_PORTRAIT }),
        );
        const at = (depth: number) => value(project(camera, [0.01, 0, depth])).u;
        expect(value(sizeAtDepth(d, z))).toBeCloseTo(at(z) / at(0), 9);
      }),
    );
  });

  it('falls monotonically to 1 for a frontal nose over ear', () => {
    always(
      fc.property(nose, ear, length(0.1, 100), length(0.001, 100), (zN, zE, d, further) => {
        const near = value(ratioOf(d, zN, zE));
        const far = value(ratioOf(metres(d + further), zN, zE));
        expect(far).toBeLessThan(near);
        expect(far).toBeGreaterThan(1);
      }),
    );
    expect(value(ratioOf(metres(1e9), mmToM(34), mmToM(-81)))).toBeCloseTo(1, 9);
  });

  it('passes 1 for the near ear of a turned head', () => {
    expect(value(gain(metres(0.5), mmToM(10), mmToM(40)))).toBeLessThan(0);
  });

  it('does not change when the camera tilts about the lens', () => {
    const heights = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    const tilts = fc.double({ min: -0.6, max: 0.6, noNaN: true }).map(radians);
    const point = fc.tuple(length(-0.1, 0.1), length(-0.2, 0.2), length(-0.1, 0.1));
    always(
      fc.property(length(0.4, 8), heights, tilts, point, point, (d, rise, tilt, a, b) => {
        const request = {
          standpoint: d,
          height: metres(rise * d),
          focal: mmToM(35),
          sensor: FULL_FRAME_PORTRAIT,
        };
        const ratio = (position: Vec3) =>
          value(ratioOf(d, value(depthBefore(a, position)), value(depthBefore(b, position))));
        const level = value(cameraAt(request));
        const tilted = value(cameraAt({ ...request, tilt }));
        expect(ratio(tilted.position)).toBe(ratio(level.position));
        // Nor the angle between the rays that drew two points, whatever became of the drawing.
        const angle = (camera: typeof level) => {
          const [p, q] = [a, b].map((point) => {
            const { u, v } = value(project(camera, point));
            const ray = [u, v, camera.imageDistance];
            return ray.map((part) => part / Math.hypot(...ray));
          });
          return Math.hypot(...(p ?? []).map((part, i) => part - (q?.[i] ?? Number.NaN)));
        };
        expect(angle(tilted)).toBeCloseTo(angle(level), 9);
      }),
    );
  });

  it('measures depth along the line to the entrance pupil', () => {
    expect(value(depthBefore([0, 0.1, 0.1], [0, 3, 4]))).toBeCloseTo(0.14, 12);
    expect(value(depthBefore([0.3, 0, 0], [0, 3, 4]))).toBe(0);
    expect(refusal(depthBefore([0, 0, 0], [0, 0, 0])).reason).toBe('not-positive');
  });
});

describe('gain', () => {
  it('is the excess over 1, and its step is the difference', () => {
    always(
      fc.property(nose, ear, length(0.4, 10), length(-0.2, 0.5), (zN, zE, d, step) => {
        const here = value(gain(d, zN, zE));
        expect(here).toBeCloseTo(value(ratioOf(d, zN, zE)) - 1, 12);
        const there = value(ratioOf(metres(d + step), zN, zE)) - 1;
        expect(value(gainPerStep(d, zN, zE, step))).toBeCloseTo(there - here, 12);
      }),
    );
  });

  it('solves back for the standpoint', () => {
    always(
      fc.property(nose, ear, length(0.1, 50), (zN, zE, d) => {
        expect(value(distanceForGain(zN, zE, value(gain(d, zN, zE)))) / d).toBeCloseTo(1, 9);
      }),
    );
  });

  it('matches the look of another sitter', () => {
    always(
      fc.property(nose, ear, nose, ear, length(0.3, 20), (zA, zB, otherA, otherB, d) => {
        const own = value(distanceToMatch({ zA, zB }, { zA: otherA, zB: otherB }, d));
        expect(value(ratioOf(own, zA, zB))).toBeCloseTo(value(ratioOf(d, otherA, otherB)), 9);
      }),
    );
  });

  it('refuses gains no standpoint gives', () => {
    const zN = mmToM(34);
    const zE = mmToM(-81);
    expect(refusal(distanceForGain(zN, zE, 0)).reason).toBe('not-positive');
    expect(refusal(distanceForGain(zN, zE, -0.1)).reason).toBe('not-positive');
    expect(refusal(distanceForGain(zN, zN, 0.1)).reason).toBe('not-positive');
    // A nearer B (negative gain) beyond -1 would need the lens between the two.
    expect(refusal(distanceForGain(zE, zN, -1.5)).reason).toBe('behind-camera');
    expect(refusal(gain(mmToM(30), zN, zE))).toMatchObject({
      reason: 'behind-camera',
      limit: 0.03,
      asked: 0.034,
    });
  });
});
