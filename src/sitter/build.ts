import type { Vec3 } from '../optics/types';
import { colourMesh } from './colours';
import { type Fall, fallOf, layHair } from './draping';
import type { ClothedDimension } from './extents';
import { glassesFor } from './glasses';
import { landmarksFor } from './landmarks';
import { easeOf, morph } from './morph';
import { unitAreaNormals, warpedNormals } from './normals';
import { type BoneShares, posedLandmarks, posing } from './pose';
import { type Changes, resolveDimensions } from './resolve';
import type { Sculpture, SculptureMesh } from './sculpture';
import { pressOnSeat } from './seat';
import { skeletonOf } from './skeleton';
import { layOnThighs, SKIRT_OVER_TROUSERS, skirtOf } from './skirt';
import { stoolFor } from './stool';
import {
  DIMENSIONS,
  type Dimensions,
  type LandmarkName,
  type Landmarks,
  type Looks,
  type Pose,
  type Sitter,
  type SitterMesh,
  type SitterModel,
  UPRIGHT,
} from './types';

/** A person upright, before any pose. */
interface Upright {
  readonly key: string;
  readonly dimensions: Dimensions;
  readonly landmarks: Landmarks;
  readonly positions: readonly Float32Array[];
  readonly normals: readonly Float32Array[];
  readonly fall?: Fall;
}

/** What one sculpture keeps from build to build: a pose alone then costs no warp. */
interface Kept {
  readonly areaNormals: readonly Float32Array[];
  readonly colours: Map<string, Uint8Array>;
  upright?: Upright;
}
const kept = new WeakMap<Sculpture, Kept>();

function keptFor(sculpture: Sculpture): Kept {
  const known = kept.get(sculpture);
  if (known) return known;
  const fresh: Kept = {
    areaNormals: sculpture.meshes.map((m) => unitAreaNormals(m.positions, m.indices, m.normals)),
    colours: new Map(),
  };
  kept.set(sculpture, fresh);
  return fresh;
}

/** A sitter with what measuring it needs besides. */
export interface BuiltSitter extends Sitter {
  /** Places that steer the warp: [mesh index, vertex index]. */
  readonly guideVertices: Readonly<Record<string, readonly [number, number]>>;
  /** How much the cloth stands off the body, metres, by dimension. */
  readonly ease: Readonly<Record<ClothedDimension, number>>;
}

/**
 * Makes a sitter: the sculpture at the model's dimensions with `changes` (millimetres), coloured,
 * smiling as the looks have it (dimensions are those of the face at rest), and posed. Every
 * landmark stands on its vertex exactly.
 * @throws ImpossibleDimensions when the dimensions contradict each other.
 */
export function buildSitter(
  sculpture: Sculpture,
  model: Pick<SitterModel, 'dimensions' | 'looks'>,
  changes: Changes = {},
  pose: Pose = UPRIGHT,
): BuiltSitter {
  const own = Object.fromEntries(
    DIMENSIONS.map((name) => [name, model.dimensions[name].mm]),
  ) as Dimensions;
  const upright = uprightFor(sculpture, resolveDimensions(own, changes), model.looks.smile);
  const rest = skeletonOf(upright.landmarks, upright.dimensions);
  const skirt =
    pose.stance === 'seated' ? skirtOf(sculpture.meshes, upright.positions, rest) : null;
  const posed = posing(
    upright.landmarks,
    upright.dimensions,
    pose,
    skirt ? SKIRT_OVER_TROUSERS : 0,
  );
  const meshes = sculpture.meshes.map((mesh, m): SitterMesh => {
    const positions = (upright.positions[m] as Float32Array).slice();
    const normals = (upright.normals[m] as Float32Array).slice();
    if (skirt?.mesh === m) layOnThighs(skirt, rest, positions, normals);
    posed.mesh(positions, normals, mesh.joints, mesh.weights, mesh.masks.hang);
    return {
      name: mesh.name,
      substance: mesh.substance,
      positions,
      normals,
      colours: coloursFor(sculpture, m, model.looks),
      openness: mesh.openness,
      indices: mesh.indices,
      ...(mesh.coarse && { coarse: mesh.coarse }),
      regions: mesh.regions,
      ...strandsOf(mesh),
      ...(mesh.substance === 'skin' && { sculpted: mesh.positions }),
    };
  });
  if (posed.seat) pressOnSeat(sculpture, posed.seat, meshes);
  if (upright.fall) layHair(sculpture, upright.fall, meshes);
  const landmarks = posedLandmarks(upright.landmarks, posed, (name) => sharesAt(sculpture, name));
  const face = meshes[sculpture.landmarks.sellion[0]];
  return {
    dimensions: upright.dimensions,
    landmarks,
    meshes: [
      ...meshes,
      ...(model.looks.glasses && face ? glassesFor(landmarks, face) : []),
      ...(posed.seat ? [stoolFor(posed.seat, meshes)] : []),
    ],
    landmarkVertices: sculpture.landmarks,
    guideVertices: sculpture.guides,
    ease: easeOf(sculpture),
  };
}

