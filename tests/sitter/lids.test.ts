import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { degToRad } from '../../src/optics/units';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { eyeFrames, ROTATION_DEPTH, withGaze } from '../../src/sitter/gaze';
import { beforeLids, lidMotion, SKIN_REACH } from '../../src/sitter/lids';
import { LANDMARKS, type SitterMesh } from '../../src/sitter/types';
import { crossings } from './crossings';
import { modelOf, sculptureOf } from './people';
import { flipped } from './triangles';

const PEOPLE = ['adult-woman', 'adult-man'] as const;
const TURNS = [-25, -12, 10, 25] as const;

const CORNERS = { least: -0.0155, most: 0.0148 };

describe('the motion of the lids', () => {
  it.each(TURNS)('keeps the order of what lies on one circle, at %s°', (turn) => {
    for (const x of [-0.012, -0.004, 0, 0.006, 0.013])
      for (const radius of [0.0105, 0.013, 0.016, 0.02]) {
        const motion = lidMotion(degToRad(turn), CORNERS, SKIN_REACH);
        let last = Number.NEGATIVE_INFINITY;
        for (let degrees = -89; degrees < 90; degrees += 0.5) {
          const e = degToRad(degrees);
          const [to, y, z] = motion([x, radius * Math.sin(e), radius * Math.cos(e)]);
          expect(to).toBe(x);
          expect(Math.hypot(y, z)).toBeCloseTo(radius, 12);
          expect(Math.atan2(y, z)).toBeGreaterThan(last);
          last = Math.atan2(y, z);
        }
      }
  });

  it.each(TURNS)('is undone on the ball by its way back, at %s°', (turn) => {
    const radius = 0.0105;
    const motion = lidMotion(degToRad(turn), CORNERS, SKIN_REACH);
    const back = beforeLids(degToRad(turn), CORNERS);
    for (let degrees = -60; degrees <= 45; degrees += 5) {
      const e = degToRad(degrees);
      const from: Vec3 = [0.003, radius * Math.sin(e), radius * Math.cos(e)];
      back(motion(from)).forEach((value, j) => {
        expect(Math.abs(value - (from[j] as number))).toBeLessThan(1e-6);
      });
    }
  });
});

const treeOf = ({ positions, indices }: SitterMesh): MeshBVH => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return new MeshBVH(geometry, { indirect: true });
};

