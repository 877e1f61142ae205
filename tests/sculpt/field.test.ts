import { describe, expect, it } from 'vitest';
import { capsule, curve, ellipsoid, smoothMax, smoothMin, tube } from '../../scripts/sculpt/field';

describe('distance primitives against closed forms', () => {
  it('an ellipsoid with equal axes is a sphere', () => {
    for (const [x, y, z] of [
      [7, 0, 0],
      [1, 2, 3],
      [-9, 4, 12],
    ] as const)
      expect(ellipsoid(x, y, z, 1, 1, 1, 5, 5, 5)).toBeCloseTo(
        Math.hypot(x - 1, y - 1, z - 1) - 5,
        12,
      );
  });

  it('an ellipsoid vanishes on its own surface', () => {
    for (let a = 0; a < 6; a += 0.7)
      expect(
        ellipsoid(3 * Math.cos(a), 7 * Math.sin(a) * 0.6, 2 * Math.sin(a) * 0.8, 0, 0, 0, 3, 7, 2),
      ).toBeCloseTo(0, 12);
  });

  it('a capsule is the distance to its segment less the radius', () => {
    const [a, b] = [[0, 0, 0, 2] as const, [10, 0, 0, 2] as const];
    expect(capsule(5, 6, 0, a, b)).toBeCloseTo(4, 12);
    expect(capsule(13, 4, 0, a, b)).toBeCloseTo(3, 12);
    expect(capsule(5, 0, 0, a, b)).toBeCloseTo(-2, 12);
  });

  it('a tube through knots on a line is a capsule', () => {
    const t = tube([
      [0, 0, 0, 2],
      [5, 0, 0, 2],
      [10, 0, 0, 2],
    ]);
    for (const [x, y] of [
      [3, 5],
      [7.3, -4],
      [12, 3],
    ] as const)
      expect(t.distance(x, y, 0)).toBeCloseTo(capsule(x, y, 0, [0, 0, 0, 2], [10, 0, 0, 2]), 6);
  });

  it('a tube through knots on a circle is a torus, away from the ends of its spline', () => {
    const t = tube(
      Array.from({ length: 33 }, (_, i) => {
        const a = (2 * Math.PI * i) / 32;
        return [20 * Math.cos(a), 20 * Math.sin(a), 0, 3] as const;
      }),
    );
    for (let a = 0.3; a < 6; a += 0.31) {
      const [x, y] = [26 * Math.cos(a), 26 * Math.sin(a)];
      expect(Math.abs(t.distance(x, y, 4) - (Math.hypot(6, 4) - 3))).toBeLessThan(0.01);
    }
  });

  it('the smooth minimum lies k/4 under the seam and meets the plain one beyond it', () => {
    expect(smoothMin(1, 1, 8)).toBeCloseTo(1 - 8 / 4, 12);
    expect(smoothMin(1, 20, 8)).toBe(1);
    expect(smoothMax(1, 1, 8)).toBeCloseTo(1 + 8 / 4, 12);
  });

  it('a curve meets its points and reproduces a straight line', () => {
    const line = curve([
      [0, 1],
      [2, 5],
      [7, 15],
    ]);
    for (const x of [0, 1, 2, 3.3, 6, 7]) expect(line(x)).toBeCloseTo(1 + 2 * x, 12);
  });
});
