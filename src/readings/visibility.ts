/**
 * What the camera can see of the ears and of the face's breadth: rays against the posed meshes.
 * Near the face the cheeks stand before the ears, and the outline runs ahead of the widest place.
 *
 * A triangle's share on the camera's side of the horizon comes from the sign of n·v over it, so
 * the readings run smoothly with distance; whether that part is hidden by something else is one
 * ray from its middle. Sampling is by the mesh itself: the same mesh gives the same numbers.
 */
import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import type { Vec3 } from '../optics/types';
import { type Landmarks, REGION, type Sitter, type SitterMesh } from '../sitter/types';

export interface SeenSurface {
  /** Share of the surface, by area, that this camera sees. */
  readonly here: number;
  /** The same for parallel rays from the same direction (the far view). */
  readonly far: number;
  /** here / far; null where the far view sees next to nothing of it either. */
  readonly ofFar: number | null;
}

export interface Visibility {
  /** Each ear of the skin. Hair hides, and so does who stands beside, in both views. Null without that ear. */
  readonly earLeft: SeenSurface | null;
  readonly earRight: SeenSurface | null;
  /**
   * Breadth of the face at its cheekbones inside its outline as this camera sees it, over that in
   * the far view from the same direction. Hair and clothes are left out; who stands beside hides, in
   * both views. Null without a face, and where the far view sees none of it.
   */
  readonly faceBreadth: number | null;
}

/** A place to look from, or for the far view a direction to it. */
interface View {
  readonly from: Vector3;
  readonly isFar: boolean;
}

/** Rays start this far off the skin, so that they do not meet their own triangle; metres. */
const LIFT = 0.0003;
/** Below this share of an ear in the far view, a ratio to it says nothing. */
const NEXT_TO_NOTHING = 0.02;
/** The face is as broad as its cheekbones: higher up, the temples run into the broader skull; metres. */
const CHEEKBONE_BAND = 0.01;

const trees = new WeakMap<SitterMesh, MeshBVH>();

function treeOf(mesh: SitterMesh): MeshBVH {
  const known = trees.get(mesh);
  if (known) return known;
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.positions, 3));
  geometry.setIndex(new BufferAttribute(mesh.indices, 1));
  // Indirect: the mesh's own indices are drawn elsewhere and keep their order.
  const tree = new MeshBVH(geometry, { indirect: true });
  trees.set(mesh, tree);
  return tree;
}

/** Somebody else in the picture. */
export interface Neighbour {
  readonly meshes: readonly SitterMesh[];
  /** Where the origin of their frame is in the sitter's, metres; the axes are the same. */
  readonly at: Vec3;
}

/** What can stand in a ray's way, and where the frame of its tree has its origin. */
interface Occluder {
  readonly tree: MeshBVH;
  readonly at: Vector3;
}

const HERE = new Vector3();
const own = (mesh: SitterMesh): Occluder => ({ tree: treeOf(mesh), at: HERE });

const ray = new Ray();
const start = new Vector3();

/** From `point` lifted along `normal`, is anything between it and the view? */
function isHidden(
  point: Vector3,
  normal: Vector3,
  view: View,
  occluders: readonly Occluder[],
): boolean {
  start.copy(point).addScaledVector(normal, LIFT);
  ray.direction.copy(view.from);
  if (!view.isFar) ray.direction.sub(start);
  const reach = view.isFar ? Number.POSITIVE_INFINITY : ray.direction.length();
  ray.direction.normalize();
  return occluders.some(({ tree, at }) => {
    ray.origin.subVectors(start, at);
    return tree.raycastFirst(ray, DoubleSide, 0, reach) !== null;
  });
}

/** Share of a triangle where a value linear over it, given at its corners, is above 0. */
function shareAbove(a: number, b: number, c: number): number {
  const above = [a, b, c].filter((value) => value > 0);
  if (above.length === 0) return 0;
  if (above.length === 3) return 1;
  const below = [a, b, c].filter((value) => value <= 0);
  const [lone, others] = above.length === 1 ? [above[0] ?? 0, below] : [below[0] ?? 0, above];
  const corner = others.reduce((product, other) => product * (lone / (lone - other)), 1);
  return above.length === 1 ? corner : 1 - corner;
}

/** Corner positions, normals and n·v of one triangle, reused from call to call. */
class Triangle {
  readonly corners = [new Vector3(), new Vector3(), new Vector3()] as const;
  readonly normals = [new Vector3(), new Vector3(), new Vector3()] as const;
  readonly facing: [number, number, number] = [0, 0, 0];
  readonly middle = new Vector3();
  readonly normal = new Vector3();
  private readonly edge = new Vector3();

  /** Reads triangle `t`; false unless all its corners belong to `region`. */
  read(mesh: SitterMesh, t: number, region: number): boolean {
    for (const k of [0, 1, 2] as const) {
      const vertex = mesh.indices[3 * t + k] ?? 0;
      if (mesh.regions[vertex] !== region) return false;
      this.corners[k].fromArray(mesh.positions, 3 * vertex);
      this.normals[k].fromArray(mesh.normals, 3 * vertex);
    }
    const [a, b, c] = this.corners;
    this.middle.copy(a).add(b).add(c).divideScalar(3);
    this.normal.copy(this.normals[0]).add(this.normals[1]).add(this.normals[2]).normalize();
    return true;
  }

