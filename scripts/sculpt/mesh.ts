/** A triangle mesh in millimetres, counter-clockwise seen from outside, with unit normals. */
export interface TriangleMesh {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
}
