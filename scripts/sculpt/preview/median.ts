import type { Vec3 } from '../../../src/optics/types';
import { landmarksFor } from '../../../src/sitter/landmarks';
import { unitAreaNormals } from '../../../src/sitter/normals';
import { applyWarp, coefficientsFor, prepareWarp } from '../../../src/sitter/warp';
import { BODY_SHAPES } from '../body/shape';
import { seeds } from '../head/seeds';
import { GLOBE_DEPTH, GLOBE_RADIUS, type HeadShape } from '../head/shape';
import type { TriangleMesh } from '../mesh';

const MM = 1000;

/**
 * Moves a mesh as the app will, head landmarks to the median sitter's: shows what the warp does to
 * the forms. Only head landmarks, and the eyeballs kept round, take part.
 */
export function toMedian(shape: HeadShape): (mesh: TriangleMesh) => TriangleMesh {
  const wanted = landmarksFor(BODY_SHAPES[shape.id].mm) as Readonly<Record<string, Vec3>>;
  const from: number[] = [];
  const to: number[] = [];
  const pin = (a: Vec3, b: Vec3): void => {
    from.push(...a);
    to.push(...b);
  };
  for (const [name, p] of Object.entries(seeds(shape))) {
    const at: Vec3 = [p[0] / MM, p[1] / MM, p[2] / MM];
    const middle = wanted[name];
    if (middle) {
      pin([0, at[1], at[2]], middle);
      continue;
    }
    for (const side of [1, -1]) {
      const goal = wanted[`${name}_${side > 0 ? 'left' : 'right'}`] as Vec3;
      pin([side * at[0], at[1], at[2]], goal);
      if (name !== 'pupil') continue;
      const r = GLOBE_RADIUS / MM;
      const depth = GLOBE_DEPTH / MM;
      for (const [dx, dy] of [
        [r, 0],
        [-r, 0],
        [0, r],
        [0, -r],
      ] as const)
        pin(
          [side * at[0] + dx, at[1] + dy, at[2] - depth],
          [goal[0] + dx, goal[1] + dy, goal[2] - depth],
        );
    }
  }
  const warp = prepareWarp(Float64Array.from(from));
  const coefficients = coefficientsFor(warp, Float64Array.from(to));
  return (mesh) => {
    const source = mesh.positions.map((c) => c / MM);
    const target = new Float32Array(source.length);
    applyWarp(warp, coefficients, source, target);
    const positions = target.map((c) => c * MM);
    return { ...mesh, positions, normals: unitAreaNormals(positions, mesh.indices, mesh.normals) };
  };
}
