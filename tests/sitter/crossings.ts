import { BufferAttribute, BufferGeometry, type Vector3 } from 'three';
import { ExtendedTriangle, MeshBVH } from 'three-mesh-bvh';

/** Pairs of triangles of one mesh that cut through each other without sharing a corner. */
export function crossings(positions: Float32Array, indices: Uint32Array): number {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices.slice(), 1));
  const tree = new MeshBVH(geometry);
  const I = geometry.index?.array as Uint32Array;
  const own = new ExtendedTriangle();
  let count = 0;
  const put = (corner: Vector3, v: number): void => {
    corner.fromArray(positions, 3 * v);
  };
  for (let t = 0; t < I.length / 3; t++) {
    const [a, b, c] = [I[3 * t], I[3 * t + 1], I[3 * t + 2]] as [number, number, number];
    put(own.a, a);
    put(own.b, b);
    put(own.c, c);
    own.needsUpdate = true;
    tree.shapecast({
      intersectsBounds: (box) => own.intersectsBox(box),
      intersectsTriangle: (other, u) => {
        if (u <= t) return false;
        const [d, e, f] = [I[3 * u], I[3 * u + 1], I[3 * u + 2]] as [number, number, number];
        if ([d, e, f].some((v) => v === a || v === b || v === c)) return false;
        if (own.intersectsTriangle(other)) count++;
        return false;
      },
    });
  }
  return count;
}
