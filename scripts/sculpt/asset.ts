import type { DimensionName, LandmarkName, Substance } from '../../src/sitter/types';
import type { TriangleMesh } from './mesh';

/** A mesh ready to be written: millimetres, the sitter's frame. */
export interface AssetMesh extends TriangleMesh {
  readonly name: string;
  readonly substance: Substance;
  /** Fewer triangles over the same vertices. */
  readonly coarse?: Uint32Array;
  /** Share of open space over each vertex, 0..255. */
  readonly openness: Uint8Array;
  /** One REGION value a vertex. */
  readonly regions: Uint8Array;
  /** Named shares of colour, 0..255 a vertex. */
  readonly masks: Readonly<Record<string, Uint8Array>>;
  /** Four bones a vertex and their shares (0..255), where limbs bend the mesh. */
  readonly joints?: Uint8Array;
  readonly weights?: Uint8Array;
}

/** A place on the sculpture: [mesh index, vertex index]. */
export type Place = readonly [mesh: number, vertex: number];

/** Everything one file of models/sculpture/ holds. */
export interface Asset {
  readonly id: string;
  readonly meshes: readonly AssetMesh[];
  readonly landmarks: Readonly<Partial<Record<LandmarkName, Place>>>;
  /** Further places that the warp holds or steers, by name. */
  readonly guides: Readonly<Record<string, Place>>;
  /** Points inside the figure (joints) that move with it, millimetres. */
  readonly anchors: Readonly<Record<string, readonly [number, number, number]>>;
  /** Dimensions that the sculpted body was built from, millimetres: cloth hides it. */
  readonly body: Readonly<Partial<Record<DimensionName, number>>>;
  /** Hash of the sources that made it. */
  readonly source: string;
}
