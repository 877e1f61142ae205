import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { degToRad } from '../../src/optics/units';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import { eyeFrames, GAZE_LIMIT, ROTATION_DEPTH, withGaze } from '../../src/sitter/gaze';
import { type Pose, type SitterModel, UPRIGHT } from '../../src/sitter/types';

const MODELS = join(import.meta.dirname, '../../models');
const model = JSON.parse(
  readFileSync(join(MODELS, 'sitters/adult-woman.json'), 'utf8'),
) as SitterModel;
const read = sculptures(async (name) =>
  Uint8Array.from(readFileSync(join(MODELS, 'sculpture', name))),
);

let build: (pose?: Pose) => BuiltSitter;
let upright: BuiltSitter;
beforeAll(async () => {
  const sculpture = await read(model, model.looks);
  build = (pose = UPRIGHT) => buildSitter(sculpture, model, {}, pose);
  upright = build();
});

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const length = (a: Vec3) => Math.hypot(...a);
const pupils = ({ landmarks }: BuiltSitter) => [landmarks.pupil_left, landmarks.pupil_right];
const apart = (sitter: BuiltSitter) => {
  const [left, right] = pupils(sitter) as [Vec3, Vec3];
  return length(minus(left, right));
};
const eyesOf = (sitter: BuiltSitter) =>
  eyeFrames(sitter.meshes[sitter.landmarkVertices.pupil_left[0]] as never);

describe('eyes that look at the lens', () => {
  it.each([0.25, 0.4, 0.8, 2, 10])(
    'at %s m bring the pupils together by the closed form',
    (distance) => {
      // Each turns by atan(h / (D + r)) about a point r behind its pupil, which moves inwards by r times
      // the sine: h is half the distance between the pupils at rest, D the way from them to the lens.
      const half = apart(upright) / 2;
      const turn = Math.atan(half / (distance + ROTATION_DEPTH));
      const wanted = 2 * (half - ROTATION_DEPTH * Math.sin(turn));
      const near = withGaze(upright, [0, 0, distance]);
      expect(apart(near)).toBeCloseTo(wanted, 6);
      expect(apart(near)).toBeLessThan(apart(upright));
    },
  );

  it('point at it from where they turn, whatever the pose of the head', () => {
    const pose = { ...UPRIGHT, headTurn: degToRad(20), headNod: degToRad(-8), headTilt: 0.1 };
    const lens: Vec3 = [0.03, 0.02, 0.6];
    const posed = build(pose);
    const looking = withGaze(posed, lens);
    pupils(looking).forEach((pupil, i) => {
      const rest = pupils(posed)[i] as Vec3;
      // The pupil lies on the way from the centre to the lens, and the centre is as far from both places.
      const away = minus(lens, pupil as Vec3);
      const centre = (pupil as Vec3).map(
        (value, j) => value - (ROTATION_DEPTH * (away[j] as number)) / length(away),
      ) as unknown as Vec3;
      expect(length(minus(rest, centre))).toBeCloseTo(ROTATION_DEPTH, 5);
    });
  });

  it('keep each pupil’s landmark on its vertex, and that vertex facing the lens', () => {
    const lens: Vec3 = [0.1, 0.05, 0.5];
    const looking = withGaze(upright, lens);
    for (const [i, eye] of eyesOf(looking).entries()) {
      const landmark = pupils(looking)[i] as Vec3;
      expect(length(minus(eye.pupil, landmark))).toBeLessThan(1e-6);
      const way = minus(lens, landmark);
      expect(dot(eye.out, way) / length(way)).toBeGreaterThan(Math.cos(0.004));
    }
  });
});

