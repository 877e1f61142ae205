import type { Vec3 } from '../optics/types';
import type { DimensionName, LandmarkName, Substance } from './types';

/** A mesh as sculpted: metres, upright, in the sitter's frame. */
export interface SculptureMesh {
  readonly name: string;
  readonly substance: Substance;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
  /** Fewer triangles over the same vertices, for small pictures. */
  readonly coarse?: Uint32Array;
  /** Share of open space over each vertex, 0..255. */
  readonly openness: Uint8Array;
  readonly regions: Uint8Array;
  /** Named shares of colour, 0..255 a vertex. */
  readonly masks: Readonly<Record<string, Uint8Array>>;
  /** Four bones a vertex and their shares (0..255), where limbs bend it. */
  readonly joints?: Uint8Array;
  readonly weights?: Uint8Array;
}

/** A place on a sculpture: [mesh index, vertex index]. */
export type Place = readonly [mesh: number, vertex: number];

/**
 * One file of models/sculpture/: a figure (skin, hands, eyes, brows), something worn, or a form,
 * whose one mesh holds displacements of the figure's skin and the normals after them.
 */
export interface SculptureFile {
  readonly id: string;
  readonly meshes: readonly SculptureMesh[];
  readonly landmarks: Readonly<Partial<Record<LandmarkName, Place>>>;
  /** Further places that steer the warp, by name. */
  readonly guides: Readonly<Record<string, Place>>;
  /** Joints and other points inside the figure, metres. */
  readonly anchors: Readonly<Record<string, Vec3>>;
  /** Dimensions that the sculpted body was built from, millimetres. */
  readonly body: Readonly<Partial<Record<DimensionName, number>>>;
  /** Hash of the sources that made it. */
  readonly source: string;
}

/** A clothed figure put together from its files; every landmark has its place. */
export interface Sculpture extends Omit<SculptureFile, 'landmarks'> {
  readonly landmarks: Readonly<Record<LandmarkName, Place>>;
  /** Displacements (xyz, metres) of the full smile by mesh index. */
  readonly smile: ReadonlyMap<number, Float32Array>;
}

/** The xyz of a place, metres. */
export function positionAt(meshes: readonly { positions: Float32Array }[], place: Place): Vec3 {
  const P = meshes[place[0]]?.positions;
  const o = 3 * place[1];
  const [x, y, z] = [P?.[o], P?.[o + 1], P?.[o + 2]];
  if (x === undefined || y === undefined || z === undefined)
    throw new RangeError(`no vertex ${place[1]} in mesh ${place[0]}`);
  return [x, y, z];
}
