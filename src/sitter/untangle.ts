import { factor, solve } from './linear';

/** Which vertices share a triangle. */
export interface Neighbours {
  /** Start of each vertex's list of neighbours, and the lists. */
  readonly starts: Uint32Array;
  readonly neighbours: Uint32Array;
}

/** The neighbours of every vertex, once for each triangle that they share. */
export function neighboursOf(count: number, indices: Uint32Array): Neighbours {
  const starts = new Uint32Array(count + 1);
  for (const v of indices) starts[v + 1] = (starts[v + 1] as number) + 2;
  for (let v = 0; v < count; v++) starts[v + 1] = (starts[v + 1] as number) + (starts[v] as number);
  const next = starts.slice();
  const neighbours = new Uint32Array(2 * indices.length);
  const add = (v: number, other: number): void => {
    neighbours[next[v] as number] = other;
    next[v] = (next[v] as number) + 1;
  };
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [indices[t], indices[t + 1], indices[t + 2]] as [number, number, number];
    add(a, b);
    add(a, c);
    add(b, a);
    add(b, c);
    add(c, a);
    add(c, b);
  }
  return { starts, neighbours };
}

/** First corners (positions in `indices`) of the triangles that face away from where they did. */
export function turnedOver(
  before: Float32Array,
  after: Float32Array,
  indices: Uint32Array,
  least = 0,
): number[] {
  const found: number[] = [];
  for (let t = 0; t < indices.length; t += 3)
    if (cosine(before, after, indices, t) < least) found.push(t);
  return found;
}

/** Cosine of the angle between a triangle's normals in two sets of positions. */
function cosine(P: Float32Array, Q: Float32Array, I: Uint32Array, t: number): number {
  const a = 3 * (I[t] as number);
  const b = 3 * (I[t + 1] as number);
  const c = 3 * (I[t + 2] as number);
  const edge = (M: Float32Array, to: number, j: number): number =>
    (M[to + j] as number) - (M[a + j] as number);
  let [dot, pp, qq] = [0, 0, 0];
  for (let j = 0; j < 3; j++) {
    const [k, l] = [(j + 1) % 3, (j + 2) % 3];
    const p = edge(P, b, k) * edge(P, c, l) - edge(P, b, l) * edge(P, c, k);
    const q = edge(Q, b, k) * edge(Q, c, l) - edge(Q, b, l) * edge(Q, c, k);
    dot += p * q;
    pp += p * p;
    qq += q * q;
  }
  return dot / Math.sqrt(pp * qq || 1);
}

/** `before` under the affine map that brings it nearest to `after` (least squares). */
function fitted(before: Float32Array, after: Float32Array): Float64Array {
  const normal = new Float64Array(16);
  const rhs = new Float64Array(12);
  const row = (o: number): [number, number, number, number] => [
    before[o] as number,
    before[o + 1] as number,
    before[o + 2] as number,
    1,
  ];
  for (let o = 0; o < before.length; o += 3) {
    const p = row(o);
    for (let r = 0; r < 4; r++) {
      for (let c = 0; c < 4; c++)
        normal[4 * r + c] = (normal[4 * r + c] as number) + (p[r] as number) * (p[c] as number);
      for (let j = 0; j < 3; j++)
        rhs[3 * r + j] = (rhs[3 * r + j] as number) + (p[r] as number) * (after[o + j] as number);
    }
  }
  const map = solve(factor(normal, 4), rhs, 3);
  const out = new Float64Array(before.length);
  for (let o = 0; o < before.length; o += 3) {
    const p = row(o);
    for (let j = 0; j < 3; j++)
      out[o + j] = p.reduce((sum, c, r) => sum + c * (map[3 * r + j] as number), 0);
  }
  return out;
}

/** Triangles that turned by more than this are smoothed, the cosine. */
const STEEPEST = 0.15;
const ROUNDS = 12;
const PASSES = 6;

/**
 * Mends the few triangles that a warp turned over, in place: where one lies, the displacement of
 * its neighbourhood is smoothed until none is left, from where the affine map that fits the whole
 * mesh best would have put it. Vertices that are held keep their place.
 * False when there was nothing to mend.
 */
export function untangle(
  before: Float32Array,
  after: Float32Array,
  indices: Uint32Array,
  held: ReadonlySet<number>,
  neighbours: () => Neighbours,
): boolean {
  if (turnedOver(before, after, indices).length === 0) return false;
  const { starts, neighbours: list } = neighbours();
  const start = fitted(before, after);
  for (let round = 0; round < ROUNDS; round++) {
    if (turnedOver(before, after, indices).length === 0) break;
    const bad = turnedOver(before, after, indices, STEEPEST);
    let patch = new Set(bad.flatMap((t) => [...indices.subarray(t, t + 3)]));
    for (let ring = 0; ring < 2 + round / 4; ring++) {
      const wider = new Set(patch);
      for (const v of patch)
        for (let i = starts[v] as number; i < (starts[v + 1] as number); i++)
          wider.add(list[i] as number);
      patch = wider;
    }
    const free = [...patch].filter((v) => !held.has(v));
    for (let pass = 0; pass < PASSES; pass++)
      for (const v of free) {
        const [from, to] = [starts[v] as number, starts[v + 1] as number];
        for (let j = 0; j < 3; j++) {
          let sum = 0;
          for (let i = from; i < to; i++) {
            const o = 3 * (list[i] as number) + j;
            sum += (after[o] as number) - (start[o] as number);
          }
          const o = 3 * v + j;
          after[o] = (start[o] as number) + sum / (to - from);
        }
      }
  }
  return true;
}
