import type { Vec3 } from '../optics/types';
import { fillingOf } from './caps';
import { neckAxis, step } from './neck';
import type { Place, Sculpture } from './sculpture';
import type { Landmarks, Substance } from './types';

/** What hair lies on. */
const SOLID = new Set<Substance>(['skin', 'top', 'outer']);

/** Space between the samples of the body's surface, and cell of the grid they are found by, metres. */
const SPACING = 0.008;
const CELL = 0.036;
/** The surface is blended over at least this distance, metres. */
const BLEND = 0.012;
/** How near hair comes to what it lies on, and how much hair on it gives way, metres. */
const LEAST = 0.001;
const GIVES = 0.014;
/** Distances aside from the samples between which their surface ends, metres. */
const BORDER = [0.022, 0.04] as const;
/** Samples reach so far aside and so far below the root of the neck, metres. */
const ASIDE = 0.24;
const BELOW = 0.26;
/** Samples end here on the neck, as a share of the way from its root to the jaw. */
const NECK_END = 0.75;
/** Depth under the root of the neck from which the outside of the shoulders is told, metres. */
const CORE = 0.06;
/** Rounds in which hair is set off the surface: leaving one, it may come near another. */
const ROUNDS = 5;
/** Hair this near its height stays, metres. */
const SETTLED = 2e-5;
/** A sample whose weight is under e to this against the nearest one's counts for nothing. */
const NOTHING = -16;

interface Shape {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
}

const at = (column: Float32Array, v: number): Vec3 =>
  [column[3 * v], column[3 * v + 1], column[3 * v + 2]] as unknown as Vec3;

const key = (x: number, y: number, z: number, size: number): number =>
  ((Math.floor(x / size) + 512) * 1024 + Math.floor(y / size) + 512) * 1024 +
  Math.floor(z / size) +
  512;

/**
 * Vertices, by mesh, that sample the outside of neck, shoulders, chest and back. The inside of a
 * cloth, whose normals point at the body, is none of them.
 * @param upright every mesh before any pose
 */
function solidSamples(
  { meshes }: Pick<Sculpture, 'meshes'>,
  upright: readonly Shape[],
  landmarks: Landmarks,
): readonly Place[] {
  const axis = neckAxis((name) => landmarks[name]);
  const [, top, depth] = axis.root;
  return meshes.flatMap((mesh, m): Place[] => {
    if (!SOLID.has(mesh.substance)) return [];
    const { positions, normals } = upright[m] as Shape;
    // What fills the lower end of the skin faces into the body.
    const filling = mesh.name === 'skin' ? fillingOf(mesh) : undefined;
    const taken = new Set<number>();
    const places: Place[] = [];
    for (let v = 0; v < positions.length / 3; v++) {
      if (filling?.has(v)) continue;
      const [x, y, z] = at(positions, v);
      if (Math.abs(x) > ASIDE || y < top - BELOW) continue;
      if (axis.along(x, y, z) > NECK_END * axis.length) continue;
      const n = at(normals, v);
      const core = Math.min(y, top - CORE);
      if (n[0] * x + n[1] * (y - core) + n[2] * (z - depth) < 0) continue;
      const cell = key(x, y, z, SPACING);
      if (taken.has(cell)) continue;
      taken.add(cell);
      places.push([m, v]);
    }
    return places;
  });
}

/** Height over the nearest surface, metres (negative inside), and the way out of it. */
interface Clearance {
  gap: number;
  readonly out: [number, number, number];
  /** Distance aside from the samples, metres: the surface is told where it is small. */
  aside: number;
}
type ClearanceAt = (x: number, y: number, z: number) => Readonly<Clearance> | undefined;

/** Samples in the order of the grid's cells, z fastest: those of neighbours along z stand together. */
interface Samples {
  readonly points: Float64Array;
  readonly normals: Float64Array;
  /** Number of each sample's mesh among those that have any. */
  readonly surface: Uint8Array;
  readonly surfaces: number;
  /** First cell along each axis, and cells along each. */
  readonly first: Vec3;
  readonly cells: Vec3;
  /** First sample of each cell, and after the last one their number. */
  readonly starts: Uint32Array;
}

const cellOf = (coordinate: number): number => Math.floor(coordinate / CELL);

