import { colourMesh } from './colours';
import type { ClothedDimension } from './extents';
import { landmarksFor } from './landmarks';
import { easeOf, morph } from './morph';
import { unitAreaNormals, warpedNormals } from './normals';
import { posedLandmarks, posing } from './pose';
import { type Changes, resolveDimensions } from './resolve';
import type { Place, Sculpture, SculptureMesh } from './sculpture';
import {
  DIMENSIONS,
  type Dimensions,
  type Landmarks,
  type Looks,
  type Pose,
  type Sitter,
  type SitterMesh,
  type SitterModel,
  UPRIGHT,
} from './types';

export { loadSculpture } from './load';

/** A person upright, before any pose. */
interface Upright {
  readonly key: string;
  readonly dimensions: Dimensions;
  readonly landmarks: Landmarks;
  readonly positions: readonly Float32Array[];
  readonly normals: readonly Float32Array[];
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

/** Hair meshes are named hair-<style>, hair-<style>-locks; a sitter wears one style. */
const worn = (mesh: SculptureMesh, hair: string): boolean =>
  mesh.substance !== 'hair' || mesh.name === `hair-${hair}` || mesh.name === `hair-${hair}-locks`;

/**
 * Makes a sitter: the sculpture at the model's dimensions with `changes` (millimetres), coloured
 * and posed. Every landmark stands on its vertex exactly.
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
  const upright = uprightFor(sculpture, resolveDimensions(own, changes));
  const posed = posing(upright.landmarks, pose);
  const indexOf = new Map<number, number>();
  const meshes: SitterMesh[] = [];
  sculpture.meshes.forEach((mesh, m) => {
    if (!worn(mesh, model.looks.hair)) return;
    indexOf.set(m, meshes.length);
    const positions = (upright.positions[m] as Float32Array).slice();
    const normals = (upright.normals[m] as Float32Array).slice();
    posed.mesh(positions, normals);
    meshes.push({
      name: mesh.name,
      substance: mesh.substance,
      positions,
      normals,
      colours: coloursFor(sculpture, m, model.looks),
      indices: mesh.indices,
      regions: mesh.regions,
    });
  });
  const placed = (places: Readonly<Record<string, Place>>): Record<string, Place> =>
    Object.fromEntries(
      Object.entries(places).map(([name, [m, v]]) => [name, [indexOf.get(m) as number, v]]),
    );
  return {
    dimensions: upright.dimensions,
    landmarks: posedLandmarks(upright.landmarks, posed),
    meshes,
    landmarkVertices: placed(sculpture.landmarks) as Sitter['landmarkVertices'],
    guideVertices: placed(sculpture.guides),
    ease: easeOf(sculpture),
  };
}

function uprightFor(sculpture: Sculpture, dimensions: Dimensions): Upright {
  const store = keptFor(sculpture);
  const key = JSON.stringify(DIMENSIONS.map((name) => dimensions[name]));
  if (store.upright?.key === key) return store.upright;
  const landmarks = landmarksFor(dimensions);
  const positions = morph(sculpture, { dimensions, landmarks });
  const normals = sculpture.meshes.map((mesh, m) =>
    warpedNormals(
      mesh.normals,
      store.areaNormals[m] as Float32Array,
      positions[m] as Float32Array,
      mesh.indices,
    ),
  );
  store.upright = { key, dimensions, landmarks, positions, normals };
  return store.upright;
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
