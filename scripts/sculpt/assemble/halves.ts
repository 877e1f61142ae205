import type { TriangleMesh } from '../mesh';
import type { Placed } from '../places';
import { compact, leftHalf, mirrored, simplify } from '../simplify';

/** A mirrored mesh after simplification, and where its named places are. */
export interface Halved {
  readonly mesh: TriangleMesh;
  /** Fewer triangles over the same vertices. */
  readonly coarse: Uint32Array;
  readonly places: Readonly<Record<string, number>>;
}

/** Triangles of the coarse set over those of the full one. */
const COARSE_SHARE = 0.4;

/**
 * Simplifies a mirrored part half by half, with the places that landmarks and guides hold.
 * @param triangles to keep, both halves together
 * @param find where the places are on the left half
 * @param detail values whose borders are to survive, a column each, and their weight
 */
export async function halved(
  whole: TriangleMesh,
  triangles: number,
  find: (half: TriangleMesh) => Readonly<Record<string, Placed>> = () => ({}),
  detail: (half: TriangleMesh) => Float32Array[] = () => [],
  detailWeight?: number,
): Promise<Halved> {
  const half = leftHalf(whole);
  const found = Object.entries(find(half));
  const kept = await simplify(half, {
    triangles: triangles / 2,
    locked: found.map(([, { vertex }]) => vertex),
    detail: detail(half),
    detailWeight,
  });
  const { mesh: small, place } = compact(half, kept);
  const few = await simplify(small, {
    triangles: (COARSE_SHARE * triangles) / 2,
    locked: [],
    detail: detail(small),
    detailWeight,
  });
  const { mesh, mirror } = mirrored(small);
  const places: Record<string, number> = {};
  for (const [name, { vertex, paired }] of found) {
    const v = place.get(vertex);
    if (v === undefined) throw new Error(`${name} was simplified away`);
    if (!paired) places[name] = v;
    else {
      places[`${name}_left`] = v;
      places[`${name}_right`] = mirror[v] as number;
    }
  }
  return { mesh, coarse: bothSides(few, mirror), places };
}

/** Triangles of the left half with their mirror images. */
function bothSides(half: Uint32Array, mirror: Uint32Array): Uint32Array {
  const n = half.length;
  const out = new Uint32Array(2 * n);
  out.set(half);
  for (let t = 0; t < n; t += 3) {
    const at = (k: number): number => mirror[half[t + k] as number] as number;
    out.set([at(0), at(2), at(1)], n + t);
  }
  return out;
}
