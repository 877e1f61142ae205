import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { buildSitter } from '../../src/sitter/build';
import { measure } from '../../src/sitter/measure';
import { areaNormals } from '../../src/sitter/normals';
import {
  type DimensionName,
  LANDMARKS,
  type Pose,
  REGION,
  type Sitter,
  UPRIGHT,
} from '../../src/sitter/types';
import { everyone, type Someone } from './people';
import { degenerate, flipped } from './triangles';

/** Landmarks stand on their vertices to the precision of the mesh's 32-bit floats, metres. */
const ON_VERTEX = 1e-6;
/** What a measure of the mesh may differ from what was asked, mm. */
const TOLERANCE = 0.5;

let people: Someone[] = [];
beforeAll(async () => {
  people = await everyone();
});

const vertex = (sitter: Sitter, [m, v]: readonly [number, number]): Vec3 => {
  const P = sitter.meshes[m]?.positions as Float32Array;
  return [P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number];
};
const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

function farthestLandmark(sitter: Sitter): number {
  return Math.max(
    ...LANDMARKS.map((name) =>
      distance(sitter.landmarks[name], vertex(sitter, sitter.landmarkVertices[name])),
    ),
  );
}

/** Dimensions whose measure on the mesh differs from what was asked by more than `limit` mm. */
function missed(sitter: ReturnType<typeof buildSitter>, limit: number): string[] {
  return Object.entries(measure(sitter))
    .map(([name, mm]) => [name, mm - sitter.dimensions[name as DimensionName]] as const)
    .filter(([, off]) => !(Math.abs(off) <= limit))
    .map(([name, off]) => `${name} ${off.toFixed(2)}`);
}

const angle = (degrees: number) =>
  fc.double({ min: -degrees, max: degrees, noNaN: true }).map((a) => (a * Math.PI) / 180);
const poses: fc.Arbitrary<Pose> = fc.record({
  stance: fc.constant('standing' as const),
  arms: fc.constant('hanging' as const),
  lean: fc.constant(0),
  bodyTurn: angle(180),
  headTurn: angle(60),
  headNod: angle(30),
  headTilt: angle(25),
});

describe('every sitter of models/', () => {
  it('has a mesh through each landmark', () => {
    for (const { id, sitter } of people)
      expect(farthestLandmark(sitter), id).toBeLessThan(ON_VERTEX);
  });

  // Checked against: the dimensions asked for, by their definitions, on the mesh as built.
  it('measures what its dimensions say', () => {
    for (const { id, sitter } of people) expect(missed(sitter, TOLERANCE), id).toEqual([]);
  });

  it('holds a changed dimension as well', () => {
    const changes: Partial<Record<DimensionName, number>>[] = [
      { nose_breadth: 41 },
      { nose_protrusion: 24 },
      { bizygomatic_breadth: 139, bigonial_breadth: 118 },
      { head_length: 200 },
      { head_breadth: 154 },
      { face_length_menton_sellion: 122 },
      { interpupillary_distance: 67 },
      { ear_length: 66, ear_protrusion: 26 },
      { neck_circumference: 370 },
      { stature: 1700 },
    ];
    for (const { id, sculpture, model } of people)
      for (const change of changes)
        expect(
          missed(buildSitter(sculpture, model, change), TOLERANCE),
          `${id} ${JSON.stringify(change)}`,
        ).toEqual([]);
  });

  it('keeps the midpoint between the pupils at the origin and landmarks on vertices in any pose', () => {
    for (const { sculpture, model } of people)
      fc.assert(
        fc.property(poses, (pose) => {
          const sitter = buildSitter(sculpture, model, {}, pose);
          const [a, b] = [sitter.landmarks.pupil_left, sitter.landmarks.pupil_right];
          const middle: Vec3 = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
          expect(Math.hypot(...middle)).toBeLessThan(1e-12);
          expect(farthestLandmark(sitter)).toBeLessThan(ON_VERTEX);
        }),
        { numRuns: 12 },
      );
  });

  it('turns to its own left, nods up and tilts to its own left shoulder', () => {
    const [{ sculpture, model, sitter }] = people as [Someone];
    const forward = ({ landmarks: l }: Sitter): number[] =>
      [0, 1, 2].map(
        (j) =>
          (l.pronasale[j] as number) -
          ((l.tragion_left[j] as number) + (l.tragion_right[j] as number)) / 2,
      );
    const at = (pose: Partial<Pose>): Sitter =>
      buildSitter(sculpture, model, {}, { ...UPRIGHT, ...pose });
    const [, rest] = forward(sitter) as [number, number, number];
    expect(forward(at({ headTurn: 0.4 }))[0]).toBeGreaterThan(0.02);
    expect(forward(at({ bodyTurn: 0.4 }))[0]).toBeGreaterThan(0.02);
    expect(forward(at({ headNod: 0.3 }))[1]).toBeGreaterThan(rest + 0.02);
    const tilted = at({ headTilt: 0.3 }).landmarks;
    expect(tilted.vertex[0]).toBeGreaterThan(0.02);
  });

  // A rotation changes no distance: the head above the jaw moves as one piece.
  it('keeps the shape of the head when it turns', () => {
    const [{ sculpture, model, sitter }] = people as [Someone];
    const turned = buildSitter(sculpture, model, {}, { ...UPRIGHT, headTurn: 0.7, headNod: 0.2 });
    const head = [
      'vertex',
      'pronasale',
      'tragion_left',
      'tragion_right',
      'ectocanthion_left',
    ] as const;
    for (const a of head)
      for (const b of head)
        expect(distance(turned.landmarks[a], turned.landmarks[b])).toBeCloseTo(
          distance(sitter.landmarks[a], sitter.landmarks[b]),
          9,
        );
  });
});

describe('the meshes', () => {
  it('index their own vertices, without a triangle of no area', () => {
    for (const { id, sitter } of people)
      for (const { name, positions, indices } of sitter.meshes) {
        expect(indices.every((i) => i < positions.length / 3)).toBe(true);
        expect(degenerate(positions, indices), `${id} ${name}`).toBe(0);
      }
  });

  it('turn no triangle over when the sculpture is made to the dimensions', () => {
    for (const { id, sitter, sculpture } of people)
      for (const mesh of sitter.meshes) {
        const base = sculpture.meshes.find((m) => m.name === mesh.name);
        if (!base) throw new Error(mesh.name);
        expect(flipped(base.positions, mesh.positions, mesh.indices), `${id} ${mesh.name}`).toBe(0);
      }
  });

  it('have unit normals on the side that the triangles face', () => {
    for (const { id, sitter } of people)
      for (const { name, normals, positions, indices } of sitter.meshes) {
        const area = areaNormals(positions, indices);
        let against = 0;
        for (let o = 0; o < normals.length; o += 3) {
          const [x, y, z] = normals.subarray(o, o + 3) as unknown as [number, number, number];
          expect(Math.abs(Math.hypot(x, y, z) - 1)).toBeLessThan(1e-5);
          if (
            x * (area[o] as number) + y * (area[o + 1] as number) + z * (area[o + 2] as number) <
            0
          )
            against++;
        }
        expect(against / (normals.length / 3), `${id} ${name}`).toBeLessThan(0.005);
      }
  });

  it('say where both ears, face, scalp, neck, trunk and arms are', () => {
    for (const { sitter } of people) {
      const present = new Set(sitter.meshes.flatMap(({ regions }) => [...new Set(regions)]));
      for (const [name, region] of Object.entries(REGION))
        if (region !== REGION.none) expect(present.has(region), name).toBe(true);
    }
  });
});