function samplesOf(places: readonly Place[], posed: readonly Shape[]): Samples {
  const meshes = [...new Set(places.map(([m]) => m))];
  const first: [number, number, number] = [Infinity, Infinity, Infinity];
  const last: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const [m, v] of places)
    at((posed[m] as Shape).positions, v).forEach((coordinate, j) => {
      first[j] = Math.min(first[j] as number, cellOf(coordinate));
      last[j] = Math.max(last[j] as number, cellOf(coordinate));
    });
  const cells = first.map((from, j) =>
    Math.max(0, (last[j] as number) - from + 1),
  ) as never as Vec3;
  const cell = places.map(([m, v]) => {
    const [i, j, k] = at((posed[m] as Shape).positions, v).map(cellOf) as never as Vec3;
    return ((i - first[0]) * cells[1] + (j - first[1])) * cells[2] + (k - first[2]);
  });
  const starts = new Uint32Array(cells[0] * cells[1] * cells[2] + 1);
  for (const c of cell) (starts[c + 1] as number) += 1;
  for (let c = 1; c < starts.length; c++) (starts[c] as number) += starts[c - 1] as number;
  const next = starts.slice();
  const points = new Float64Array(3 * places.length);
  const normals = new Float64Array(3 * places.length);
  const surface = new Uint8Array(places.length);
  places.forEach(([m, v], i) => {
    const to = (next[cell[i] as number] as number)++;
    const shape = posed[m] as Shape;
    points.set(at(shape.positions, v), 3 * to);
    normals.set(at(shape.normals, v), 3 * to);
    surface[to] = meshes.indexOf(m);
  });
  return { points, normals, surface, surfaces: meshes.length, first, cells, starts };
}

/**
 * Tells how far a point lies outside a surface given by points and normals, one for each mesh: the
 * heights over the tangent planes of the points nearby, weighted by nearness (implicit moving least
 * squares: Shen, O'Brien and Shewchuk 2004, "Interpolating and approximating implicit surfaces from
 * polygon soup"). Of several surfaces, the outermost counts; nothing is told far from all. The answer
 * holds until the next one is asked for.
 */
function clearanceOver(places: readonly Place[], posed: readonly Shape[]): ClearanceAt {
  const { points, normals, surface, surfaces, first, cells, starts } = samplesOf(places, posed);
  const squares = new Float64Array(places.length);
  /** Least square of each surface, and how fast weights fall beyond it. */
  const nearest = new Float64Array(surfaces);
  const rates = new Float64Array(surfaces);
  /** Sums over each surface: weight, weighted height, weighted normal. */
  const sums = new Float64Array(5 * surfaces);
  /** Where the samples of neighbouring cells start and end. */
  const runs = new Uint32Array(18);
  const found: Clearance = { gap: 0, out: [0, 0, 0], aside: 0 };

  /** Runs of samples in the cells about a point. */
  const runsAbout = (x: number, y: number, z: number): number => {
    const [i, j, k] = [cellOf(x) - first[0], cellOf(y) - first[1], cellOf(z) - first[2]];
    const [from, to] = [Math.max(0, k - 1), Math.min(cells[2] - 1, k + 1)];
    let count = 0;
    if (from > to) return count;
    for (let a = Math.max(0, i - 1); a <= Math.min(cells[0] - 1, i + 1); a++)
      for (let b = Math.max(0, j - 1); b <= Math.min(cells[1] - 1, j + 1); b++) {
        const row = (a * cells[1] + b) * cells[2];
        runs[count] = starts[row + from] as number;
        runs[count + 1] = starts[row + to + 1] as number;
        count += 2;
      }
    return count;
  };

  return (px, py, pz) => {
    const count = runsAbout(px, py, pz);
    nearest.fill(Number.POSITIVE_INFINITY);
    for (let r = 0; r < count; r += 2)
      for (let i = runs[r] as number; i < (runs[r + 1] as number); i++) {
        const x = px - (points[3 * i] as number);
        const y = py - (points[3 * i + 1] as number);
        const z = pz - (points[3 * i + 2] as number);
        const square = x * x + y * y + z * z;
        squares[i] = square;
        const s = surface[i] as number;
        if (square < (nearest[s] as number)) nearest[s] = square;
      }
    for (let s = 0; s < surfaces; s++) rates[s] = 4 / Math.max(BLEND * BLEND, nearest[s] as number);
    sums.fill(0);
    for (let r = 0; r < count; r += 2)
      for (let i = runs[r] as number; i < (runs[r + 1] as number); i++) {
        const s = surface[i] as number;
        const falls = (rates[s] as number) * ((nearest[s] as number) - (squares[i] as number));
        if (falls < NOTHING) continue;
        const w = Math.exp(falls);
        const o = 3 * i;
        const nx = normals[o] as number;
        const ny = normals[o + 1] as number;
        const nz = normals[o + 2] as number;
        const height =
          nx * (px - (points[o] as number)) +
          ny * (py - (points[o + 1] as number)) +
          nz * (pz - (points[o + 2] as number));
        (sums[5 * s] as number) += w;
        (sums[5 * s + 1] as number) += w * height;
        (sums[5 * s + 2] as number) += w * nx;
        (sums[5 * s + 3] as number) += w * ny;
        (sums[5 * s + 4] as number) += w * nz;
      }
    let told = false;
    for (let s = 0; s < surfaces; s++) {
      const w = sums[5 * s] as number;
      if (w === 0) continue;
      const gap = (sums[5 * s + 1] as number) / w;
      const aside = Math.sqrt(Math.max(0, (nearest[s] as number) - gap * gap));
      if (aside > BORDER[1] || (told && found.gap <= gap)) continue;
      told = true;
      found.gap = gap;
      found.aside = aside;
      for (let j = 0; j < 3; j++) found.out[j] = sums[5 * s + 2 + j] as number;
    }
    if (!told) return undefined;
    const [x, y, z] = found.out;
    const length = Math.hypot(x, y, z) || 1;
    for (let j = 0; j < 3; j++) found.out[j] = (found.out[j] as number) / length;
    return found;
  };
}