describe.each(PEOPLE)('the lids of the %s', (id) => {
  let rest: BuiltSitter;
  beforeAll(async () => {
    const model = modelOf(id);
    rest = buildSitter(await sculptureOf(model, model.looks), model);
  });
  const faceOf = (sitter: BuiltSitter) =>
    sitter.meshes[sitter.landmarkVertices.endocanthion_left[0]] as SitterMesh;
  const eyesOf = (sitter: BuiltSitter) =>
    sitter.meshes[sitter.landmarkVertices.pupil_left[0]] as SitterMesh;
  const looking = (pitch: number) => withGaze(rest, { yaw: 0, pitch: degToRad(pitch) });

  /** Heights (mm over the pupil at rest) where the open eye begins and ends, seen along a column. */
  function opening(sitter: BuiltSitter): { upper: number; lower: number } {
    const [eye] = eyeFrames(eyesOf(rest));
    const [skin, ball] = [treeOf(faceOf(sitter)), treeOf(eyesOf(sitter))];
    const ray = new Ray(new Vector3(), new Vector3(0, 0, -1));
    const open: number[] = [];
    for (let mm = -12; mm <= 10; mm += 0.05) {
      ray.origin.set(eye.pupil[0], eye.pupil[1] + mm / 1000, 0.1);
      const [front, behind] = [skin, ball].map((tree) => tree.raycastFirst(ray, DoubleSide));
      if ((behind?.distance ?? 1) < (front?.distance ?? 1)) open.push(mm);
    }
    return { upper: Math.max(...open), lower: Math.min(...open) };
  }

  it.each(TURNS)(
    'turn no triangle over and cross nothing at %s°',
    (pitch) => {
      const sitter = looking(pitch);
      const [before, after] = [faceOf(rest), faceOf(sitter)];
      expect(after.positions).not.toBe(before.positions);
      expect(flipped(before.positions, after.positions, after.indices)).toBe(0);
      const near = aroundEyes(after, rest);
      expect(crossings(after.positions, near)).toBeLessThanOrEqual(
        crossings(before.positions, near),
      );
    },
    60_000,
  );

  it('keep every landmark of the skin where it was, to the bit', () => {
    for (const pitch of TURNS) {
      const sitter = looking(pitch);
      for (const name of LANDMARKS) {
        const [m, v] = sitter.landmarkVertices[name];
        if (name.startsWith('pupil')) continue;
        const [now, was] = [sitter, rest].map(({ meshes }) =>
          meshes[m]?.positions.subarray(3 * v, 3 * v + 3),
        );
        expect([name, now]).toEqual([name, was]);
      }
    }
  });

  it('hold the upper edge over the iris: it turns about as far as the pupil', () => {
    // Becker and Fuchs 1988 (J Neurophysiol 60): lid and eye take essentially equal positions, the lid a
    // little less upwards. Heights become angles about the point the eye turns about, at the edge's distance.
    const edge = (sitter: BuiltSitter) => Math.asin(opening(sitter).upper / 11);
    const still = edge(rest);
    const turned = (pitch: number) => (edge(looking(pitch)) - still) / degToRad(pitch);
    expect(turned(-25)).toBeGreaterThan(0.85);
    expect(turned(-25)).toBeLessThan(1.1);
    expect(turned(20)).toBeGreaterThan(0.6);
    expect(turned(20)).toBeLessThan(1);
  });

  it('move the lower edge much less, so that the opening narrows looking down', () => {
    // Leite, Cruz, Messias and Malbouisson (Braz J Med Biol Res): 9.1 mm of the upper lid, 2.2 mm of the lower.
    const [still, down] = [opening(rest), opening(looking(-25))];
    const share = (still.lower - down.lower) / (still.upper - down.upper);
    expect(share).toBeGreaterThan(0.12);
    expect(share).toBeLessThan(0.36);
    // Read, Collins, Carney and Iskander 2006 (Optom Vis Sci 83): 9.7 mm ahead, 6.4 mm at 40° down.
    expect(down.upper - down.lower).toBeLessThan(still.upper - still.lower);
    expect(down.upper - down.lower).toBeGreaterThan(0.55 * (still.upper - still.lower));
  });

  it.each(TURNS)(
    'leave no gap to the ball at %s°: no more is seen past it than at rest',
    (pitch) => {
      const sitter = looking(pitch);
      const gaps = (of: BuiltSitter): number => {
        const skin = treeOf(faceOf(of));
        const ball = treeOf(eyesOf(of));
        let count = 0;
        for (const { pupil } of eyeFrames(eyesOf(rest))) {
          const ray = new Ray();
          const centre = new Vector3(pupil[0], pupil[1], pupil[2] - ROTATION_DEPTH);
          for (const height of [-0.15, 0, 0.15])
            for (let x = -14; x <= 14; x += 0.35)
              for (let y = -9; y <= 8; y += 0.2) {
                ray.origin.set(pupil[0], height, 0.5);
                ray.direction.set(pupil[0] + x / 1000, pupil[1] + y / 1000, 0).sub(ray.origin);
                ray.direction.normalize();
                const front = skin.raycastFirst(ray, DoubleSide);
                const behind = ball.raycastFirst(ray, DoubleSide);
                // Skin deep behind where the ball's front lies, with no ball before it.
                if (front && !behind && front.point.distanceTo(centre) < 0.0085) count++;
              }
        }
        return count;
      };
      expect(gaps(sitter)).toBeLessThanOrEqual(gaps(rest));
    },
  );
});

/** The triangles near the eyes. */
function aroundEyes({ positions, indices }: SitterMesh, { landmarks }: BuiltSitter): Uint32Array {
  const near = (v: number): boolean =>
    [landmarks.pupil_left, landmarks.pupil_right].some(
      (pupil) =>
        Math.hypot(...pupil.map((value, j) => value - (positions[3 * v + j] as number))) < 0.03,
    );
  const kept: number[] = [];
  for (let t = 0; t < indices.length; t += 3)
    if (near(indices[t] as number)) kept.push(...indices.subarray(t, t + 3));
  return Uint32Array.from(kept);
}
