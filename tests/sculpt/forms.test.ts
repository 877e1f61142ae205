import { describe, expect, it } from 'vitest';
import { FORM_NAMES, headForms } from '../../scripts/sculpt/head/forms';
import { skinGrid } from '../../scripts/sculpt/head/grid';
import { SHAPES } from '../../scripts/sculpt/head/shape';
import { skin } from '../../scripts/sculpt/head/skin';
import { polygonise } from '../../scripts/sculpt/nets';
import { settleForm } from '../../scripts/sculpt/preview/settle';

const COARSE = 3.5;

/** Cosine between a triangle's normals in two states of a mesh. */
function turned(a: Float32Array, b: Float32Array, corners: readonly number[]): number {
  const normal = (P: Float32Array): number[] => {
    const [p, q, r] = corners.map((v) => [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as number[]) as [
      number[],
      number[],
      number[],
    ];
    const edge = (to: number[]): number[] => to.map((c, j) => c - (p[j] as number));
    const [u, w] = [edge(q), edge(r)] as [number[], number[]];
    const n = [0, 1, 2].map((j) => {
      const [k, l] = [(j + 1) % 3, (j + 2) % 3];
      return (u[k] as number) * (w[l] as number) - (u[l] as number) * (w[k] as number);
    });
    const length = Math.hypot(...n) || 1;
    return n.map((c) => c / length);
  };
  const [m, n] = [normal(a), normal(b)];
  return m.reduce((sum, c, j) => sum + c * (n[j] as number), 0);
}

describe.each(Object.values(SHAPES))('the forms of the $id head', (shape) => {
  const base = polygonise(skin(shape), skinGrid(shape, COARSE));
  const forms = headForms(shape);

  it.each(FORM_NAMES)(
    '%s is reached from the base without a fold',
    { timeout: 180_000 },
    (name) => {
      const form = forms[name];
      const settled = settleForm(base, form);
      const { positions: P } = settled;
      let farthest = 0;
      for (let i = 0; i < P.length; i += 3) {
        const at = [P[i], P[i + 1], P[i + 2]] as [number, number, number];
        expect(Math.abs(form.field(...at))).toBeLessThan(0.1);
        const moved = [0, 1, 2].map(
          (j) => (P[i + j] as number) - (base.positions[i + j] as number),
        );
        farthest = Math.max(farthest, Math.hypot(...moved));
      }
      expect(farthest).toBeGreaterThan(1.5);
      expect(farthest).toBeLessThan(9);
      let worst = 1;
      for (let t = 0; t < base.indices.length; t += 3)
        worst = Math.min(worst, turned(base.positions, P, [...base.indices.slice(t, t + 3)]));
      expect(worst).toBeGreaterThan(0);
    },
  );

  /** Places on and about an eye, from its pupil outwards and up, mm. */
  const onLids = [
    [0, 4],
    [8, -5],
    [-14, -2],
    [13, 1],
  ] as const;
  const onBrows = [
    [-12, 18],
    [18, 20],
  ] as const;
  const place = ([dx, y]: readonly [number, number]) =>
    [shape.interpupillary / 2 + dx, y, 2] as const;

  it.each([
    ['older', [...onLids, ...onBrows]],
    ['smile', [...onLids, ...onBrows]],
    ['child', onLids],
  ] as const)('%s leaves alone what must stay about the eyes', (name, places) => {
    const { move, field } = forms[name];
    const surface = skin(shape);
    for (const at of places.map(place)) {
      move(...at).forEach((c, j) => {
        expect(c).toBeCloseTo(at[j] as number, 2);
      });
      expect(field(...at)).toBeCloseTo(surface(...at), 2);
    }
  });

  it('raises a child brow, its inner end most, so that it does not frown', () => {
    const [inner, outer] = onBrows.map((at) => forms.child.move(...place(at))[1] - at[1]) as [
      number,
      number,
    ];
    expect(outer).toBeGreaterThan(0);
    expect(inner).toBeGreaterThan(outer + 1);
    expect(inner).toBeLessThan(5);
  });

  it.each(FORM_NAMES)('%s is the same on both sides', (name) => {
    const { move, field } = forms[name];
    const [x, y, z] = move(24, -58, 8);
    const [a, b, c] = move(-24, -58, 8);
    expect([-a, b, c]).toEqual([x, y, z]);
    expect(field(-24, -58, 8)).toBeCloseTo(field(24, -58, 8), 9);
  });
});

describe('a slight smile', () => {
  it.each(Object.values(SHAPES))('raises the corners of the $id mouth 3 to 4 mm', (shape) => {
    const [sx, sy] = shape.scale;
    const corner = [26 * sx, (-63.1 + 2.2 * shape.femininity) * sy, 9] as const;
    const [x, y, z] = headForms(shape).smile.move(...corner);
    expect(y - corner[1]).toBeGreaterThan(3);
    expect(y - corner[1]).toBeLessThan(4.2);
    expect(x).toBeGreaterThan(corner[0] + 2.5);
    expect(z).toBeLessThan(corner[2] - 1.5);
  });
});