describe('eyes that look away', () => {
  it('turn alike, to the sitter’s left and up, and no further than they can', () => {
    const away = withGaze(upright, { yaw: degToRad(20), pitch: degToRad(10) });
    const moved = pupils(away).map((pupil, i) => minus(pupil as Vec3, pupils(upright)[i] as Vec3));
    // Vertices are single floats: 31.5 mm is kept to 2 nm.
    expect(length(minus(moved[0] as Vec3, moved[1] as Vec3))).toBeLessThan(1e-8);
    const [dx, dy] = moved[0] as Vec3;
    expect(dx).toBeCloseTo(ROTATION_DEPTH * Math.sin(degToRad(20)) * Math.cos(degToRad(10)), 6);
    expect(dy).toBeCloseTo(ROTATION_DEPTH * Math.sin(degToRad(10)), 6);
    const most = withGaze(upright, { yaw: GAZE_LIMIT.yaw, pitch: -GAZE_LIMIT.pitch });
    expect(pupils(withGaze(upright, { yaw: 2, pitch: -2 }))).toEqual(pupils(most));
  });

  it('share every other mesh when they stay level, and change nothing when they look ahead', () => {
    expect(withGaze(upright, null)).toBe(upright);
    const away = withGaze(upright, { yaw: 0.3, pitch: 0 });
    const [eyes] = upright.landmarkVertices.pupil_left;
    away.meshes.forEach((mesh, i) => {
      if (i === eyes) expect(mesh).not.toBe(upright.meshes[i]);
      else expect(mesh).toBe(upright.meshes[i]);
    });
  });

  it.each([
    [35, 0],
    [-35, 10],
    [20, 25],
    [0, -25],
  ])(
    'at %s° and %s° stay under the lids: the white keeps its place and no triangle flips',
    (yaw, pitch) => {
      const away = withGaze(upright, { yaw: degToRad(yaw), pitch: degToRad(pitch) });
      const [index] = upright.landmarkVertices.pupil_left;
      const [rest, now] = [upright.meshes[index], away.meshes[index]];
      if (!rest || !now) throw new Error('no eyes');
      const { indices } = now;
      const at = (list: Float32Array, v: number): Vec3 => [
        list[3 * v] as number,
        list[3 * v + 1] as number,
        list[3 * v + 2] as number,
      ];
      let flipped = 0;
      for (let t = 0; t < indices.length; t += 3) {
        const [a, b, c] = [0, 1, 2].map((k) => indices[t + k] as number) as [
          number,
          number,
          number,
        ];
        const [p, q, r] = [a, b, c].map((v) => at(now.positions, v)) as [Vec3, Vec3, Vec3];
        const [u, w] = [minus(q, p), minus(r, p)];
        const normal: Vec3 = [
          u[1] * w[2] - u[2] * w[1],
          u[2] * w[0] - u[0] * w[2],
          u[0] * w[1] - u[1] * w[0],
        ];
        if (dot(normal, at(now.normals, a)) < 0) flipped += 1;
      }
      expect(flipped).toBe(0);
      // Seen from the point it turns about, the white is nowhere farther out than 0.6 mm over its place at rest.
      for (const [e, eye] of eyesOf(upright).entries()) {
        const centre = minus(eye.pupil, [0, 0, ROTATION_DEPTH]);
        const polar = (mesh: typeof rest, v: number) => {
          const p = minus(at(mesh.positions, v), centre);
          return { p, radius: length(p), from: Math.acos(p[2] / length(p)) };
        };
        const half = rest.positions.length / 6;
        for (let v = e * half; v < (e + 1) * half; v += 7) {
          const moved = polar(now, v);
          if (polar(rest, v).from < 0.95) continue;
          let nearest = { off: Number.POSITIVE_INFINITY, radius: 0 };
          for (let other = e * half; other < (e + 1) * half; other++) {
            const still = polar(rest, other);
            const off = 1 - dot(still.p, moved.p) / still.radius / moved.radius;
            if (still.from > 0.73 && off < nearest.off) nearest = { off, radius: still.radius };
          }
          if (nearest.off < 0.004)
            expect(Math.abs(moved.radius - nearest.radius)).toBeLessThan(0.0006);
        }
      }
    },
  );
});
