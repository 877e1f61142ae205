/** Random rooms, kits, people and requests, possible and impossible ones. Metres. */
import fc from 'fast-check';
import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import type { Lens, SensorFormat, Vec3 } from '../../src/optics/types';
import { metres } from '../../src/optics/units';
import type {
  Asked,
  PlanCamera,
  PlanObstacle,
  PlanPerson,
  PlanRequest,
  PlanRoom,
  Wanted,
} from '../../src/plan';
import { landmarksFor } from '../../src/sitter/landmarks';

const models = loadModels();
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

/** Every sitter of models/, at the origin. */
export const PEOPLE: readonly PlanPerson[] = [...models.sitters.values()].map((model) => {
  const dimensions = dimensionsOf(model);
  const marks = landmarksFor(dimensions);
  return {
    id: model.id,
    name: model.name,
    eyes: [0, 0, 0],
    pupils: [marks.pupil_right, marks.pupil_left],
    noseTip: marks.pronasale,
    ears: [marks.tragion_right, marks.tragion_left],
    crown: marks.vertex,
    chin: marks.menton,
    halfBreadth: dimensions.bideltoid_breadth / 2000,
    row: 0,
  };
});

export const FORMATS: readonly SensorFormat[] = [...models.formats.values()];

const moved = (person: PlanPerson, [dx, dy, dz]: Vec3, id: string): PlanPerson => {
  const by = ([x, y, z]: Vec3): Vec3 => [x + dx, y + dy, z + dz];
  return {
    ...person,
    id,
    eyes: by(person.eyes),
    pupils: [by(person.pupils[0]), by(person.pupils[1])],
    noseTip: by(person.noseTip),
    ears: [by(person.ears[0]), by(person.ears[1])],
    crown: by(person.crown),
    chin: by(person.chin),
  };
};

export const lens: fc.Arbitrary<Lens> = fc
  .record({
    shortest: between(0.014, 0.2),
    zoom: fc.oneof(fc.constant(1.0001), between(1.2, 6)),
    widest: between(1.2, 5.6),
    closing: between(1, 1.6),
    smallest: between(11, 32),
    nearest: between(0.15, 1.5),
    nearestChange: fc.oneof(fc.constant(1), between(0.6, 2.5)),
    length: between(0.05, 0.14),
    magnification: fc.option(between(0.08, 0.5), { nil: undefined }),
    pupil: fc.option(between(0.02, 0.14), { nil: undefined }),
    pupilMagnification: fc.option(between(0.4, 2), { nil: undefined }),
  })
  .map(
    (v): Lens => ({
      id: 'lens',
      name: 'lens',
      focal: [metres(v.shortest), metres(v.shortest * v.zoom)],
      widest: [v.widest, v.widest * v.closing],
      smallest: v.smallest,
      nearestFocus: [metres(v.nearest), metres(v.nearest * v.nearestChange)],
      length: metres(v.length),
      ...(v.magnification === undefined ? {} : { largestMagnification: v.magnification }),
      ...(v.pupil === undefined ? {} : { entrancePupil: metres(v.pupil) }),
      ...(v.pupilMagnification === undefined ? {} : { pupilMagnification: v.pupilMagnification }),
    }),
  );

export const camera: fc.Arbitrary<PlanCamera> = fc
  .record({ lens, format: fc.constantFrom(...FORMATS) })
  .map((parts) => ({
    id: 'camera',
    bodyName: 'body',
    lensId: 'lens',
    lensName: 'lens',
    ...parts,
  }));

const obstacle = (floor: number): fc.Arbitrary<PlanObstacle> =>
  fc
    .record({
      x: between(-2.5, 2.5),
      z: between(-2, 7),
      length: between(0.2, 1.6),
      width: between(0.2, 0.9),
      turn: between(0, Math.PI),
      height: between(0.3, 2),
      kind: fc.constantFrom('thing' as const, 'door' as const),
    })
    .map(({ x, z, length, width, turn, height, kind }) => {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const corner = (a: number, b: number) =>
        [
          x + (a * length * c - b * width * s) / 2,
          z + (a * length * s + b * width * c) / 2,
        ] as const;
      return {
        id: `thing ${x}`,
        name: 'thing',
        kind,
        height: Math.min(height, 2 - floor),
        outline: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)],
      };
    });

