import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import {
  boxAxes,
  fillRadiance,
  fillSurround,
  harmonicCoefficients,
  harmonics,
  irradianceCoefficients,
  SOFT_BOXES,
} from '../../src/stage/fill';
import { USUAL_LIGHT } from '../../src/stage/studio';

const boxes = fillSurround(USUAL_LIGHT.fill);
const usual = (direction: Vec3): number => fillRadiance(boxes, direction);

const at = (coefficients: readonly number[], direction: Vec3): number =>
  harmonics(direction).reduce((sum, value, k) => sum + value * (coefficients[k] as number), 0);

const DIRECTIONS: Vec3[] = [
  [0, 0, 1],
  [0, 1, 0],
  [0.6, 0, 0.8],
  [-0.48, 0.6, 0.64],
];

describe('fill light', () => {
  it('of an even surround gives pi times its radiance everywhere', () => {
    const irradiance = irradianceCoefficients(harmonicCoefficients(() => 0.5));
    for (const direction of DIRECTIONS)
      expect(at(irradiance, direction)).toBeCloseTo(Math.PI / 2, 4);
  });

  it('agrees with the cosine-weighted integral of its own boxes within a twentieth', () => {
    // Nine harmonics follow any irradiance closely: Ramamoorthi and Hanrahan 2001 state 1 % on average.
    const irradiance = irradianceCoefficients(harmonicCoefficients(usual));
    for (const normal of DIRECTIONS) {
      let sum = 0;
      const [rows, columns] = [200, 400];
      for (let i = 0; i < rows; i++) {
        const y = 1 - (2 * i + 1) / rows;
        const level = Math.sqrt(1 - y * y);
        for (let j = 0; j < columns; j++) {
          const around = (2 * Math.PI * (j + 0.5)) / columns;
          const way: Vec3 = [level * Math.cos(around), y, level * Math.sin(around)];
          const cosine = way[0] * normal[0] + way[1] * normal[1] + way[2] * normal[2];
          if (cosine > 0) sum += (usual(way) * cosine * 4 * Math.PI) / (rows * columns);
        }
      }
      expect(Math.abs(at(irradiance, normal) / sum - 1)).toBeLessThan(0.05);
    }
  });

  it('has boxes that face the sitter', () => {
    expect(boxes).toHaveLength(SOFT_BOXES);
    for (const box of boxes) {
      const [level, upright, facing] = boxAxes(box);
      expect(level[1]).toBeCloseTo(0, 12);
      for (const axis of [level, upright, facing]) expect(Math.hypot(...axis)).toBeCloseTo(1, 12);
      expect(usual(facing.map((value) => -value) as unknown as Vec3)).toBe(box.radiance);
    }
  });
});
