import { describe, expect, it } from 'vitest';
import { axis, mirroredAxis, polygonise } from '../../scripts/sculpt/nets';
import { digest, edgeFaults, extent, isMirrored } from './meshes';

const RADIUS = 20;
const grid = {
  x: mirroredAxis(24, (x) => (x < 8 ? 1 : 1.6)),
  y: axis(-24, 24, () => 1.2),
  z: axis(-24, 24, (z) => (z > 0 ? 0.9 : 1.5)),
};
const sphere = polygonise((x, y, z) => Math.hypot(x, y, z) - RADIUS, grid);

describe('surface nets on a sphere', () => {
  it('are closed and oriented', () => {
    expect(edgeFaults(sphere)).toEqual({ open: [], touching: 0 });
  });

  it('enclose 4/3 pi r^3 in 4 pi r^2', () => {
    const { volume, area } = extent(sphere);
    expect(volume / ((4 / 3) * Math.PI * RADIUS ** 3)).toBeCloseTo(1, 2);
    expect(area / (4 * Math.PI * RADIUS ** 2)).toBeCloseTo(1, 2);
    expect(volume).toBeGreaterThan(0);
  });

  it('lie on the sphere, with normals along the radius', () => {
    // Four taps at distance sqrt(3) tap average the field to f + tap^2 (laplacian f) / 2: on a sphere
    // the net lies tap^2 / r inside. The default tap is 0.3 mm.
    const bias = 0.3 ** 2 / RADIUS;
    const { positions: P, normals: N } = sphere;
    for (let i = 0; i < P.length; i += 3) {
      const [x, y, z] = [P[i], P[i + 1], P[i + 2]] as [number, number, number];
      expect(Math.abs(Math.hypot(x, y, z) - (RADIUS - bias))).toBeLessThan(2e-4);
      const along = x * (N[i] as number) + y * (N[i + 1] as number) + z * (N[i + 2] as number);
      expect(along / Math.hypot(x, y, z)).toBeGreaterThan(0.9999);
    }
  });

  it('are mirrored exactly', () => {
    expect(isMirrored(sphere)).toBe(true);
  });

  it('are the same on a second run', () => {
    expect(digest(polygonise((x, y, z) => Math.hypot(x, y, z) - RADIUS, grid))).toBe(
      digest(sphere),
    );
  });

  it('open only where the grid ends', () => {
    const bowl = polygonise((x, y, z) => Math.hypot(x, y, z) - RADIUS, {
      ...grid,
      y: axis(-12, 24, () => 1.2),
    });
    const { open, touching } = edgeFaults(bowl);
    expect(touching).toBe(0);
    expect(open.length).toBeGreaterThan(0);
    for (const [a] of open) expect(bowl.positions[3 * a + 1]).toBeLessThan(-10);
  });
});
