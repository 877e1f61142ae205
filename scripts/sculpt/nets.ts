import type { Field } from './field';
import { clamp } from './field';
import type { TriangleMesh } from './mesh';

/**
 * Grid planes. `x` holds the positive planes only: the first stands half a cell from the mirror
 * plane, and the cells that straddle x = 0 carry the vertices of the midline.
 */
export interface Grid {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

export interface PolygoniseOptions {
  /** Upper bound of the field's gradient; blocks farther from the surface are skipped. */
  readonly lipschitz?: number;
  /** Half the tap distance of the gradient, mm. */
  readonly tap?: number;
  /** Rounds of tangential smoothing, each followed by a projection onto the surface. */
  readonly relax?: number;
}

/** Planes from `low` to at least `high`, each gap as wide as `cell` says at its start (mm). */
export function axis(low: number, high: number, cell: (at: number) => number): Float64Array {
  const planes = [low];
  for (let at = low; at < high; planes.push(at)) at += cell(at);
  return Float64Array.from(planes);
}

/** Positive planes of a mirrored axis up to at least `high`. */
export const mirroredAxis = (high: number, cell: (at: number) => number): Float64Array =>
  axis(cell(0) / 2, high, cell);

const BLOCK = 4;
const BIG_BLOCK = 16;
/** Corner pairs of a cell's twelve edges; bit 0 = x, 1 = y, 2 = z. */
const EDGE_FROM = [0, 2, 4, 6, 0, 1, 4, 5, 0, 1, 2, 3] as const;
const EDGE_TO = [1, 3, 5, 7, 2, 3, 6, 7, 4, 5, 6, 7] as const;

interface HalfMesh {
  readonly positions: Float64Array;
  readonly normals: Float64Array;
  readonly midline: Uint8Array;
  readonly triangles: number[];
}

/** Origins of the blocks of cells that the surface may cross (two levels of culling). */
function crossedBlocks(field: Field, X: Float64Array, grid: Grid, lipschitz: number): number[] {
  const { y: Y, z: Z } = grid;
  const mayCross = (i: number, j: number, k: number, size: number): boolean => {
    const half = (axisPlanes: Float64Array, at: number): [number, number] => {
      const a = axisPlanes[at] as number;
      const b = axisPlanes[Math.min(axisPlanes.length - 1, at + size)] as number;
      return [(a + b) / 2, (b - a) / 2];
    };
    const [cx, hx] = half(X, i);
    const [cy, hy] = half(Y, j);
    const [cz, hz] = half(Z, k);
    return Math.abs(field(cx, cy, cz)) < lipschitz * Math.hypot(hx, hy, hz) + 1.5;
  };
  const blocks: number[] = [];
  for (let K = 0; K < Z.length - 1; K += BIG_BLOCK)
    for (let J = 0; J < Y.length - 1; J += BIG_BLOCK)
      for (let I = 0; I < X.length - 1; I += BIG_BLOCK) {
        if (!mayCross(I, J, K, BIG_BLOCK)) continue;
        for (let k = K; k < Math.min(K + BIG_BLOCK, Z.length - 1); k += BLOCK)
          for (let j = J; j < Math.min(J + BIG_BLOCK, Y.length - 1); j += BLOCK)
            for (let i = I; i < Math.min(I + BIG_BLOCK, X.length - 1); i += BLOCK)
              if (mayCross(i, j, k, BLOCK)) blocks.push(i, j, k);
      }
  return blocks;
}

/** Surface nets over x >= 0: one vertex a crossed cell, one quad a crossed edge. */
function halfNet(field: Field, grid: Grid, lipschitz: number): HalfMesh {
  const { y: Y, z: Z } = grid;
  const X = Float64Array.of(-(grid.x[0] as number), ...grid.x);
  const [nx, ny, nz] = [X.length, Y.length, Z.length];
  const blocks = crossedBlocks(field, X, grid, lipschitz);
  const at = (i: number, j: number, k: number): number => (k * ny + j) * nx + i;
  const values = new Float32Array(nx * ny * nz).fill(Number.NaN);
  const eachCell = (visit: (i: number, j: number, k: number) => void, extra: 0 | 1): void => {
    for (let b = 0; b < blocks.length; b += 3) {
      const [I, J, K] = [blocks[b], blocks[b + 1], blocks[b + 2]] as [number, number, number];
      const [i1, j1, k1] = [
        Math.min(I + BLOCK, nx - 1) + extra,
        Math.min(J + BLOCK, ny - 1) + extra,
        Math.min(K + BLOCK, nz - 1) + extra,
      ];
      for (let k = K; k < k1; k++)
        for (let j = J; j < j1; j++) for (let i = I; i < i1; i++) visit(i, j, k);
    }
  };
  eachCell((i, j, k) => {
    const q = at(Math.max(i, 1), j, k);
    if (Number.isNaN(values[q] as number))
      values[q] = field(X[Math.max(i, 1)] as number, Y[j] as number, Z[k] as number);
    if (i === 0) values[at(0, j, k)] = values[q] as number;
  }, 1);

  const vertexOf = new Int32Array(nx * ny * nz).fill(-1);
  const points: number[] = [];
  const midline: number[] = [];
  const corner = new Float64Array(8);
  eachCell((i, j, k) => {
    let inside = 0;
    for (let c = 0; c < 8; c++) {
      const w = values[at(i + (c & 1), j + ((c >> 1) & 1), k + (c >> 2))] as number;
      corner[c] = w;
      if (w < 0) inside++;
    }
    if (inside === 0 || inside === 8) return;
    let [x, y, z, n] = [0, 0, 0, 0];
    for (let e = 0; e < 12; e++) {
      const a = EDGE_FROM[e] as number;
      const b = EDGE_TO[e] as number;
      const va = corner[a] as number;
      const vb = corner[b] as number;
      if (va < 0 === vb < 0) continue;
      const t = va / (va - vb);
      const lerp = (planes: Float64Array, from: number, bit: number): number => {
        const p = planes[from + ((a >> bit) & 1)] as number;
        return p + ((planes[from + ((b >> bit) & 1)] as number) - p) * t;
      };
      x += lerp(X, i, 0);
      y += lerp(Y, j, 1);
      z += lerp(Z, k, 2);
      n++;
    }
    vertexOf[at(i, j, k)] = midline.length;
    midline.push(i === 0 ? 1 : 0);
    points.push(i === 0 ? 0 : x / n, y / n, z / n);
  }, 0);

  const triangles: number[] = [];
  const span2 = (p: number, q: number): number =>
    ((points[3 * p] as number) - (points[3 * q] as number)) ** 2 +
    ((points[3 * p + 1] as number) - (points[3 * q + 1] as number)) ** 2 +
    ((points[3 * p + 2] as number) - (points[3 * q + 2] as number)) ** 2;
  const quad = (a: number, b: number, c: number, d: number, flip: boolean): void => {
    if (a < 0 || b < 0 || c < 0 || d < 0) return;
    const [p, q] = flip ? [d, b] : [b, d];
    if (span2(a, c) < span2(b, d)) triangles.push(a, p, c, a, c, q);
    else triangles.push(p, c, q, p, q, a);
  };
  const V = (i: number, j: number, k: number): number => vertexOf[at(i, j, k)] as number;
  eachCell((i, j, k) => {
    const out = (values[at(i, j, k)] as number) >= 0;
    const crosses = (q: number): boolean => (values[q] as number) >= 0 !== out;
    if (j > 0 && k > 0 && i > 0 && crosses(at(i + 1, j, k)))
      quad(V(i, j - 1, k - 1), V(i, j, k - 1), V(i, j, k), V(i, j - 1, k), out);
    if (i > 0 && k > 0 && crosses(at(i, j + 1, k)))
      quad(V(i - 1, j, k - 1), V(i - 1, j, k), V(i, j, k), V(i, j, k - 1), out);
    if (i > 0 && j > 0 && crosses(at(i, j, k + 1)))
      quad(V(i - 1, j - 1, k), V(i, j - 1, k), V(i, j, k), V(i - 1, j, k), out);
  }, 0);
  return {
    positions: Float64Array.from(points),
    normals: new Float64Array(points.length),
    midline: Uint8Array.from(midline),
    triangles,
  };
}

/** Newton step towards the surface along a four-tap gradient; also sets the normal. */
function projector(field: Field, mesh: HalfMesh, tap: number) {
  const { positions: P, normals: N, midline } = mesh;
  return (v: number, rounds: number, longest: number): void => {
    let x = P[3 * v] as number;
    let y = P[3 * v + 1] as number;
    let z = P[3 * v + 2] as number;
    const onMidline = midline[v] === 1;
    for (let round = 0; round < rounds; round++) {
      const a = field(x + tap, y - tap, z - tap);
      const b = field(x - tap, y - tap, z + tap);
      const c = field(x - tap, y + tap, z - tap);
      const d = field(x + tap, y + tap, z + tap);
      const gx = onMidline ? 0 : a - b - c + d;
      const gy = -a - b + c + d;
      const gz = -a + b - c + d;
      const g = Math.hypot(gx, gy, gz) || 1e-9;
      N[3 * v] = gx / g;
      N[3 * v + 1] = gy / g;
      N[3 * v + 2] = gz / g;
      const move = clamp((a + b + c + d) / 4 / (g / (4 * tap)), -longest, longest);
      x -= (gx / g) * move;
      y -= (gy / g) * move;
      z -= (gz / g) * move;
    }
    P[3 * v] = onMidline ? 0 : Math.max(0.01, x);
    P[3 * v + 1] = y;
    P[3 * v + 2] = z;
  };
}

/** Moves each vertex half way to its neighbours' mean, within the tangent plane. */
function relaxOnce(mesh: HalfMesh): void {
  const { positions: P, normals: N, midline, triangles } = mesh;
  const sums = new Float64Array(P.length);
  const counts = new Uint16Array(midline.length);
  for (let t = 0; t < triangles.length; t += 3)
    for (let e = 0; e < 3; e++) {
      const u = triangles[t + e] as number;
      const w = triangles[t + ((e + 1) % 3)] as number;
      for (let j = 0; j < 3; j++) {
        (sums[3 * u + j] as number) += P[3 * w + j] as number;
        (sums[3 * w + j] as number) += P[3 * u + j] as number;
      }
      (counts[u] as number)++;
      (counts[w] as number)++;
    }
  for (let v = 0; v < midline.length; v++) {
    const n = counts[v] as number;
    if (n === 0) continue;
    const pull = [0, 1, 2].map((j) => (sums[3 * v + j] as number) / n - (P[3 * v + j] as number));
    const along = [0, 1, 2].reduce((s, j) => s + (pull[j] as number) * (N[3 * v + j] as number), 0);
    for (let j = 0; j < 3; j++)
      (P[3 * v + j] as number) += 0.5 * ((pull[j] as number) - along * (N[3 * v + j] as number));
  }
}

/** Both halves: vertices of x >= 0 first, then the mirrored ones in the same order. */
function mirror(mesh: HalfMesh): TriangleMesh {
  const { positions: P, normals: N, midline, triangles } = mesh;
  const half = midline.length;
  const twin = new Int32Array(half);
  let total = half;
  for (let v = 0; v < half; v++) twin[v] = midline[v] === 1 ? v : total++;
  const positions = new Float32Array(total * 3);
  const normals = new Float32Array(total * 3);
  for (let v = 0; v < half; v++)
    for (let j = 0; j < 3; j++) {
      const m = twin[v] as number;
      positions[3 * v + j] = P[3 * v + j] as number;
      normals[3 * v + j] = N[3 * v + j] as number;
      if (m === v) continue;
      positions[3 * m + j] = (j === 0 ? -1 : 1) * (P[3 * v + j] as number);
      normals[3 * m + j] = (j === 0 ? -1 : 1) * (N[3 * v + j] as number);
    }
  const indices = new Uint32Array(triangles.length * 2);
  indices.set(triangles);
  for (let t = 0; t < triangles.length; t += 3) {
    const o = triangles.length + t;
    indices[o] = twin[triangles[t] as number] as number;
    indices[o + 1] = twin[triangles[t + 2] as number] as number;
    indices[o + 2] = twin[triangles[t + 1] as number] as number;
  }
  return { positions, normals, indices };
}

/**
 * Polygonises the zero surface of a field that is mirrored in x = 0 (only x >= 0 is read).
 * Surface nets (Gibson 1998), projected onto the field, relaxed and projected again. The mesh is
 * open only where the grid ends before the surface does. Millimetres; deterministic.
 */
export function polygonise(
  field: Field,
  grid: Grid,
  options: PolygoniseOptions = {},
): TriangleMesh {
  const { lipschitz = 1.3, tap = 0.3, relax = 2 } = options;
  const mesh = halfNet(field, grid, lipschitz);
  const { positions: P, midline } = mesh;
  const project = projector(field, mesh, tap);
  for (let v = 0; v < midline.length; v++) {
    const before = [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number];
    project(v, 2, 0.6);
    const moved = Math.hypot(
      (P[3 * v] as number) - before[0],
      (P[3 * v + 1] as number) - before[1],
      (P[3 * v + 2] as number) - before[2],
    );
    // A long walk means the gradient led to another sheet: keep the net's own vertex.
    if (moved > 1 + tap) P.set(before, 3 * v);
  }
  for (let round = 0; round < relax; round++) {
    relaxOnce(mesh);
    for (let v = 0; v < midline.length; v++) project(v, 1, 0.5);
  }
  for (let v = 0; v < midline.length; v++) project(v, 1, 0.3);
  return mirror(mesh);
}
