/** Our projection against OpenCV's projectPoints (JavaScript build, @techstark/opencv-js). */
import { describe, expect, it } from 'vitest';
import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import { landmarksFor } from '../../src/sitter/landmarks';
import { compareProjections, loadOpenCv, randomRequests } from './opencv';

const CAMERAS = 10_000;

describe('projection', () => {
  it(`draws every sitter's landmarks as OpenCV does, to 1e-6 mm on the sensor, for ${CAMERAS} random cameras`, async () => {
    const { cv } = await loadOpenCv();
    const points = [...loadModels().sitters.values()].flatMap((sitter) =>
      Object.values(landmarksFor(dimensionsOf(sitter))),
    );
    const { worst, compared, sides } = compareProjections(cv, points, randomRequests(CAMERAS));
    expect(sides).toBe(0);
    // The rest lies beside or behind a near, tilted camera, for both.
    expect(compared).toBeGreaterThan(0.9 * CAMERAS * points.length);
    expect(worst).toBeLessThan(1e-6);
  });
});
