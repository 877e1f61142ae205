import { describe, expect, it } from 'vitest';
import { ringArea } from '../../src/drawings/geometry';
import type { Ring } from '../../src/drawings/profile/outline';
import { profileOutline } from '../../src/drawings/profile/outline';
import { buildSitter } from '../../src/sitter/build';
import { CLOTHES, type SitterMesh } from '../../src/sitter/types';
import { modelOf, sculptureOf } from '../sitter/people';
import { ellipsoid, MANIKIN, sitterOf } from './shapes';

/** Rings of holes run the other way round, so that the sum is the area itself. */
const area = (rings: readonly Ring[]) =>
  Math.abs(rings.reduce((sum, ring) => sum + ringArea(ring), 0));

/** Area of the meshes' shadow on the side plane: share of a fine grid of points inside a triangle. */
function shadowArea(meshes: readonly SitterMesh[], step: number): number {
  const columns = 2000;
  const hit = new Set<number>();
  for (const { positions, indices } of meshes) {
    for (let i = 0; i < indices.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => {
        const vertex = indices[i + k] ?? 0;
        return {
          z: ((positions[3 * vertex + 2] ?? 0) + 1) / step,
          y: ((positions[3 * vertex + 1] ?? 0) + 2) / step,
        };
      }) as [Place, Place, Place];
      const turn = side(a, b, c);
      if (turn === 0) continue;
      for (let y = Math.ceil(Math.min(a.y, b.y, c.y)); y <= Math.max(a.y, b.y, c.y); y += 1) {
        for (let z = Math.ceil(Math.min(a.z, b.z, c.z)); z <= Math.max(a.z, b.z, c.z); z += 1) {
          const p = { z, y };
          const inside = [side(a, b, p), side(b, c, p), side(c, a, p)].every((s) => s * turn >= 0);
          if (inside) hit.add(y * columns + z);
        }
      }
    }
  }
  return hit.size * step ** 2;
}
interface Place {
  readonly z: number;
  readonly y: number;
}
const side = (a: Place, b: Place, c: Place) =>
  (b.z - a.z) * (c.y - a.y) - (c.z - a.z) * (b.y - a.y);

describe('profileOutline', () => {
  it("has the area and the extremes of an ellipsoid's shadow: pi a b", () => {
    const outline = profileOutline(sitterOf(ellipsoid([0, 0.1, -0.08], [0.05, 0.12, 0.1])));
    expect(outline.whole).toHaveLength(1);
    expect(area(outline.whole) / (Math.PI * 0.12 * 0.1)).toBeCloseTo(1, 2);
    expect(outline.front).toBeCloseTo(0.02, 3);
    expect(outline.back).toBeCloseTo(-0.18, 3);
    expect(outline.crown).toBeCloseTo(0.22, 3);
    expect(outline.floor).toBeCloseTo(-0.02, 3);
  });

  it('lies within half a millimetre of the ellipse it draws', () => {
    const outline = profileOutline(
      sitterOf(ellipsoid([0, 0, 0], [0.05, 0.12, 0.1], 'skin', 0, 160)),
    );
    for (const { x, y } of outline.whole.flat()) {
      // Distance to an ellipse, first order: (q - 1) r / 2 with q the ellipse's form.
      const q = (x / 0.1) ** 2 + (y / 0.12) ** 2;
      expect(Math.abs(((q - 1) * Math.hypot(x, y)) / 2)).toBeLessThan(0.0005);
    }
  });

  it('has the area of the whole shadow within half a percent (points in triangles)', () => {
    const expected = shadowArea(MANIKIN.meshes, 0.0015);
    expect(area(profileOutline(MANIKIN).whole) / expected).toBeCloseTo(1, 2);
  });

  it('shows the right ear, not the left, and hair only where nothing hides it', () => {
    const { ear, hair } = profileOutline(MANIKIN);
    expect(ear).toHaveLength(1);
    const hidden = profileOutline(
      sitterOf(
        ellipsoid([0, 0, 0], [0.1, 0.1, 0.1]),
        ellipsoid([0.2, 0, 0], [0.05, 0.05, 0.05], 'hair'),
      ),
    );
    expect(hidden.hair).toHaveLength(0);
    expect(area(hair)).toBeGreaterThan(0.005);
  });

  it('leaves out cloth that is tucked in under the skin', () => {
    const neck = ellipsoid([0, 0, 0], [0.1, 0.1, 0.1]);
    const seam = ellipsoid([0, 0, 0], [0.09, 0.05, 0.05], 'top');
    expect(profileOutline(sitterOf(neck, seam)).top).toHaveLength(0);
  });

  it.each(['adult-woman', 'adult-man'] as const)(
    'draws what %s wears above the waist in one piece, closed about the shoulders',
    async (id) => {
      const model = modelOf(id);
      for (const clothes of CLOTHES) {
        const looks = { ...model.looks, clothes, hair: 'bald' as const };
        const sitter = buildSitter(await sculptureOf(model, looks), { ...model, looks });
        const { top } = profileOutline(sitter);
        const [whole, ...others] = [...top].sort((a, b) => area([b]) - area([a]));
        expect(Math.min(...(whole ?? []).map(({ y }) => y))).toBeLessThan(-0.3);
        // What else there is can be the arm's border alone, low on a dress.
        for (const ring of others)
          expect(Math.max(...ring.map(({ y }) => y))).toBeLessThan(
            1.5 * sitter.landmarks.suprasternale[1],
          );
      }
    },
    60_000,
  );

  it('is computed once for a sitter', () => {
    expect(profileOutline(MANIKIN)).toBe(profileOutline(MANIKIN));
  });

  it('refuses a sitter without triangles', () => {
    expect(() => profileOutline(sitterOf())).toThrow(RangeError);
  });
});