/** Bones of the vertex that a landmark stands on. */
function sharesAt(sculpture: Sculpture, name: LandmarkName): BoneShares | undefined {
  const [m, v] = sculpture.landmarks[name];
  const { joints, weights } = sculpture.meshes[m] as SculptureMesh;
  return joints && weights
    ? { joints: joints.subarray(4 * v, 4 * v + 4), weights: weights.subarray(4 * v, 4 * v + 4) }
    : undefined;
}

function uprightFor(sculpture: Sculpture, dimensions: Dimensions, smile: number): Upright {
  const store = keptFor(sculpture);
  const key = JSON.stringify([smile, ...DIMENSIONS.map((name) => dimensions[name])]);
  if (store.upright?.key === key) return store.upright;
  const resting = landmarksFor(dimensions);
  const positions = morph(sculpture, { dimensions, landmarks: resting });
  const landmarks = smiling(sculpture, positions, resting, smile);
  const normals = sculpture.meshes.map((mesh, m) =>
    warpedNormals(
      mesh.normals,
      store.areaNormals[m] as Float32Array,
      positions[m] as Float32Array,
      mesh.indices,
    ),
  );
  const shapes = positions.map((p, m) => ({ positions: p, normals: normals[m] as Float32Array }));
  const fall = fallOf(sculpture, shapes, landmarks);
  store.upright = { key, dimensions, landmarks, positions, normals, ...(fall && { fall }) };
  return store.upright;
}

/** The masks that the stage needs to draw hair, two bytes a vertex. */
function strandsOf({ masks: { strand, sheer } }: SculptureMesh): Pick<SitterMesh, 'strands'> {
  if (!strand || !sheer) return {};
  const strands = new Uint8Array(2 * strand.length);
  for (let v = 0; v < strand.length; v++)
    strands.set([strand[v] as number, sheer[v] as number], 2 * v);
  return { strands };
}

/** Puts a share of the smile on the positions, in place; gives the landmarks that went with it. */
function smiling(
  { smile, landmarks: places }: Sculpture,
  positions: readonly Float32Array[],
  landmarks: Landmarks,
  share: number,
): Landmarks {
  if (share === 0) return landmarks;
  for (const [m, displacement] of smile) {
    const P = positions[m] as Float32Array;
    displacement.forEach((by, i) => {
      P[i] = (P[i] as number) + share * by;
    });
  }
  const moved = (name: string, at: Vec3): Vec3 => {
    const [m, v] = places[name as LandmarkName];
    const by = smile.get(m)?.subarray(3 * v, 3 * v + 3);
    if (!by) return at;
    return [0, 1, 2].map((j) => (at[j] as number) + share * (by[j] as number)) as unknown as Vec3;
  };
  return Object.fromEntries(
    Object.entries(landmarks).map(([name, at]) => [name, moved(name, at)]),
  ) as Landmarks;
}

function coloursFor(
  sculpture: Sculpture,
  m: number,
  { colours, hair }: Pick<Looks, 'colours' | 'hair'>,
): Uint8Array {
  const { colours: store } = keptFor(sculpture);
  const key = JSON.stringify([m, colours, hair === 'bald']);
  const known = store.get(key);
  if (known) return known;
  const fresh = colourMesh(sculpture.meshes[m] as SculptureMesh, colours, hair === 'bald');
  store.set(key, fresh);
  return fresh;
}
