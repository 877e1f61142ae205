import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { stoolFor } from '../../src/sitter/stool';
import type { SitterMesh, Substance } from '../../src/sitter/types';

const FLOOR = -1.2;
const SEAT = -0.7;

const points = (substance: Substance, ...at: readonly Vec3[]): SitterMesh => ({
  name: substance,
  substance,
  positions: Float32Array.from(at.flat()),
  normals: new Float32Array(3 * at.length),
  colours: new Uint8Array(3 * at.length),
  openness: new Uint8Array(at.length),
  indices: new Uint32Array(),
  regions: new Uint8Array(at.length),
});

const worn = [
  points('trousers', [0.05, SEAT, -0.1], [0.1, SEAT + 0.1, -0.1], [0.1, FLOOR + 0.1, 0.3]),
  points('shoes', [0.1, FLOOR, 0.3]),
];
const stool = stoolFor(
  { hips: [0, SEAT + 0.08, -0.1], forward: [0, 0, 1], thigh: 0.4, height: SEAT },
  worn,
);

describe('the stool', () => {
  const { positions: P, normals: N, indices: I } = stool;
  const heights = P.filter((_, i) => i % 3 === 1);

  it('stands on the soles’ floor and ends just under the cloth', () => {
    expect(Math.min(...heights)).toBeCloseTo(FLOOR, 2);
    const top = Math.max(...heights);
    expect(top).toBeLessThan(SEAT);
    expect(top).toBeGreaterThan(SEAT - 0.0005);
  });

  it('stands under the hips', () => {
    const mean = (j: number): number =>
      P.reduce((sum, c, i) => (i % 3 === j ? sum + c : sum), 0) / (P.length / 3);
    expect(mean(0)).toBeCloseTo(0, 3);
    expect(mean(2)).toBeCloseTo(-0.1, 3);
  });

  it('shows the outside of every triangle', () => {
    const corner = (from: Float32Array, v: number): number[] => [
      ...from.subarray(3 * v, 3 * v + 3),
    ];
    for (let t = 0; t < I.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => corner(P, I[t + k] as number)) as [
        number[],
        number[],
        number[],
      ];
      const u = b.map((x, j) => x - (a[j] as number));
      const w = c.map((x, j) => x - (a[j] as number));
      const face = [0, 1, 2].map(
        (j) =>
          (u[(j + 1) % 3] as number) * (w[(j + 2) % 3] as number) -
          (u[(j + 2) % 3] as number) * (w[(j + 1) % 3] as number),
      );
      const normal = [0, 1, 2].map((j) =>
        [0, 1, 2].reduce((sum, k) => sum + (N[3 * (I[t + k] as number) + j] as number), 0),
      );
      const along = face.reduce((sum, f, j) => sum + f * (normal[j] as number), 0);
      expect(along).toBeGreaterThanOrEqual(-1e-12);
    }
  });
});
