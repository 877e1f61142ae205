import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CameraRequest,
  cameraAt,
  eyeDepth,
  frameAtDepth,
  pictureCentre,
  pictureShare,
  project,
  projectInPicture,
  standpointDistance,
  viewAngle,
} from '../../src/optics/camera';
import { focalForFrame } from '../../src/optics/framing';
import { imageDistance } from '../../src/optics/lens';
import type { Vec3 } from '../../src/optics/types';
import { degToRad, metres, mmToM, radians, radToDeg } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, refusal, value } from './value';

const EYES: Vec3 = [0, 0, 0];
const straight: CameraRequest = {
  standpoint: metres(2),
  focal: mmToM(85),
  sensor: FULL_FRAME_PORTRAIT,
};

/** Cameras that look at the eyes from any height the standpoint allows, tilted within 30 degrees. */
const requests = fc
  .record({
    standpoint: length(0.3, 10),
    rise: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    tilt: fc.double({ min: -0.5, max: 0.5, noNaN: true }).map(radians),
    eyesAt: fc.double({ min: 0, max: 1, noNaN: true }),
    eyesAcross: fc.double({ min: 0, max: 1, noNaN: true }),
    focal: length(0.016, 0.1),
  })
  .map(({ rise, ...rest }) => ({
    ...rest,
    height: metres(rise * rest.standpoint),
    sensor: FULL_FRAME_PORTRAIT,
  }));
const points = fc.tuple(length(-0.3, 0.3), length(-0.3, 0.3), length(-0.1, 0.1));

describe('camera', () => {
  it('stands in front of the eyes with a level axis, the eyes in the middle', () => {
    const camera = value(cameraAt(straight));
    expect(camera.position).toEqual([0, 0, 2]);
    expect(camera.imageDistance).toBe(value(imageDistance(mmToM(85), metres(2))));
    expect(value(project(camera, EYES))).toMatchObject({ u: 0, v: 0, depth: 2 });
    expect(value(pictureShare(camera, EYES))).toEqual({ across: 0.5, down: 0.5 });
    expect(viewAngle(camera)).toBe(0);
  });

  it("draws the sitter's left on the right of the upright picture, and up as up", () => {
    const camera = value(cameraAt(straight));
    const drawn = value(project(camera, [0.1, 0.2, 0]));
    expect(drawn.u).toBeCloseTo((camera.imageDistance * 0.1) / 2, 12);
    expect(drawn.v).toBeCloseTo((camera.imageDistance * 0.2) / 2, 12);
  });

  it('looks up when tilted upwards: what it sees moves down', () => {
    const camera = value(cameraAt({ ...straight, tilt: degToRad(10) }));
    expect(value(project(camera, EYES)).v).toBeCloseTo(
      -camera.imageDistance * Math.tan(degToRad(10)),
      12,
    );
    expect(eyeDepth(camera)).toBeCloseTo(2 * Math.cos(degToRad(10)), 12);
  });

  it('brings the eyes to their place by shift, from any height and tilt', () => {
    always(
      fc.property(requests, (request) => {
        const camera = value(cameraAt(request));
        const share = value(pictureShare(camera, EYES));
        expect(share.down).toBeCloseTo(request.eyesAt, 9);
        expect(share.across).toBeCloseTo(request.eyesAcross, 9);
        expect(standpointDistance(camera)).toBeCloseTo(request.standpoint, 9);
        expect(radToDeg(viewAngle(camera))).toBeCloseTo(
          radToDeg(radians(Math.asin(request.height / request.standpoint))),
          9,
        );
      }),
    );
  });

  it('shifts nothing but the frame: every point keeps its place on the sensor', () => {
    always(
      fc.property(requests, points, ({ eyesAt, eyesAcross, ...request }, point) => {
        const unshifted = value(cameraAt(request));
        const shifted = value(cameraAt({ ...request, eyesAt, eyesAcross }));
        expect(project(shifted, point)).toEqual(project(unshifted, point));
        expect(pictureCentre(unshifted).u).toBeCloseTo(0, 12);
        expect(pictureCentre(unshifted).v).toBeCloseTo(0, 12);
      }),
    );
  });

  it('gives the same place from the axis, from the centre and as a share', () => {
    always(
      fc.property(requests, points, (request, point) => {
        const camera = value(cameraAt(request));
        const inPicture = value(projectInPicture(camera, point));
        const share = value(pictureShare(camera, point));
        const { width, height } = request.sensor;
        expect(share.across).toBeCloseTo(0.5 + inPicture.u / width, 9);
        expect(share.down).toBeCloseTo(0.5 - inPicture.v / height, 9);
      }),
    );
  });

  it('keeps the frame height at the eyes for every standpoint', () => {
    always(
      fc.property(length(0.3, 10), length(0.2, 2), (standpoint, frameHeight) => {
        const focal = value(focalForFrame(frameHeight, standpoint, FULL_FRAME_PORTRAIT.height));
        const camera = value(cameraAt({ ...straight, standpoint, focal, eyesAt: 1 / 3 }));
        const frame = value(frameAtDepth(camera, eyeDepth(camera)));
        expect(frame.height / frameHeight).toBeCloseTo(1, 9);
        const top = value(pictureShare(camera, [0, frameHeight / 3, 0]));
        const bottom = value(pictureShare(camera, [0, (-2 / 3) * frameHeight, 0]));
        expect(top.down).toBeCloseTo(0, 9);
        expect(bottom.down).toBeCloseTo(1, 9);
      }),
    );
  });

  it('focuses where told, and only the size changes', () => {
    const camera = value(cameraAt({ ...straight, focusDistance: metres(1.8) }));
    expect(camera.imageDistance).toBe(value(imageDistance(mmToM(85), metres(1.8))));
  });

  it('keeps the three distances apart', () => {
    const camera = value(
      cameraAt({
        ...straight,
        height: metres(0.5),
        tilt: degToRad(-5),
        focusDistance: metres(1.9),
      }),
    );
    expect(standpointDistance(camera)).toBeCloseTo(2, 12);
    const along = Math.sqrt(4 - 0.25) * Math.cos(degToRad(5)) + 0.5 * Math.sin(degToRad(5));
    expect(eyeDepth(camera)).toBeCloseTo(along, 12);
  });

  it('refuses what no camera can do, and says which limit', () => {
    expect(refusal(cameraAt({ ...straight, height: metres(-2.5) }))).toMatchObject({
      reason: 'camera-too-high',
      limit: 2,
      asked: -2.5,
    });
    expect(refusal(cameraAt({ ...straight, standpoint: mmToM(80) })).reason).toBe(
      'inside-focal-length',
    );
    expect(refusal(cameraAt({ ...straight, tilt: degToRad(100) })).reason).toBe('behind-camera');
    expect(refusal(cameraAt({ ...straight, standpoint: metres(Number.NaN) })).reason).toBe(
      'not-a-number',
    );
    const camera = value(cameraAt(straight));
    expect(refusal(project(camera, [0, 0, 2])).reason).toBe('behind-camera');
  });
});
