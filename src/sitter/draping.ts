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
  readonly gap: number;
  readonly out: Vec3;
  /** Distance aside from the samples, metres: the surface is told where it is small. */
  readonly aside: number;
}

/**
 * Tells how far a point lies outside a surface given by points and normals, one for each mesh: the
 * heights over the tangent planes of the points nearby, weighted by nearness (implicit moving least
 * squares: Shen, O'Brien and Shewchuk 2004, "Interpolating and approximating implicit surfaces from
 * polygon soup"). Of several surfaces, the outermost counts; nothing is told far from all.
 */
function clearanceOver(
  places: readonly Place[],
  posed: readonly Shape[],
): (p: Vec3) => Clearance | undefined {
  const meshes = [...new Set(places.map(([m]) => m))];
  const surface = Uint8Array.from(places, ([m]) => meshes.indexOf(m));
  const points = Float64Array.from(
    places.flatMap(([m, v]) => at((posed[m] as Shape).positions, v)),
  );
  const normals = Float64Array.from(places.flatMap(([m, v]) => at((posed[m] as Shape).normals, v)));
  const grid = new Map<number, number[]>();
  for (let i = 0; i < places.length; i++) {
    const [x, y, z] = [points[3 * i], points[3 * i + 1], points[3 * i + 2]] as unknown as Vec3;
    const cell = key(x, y, z, CELL);
    const known = grid.get(cell);
    if (known) known.push(i);
    else grid.set(cell, [i]);
  }
  const near: number[] = [];
  const squares = new Float64Array(places.length);
  const nearest = new Float64Array(meshes.length);
  /** Sums over each surface: weight, weighted height, weighted normal. */
  const sums = new Float64Array(5 * meshes.length);
  return ([px, py, pz]) => {
    near.length = 0;
    nearest.fill(Number.POSITIVE_INFINITY);
    for (let x = -1; x <= 1; x++)
      for (let y = -1; y <= 1; y++)
        for (let z = -1; z <= 1; z++) {
          const cell = grid.get(key(px + x * CELL, py + y * CELL, pz + z * CELL, CELL));
          for (const i of cell ?? []) {
            const s = surface[i] as number;
            const square =
              (px - (points[3 * i] as number)) ** 2 +
              (py - (points[3 * i + 1] as number)) ** 2 +
              (pz - (points[3 * i + 2] as number)) ** 2;
            squares[i] = square;
            nearest[s] = Math.min(nearest[s] as number, square);
            near.push(i);
          }
        }
    sums.fill(0);
    for (const i of near) {
      const s = surface[i] as number;
      const first = nearest[s] as number;
      const width = Math.max(BLEND * BLEND, first);
      const w = Math.exp((4 * (first - (squares[i] as number))) / width);
      const o = 3 * i;
      const [nx, ny, nz] = [normals[o], normals[o + 1], normals[o + 2]] as unknown as Vec3;
      (sums[5 * s] as number) += w;
      (sums[5 * s + 1] as number) +=
        w *
        (nx * (px - (points[o] as number)) +
          ny * (py - (points[o + 1] as number)) +
          nz * (pz - (points[o + 2] as number)));
      (sums[5 * s + 2] as number) += w * nx;
      (sums[5 * s + 3] as number) += w * ny;
      (sums[5 * s + 4] as number) += w * nz;
    }
    let least: Clearance | undefined;
    for (let s = 0; s < meshes.length; s++) {
      const [w, h, x, y, z] = sums.subarray(5 * s, 5 * s + 5) as unknown as [
        number,
        ...Vec3,
        number,
      ];
      if (w === 0) continue;
      const gap = h / w;
      const aside = Math.sqrt(Math.max(0, (nearest[s] as number) - gap * gap));
      if (aside > BORDER[1] || (least && least.gap <= gap)) continue;
      const length = Math.hypot(x, y, z) || 1;
      least = { gap, out: [x / length, y / length, z / length], aside };
    }
    return least;
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
          (h === 0 ? undefined : clearance(at(positions, v)))?.gap ?? Number.POSITIVE_INFINITY;
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
  clearance: (p: Vec3) => Clearance | undefined,
): void {
  for (let round = 0; round < ROUNDS; round++) {
    const over = clearance(at(positions, v));
    if (!over || over.gap >= wanted) return;
    const by = (wanted - over.gap) * share * step(BORDER[1], BORDER[0], over.aside);
    for (let j = 0; j < 3; j++)
      positions[3 * v + j] = (positions[3 * v + j] as number) + by * (over.out[j] as number);
  }
}
