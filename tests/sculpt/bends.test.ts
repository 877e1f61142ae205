import { describe, expect, it } from 'vitest';
import { bends } from '../../scripts/sculpt/assemble/bones';
import { figure } from '../../scripts/sculpt/body/figure';
import { fold, wrappedFolds } from '../../scripts/sculpt/body/folds';
import { BODY_SHAPES } from '../../scripts/sculpt/body/shape';
import type { TriangleMesh } from '../../scripts/sculpt/mesh';
import { simplify } from '../../scripts/sculpt/simplify';

const shape = BODY_SHAPES.female;
const f = figure(shape);

/** A flat strip down the front of the left thigh and shin, a row of four every 5 mm. */
function strip(): TriangleMesh {
  const { hip, ankle } = f.joints;
  const rows = Math.floor((hip[1] - 60 - ankle[1]) / 5);
  const positions: number[] = [];
  const indices: number[] = [];
  for (let r = 0; r <= rows; r++)
    for (let c = 0; c < 4; c++) {
      positions.push(hip[0] - 15 + 10 * c, hip[1] - 60 - 5 * r, hip[2] + 60);
      const v = 4 * r + c;
      if (r < rows && c < 3) indices.push(v, v + 4, v + 1, v + 1, v + 4, v + 5);
    }
  const normals = positions.map((_, i) => (i % 3 === 2 ? 1 : 0));
  return {
    positions: Float32Array.from(positions),
    normals: Float32Array.from(normals),
    indices: Uint32Array.from(indices),
  };
}

/** Rows of vertices that the triangles keep within 58 mm of the knee, over which it bends. */
const rowsAtKnee = (mesh: TriangleMesh, indices: Uint32Array): number =>
  new Set(
    [...indices]
      .map((v) => mesh.positions[3 * v + 1] as number)
      .filter((y) => Math.abs(y - f.joints.knee[1]) < 58)
      .map(Math.round),
  ).size;

describe('the shares of bones, told to the simplifier', () => {
  it('keep vertices at the knee of what is flat as sculpted', async () => {
    const mesh = strip();
    const options = { triangles: 60, locked: [] };
    const plain = await simplify(mesh, options);
    const bent = await simplify(mesh, {
      ...options,
      detail: bends(shape, 'trousers', mesh),
      detailWeight: 0.25,
    });
    expect(rowsAtKnee(mesh, bent)).toBeGreaterThanOrEqual(6);
    expect(rowsAtKnee(mesh, bent)).toBeGreaterThan(rowsAtKnee(mesh, plain));
  });
});

describe('folds', () => {
  const radius = 100;
  const at = (degrees: number, y: number): [number, number, number] => {
    const turn = (degrees * Math.PI) / 180;
    return [radius * Math.sin(turn), y, radius * Math.cos(turn)];
  };

  it('stand out along their line, take from the cloth beside it and end', () => {
    const height = wrappedFolds([fold([-40, 0], [40, 0], 8, 3)], radius);
    expect(height(...at(0, 0))).toBeGreaterThan(2.5);
    expect(height(...at(0, 2.1 * 8))).toBeLessThan(0);
    expect(height(...at(80, 0))).toBe(0);
    expect(height(...at(0, 60))).toBe(0);
  });

  it('sag in their middle by what is asked, to the right of their way', () => {
    // From the front towards the left side, seen from outside, goes to the right; its right is down.
    const height = wrappedFolds([fold([-40, 0], [40, 0], 8, 3, 10)], radius);
    expect(height(...at(0, -10))).toBeGreaterThan(height(...at(0, 0)));
    expect(height(...at(0, -10))).toBeGreaterThan(height(...at(0, 10)));
  });
});
