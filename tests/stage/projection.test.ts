import fc from 'fast-check';
import { Vector4 } from 'three';
import { describe, expect, it } from 'vitest';
import { cameraAt, project } from '../../src/optics/camera';
import { metres, radians } from '../../src/optics/units';
import { aim, bareCamera, projectionMatrix, viewMatrix } from '../../src/stage/projection';

const requests = fc.record({
  standpoint: fc.double({ min: 0.3, max: 8, noNaN: true }),
  height: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
  tilt: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
  focal: fc.double({ min: 0.012, max: 0.2, noNaN: true }),
  eyesAt: fc.double({ min: 0, max: 1, noNaN: true }),
  eyesAcross: fc.double({ min: 0, max: 1, noNaN: true }),
});
const points = fc.tuple(
  fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  fc.double({ min: -1.6, max: 0.2, noNaN: true }),
  fc.double({ min: -2, max: 0.1, noNaN: true }),
);

describe('projection matrix', () => {
  // Outside check: the point's drawn place by similar triangles (src/optics `project`), which knows no matrix.
  it('draws a point where the optics project it', () => {
    fc.assert(
      fc.property(requests, points, (request, point) => {
        const camera = cameraAt({
          standpoint: metres(request.standpoint),
          height: metres(request.height),
          tilt: radians(request.tilt),
          focal: metres(request.focal),
          sensor: { width: metres(0.024), height: metres(0.036) },
          eyesAt: request.eyesAt,
          eyesAcross: request.eyesAcross,
        });
        fc.pre(camera.ok);
        const drawn = project(camera.value, point);
        fc.pre(drawn.ok && drawn.value.depth > 0.05);
        const { left, right, bottom, top } = camera.value.frustum;
        const across = (drawn.value.u / camera.value.imageDistance - left) / (right - left);
        const up = (drawn.value.v / camera.value.imageDistance - bottom) / (top - bottom);
        const clip = new Vector4(...point, 1)
          .applyMatrix4(viewMatrix(camera.value))
          .applyMatrix4(projectionMatrix(camera.value.frustum, { near: 0.02, far: 12 }));
        const scale = Math.max(1, Math.abs(across), Math.abs(up));
        expect(Math.abs((clip.x / clip.w + 1) / 2 - across) / scale).toBeLessThan(1e-12);
        expect(Math.abs((clip.y / clip.w + 1) / 2 - up) / scale).toBeLessThan(1e-12);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives the renderer the same matrices, and their inverses', () => {
    const camera = cameraAt({
      standpoint: metres(0.4),
      height: metres(0.1),
      tilt: radians(-0.2),
      focal: metres(0.03),
      sensor: { width: metres(0.036), height: metres(0.024) },
    });
    if (!camera.ok) throw new Error(camera.reason);
    const range = { near: 0.1, far: 9 };
    const target = bareCamera();
    aim(target, camera.value, range);
    const expected = projectionMatrix(camera.value.frustum, range).elements;
    expect(target.projectionMatrix.elements).toEqual(expected);
    viewMatrix(camera.value).elements.forEach((value, i) => {
      expect(target.matrixWorldInverse.elements[i]).toBeCloseTo(value, 14);
    });
    const unit = target.projectionMatrix.clone().multiply(target.projectionMatrixInverse).elements;
    unit.forEach((value, i) => {
      expect(value).toBeCloseTo(i % 5 === 0 ? 1 : 0, 12);
    });
  });

  it('maps the near and far planes to the ends of the depth range', () => {
    const matrix = projectionMatrix(
      { left: -0.2, right: 0.3, bottom: -0.4, top: 0.1 },
      { near: 0.05, far: 20 },
    );
    const end = (depth: number) => {
      const clip = new Vector4(0, 0, -depth, 1).applyMatrix4(matrix);
      return clip.z / clip.w;
    };
    expect(end(0.05)).toBeCloseTo(-1, 12);
    expect(end(20)).toBeCloseTo(1, 12);
  });
});
