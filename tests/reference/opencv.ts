/**
 * The same camera in a general computer-vision library. Everything OpenCV is given is worked out
 * here from the request alone (image distance, pose, place of the eyes), so that no figure of
 * src/optics reaches both sides.
 */
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { type CameraRequest, cameraAt, projectInPicture } from '../../src/optics/camera';
import type { Vec3 } from '../../src/optics/types';
import { metres, mmToM, radians } from '../../src/optics/units';
import { value } from '../optics/value';

type OpenCv = typeof import('@techstark/opencv-js');

/** Wrapped: the module has a `then` of its own that hands on itself, so awaiting it never ends. */
export async function loadOpenCv(): Promise<{ readonly cv: OpenCv }> {
  const cv: OpenCv = createRequire(import.meta.url)('@techstark/opencv-js');
  await new Promise<void>((resolve) => {
    cv.onRuntimeInitialized = resolve;
  });
  return { cv };
}

const SENSORS = [
  [36, 24],
  [24, 36],
  [13, 17.3],
  [53.4, 40],
] as const;
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Random requests: near and far, raised and lowered, tilted, shifted, short and long lenses. */
export function randomRequests(count: number): CameraRequest[] {
  const request = fc
    .record({
      standpoint: fc.double({ min: 0.3, max: 12, noNaN: true }),
      rise: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
      tilt: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      focal: fc.double({ min: 0.012, max: 0.1, noNaN: true }),
      sensor: fc.constantFrom(...SENSORS),
      eyesAt: share,
      eyesAcross: share,
    })
    .map(({ standpoint, rise, tilt, focal, sensor: [width, height], eyesAt, eyesAcross }) => ({
      standpoint: metres(standpoint),
      height: metres(rise * standpoint),
      tilt: radians(tilt),
      // Up to 400 mm where there is room for it.
      focal: metres(focal * Math.max(1, Math.min(4, standpoint))),
      sensor: { width: mmToM(width), height: mmToM(height) },
      eyesAt,
      eyesAcross,
    }));
  return fc.sample(request, { numRuns: count, seed: 20150909 });
}

export interface Agreement {
  /** Largest distance between the two drawn places, millimetres on the sensor. */
  readonly worst: number;
  readonly compared: number;
  /** Points on which the two disagree whether they lie before the lens. */
  readonly sides: number;
}

/** Draws all points through all cameras, by OpenCV and by src/optics. */
export function compareProjections(
  cv: OpenCv,
  points: readonly Vec3[],
  requests: readonly CameraRequest[],
): Agreement {
  const column = (numbers: number[], type = cv.CV_64F) =>
    cv.matFromArray(type === cv.CV_64F ? numbers.length : numbers.length / 3, 1, type, numbers);
  const objects = column(points.flat(), cv.CV_64FC3);
  const eyes = column([0, 0, 0], cv.CV_64FC3);
  const undistorted = new cv.Mat();
  const drawn = new cv.Mat();
  const jacobian = new cv.Mat();
  const rotation = new cv.Mat();
  let worst = 0;
  let compared = 0;
  let sides = 0;

  for (const request of requests) {
    const { standpoint, height = 0, tilt = 0, focal, sensor, eyesAt = 0, eyesAcross = 0 } = request;
    // OpenCV looks along its +z with y down: half a turn about x from ours, less the tilt.
    const turn = column([Math.PI - tilt, 0, 0]);
    cv.Rodrigues(turn, rotation);
    const r: Float64Array = rotation.data64F;
    const at = [0, height, Math.sqrt(standpoint ** 2 - height ** 2)];
    const dot = (row: number, p: readonly number[]) =>
      p.reduce((sum, each, i) => sum + each * (r[3 * row + i] ?? Number.NaN), 0);
    const move = [-dot(0, at), -dot(1, at), -dot(2, at)];
    const eyesDepth = move[2] ?? Number.NaN;
    const image = 1000 / (1 / focal - 1 / eyesDepth);
    const matrix = (cx: number, cy: number) =>
      cv.matFromArray(3, 3, cv.CV_64F, [image, 0, cx, 0, image, cy, 0, 0, 1]);
    const place = column(move);

    // The principal point that brings the eyes to their place, measured from the picture's centre.
    const centred = matrix(0, 0);
    cv.projectPoints(eyes, turn, place, centred, undistorted, drawn, jacobian, 0);
    const shifted = matrix(
      (eyesAcross - 0.5) * sensor.width * 1000 - (drawn.data64F[0] ?? Number.NaN),
      (eyesAt - 0.5) * sensor.height * 1000 - (drawn.data64F[1] ?? Number.NaN),
    );
    cv.projectPoints(objects, turn, place, shifted, undistorted, drawn, jacobian, 0);
    const theirs: Float64Array = drawn.data64F;

    const camera = value(cameraAt(request));
    points.forEach((point, i) => {
      const depth = dot(2, point) + eyesDepth;
      const ours = projectInPicture(camera, point);
      if (ours.ok !== depth > 0) sides++;
      // Within 5 cm of the lens's own plane a point is drawn metres off the sensor.
      if (!ours.ok || depth < 0.05) return;
      compared++;
      const across = ours.value.u * 1000 - (theirs[2 * i] ?? Number.NaN);
      const down = -ours.value.v * 1000 - (theirs[2 * i + 1] ?? Number.NaN);
      worst = Math.max(worst, Math.hypot(across, down));
    });
    for (const mat of [turn, place, centred, shifted]) mat.delete();
  }
  for (const mat of [objects, eyes, undistorted, drawn, jacobian, rotation]) mat.delete();
  return { worst, compared, sides };
}
