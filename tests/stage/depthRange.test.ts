import { describe, expect, it } from 'vitest';
import { cameraAt } from '../../src/optics/camera';
import { metres } from '../../src/optics/units';
import { boundsOf, depthRange } from '../../src/stage/depthRange';
import { hallBounds } from '../../src/stage/floor';

const sitter = { min: [-0.3, -1.5, -0.25], max: [0.3, 0.12, 0.04] } as const;
const room = hallBounds(-1.5, {
  backdrop: 2,
  hall: { left: 3.6, right: 3.6, height: 3.5, depth: 10, behind: 0, sheet: null, corner: null },
});
const cameraFrom = (standpoint: number) => {
  const camera = cameraAt({
    standpoint: metres(standpoint),
    focal: metres(0.035),
    sensor: { width: metres(0.024), height: metres(0.036) },
  });
  if (!camera.ok) throw new Error(camera.reason);
  return camera.value;
};

describe('near and far', () => {
  it.each([0.12, 0.2, 0.4, 1, 2.4, 6])('keeps the sitter whole from %s m', (standpoint) => {
    const { near, far } = depthRange(cameraFrom(standpoint), sitter, room);
    expect(near).toBeLessThan(standpoint - sitter.max[2]);
    expect(near).toBeGreaterThan(0);
    expect(far).toBeGreaterThan(standpoint + 2);
  });

  it('keeps the depth steps behind the sitter below a tenth of a millimetre', () => {
    // A 24-bit buffer resolves z^2 / (near 2^24) at depth z, for far >> near.
    for (const standpoint of [0.2, 0.4, 2.4]) {
      const { near } = depthRange(cameraFrom(standpoint), sitter, room);
      expect((standpoint + 0.3) ** 2 / (near * 2 ** 24)).toBeLessThan(1e-4);
    }
  });

  it('bounds points over several lists', () => {
    expect(boundsOf([Float32Array.of(1, 2, 3), Float32Array.of(-1, 5, 0, 0, 0, 9)])).toEqual({
      min: [-1, 0, 0],
      max: [1, 5, 9],
    });
  });
});
