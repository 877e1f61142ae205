/**
 * The shape of an eye at rest as seen from the point it turns about: how far out the white lies in each
 * direction, which way it faces, and how open it lies between the lids.
 */
import type { Vec3 } from '../optics/types';
import { dot } from '../optics/vector';
import type { EyeFrame } from './gaze';
import type { SitterMesh } from './types';

export interface ShellPoint {
  /** Metres. */
  readonly radius: number;
  readonly normal: Vec3;
  /** 0..255. */
  readonly openness: number;
}
/** Takes a unit direction in the face's axes. */
export type Shell = (direction: Vec3) => ShellPoint;

const CELLS = 45;
/** The table reaches this far from the axis, radians. */
const REACH = 1.65;
/** How wide around itself a vertex counts, cells. */
const WIDTH = 2.6;
/** Sums in a cell: radius, normal (3), their weight, openness, its weight. */
const PARTS = 7;

/** Cell coordinates of a direction: its angle from the axis laid out flat. */
function cellOf([x, y, z]: Vec3): readonly [number, number] {
  const aside = Math.hypot(x, y);
  const angle = Math.atan2(aside, z);
  const k = aside < 1e-9 ? 1 : angle / aside;
  const at = (value: number) =>
    Math.max(0, Math.min(CELLS - 1.001, ((value * k) / REACH + 1) * 0.5 * (CELLS - 1)));
  return [at(x), at(y)];
}

function splat(sums: Float64Array, way: Vec3, add: readonly number[], white: boolean): void {
  const [u, v] = cellOf(way);
  for (let j = Math.ceil(v - WIDTH); j <= v + WIDTH; j++)
    for (let i = Math.ceil(u - WIDTH); i <= u + WIDTH; i++) {
      if (i < 0 || j < 0 || i >= CELLS || j >= CELLS) continue;
      const near = 1 - ((i - u) ** 2 + (j - v) ** 2) / WIDTH ** 2;
      if (near <= 0) continue;
      const weight = near ** 6;
      const at = PARTS * (j * CELLS + i);
      const count = (part: number, value: number) => {
        sums[at + part] = (sums[at + part] as number) + weight * value;
      };
      if (white) for (let part = 0; part < 4; part++) count(part, add[part] as number);
      if (white) count(4, 1);
      count(5, add[4] as number);
      count(6, 1);
    }
}

function table(
  { positions, normals, openness }: SitterMesh,
  { first, end, pupil }: EyeFrame,
  axes: readonly [Vec3, Vec3, Vec3],
  { depth, cornea }: { readonly depth: number; readonly cornea: number },
): Shell {
  const sums = new Float64Array(PARTS * CELLS * CELLS);
  const out = axes[2];
  const centre = pupil.map((value, j) => value - depth * (out[j] as number));
  const local = (x: number, y: number, z: number): Vec3 =>
    axes.map((axis) => dot(axis, [x, y, z])) as unknown as Vec3;
  /** The rim of the white, where it meets the cornea, stands for what the cornea covers. */
  const rim = { radius: 0, count: 0 };
  for (let v = first; v < end; v++) {
    const p = local(
      ...([0, 1, 2].map((j) => (positions[3 * v + j] as number) - (centre[j] as number)) as [
        number,
        number,
        number,
      ]),
    );
    const radius = Math.hypot(...p);
    const way: Vec3 = [p[0] / radius, p[1] / radius, p[2] / radius];
    const from = Math.acos(Math.min(1, way[2]));
    const n = local(
      ...(Array.from(normals.subarray(3 * v, 3 * v + 3)) as [number, number, number]),
    );
    if (from > cornea && from < cornea + 0.12) {
      rim.radius += radius;
      rim.count += 1;
    }
    splat(sums, way, [radius, ...n, openness[v] as number], from > cornea);
  }
  const rimRadius = rim.radius / Math.max(1, rim.count);
  const cell = (i: number, j: number, way: Vec3): number[] => {
    const at = PARTS * (j * CELLS + i);
    const sum = (part: number) => sums[at + part] as number;
    const [w, wo] = [sum(4), sum(6)];
    const white = w > 0 ? [0, 1, 2, 3].map((part) => sum(part) / w) : [rimRadius, ...way];
    return [...white, wo > 0 ? sum(5) / wo : 255];
  };
  return (way) => {
    const [u, v] = cellOf(way);
    const [i, j] = [Math.floor(u), Math.floor(v)];
    const [a, b] = [u - i, v - j];
    const corners = [
      cell(i, j, way),
      cell(i + 1, j, way),
      cell(i, j + 1, way),
      cell(i + 1, j + 1, way),
    ];
    const weights = [(1 - a) * (1 - b), a * (1 - b), (1 - a) * b, a * b];
    const mean = (part: number) =>
      corners.reduce((sum, c, k) => sum + (c[part] as number) * (weights[k] as number), 0);
    return { radius: mean(0), normal: [mean(1), mean(2), mean(3)], openness: mean(4) };
  };
}

const kept = new WeakMap<SitterMesh, readonly Shell[]>();

/** One shell for each eye, kept with the mesh at rest. */
export function shellOf(
  mesh: SitterMesh,
  frames: readonly EyeFrame[],
  axes: readonly [Vec3, Vec3, Vec3],
  about: { readonly depth: number; readonly cornea: number },
): readonly Shell[] {
  const known = kept.get(mesh);
  if (known) return known;
  const fresh = frames.map((eye) => table(mesh, eye, axes, about));
  kept.set(mesh, fresh);
  return fresh;
}
