import type { Vec3 } from '../optics/types';
import {
  DIMENSIONS,
  type Dimensions,
  LANDMARKS,
  type LandmarkName,
  type Landmarks,
  type Sitter,
  type SitterMesh,
} from './types';

/** A sitter built exactly at one value of a dimension that changes. */
export interface BlendNode<T extends Sitter = Sitter> {
  readonly value: number;
  readonly sitter: T;
}

/**
 * A sitter between sitters of the same sculpture, pose and looks that were built along one
 * dimension: what lies between the two nearest is interpolated, in a few milliseconds where a
 * build takes hundreds. The warp is linear in its targets, so little is lost; the exact build
 * takes its place once the value rests.
 * @param nodes by rising value, at least two; a value beyond them is held to the nearest
 */
export function blend<T extends Sitter>(nodes: readonly BlendNode<T>[], value: number): T {
  const [first, last] = [nodes[0], nodes.at(-1)];
  if (!first || !last) throw new RangeError('nothing to blend');
  const above = nodes.findIndex((node) => node.value >= value);
  if (above === 0) return first.sitter;
  if (above < 0) return last.sitter;
  const [a, b] = [nodes[above - 1], nodes[above]] as [BlendNode<T>, BlendNode<T>];
  const t = (value - a.value) / (b.value - a.value);
  return t === 1 ? b.sitter : between(a.sitter, b.sitter, t);
}

function between<T extends Sitter>(a: T, b: T, t: number): T {
  return {
    ...a,
    dimensions: Object.fromEntries(
      DIMENSIONS.map((name) => [name, mix(a.dimensions[name], b.dimensions[name], t)]),
    ) as Dimensions,
    landmarks: Object.fromEntries(
      LANDMARKS.map((name) => [name, mixPoint(a.landmarks, b.landmarks, name, t)]),
    ) as Landmarks,
    meshes: a.meshes.map((mesh, m) => mixMesh(mesh, b.meshes[m] as SitterMesh, t)),
  };
}

const mix = (a: number, b: number, t: number): number => a + t * (b - a);

const mixPoint = (a: Landmarks, b: Landmarks, name: LandmarkName, t: number): Vec3 => {
  const [p, q] = [a[name], b[name]];
  return [mix(p[0], q[0], t), mix(p[1], q[1], t), mix(p[2], q[2], t)];
};

function mixMesh(a: SitterMesh, b: SitterMesh, t: number): SitterMesh {
  if (a === b) return a;
  if (a.positions.length !== b.positions.length)
    throw new RangeError(`${a.name} is not the same mesh in both sitters`);
  return {
    ...a,
    positions: mixed(a.positions, b.positions, t),
    normals: unit(mixed(a.normals, b.normals, t)),
  };
}

function mixed(a: Float32Array, b: Float32Array, t: number): Float32Array {
  const out = new Float32Array(a.length);
  for (let i = 0; i < out.length; i++) {
    const from = a[i] as number;
    out[i] = from + t * ((b[i] as number) - from);
  }
  return out;
}

/** Scales every triple to unit length, in place. */
function unit(normals: Float32Array): Float32Array {
  for (let o = 0; o < normals.length; o += 3) {
    const [x, y, z] = [normals[o], normals[o + 1], normals[o + 2]] as [number, number, number];
    const k = 1 / (Math.sqrt(x * x + y * y + z * z) || 1);
    normals[o] = x * k;
    normals[o + 1] = y * k;
    normals[o + 2] = z * k;
  }
  return normals;
}
