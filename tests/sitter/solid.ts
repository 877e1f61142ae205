import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';

/** A triangle mesh that points are held against. */
export interface Solid {
  /** Whether a closed mesh winds round a point (also where it overlaps itself). */
  inside(x: number, y: number, z: number): boolean;
  /** Distance to the surface, metres. */
  distance(x: number, y: number, z: number): number;
  /** Distance behind the nearest triangle (negative: before it), metres; for meshes with an edge. */
  behind(x: number, y: number, z: number): number;
}

/** A direction that runs along no axis, so that a ray grazes no seam. */
const WAY = new Vector3(0.31, 0.12, -0.94).normalize();

export function solid(positions: Float32Array, indices: ArrayLike<number>): Solid {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(Uint32Array.from(indices), 1));
  const tree = new MeshBVH(geometry);
  const I = geometry.index?.array as Uint32Array;
  const ray = new Ray(new Vector3(), WAY);
  const point = new Vector3();
  const corner = (i: number): Vector3 => new Vector3().fromArray(positions, 3 * (I[i] as number));
  const nearest = (x: number, y: number, z: number) => {
    const hit = tree.closestPointToPoint(point.set(x, y, z));
    if (!hit) throw new Error('a mesh without triangles');
    return hit;
  };
  return {
    inside: (x, y, z) => {
      ray.origin.set(x, y, z);
      const turns = tree
        .raycast(ray, DoubleSide)
        .reduce((sum, { face }) => sum + Math.sign(face?.normal.dot(WAY) ?? 0), 0);
      return turns > 0;
    },
    distance: (x, y, z) => nearest(x, y, z).distance,
    behind: (x, y, z) => {
      const { distance, faceIndex, point: at } = nearest(x, y, z);
      const a = corner(3 * faceIndex);
      const normal = corner(3 * faceIndex + 1)
        .sub(a)
        .cross(corner(3 * faceIndex + 2).sub(a));
      return point.sub(at).dot(normal) < 0 ? distance : -distance;
    },
  };
}

/** Triangles all of whose corners are wanted. */
export function trianglesOf(indices: Uint32Array, wanted: (vertex: number) => boolean): number[] {
  const kept: number[] = [];
  for (let t = 0; t < indices.length; t += 3) {
    const corners = [...indices.subarray(t, t + 3)];
    if (corners.every(wanted)) kept.push(...corners);
  }
  return kept;
}