export const room: fc.Arbitrary<PlanRoom> = between(-1.65, -0.9).chain((floor) =>
  fc
    .record({
      behind: between(0.3, 3),
      ahead: between(1, 9),
      side: between(0.4, 3.5),
      turn: fc.oneof(fc.constant(0), between(-0.7, 0.7)),
      ceiling: between(0.3, 2),
      width: between(0.6, 4),
      top: between(0.1, 1.6),
      behindCamera: between(0, 1),
      obstacles: fc.array(obstacle(floor), { maxLength: 2 }),
    })
    .map((v): PlanRoom => {
      const [c, s] = [Math.cos(v.turn), Math.sin(v.turn)];
      const wall = (x: number, z: number) => [x * c - z * s, x * s + z * c] as const;
      return {
        floor,
        ceiling: v.ceiling,
        walls: [
          wall(-v.side, -v.behind - 0.2),
          wall(v.side, -v.behind - 0.2),
          wall(v.side, v.ahead),
          wall(-v.side, v.ahead),
        ],
        backdrop: { behind: v.behind, left: v.width / 2, right: -v.width / 2, top: v.top },
        wallBehindCamera: v.ahead,
        behindCamera: v.behindCamera,
        obstacles: v.obstacles,
      };
    }),
);

const group: fc.Arbitrary<readonly PlanPerson[]> = fc
  .array(
    fc.record({
      person: fc.constantFrom(...PEOPLE),
      x: between(-1.5, 1.5),
      y: between(-0.4, 0.4),
      z: between(-1.5, 0.2),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((all) => all.map(({ person, x, y, z }, i) => moved(person, [x, y, z], String(i))));

export const wanted: fc.Arbitrary<Wanted> = fc
  .record({
    orientation: fc.constantFrom('portrait' as const, 'landscape' as const),
    eyesAt: between(0.2, 0.6),
    eyesAcross: fc.oneof(fc.constant(0.5), between(0.35, 0.65)),
    frameHeight: fc.option(between(0.2, 2.4), { nil: null, freq: 4 }),
    margin: between(0, 0.08),
    cameraHeight: fc.oneof(fc.constant(0), between(-0.8, 0.6)),
    person: fc.constantFrom(...PEOPLE),
    // Under somebody: none lies before all eyes.
    down: fc.array(fc.tuple(between(-1, 1), between(-2, -0.1), between(-0.4, 0)), {
      maxLength: 2,
    }),
    others: fc.oneof({ weight: 2, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: group }),
  })
  .map(({ person, others, down, ...rest }) => ({
    id: 'wanted',
    name: 'wanted',
    ...rest,
    downTo: down,
    people: [person, ...others],
  }));

export const asked: fc.Arbitrary<Asked> = fc.record({
  noseGain: maybe(between(0.03, 0.3)),
  rowDifference: maybe(between(0.05, 0.5)),
  stretch: maybe(between(0.02, 0.3)),
  personal: maybe(between(0.3, 1.5)),
  clearance: maybe(between(0, 0.6)),
  sharp: fc.constantFrom(null, 'eyes' as const, 'nose-to-ears' as const, 'rows' as const),
  fNumber: fc.tuple(between(1.2, 5.6), between(8, 32)),
  softness: maybe(between(0.001, 0.02)),
  backdropMargin: maybe(between(0, 0.2)),
});

export const request: fc.Arbitrary<PlanRequest> = fc.record({
  cameras: camera.map((one) => [one]),
  room,
  wanted: wanted.map((one) => [one]),
  asked,
});
