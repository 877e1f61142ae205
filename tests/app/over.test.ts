import { describe, expect, it } from 'vitest';
import { outlinePath } from '../../src/app/compare/over/outline';
import { ballImages } from '../../src/app/compare/over/stretch';
import { cameraAt } from '../../src/optics/camera';
import { metres, mmToM, radians } from '../../src/optics/units';

const numbers = (path: string) => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

describe('the outline of a mask', () => {
  it('lies on the circle that the mask shows', () => {
    const size = 200;
    const radius = 60;
    const mask = new Uint8Array(size * size);
    for (let y = 0; y < size; y++)
      for (let x = 0; x < size; x++)
        if (Math.hypot(x + 0.5 - 100, y + 0.5 - 100) < radius) mask[y * size + x] = 255;
    const at = numbers(outlinePath({ width: size, height: size, mask }));
    expect(at.length).toBeGreaterThan(400);
    for (let i = 0; i < at.length; i += 2)
      expect(
        Math.abs(
          Math.hypot((at[i] as number) * size - 100, (at[i + 1] as number) * size - 100) - radius,
        ),
      ).toBeLessThan(1);
  });

  it('does not run along the edge of the frame', () => {
    const mask = new Uint8Array(40 * 40).fill(255, 20 * 40); // the lower half
    const at = numbers(outlinePath({ width: 40, height: 40, mask }));
    for (let i = 1; i < at.length; i += 2) expect(at[i]).toBeCloseTo(0.5, 1);
  });
});

describe('the balls', () => {
  const camera = (focal: number) => {
    const result = cameraAt({
      standpoint: metres(0.4),
      height: metres(0),
      tilt: radians(0),
      focal: mmToM(focal),
      sensor: { width: mmToM(24), height: mmToM(36) },
    });
    if (!result.ok) throw new Error(result.reason);
    return result.value;
  };

  // Small balls at equal distance: sec^2 t along the radius, sec t across (closed form of the flat picture).
  it('are drawn longer by the secant of their field angle', () => {
    const { frustum } = camera(24);
    for (const ball of ballImages(camera(24))) {
      const height = frustum.top - frustum.bottom;
      const t = Math.atan(
        Math.hypot(ball.x * height + frustum.left, frustum.top - ball.y * height),
      );
      expect(ball.along / ball.across).toBeCloseTo(1 / Math.cos(t), 1);
    }
  });
});