/**
 * Height at which a vertex may lie that lay at `gap` on the upright body: never higher, so that upright hair stays
 * as it was sculpted, and in the order of its layers.
 */
const allowed = (gap: number): number =>
  Math.min(gap, LEAST + GIVES * (1 - Math.exp(-Math.max(0, gap) / GIVES)));

/** How firmly hair is set off: what hangs only a little gives way nearly as far as what hangs free. */
const firm = (hang: number): number => Math.min(1, 4 * hang);

/** How hanging hair lies on the upright body. */
export interface Fall {
  readonly solid: readonly Place[];
  /** Heights of its vertices over what it lies on, metres, Infinity far from it; by mesh. */
  readonly heights: ReadonlyMap<number, Float32Array>;
}

/** How the hair of a sculpture hangs, each mesh upright; nothing when none does. */
export function fallOf(
  sculpture: Pick<Sculpture, 'meshes'>,
  upright: readonly Shape[],
  landmarks: Landmarks,
): Fall | undefined {
  const hanging = sculpture.meshes.flatMap(({ masks: { hang } }, m) =>
    hang?.some((h) => h > 0) ? [[m, hang] as const] : [],
  );
  if (hanging.length === 0) return undefined;
  const solid = solidSamples(sculpture, upright, landmarks);
  const clearance = clearanceOver(solid, upright);
  return {
    solid,
    heights: new Map(
      hanging.map(([m, hang]) => {
        const { positions } = upright[m] as Shape;
        const height = (h: number, v: number): number =>
          (h === 0 ? undefined : clearance(...at(positions, v)))?.gap ?? Number.POSITIVE_INFINITY;
        return [m, Float32Array.from(hang, height)];
      }),
    ),
  };
}

/**
 * Sets hanging hair, in place, off what it would pass through, so that it lies on it in layers as
 * it did on the upright body.
 */
export function layHair(
  { meshes }: Pick<Sculpture, 'meshes'>,
  { solid, heights }: Fall,
  posed: readonly Shape[],
): void {
  const clearance = clearanceOver(solid, posed);
  for (const [m, over] of heights) {
    const { positions } = posed[m] as Shape;
    meshes[m]?.masks.hang?.forEach((h, v) => {
      if (h > 0) setOff(positions, v, firm(h / 255), allowed(over[v] as number), clearance);
    });
  }
}

function setOff(
  positions: Float32Array,
  v: number,
  share: number,
  wanted: number,
  clearance: ClearanceAt,
): void {
  const [x, y, z] = [3 * v, 3 * v + 1, 3 * v + 2];
  for (let round = 0; round < ROUNDS; round++) {
    const over = clearance(positions[x] as number, positions[y] as number, positions[z] as number);
    if (!over || over.gap >= wanted - SETTLED) return;
    const by = (wanted - over.gap) * share * step(BORDER[1], BORDER[0], over.aside);
    (positions[x] as number) += by * over.out[0];
    (positions[y] as number) += by * over.out[1];
    (positions[z] as number) += by * over.out[2];
  }
}
