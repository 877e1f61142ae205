import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pupilDiameter, throughPupil } from '../../src/optics/aperture';
import { cameraAt, pictureShare, toCameraAxes } from '../../src/optics/camera';
import { blurDisc } from '../../src/optics/focus';
import type { Camera, Vec3 } from '../../src/optics/types';
import { type Metre, metres, radians } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, value } from './value';

const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

/** Cameras above or below the eyes, tilted, with the frame shifted. */
const settings = fc
  .record({
    standpoint: length(0.5, 8),
    height: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
    tilt: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    focal: length(0.02, 0.2),
    eyesAt: share,
    eyesAcross: share,
    fNumber: fc.double({ min: 1, max: 22, noNaN: true }),
    focus: length(0.3, 10),
  })
  .map(({ height, tilt, focus, fNumber, ...request }) => ({
    focal: request.focal,
    focus,
    fNumber,
    camera: value(
      cameraAt({
        ...request,
        height: metres(height * request.standpoint),
        tilt: radians(tilt),
        sensor: FULL_FRAME_PORTRAIT,
        focusDistance: focus,
      }),
    ),
  }));

/** The point that a camera draws at shares of its frame, at a depth. */
function pointAt(camera: Camera, across: number, down: number, depth: Metre): Vec3 {
  const { left, right, bottom, top } = camera.frustum;
  const [x, y] = [left + (right - left) * across, top + (bottom - top) * down];
  const [cos, sin] = [Math.cos(camera.tilt), Math.sin(camera.tilt)];
  const point: Vec3 = [
    camera.position[0] + x * depth,
    camera.position[1] + depth * (y * cos + sin),
    camera.position[2] + depth * (y * sin - cos),
  ];
  expect(-toCameraAxes(camera, point)[2]).toBeCloseTo(depth, 9);
  return point;
}

describe('views through the pupil', () => {
  it('draw a point of the plane in focus at the same place', () => {
    always(
      fc.property(settings, share, share, angle, (setting, across, down, turn) => {
        const { camera, focal, fNumber, focus } = setting;
        const point = pointAt(camera, across, down, focus);
        const radius = value(pupilDiameter(focal, fNumber)) / 2;
        const offset = {
          right: metres(radius * Math.cos(turn)),
          up: metres(radius * Math.sin(turn)),
        };
        const drawn = value(pictureShare(throughPupil(camera, offset, focus), point));
        expect(drawn.across).toBeCloseTo(across, 9);
        expect(drawn.down).toBeCloseTo(down, 9);
      }),
    );
  });

  it('spread any other point over exactly the disc that the formula gives', () => {
    always(
      fc.property(
        settings,
        share,
        share,
        length(0.3, 12),
        angle,
        (setting, across, down, x, turn) => {
          const { camera, focal, fNumber, focus } = setting;
          const point = pointAt(camera, across, down, x);
          const diameter = value(pupilDiameter(focal, fNumber));
          const drawnFrom = (to: number) => {
            const offset = {
              right: metres((to * diameter * Math.cos(turn)) / 2),
              up: metres((to * diameter * Math.sin(turn)) / 2),
            };
            const drawn = value(pictureShare(throughPupil(camera, offset, focus), point));
            const { width, height } = camera.sensor;
            return [drawn.across * width, drawn.down * height] as const;
          };
          // Opposite points of the pupil's rim are drawn at opposite points of the disc's.
          const [one, other] = [drawnFrom(1), drawnFrom(-1)];
          const spread = Math.hypot(one[0] - other[0], one[1] - other[1]);
          const disc = value(blurDisc({ focal, fNumber, focus }, x));
          expect(Math.abs(spread - disc)).toBeLessThan(1e-9 * (camera.sensor.height + disc));
          // Half way to the rim, half the way: the disc is filled as the pupil is.
          const half = drawnFrom(0.5);
          const middle = drawnFrom(0);
          expect(half[0] - middle[0]).toBeCloseTo((one[0] - middle[0]) / 2, 9);
          expect(half[1] - middle[1]).toBeCloseTo((one[1] - middle[1]) / 2, 9);
        },
      ),
    );
  });

  it('leave depths along the axis, and so what is near and far, as they were', () => {
    always(
      fc.property(settings, length(-0.05, 0.05), length(-0.05, 0.05), (setting, right, up) => {
        const { camera, focus } = setting;
        const moved = throughPupil(camera, { right, up }, focus);
        const point: Vec3 = [0.1, -0.2, 0.05];
        expect(toCameraAxes(moved, point)[2]).toBeCloseTo(toCameraAxes(camera, point)[2], 12);
      }),
    );
  });
});
