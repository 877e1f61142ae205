/** Our projection against OpenCV's projectPoints (JavaScript build, @techstark/opencv-js). */
import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { compareProjections, loadOpenCv, randomRequests } from './opencv';

const CAMERAS = 10_000;

/** Points on ellipsoids of about a head's and a body's size, spread by the golden angle. */
function cloud(count: number, centre: Vec3, halves: Vec3): Vec3[] {
  return Array.from({ length: count }, (_, i) => {
    const up = 1 - (2 * (i + 0.5)) / count;
    const around = i * Math.PI * (3 - Math.sqrt(5));
    const out = Math.sqrt(1 - up * up);
    return [
      centre[0] + halves[0] * out * Math.cos(around),
      centre[1] + halves[1] * up,
      centre[2] + halves[2] * out * Math.sin(around),
    ];
  });
}

describe('projection', () => {
  it(`agrees with OpenCV to 1e-6 mm on the sensor for ${CAMERAS} random cameras`, async () => {
    const { cv } = await loadOpenCv();
    const points = [
      ...cloud(24, [0, 0, -0.08], [0.08, 0.12, 0.1]),
      ...cloud(16, [0, -0.75, -0.08], [0.25, 0.8, 0.15]),
    ];
    const { worst, compared, sides } = compareProjections(cv, points, randomRequests(CAMERAS));
    expect(sides).toBe(0);
    expect(compared).toBeGreaterThan(0.95 * CAMERAS * points.length);
    expect(worst).toBeLessThan(1e-6);
  });
});
