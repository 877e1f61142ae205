import { BONES } from '../../../src/sitter/skeleton';
import type { AssetMesh } from '../asset';
import type { BodyShape } from '../body/shape';
import { skinWeights } from '../body/weights';
import type { TriangleMesh } from '../mesh';

/** The bones that bend each vertex of a part of the body. */
export function bound(
  shape: BodyShape,
  part: string,
  { positions: P }: TriangleMesh,
): Pick<AssetMesh, 'joints' | 'weights'> {
  const sharesOf = skinWeights(shape);
  const joints = new Uint8Array((4 * P.length) / 3);
  const weights = new Uint8Array((4 * P.length) / 3);
  for (let v = 0; v < P.length / 3; v++) {
    const at = [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number];
    const shares = sharesOf(part, ...at);
    joints.set(shares.joints, 4 * v);
    weights.set(shares.weights, 4 * v);
  }
  return { joints, weights };
}

/**
 * Each bone's share of every vertex, a column a bone that bends the part: told to the simplifier, they
 * keep enough rows of vertices where a joint bends what is straight as sculpted.
 */
export function bends(shape: BodyShape, part: string, mesh: TriangleMesh): Float32Array[] {
  const { joints, weights } = bound(shape, part, mesh) as Required<ReturnType<typeof bound>>;
  const columns = BONES.map(() => new Float32Array(joints.length / 4));
  joints.forEach((bone, i) => {
    const column = columns[bone] as Float32Array;
    const v = i >> 2;
    column[v] = (column[v] as number) + (weights[i] as number) / 255;
  });
  return columns.filter((column) => column.some((share) => share !== column[0]));
}
