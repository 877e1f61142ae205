import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { minus, plus } from '../../src/optics/vector';
import { landmarksFor } from '../../src/sitter/landmarks';
import { type BoneShares, type Posing, posing } from '../../src/sitter/pose';

import { BONES, type Bone, skeletonOf } from '../../src/sitter/skeleton';
import { ARMS, type Pose, STANCES, UPRIGHT } from '../../src/sitter/types';
import { dimensionsOf, IDS, modelOf } from './people';

const only = (bone: Bone): BoneShares => ({
  joints: [BONES.indexOf(bone), 0, 0, 0],
  weights: [255, 0, 0, 0],
});
const half = (a: Bone, b: Bone): BoneShares => ({
  joints: [BONES.indexOf(a), BONES.indexOf(b), 0, 0],
  weights: [128, 127, 0, 0],
});
const distance = (a: Vec3, b: Vec3): number => Math.hypot(...minus(a, b));

const angle = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
const poses: fc.Arbitrary<Pose> = fc.record({
  stance: fc.constantFrom(...STANCES),
  arms: fc.constantFrom(...ARMS),
  lean: fc.double({ min: 0, max: Math.PI / 6, noNaN: true }),
  bodyTurn: angle(Math.PI),
  headTurn: angle(0.7),
  headNod: angle(0.3),
  headTilt: angle(0.3),
});

describe.each(IDS)('the poses of %s', (id) => {
  const dimensions = dimensionsOf(modelOf(id));
  const upright = landmarksFor(dimensions);
  const rest = skeletonOf(upright, dimensions);
  const posed = (pose: Partial<Pose>): Posing =>
    posing(upright, dimensions, { ...UPRIGHT, ...pose });

  it('leave the upright figure as it is', () => {
    const { point } = posed({});
    for (const bone of BONES)
      expect(distance(point(rest[bone], only(bone)), rest[bone])).toBeLessThan(1e-6);
  });

  it('put the middle between the pupils back at the origin, and keep every bone its length', () => {
    const pairs = (['left', 'right'] as const).flatMap((side): [Bone, Bone][] => [
      [`upper_arm_${side}`, `forearm_${side}`],
      [`forearm_${side}`, `hand_${side}`],
      [`hand_${side}`, `fingers_${side}`],
      [`fingers_${side}`, `fingertips_${side}`],
      [`thigh_${side}`, `shin_${side}`],
      [`shin_${side}`, `foot_${side}`],
    ]);
    fc.assert(
      fc.property(poses, (pose) => {
        const { point } = posed(pose);
        const eyes = plus(point(upright.pupil_left), point(upright.pupil_right));
        expect(Math.hypot(...eyes)).toBeLessThan(1e-9);
        for (const [a, b] of pairs) {
          // Both ends as the upper bone carries them; the lower bone holds its joint to that place.
          const end = point(rest[b], only(a));
          expect(distance(point(rest[a], only(a)), end)).toBeCloseTo(distance(rest[a], rest[b]), 9);
          expect(distance(point(rest[b], only(b)), end)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('take a mesh where they take its points, with unit normals', () => {
    const { point, mesh } = posed({
      arms: 'folded',
      stance: 'seated',
      lean: 0.3,
      headTurn: 0.4,
      bodyTurn: 0.5,
    });
    const shares = half('upper_arm_end_left', 'forearm_left');
    const p = rest.forearm_left;
    const positions = Float32Array.from(p);
    const normals = Float32Array.of(0, 0.6, 0.8);
    mesh(positions, normals, Uint8Array.from(shares.joints), Uint8Array.from(shares.weights));
    expect(distance([...positions] as unknown as Vec3, point(p, shares))).toBeLessThan(1e-6);
    expect(Math.hypot(...normals)).toBeCloseTo(1, 6);
  });

  it('seat a person with level thighs, upright shins and feet flat under the knees', () => {
    const { point } = posed({ stance: 'seated' });
    for (const side of ['left', 'right'] as const) {
      const at = (bone: Bone): Vec3 => point(rest[bone], only(bone));
      const [hip, knee, ankle] = [at(`thigh_${side}`), at(`shin_${side}`), at(`foot_${side}`)];
      expect(Math.abs(hip[1] - knee[1])).toBeLessThan(1e-6);
      expect(knee[2] - hip[2]).toBeGreaterThan(0.35);
      expect(Math.abs(ankle[2] - knee[2])).toBeLessThan(0.02);
      const toe = minus(
        point(plus(rest[`foot_${side}`], [0, 0, 0.1]), only(`foot_${side}`)),
        ankle,
      );
      expect(distance(toe, [0, 0, 0.1])).toBeLessThan(1e-6);
    }
  });

  it('sits the eyes as high over the seat as surveyed', () => {
    // Eye height, sitting, ANSUR II medians (NATICK/TR-15/007): women 741, men 795 mm over the seat.
    const surveyed = id === 'adult-woman' ? 0.741 : 0.795;
    const { point } = posed({ stance: 'seated' });
    const thigh = point(rest.thigh_left, only('thigh_left'));
    // The hip joint stands about 8 to 10 cm over the seat of a person sitting upright.
    const over = surveyed + thigh[1];
    expect(over).toBeGreaterThan(0.06);
    expect(over).toBeLessThan(0.12);
  });

  it('leans the trunk about the hips by the angle asked, and not the head', () => {
    const { point } = posed({ lean: Math.PI / 6 });
    const upper = point(upright.suprasternale, only('chest'));
    const lower = point(plus(upright.suprasternale, [0, -0.1, 0]), only('chest'));
    const back = minus(upper, lower);
    expect(Math.atan2(back[2], back[1])).toBeCloseTo(Math.PI / 6, 6);
    for (const name of ['vertex', 'pronasale', 'pupil_left'] as const)
      expect(distance(point(upright[name]), upright[name])).toBeLessThan(1e-9);
    // Feet do not slide by more than the hips go back.
    const foot = point(rest.foot_left, only('foot_left'));
    expect(Math.abs(foot[0] - rest.foot_left[0])).toBeLessThan(1e-6);
  });

  it('keeps the girth of bent elbows and knees', () => {
    const girthKept = (pose: Partial<Pose>, a: Bone, b: Bone, radius: number): number => {
      const { point } = posed(pose);
      const centre = rest[b];
      const ring = Array.from({ length: 36 }, (_, i): Vec3 => {
        const t = (i * Math.PI) / 18;
        return point(plus(centre, [radius * Math.cos(t), 0, radius * Math.sin(t)]), half(a, b));
      });
      const middle = point(centre, half(a, b));
      return Math.min(...ring.map((p) => distance(p, middle))) / radius;
    };
    expect(girthKept({ stance: 'seated' }, 'thigh_left', 'shin_left', 0.06)).toBeGreaterThan(0.98);
    expect(
      girthKept({ arms: 'folded' }, 'upper_arm_end_left', 'forearm_left', 0.04),
    ).toBeGreaterThan(0.98);
  });

  it('brings a hand near the face without covering an eye', () => {
    fc.assert(
      fc.property(angle(0.6), angle(0.25), angle(0.2), (headTurn, headNod, headTilt) => {
        const { point } = posed({ arms: 'near-face', headTurn, headNod, headTilt });
        const tip = point(upright.fingertip_right, only('fingertips_right'));
        expect(distance(tip, point(upright.gonion_right))).toBeLessThan(0.11);
        for (const side of ['left', 'right'] as const)
          expect(distance(tip, point(upright[`ectocanthion_${side}`]))).toBeGreaterThan(0.03);
      }),
      { numRuns: 30 },
    );
  });
});
