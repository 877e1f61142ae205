import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hullLength } from '../../src/sitter/girth';
import { factor, solve } from '../../src/sitter/linear';
import { applyWarp, coefficientsFor, prepareWarp } from '../../src/sitter/warp';

const within = (n: number) => fc.double({ min: -n, max: n, noNaN: true });

describe('the linear solver', () => {
  it('solves random systems: the product with the answer gives the right side back', () => {
    fc.assert(
      fc.property(
        fc.array(within(1), { minLength: 36, maxLength: 36 }),
        fc.array(within(5), { minLength: 6, maxLength: 6 }),
        (entries, rhs) => {
          // A dominant diagonal keeps the random matrix away from singular ones.
          const a = Float64Array.from(entries, (e, i) => e + (i % 7 === 0 ? 8 : 0));
          const x = solve(factor(a, 6), Float64Array.from(rhs), 1);
          for (let r = 0; r < 6; r++) {
            let sum = 0;
            for (let c = 0; c < 6; c++) sum += (a[6 * r + c] as number) * (x[c] as number);
            expect(sum).toBeCloseTo(rhs[r] as number, 10);
          }
        },
      ),
    );
  });

  it('refuses a singular matrix', () => {
    expect(() => factor(Float64Array.of(1, 2, 2, 4), 2)).toThrow(/singular/);
  });
});

describe('the warp', () => {
  const corners = [-0.1, 0.1].flatMap((x) =>
    [-0.1, 0.1].flatMap((y) => [-0.1, 0.1].map((z) => [x, y, z])),
  );
  const points = Float64Array.from([...corners, [0.03, 0.02, 0.07], [0, 0, 0.2]].flat());
  const warp = prepareWarp(points);
  const shift = fc.array(within(0.02), { minLength: points.length, maxLength: points.length });

  it('takes every control point to its target', () => {
    fc.assert(
      fc.property(shift, (by) => {
        const targets = points.map((c, i) => c + (by[i] as number));
        const source = Float32Array.from(points);
        const out = new Float32Array(source.length);
        applyWarp(warp, coefficientsFor(warp, targets), source, out);
        out.forEach((c, i) => {
          expect(c).toBeCloseTo(targets[i] as number, 6);
        });
      }),
      { numRuns: 50 },
    );
  });

  // Closed form: the polynomial part reproduces any affine map of space exactly.
  it('is the affine map itself when the targets are an affine map of the controls', () => {
    fc.assert(
      fc.property(fc.array(within(0.3), { minLength: 12, maxLength: 12 }), (m) => {
        const affine = (p: ArrayLike<number>, o: number): number[] =>
          [0, 1, 2].map(
            (r) =>
              (p[o + r] as number) +
              (m[9 + r] as number) +
              [0, 1, 2].reduce((s, c) => s + (m[3 * r + c] as number) * (p[o + c] as number), 0),
          );
        const targets = Float64Array.from(
          Array.from({ length: points.length / 3 }, (_, i) => affine(points, 3 * i)).flat(),
        );
        const source = Float32Array.of(0.03, -0.02, 0.05, 0.2, 0.1, -0.15);
        const out = new Float32Array(6);
        applyWarp(warp, coefficientsFor(warp, targets), source, out);
        [...affine(source, 0), ...affine(source, 3)].forEach((c, i) => {
          expect(out[i]).toBeCloseTo(c, 6);
        });
      }),
      { numRuns: 50 },
    );
  });
});

describe('the hull girth', () => {
  it('of a regular polygon with points inside is its perimeter', () => {
    for (const n of [3, 5, 12, 90]) {
      const corner = (i: number): [number, number] => [
        Math.cos((2 * Math.PI * i) / n),
        Math.sin((2 * Math.PI * i) / n),
      ];
      const corners = Array.from({ length: n }, (_, i) => corner((i * 7) % n));
      const inside = corners.map(([x, y]): [number, number] => [0.4 * x, 0.4 * y]);
      expect(
        hullLength([...inside, ...Array.from({ length: n }, (_, i) => corner(i))]),
      ).toBeCloseTo(2 * n * Math.sin(Math.PI / n), 10);
    }
  });
});
