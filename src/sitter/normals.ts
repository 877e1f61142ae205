/** Sum of the triangles' normals at each vertex, weighted by area; not of unit length. */
export function areaNormals(positions: Float32Array, indices: Uint32Array): Float32Array {
  const P = positions;
  const out = new Float32Array(P.length);
  for (let t = 0; t < indices.length; t += 3) {
    const a = 3 * (indices[t] as number);
    const b = 3 * (indices[t + 1] as number);
    const c = 3 * (indices[t + 2] as number);
    const ux = (P[b] as number) - (P[a] as number);
    const uy = (P[b + 1] as number) - (P[a + 1] as number);
    const uz = (P[b + 2] as number) - (P[a + 2] as number);
    const vx = (P[c] as number) - (P[a] as number);
    const vy = (P[c + 1] as number) - (P[a + 1] as number);
    const vz = (P[c + 2] as number) - (P[a + 2] as number);
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    for (const o of [a, b, c]) {
      out[o] = (out[o] as number) + x;
      out[o + 1] = (out[o + 1] as number) + y;
      out[o + 2] = (out[o + 2] as number) + z;
    }
  }
  return out;
}

/** Scales every triple to unit length, in place; a zero triple takes the fallback's. */
function unit(normals: Float32Array, fallback: Float32Array): Float32Array {
  for (let o = 0; o < normals.length; o += 3) {
    const [x, y, z] = [normals[o], normals[o + 1], normals[o + 2]] as [number, number, number];
    const length = Math.hypot(x, y, z);
    for (let j = 0; j < 3; j++)
      normals[o + j] =
        length > 0 ? (normals[o + j] as number) / length : (fallback[o + j] as number);
  }
  return normals;
}

/**
 * Normals after a warp: the sculpted ones (finer than the triangles) turned by as much as the
 * area-weighted normals turned. To first order that is what the warp's own gradient would give,
 * and where nothing moved the sculpted normals stay as they are.
 * @param before unit area-weighted normals of the mesh as sculpted
 */
export function warpedNormals(
  sculpted: Float32Array,
  before: Float32Array,
  positions: Float32Array,
  indices: Uint32Array,
): Float32Array {
  const after = unit(areaNormals(positions, indices), sculpted);
  for (let i = 0; i < after.length; i++)
    after[i] = (sculpted[i] as number) + (after[i] as number) - (before[i] as number);
  return unit(after, sculpted);
}

/** Unit area-weighted normals of a mesh. */
export const unitAreaNormals = (
  positions: Float32Array,
  indices: Uint32Array,
  fallback: Float32Array,
): Float32Array => unit(areaNormals(positions, indices), fallback);
