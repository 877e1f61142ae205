/** Skin and lashes of a sitter whose lids have gone with the gaze. */
import type { Vec3 } from '../optics/types';
import { dot, minus, plus, scaled, unit } from '../optics/vector';
import { type Corners, LASH_REACH, lidMotion, normalAfter, SKIN_REACH } from './lids';
import type { Sitter, SitterMesh } from './types';

export type Axes = readonly [right: Vec3, up: Vec3, out: Vec3];

/** One eye's lids: the point the eye turns about, in the sitter's frame, and the corners. */
export interface LidPlace {
  readonly centre: Vec3;
  readonly corners: Corners;
}

/** Lids turned by less than this do not show, radians: 0.02 mm at their edges. */
const UNSEEN = 0.002;

const at = (list: Float32Array, v: number): Vec3 => [
  list[3 * v] as number,
  list[3 * v + 1] as number,
  list[3 * v + 2] as number,
];

/** Writes what moves of a mesh into copies; the mesh itself when nothing does. */
function moved(
  mesh: SitterMesh,
  axes: Axes,
  places: readonly LidPlace[],
  turn: number,
  reach: readonly [number, number],
): SitterMesh {
  let copy: { positions: Float32Array; normals: Float32Array } | null = null;
  const local = (p: Vec3): Vec3 => [dot(p, axes[0]), dot(p, axes[1]), dot(p, axes[2])];
  const world = (p: Vec3): Vec3 =>
    plus(plus(scaled(axes[0], p[0]), scaled(axes[1], p[1])), scaled(axes[2], p[2]));
  const P = mesh.positions;
  for (const { centre, corners } of places) {
    const motion = lidMotion(turn, corners, reach);
    const [cx, cy, cz] = centre;
    // A ball round all that can move spares the rest of the body the way through the axes.
    const far = Math.hypot(Math.max(-corners.least, corners.most), reach[1]) ** 2;
    for (let v = 0; 3 * v < P.length; v++) {
      const dx = (P[3 * v] as number) - cx;
      const dy = (P[3 * v + 1] as number) - cy;
      const dz = (P[3 * v + 2] as number) - cz;
      if (dx * dx + dy * dy + dz * dz > far) continue;
      const point = local([dx, dy, dz]);
      const goes = motion(point);
      if (goes === point) continue;
      copy ??= { positions: P.slice(), normals: mesh.normals.slice() };
      const normal = normalAfter(motion, point, local(at(mesh.normals, v)));
      copy.positions.set(plus(centre, world(goes)), 3 * v);
      copy.normals.set(unit(world(normal)), 3 * v);
    }
  }
  return copy ? { ...mesh, ...copy } : mesh;
}

/** A sitter's meshes with the upper lids turned, radians: skin and lashes are copied, the rest shared. */
export function withLids(
  { meshes, landmarkVertices }: Pick<Sitter, 'meshes' | 'landmarkVertices'>,
  axes: Axes,
  places: readonly LidPlace[],
  turn: number,
): readonly SitterMesh[] {
  if (Math.abs(turn) < UNSEEN) return meshes;
  const [face] = landmarkVertices.endocanthion_left;
  return meshes.map((mesh, m) => {
    if (m === face) return moved(mesh, axes, places, turn, SKIN_REACH);
    return mesh.substance === 'brows' ? moved(mesh, axes, places, turn, LASH_REACH) : mesh;
  });
}

/** The corners of an eye on the face's level axis, from its pupil. */
export function cornersOf(
  { landmarks }: Pick<Sitter, 'landmarks'>,
  side: 'left' | 'right',
  pupil: Vec3,
  across: Vec3,
): Corners {
  const ends = (['endocanthion', 'ectocanthion'] as const).map((name) =>
    dot(minus(landmarks[`${name}_${side}`], pupil), across),
  );
  return { least: Math.min(...ends), most: Math.max(...ends) };
}
