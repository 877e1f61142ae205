import { beforeAll, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { glassesFor } from '../../src/sitter/glasses';
import { type Pose, type SitterMesh, UPRIGHT } from '../../src/sitter/types';
import { modelOf, sculptureOf } from './people';

const model = modelOf('adult-woman');
let build: (pose?: Pose) => BuiltSitter;
beforeAll(async () => {
  const sculpture = await sculptureOf(model, model.looks);
  build = (pose = UPRIGHT) => buildSitter(sculpture, model, {}, pose);
});

const skinOf = (sitter: BuiltSitter) =>
  sitter.meshes[sitter.landmarkVertices.sellion[0]] as SitterMesh;
const wear = (sitter: BuiltSitter) => glassesFor(sitter.landmarks, skinOf(sitter));
const points = ({ positions }: SitterMesh): Vec3[] =>
  Array.from({ length: positions.length / 3 }, (_, v) => [
    positions[3 * v] as number,
    positions[3 * v + 1] as number,
    positions[3 * v + 2] as number,
  ]);
const apart = (a: Vec3, b: Vec3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

describe('glasses', () => {
  it('have a frame and lenses, alike on both sides, with normals outwards', () => {
    const meshes = wear(build());
    expect(meshes.map(({ substance }) => substance)).toEqual(['frame', 'glass']);
    for (const mesh of meshes) {
      const { positions: P, normals: N, indices } = mesh;
      const xs = points(mesh).map(([x]) => x);
      expect(Math.max(...xs)).toBeCloseTo(-Math.min(...xs), 4);
      let against = 0;
      for (let t = 0; t < indices.length; t += 3) {
        const [a, b, c] = [0, 1, 2].map((k) => 3 * (indices[t + k] as number)) as [
          number,
          number,
          number,
        ];
        const u = [0, 1, 2].map((j) => (P[b + j] as number) - (P[a + j] as number));
        const w = [0, 1, 2].map((j) => (P[c + j] as number) - (P[a + j] as number));
        const [u0, u1, u2] = u as [number, number, number];
        const [w0, w1, w2] = w as [number, number, number];
        const facing =
          (u1 * w2 - u2 * w1) * (N[a] as number) +
          (u2 * w0 - u0 * w2) * (N[a + 1] as number) +
          (u0 * w1 - u1 * w0) * (N[a + 2] as number);
        if (facing < 0) against += 1;
      }
      expect(against).toBe(0);
    }
  });

  it('stand before the eyes, clear of the skin, and rest on the ears', () => {
    const sitter = build();
    const [frame, lenses] = wear(sitter) as [SitterMesh, SitterMesh];
    const { pupil_left, tragion_left, superaurale_left } = sitter.landmarks;
    const before = points(lenses)
      .filter(([x, y]) => Math.hypot(x - pupil_left[0], y - pupil_left[1]) < 0.006)
      .map(([, , z]) => z - pupil_left[2]);
    // The trade's 12 to 14 mm, and more where a nose's flank asks for it.
    expect(Math.min(...before)).toBeGreaterThan(0.011);
    expect(Math.max(...before)).toBeLessThan(0.025);
    const skin = points(skinOf(sitter)).filter(([, y, z]) => Math.abs(y) < 0.05 && z > -0.02);
    const front = points(frame).filter(([, , z]) => z > 0);
    const nearest = Math.min(...front.map((p) => Math.min(...skin.map((q) => apart(p, q)))));
    expect(nearest).toBeGreaterThan(0.0002);
    const ear = [0, 1, 2].map(
      (j) => ((tragion_left[j] as number) + (superaurale_left[j] as number)) / 2,
    ) as unknown as Vec3;
    expect(Math.min(...points(frame).map((p) => apart(p, ear)))).toBeLessThan(0.008);
  });

  it('are worn when the looks say so, and by nobody else', async () => {
    const looks = { ...model.looks, glasses: true };
    const worn = buildSitter(await sculptureOf(model, looks), { ...model, looks });
    const names = ({ meshes }: BuiltSitter) => meshes.map(({ name }) => name);
    expect(names(worn)).toEqual([...names(build()), 'glasses-frame', 'glasses-lenses']);
  });

  it('move with the head', () => {
    const [upright, posed] = [build(), build({ ...UPRIGHT, headTurn: 0.4, headNod: 0.2 })];
    const to = (sitter: BuiltSitter) => {
      const frame = points(wear(sitter)[0] as SitterMesh);
      const { sellion, tragion_left, tragion_right } = sitter.landmarks;
      return [0, 200, 700].flatMap((v) =>
        [sellion, tragion_left, tragion_right].map((p) => apart(frame[v] as Vec3, p)),
      );
    };
    const after = to(posed);
    to(upright).forEach((distance, i) => {
      expect(after[i]).toBeCloseTo(distance, 4);
    });
  });
});
