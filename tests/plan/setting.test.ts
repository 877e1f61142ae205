/** What the plan says to set, against the readings of the picture that is then taken. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import { cameraAt } from '../../src/optics/camera';
import { sensorSides } from '../../src/optics/framing';
import { metres } from '../../src/optics/units';
import { solvePlan } from '../../src/plan';
import { measure } from '../../src/readings/measures';
import { landmarksFor } from '../../src/sitter/landmarks';
import { PEOPLE, request } from './random';

const RUNS = 1500;
const { sitters } = loadModels();

describe('a recommended setting', () => {
  test(`has the figures that Compare reads from its picture, over ${RUNS} requests`, () => {
    let found = 0;
    fc.assert(
      fc.property(request, fc.constantFrom(...PEOPLE), (any, person) => {
        const [first] = any.wanted;
        const [camera] = any.cameras;
        const model = sitters.get(person.id);
        if (!first || !camera || !model || any.asked.sharp === 'rows') return;
        const wanted = { ...first, people: [person] as const };
        const setting = solvePlan({ ...any, wanted: [wanted] }).verdicts[0]?.recommended;
        if (!setting) return;
        found += 1;
        const drawn = cameraAt({
          standpoint: metres(setting.standpoint),
          height: metres(wanted.cameraHeight),
          focal: metres(setting.focal),
          sensor: sensorSides(camera.format, wanted.orientation),
          eyesAt: wanted.eyesAt,
          eyesAcross: wanted.eyesAcross,
        });
        if (!drawn.ok) throw new RangeError(drawn.reason);
        const dimensions = dimensionsOf(model);
        const read = measure({
          camera: drawn.value,
          format: camera.format,
          sitter: { dimensions, landmarks: landmarksFor(dimensions) },
          lens: camera.lens,
          cutFromFocal: null,
          fNumber: setting.fNumber,
          focusDistance: setting.focus,
          backdropDistance: any.room.backdrop.behind,
          printHeight: 0.3,
          megapixels: 24,
        });
        const { noseToEar } = read.face;
        const extent = read.scene.backdrop.extent;
        const pairs: [string, number | null | undefined, number][] = [
          ['standpoint', read.lens.standpoint, setting.standpoint],
          ['depth', read.lens.eyeDepth, setting.depth],
          ['frame height', read.lens.frame.height, setting.frameHeight],
          ['frame width', read.lens.frame.width, setting.frameWidth],
          ['mark', read.lens.lensMark, setting.mark],
          ['tape', read.lens.sensorMark, setting.tape],
          ['sharp from', read.scene.sharp.near, setting.sharp[0]],
          ['sharp to', 1 / read.scene.sharp.far, 1 / setting.sharp[1]],
          ['gain', Math.max(noseToEar.left ?? 0, noseToEar.right ?? 0) - 1, setting.noseGain],
          ['clearance', read.clearance, setting.noseClearance],
          ['softness', read.scene.blur?.inPicture, setting.softness],
          ['backdrop', extent && extent.right - extent.left, setting.backdropUsed.width],
          ['its top', extent && extent.top - any.room.floor, setting.backdropUsed.top],
        ];
        for (const [name, reading, planned] of pairs)
          expect(Math.abs((reading ?? Number.NaN) - planned), name).toBeLessThan(1e-8);
      }),
      { numRuns: RUNS, seed: 9, endOnFailure: true },
    );
    expect(found).toBeGreaterThan(RUNS / 50);
  }, 120_000);
});
