import { unitAreaNormals } from '../../../src/sitter/normals';
import type { Form } from '../head/forms';
import type { TriangleMesh } from '../mesh';

/** Moves a skin's vertices into a form and sets each on the form's surface along the gradient. */
export function settleForm(mesh: TriangleMesh, { field, move }: Form): TriangleMesh {
  const positions = new Float32Array(mesh.positions.length);
  const tap = 0.3;
  for (let i = 0; i < positions.length; i += 3) {
    const [a, b, c] = [mesh.positions[i], mesh.positions[i + 1], mesh.positions[i + 2]] as [
      number,
      number,
      number,
    ];
    let [x, y, z] = move(a, b, c);
    for (let round = 0; round < 3; round++) {
      const g = [
        field(x + tap, y, z) - field(x - tap, y, z),
        field(x, y + tap, z) - field(x, y - tap, z),
        field(x, y, z + tap) - field(x, y, z - tap),
      ].map((d) => d / (2 * tap)) as [number, number, number];
      const gap = field(x, y, z) / (g[0] ** 2 + g[1] ** 2 + g[2] ** 2 || 1);
      x -= g[0] * gap;
      y -= g[1] * gap;
      z -= g[2] * gap;
    }
    positions.set([x, y, z], i);
  }
  return { ...mesh, positions, normals: unitAreaNormals(positions, mesh.indices, mesh.normals) };
}
