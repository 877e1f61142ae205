import { describe, expect, it } from 'vitest';
import { pixelOffsets } from '../../src/stage/samples';

describe('offsets within a pixel', () => {
  it.each([1, 4, 8, 16, 25])('%s of them have the centre as mean and lie in the pixel', (count) => {
    const offsets = pixelOffsets(count);
    expect(offsets).toHaveLength(count);
    for (const axis of [0, 1] as const) {
      const values = offsets.map((offset) => offset[axis]);
      expect(values.reduce((sum, value) => sum + value, 0) / count).toBeCloseTo(0, 14);
      for (const value of values) expect(Math.abs(value)).toBeLessThanOrEqual(0.5);
      expect(new Set(values).size).toBe(count);
    }
  });
});
