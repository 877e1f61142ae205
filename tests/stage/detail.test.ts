import { describe, expect, it } from 'vitest';
import type { Camera } from '../../src/optics/types';
import { metres, radians } from '../../src/optics/units';
import { COARSE_BELOW, detailFor, FINE_ABOVE, pixelsPerMetre } from '../../src/stage/detail';

describe('level of detail', () => {
  it('follows the size at the eyes: the same crop from near and far has the same', () => {
    const camera = (distance: number): Camera => ({
      position: [0, 0, distance],
      tilt: radians(0),
      frustum: { left: -0.1, right: 0.1, bottom: -0.2 / distance, top: 0.3 / distance },
      imageDistance: metres(0.05),
      sensor: { width: metres(0.024), height: metres(0.036) },
    });
    for (const distance of [0.3, 1, 4])
      expect(pixelsPerMetre(camera(distance), 600)).toBeCloseTo(1200, 9);
  });

  it('stays between the bounds and changes beyond them', () => {
    const between = (COARSE_BELOW + FINE_ABOVE) / 2;
    expect(detailFor(between, null)).toBe('fine');
    expect(detailFor(between, 'coarse')).toBe('coarse');
    expect(detailFor(between, 'fine')).toBe('fine');
    expect(detailFor(COARSE_BELOW - 1, 'fine')).toBe('coarse');
    expect(detailFor(FINE_ABOVE + 1, 'coarse')).toBe('fine');
  });
});
