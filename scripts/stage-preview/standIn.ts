/** A person of simple balls, for looking at the stage without the sculpture. */
import { type BufferGeometry, CapsuleGeometry, Matrix4, SphereGeometry } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { Vec3 } from '../../src/optics/types';
import {
  type Dimensions,
  LANDMARKS,
  type LandmarkName,
  type Sitter,
  type SitterMesh,
  type Substance,
} from '../../src/sitter/types';

function ball(at: Vec3, radii: Vec3): BufferGeometry {
  return new SphereGeometry(1, 64, 48).applyMatrix4(
    new Matrix4().makeScale(...radii).setPosition(...at),
  );
}

function mesh(
  name: string,
  substance: Substance,
  colour: Vec3,
  parts: BufferGeometry[],
): SitterMesh {
  const joined = mergeGeometries(parts);
  const positions = joined.getAttribute('position').array as Float32Array;
  const count = positions.length / 3;
  const colours = new Uint8Array(count * 3);
  for (let i = 0; i < count; i++) colours.set(colour, i * 3);
  return {
    name,
    substance,
    positions,
    normals: joined.getAttribute('normal').array as Float32Array,
    colours,
    indices: Uint32Array.from(joined.index?.array ?? []),
    regions: new Uint8Array(count),
  };
}

const eye = (x: number): BufferGeometry[] => [ball([x, 0, -0.0125], [0.0125, 0.0125, 0.0125])];

export function standIn(): Sitter {
  const skin = mesh(
    'skin',
    'skin',
    [176, 116, 84],
    [
      ball([0, 0.02, -0.085], [0.074, 0.105, 0.098]),
      ball([0, -0.05, -0.06], [0.058, 0.075, 0.065]),
      ball([0, -0.03, 0.005], [0.012, 0.024, 0.018]),
      ball([0, -0.04, 0.016], [0.0095, 0.009, 0.011]),
      ball([-0.012, -0.043, 0.006], [0.007, 0.0065, 0.01]),
      ball([0.012, -0.043, 0.006], [0.007, 0.0065, 0.01]),
      ball([0, -0.105, -0.008], [0.018, 0.014, 0.014]),
      ball([-0.076, -0.01, -0.1], [0.008, 0.032, 0.018]),
      ball([0.076, -0.01, -0.1], [0.008, 0.032, 0.018]),
      ball([0, -0.017, 0.0], [0.05, 0.012, 0.004]),
      new CapsuleGeometry(0.055, 0.12, 16, 64).translate(0, -0.17, -0.1),
    ],
  );
  const lips = mesh(
    'lips',
    'skin',
    [150, 78, 66],
    [
      ball([0, -0.068, 0.003], [0.023, 0.0045, 0.006]),
      ball([0, -0.076, 0.002], [0.02, 0.005, 0.006]),
    ],
  );
  const hair = mesh('hair', 'hair', [58, 38, 26], [ball([0, 0.045, -0.1], [0.082, 0.098, 0.098])]);
  const eyes = mesh('eyes', 'eye', [200, 190, 180], [...eye(-0.031), ...eye(0.031)]);
  const irises = mesh(
    'irises',
    'eye',
    [40, 30, 22],
    [
      ball([-0.031, 0, -0.0058], [0.0058, 0.0058, 0.0062]),
      ball([0.031, 0, -0.0058], [0.0058, 0.0058, 0.0062]),
    ],
  );
  const top = mesh(
    'top',
    'top',
    [54, 60, 66],
    [
      ball([0, -0.42, -0.1], [0.2, 0.2, 0.11]),
      ball([-0.16, -0.29, -0.1], [0.075, 0.065, 0.07]),
      ball([0.16, -0.29, -0.1], [0.075, 0.065, 0.07]),
      new CapsuleGeometry(0.05, 0.4, 16, 48).translate(-0.22, -0.55, -0.1),
      new CapsuleGeometry(0.05, 0.4, 16, 48).translate(0.22, -0.55, -0.1),
      ball([0, -0.62, -0.1], [0.16, 0.22, 0.1]),
    ],
  );
  const legs = mesh(
    'legs',
    'trousers',
    [30, 31, 34],
    [
      new CapsuleGeometry(0.075, 0.62, 16, 48).translate(-0.09, -1.12, -0.1),
      new CapsuleGeometry(0.075, 0.62, 16, 48).translate(0.09, -1.12, -0.1),
    ],
  );
  const at = (index: number): Vec3 => {
    const p = skin.positions;
    return [p[index * 3] as number, p[index * 3 + 1] as number, p[index * 3 + 2] as number];
  };
  const vertexOf = (i: number): number => 131 * (i + 1);
  const entries = LANDMARKS.map((name, i) => [name, i] as const);
  const landmarks = Object.fromEntries(entries.map(([name, i]) => [name, at(vertexOf(i))]));
  return {
    dimensions: { stature: 1625, vertex_above_eyes: 112 } as Dimensions,
    landmarks: {
      ...landmarks,
      vertex: [0, 0.14, -0.1],
      opisthocranion: [0, 0.03, -0.2],
      sellion: [0, 0, 0],
    } as unknown as Sitter['landmarks'],
    meshes: [skin, hair, eyes, irises, lips, top, legs],
    landmarkVertices: Object.fromEntries(
      entries.map(([name, i]) => [name, [0, vertexOf(i)]]),
    ) as Record<LandmarkName, [number, number]>,
  };
}