  area(): number {
    const [a, b, c] = this.corners;
    const side = this.normal.clone().subVectors(c, a);
    return this.edge.subVectors(b, a).cross(side).length() / 2;
  }

  /** Share of the triangle that faces the view; sets `facing`. */
  facingShare(view: View): number {
    for (const k of [0, 1, 2] as const) {
      this.edge.copy(view.from);
      if (!view.isFar) this.edge.sub(this.corners[k]);
      this.facing[k] = this.normals[k].dot(this.edge);
    }
    return shareAbove(...this.facing);
  }
}

const triangle = new Triangle();

function trianglesOf(mesh: SitterMesh, region: number, visit: () => void): void {
  for (let t = 0; t < mesh.indices.length / 3; t++) {
    if (triangle.read(mesh, t, region)) visit();
  }
}

function seenSurface(
  skin: SitterMesh,
  region: number,
  views: Views,
  occluders: readonly Occluder[],
): SeenSurface | null {
  let whole = 0;
  const seen = { here: 0, far: 0 };
  trianglesOf(skin, region, () => {
    const area = triangle.area();
    whole += area;
    for (const name of ['here', 'far'] as const) {
      const share = triangle.facingShare(views[name]);
      if (share > 0 && !isHidden(triangle.middle, triangle.normal, views[name], occluders)) {
        seen[name] += share * area;
      }
    }
  });
  if (whole === 0) return null;
  const far = seen.far / whole;
  return {
    here: seen.here / whole,
    far,
    ofFar: far > NEXT_TO_NOTHING ? seen.here / seen.far : null,
  };
}

/** How far a point lies above the cheekbones along the height of the face, posed as it is. */
function aboveCheekbones({ zygion_left, zygion_right, sellion, menton }: Landmarks) {
  const across = new Vector3(...zygion_left).sub(new Vector3(...zygion_right)).normalize();
  const up = new Vector3(...sellion).sub(new Vector3(...menton));
  up.addScaledVector(across, -up.dot(across)).normalize();
  const level = up.dot(new Vector3(...zygion_left));
  return (point: Vector3): number => up.dot(point) - level;
}

/** Span, along `across`, of the face's points at the cheekbones that the view sees, horizon included. */
function seenBreadth(
  skin: SitterMesh,
  heightOf: (point: Vector3) => number,
  view: View,
  across: Vector3,
  occluders: readonly Occluder[],
): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  const point = new Vector3();
  const normal = new Vector3();
  const consider = () => {
    const at = point.dot(across);
    if (at >= least && at <= most) return;
    if (Math.abs(heightOf(point)) > CHEEKBONE_BAND) return;
    if (isHidden(point, normal, view, occluders)) return;
    least = Math.min(least, at);
    most = Math.max(most, at);
  };
  trianglesOf(skin, REGION.face, () => {
    if (triangle.facingShare(view) === 0) return;
    const { corners, normals, facing } = triangle;
    for (const k of [0, 1, 2] as const) {
      const next = ((k + 1) % 3) as 0 | 1 | 2;
      if (facing[k] > 0) {
        point.copy(corners[k]);
        normal.copy(normals[k]);
        consider();
      }
      if (facing[k] > 0 !== facing[next] > 0) {
        const along = facing[k] / (facing[k] - facing[next]);
        point.lerpVectors(corners[k], corners[next], along);
        normal.lerpVectors(normals[k], normals[next], along).normalize();
        consider();
      }
    }
  });
  return Math.max(0, most - least);
}

interface Views {
  readonly here: View;
  readonly far: View;
}

/**
 * Visible shares of one picture of a sitter, from the entrance pupil. Costs some tens of
 * milliseconds, more when the meshes are new and their ray trees must be built.
 */
export function visibility(
  { meshes, landmarks }: Pick<Sitter, 'meshes' | 'landmarks'>,
  entrancePupil: Vec3,
  neighbours: readonly Neighbour[] = [],
): Visibility {
  const skin = meshes.find((mesh) => mesh.substance === 'skin');
  if (!skin) return { earLeft: null, earRight: null, faceBreadth: null };
  const here = new Vector3(...entrancePupil);
  const views: Views = {
    here: { from: here, isFar: false },
    far: { from: here.clone().normalize(), isFar: true },
  };
  const across = new Vector3(0, 1, 0).cross(here).normalize();
  const heightOf = aboveCheekbones(landmarks);
  const others = neighbours.flatMap(({ meshes: theirs, at }): Occluder[] => {
    const origin = new Vector3(...at);
    return theirs.map((mesh) => ({ tree: treeOf(mesh), at: origin }));
  });
  const breadth = (view: View) => seenBreadth(skin, heightOf, view, across, [own(skin), ...others]);
  const all = [...meshes.map(own), ...others];
  const far = breadth(views.far);
  return {
    earLeft: seenSurface(skin, REGION.earLeft, views, all),
    earRight: seenSurface(skin, REGION.earRight, views, all),
    faceBreadth: far > 0 ? breadth(views.here) / far : null,
  };
}
