import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pictureShare, project } from '../../src/optics/camera';
import { moveStandpoint, setHold, setLens } from '../../src/session/actions';
import { demoSession } from '../../src/session/demo';
import { differenceSentence, differences } from '../../src/session/differences';
import { LIMITS } from '../../src/session/limits';
import { resolvePicture } from '../../src/session/resolve';
import type { Picture, Session } from '../../src/session/types';
import {
  BALL,
  ballContext,
  context,
  models,
  must,
  picture,
  resolve,
  sitter,
  withBody,
  withLenses,
} from './fixtures';

const demo = demoSession();

const withPicture = (session: Session, letter: 'A' | 'B', change: Partial<Picture>): Session => ({
  ...session,
  pictures: session.pictures.map((each) =>
    each.letter === letter ? { ...each, ...change } : each,
  ),
});

describe('the demo session', () => {
  // f = s h / (H + h) by hand: 400 x 36 / 456 = 31.58 mm and 2400 x 36 / 456 = 189.47 mm.
  it('frames 0.42 m from both standpoints', () => {
    const a = resolve(demo, 'A');
    const b = resolve(demo, 'B');
    expect(a.focal * 1000).toBeCloseTo(31.579, 3);
    expect(b.focal * 1000).toBeCloseTo(189.474, 3);
    for (const each of [a, b]) {
      expect(each.frameHeight).toBeCloseTo(0.42, 12);
      expect(each.frameWidth).toBeCloseTo(0.28, 12);
      expect(each.limits).toEqual([]);
    }
  });

  it('is taken with two zooms of the kit', () => {
    expect(resolve(demo, 'A').lens?.id).toBe('28-70-f4-zoom');
    expect(resolve(demo, 'B').lens?.id).toBe('70-300-f4-5-6-zoom');
  });

  it("reads the tape from the sensor mark: s + s', by hand 434.3 mm", () => {
    expect(resolve(demo, 'A').tapeDistance * 1000).toBeCloseTo(400 + (31.5789 * 400) / 368.4211, 2);
  });

  it('places the eyes a third from the top, in the middle', () => {
    for (const letter of ['A', 'B'] as const) {
      const share = pictureShare(resolve(demo, letter).camera, [0, 0, 0]);
      expect(share.ok && share.value.down).toBeCloseTo(0.33, 12);
      expect(share.ok && share.value.across).toBeCloseTo(0.5, 12);
    }
  });

  it('sees the face level', () => {
    expect(resolve(demo, 'A').faceAngle).toBe(0);
  });
});

describe('holds', () => {
  const standpoints = fc.double({ min: 0.3, max: 10, noNaN: true });

  it('frame height: equal at the eye plane from any two standpoints', () => {
    fc.assert(
      fc.property(
        standpoints,
        standpoints,
        fc.double({ min: 0.15, max: 2.5, noNaN: true }),
        (a, b, frameHeight) => {
          let session: Session = { ...demo, crop: { ...demo.crop, frameHeight } };
          session = withPicture(withPicture(session, 'A', { standpoint: a }), 'B', {
            standpoint: b,
          });
          expect(resolve(session, 'A').frameHeight).toBeCloseTo(frameHeight, 10);
          expect(resolve(session, 'B').frameHeight).toBeCloseTo(frameHeight, 10);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  it('pupil distance: equal on the sensor, measured by projecting both pupils', () => {
    fc.assert(
      fc.property(
        standpoints,
        standpoints,
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (a, b, cameraHeight, tilt) => {
          let session: Session = { ...demo, crop: { ...demo.crop, hold: 'pupil-distance' } };
          session = withPicture(session, 'A', { standpoint: a });
          session = withPicture(session, 'B', { standpoint: b, cameraHeight, tilt });
          const [first, second] = (['A', 'B'] as const).map((letter) => {
            const { camera } = resolve(session, letter);
            const [left, right] = [sitter.landmarks.pupil_left, sitter.landmarks.pupil_right].map(
              (pupil) => project(camera, pupil),
            );
            if (!left?.ok || !right?.ok) throw new Error('a pupil is behind the camera');
            return Math.hypot(left.value.u - right.value.u, left.value.v - right.value.v);
          });
          expect(must(second) / must(first)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 2, numRuns: 200 },
    );
  });

  it('head height: equal as drawn, against the closed form of a ball', () => {
    // Seen from a lens, a ball of radius R with its centre at elevation e and distance D fills the
    // angles e - asin(R/D) to e + asin(R/D); on a level picture they are drawn at their tangents.
    const drawn = (session: Session, letter: 'A' | 'B') => {
      const { camera } = resolve(session, letter, ballContext);
      const [, y, z] = BALL.centre;
      const [, height, back] = camera.position;
      const distance = Math.hypot(y - height, back - z);
      const elevation = Math.atan2(y - height, back - z);
      const half = Math.asin(BALL.radius / distance);
      return (Math.tan(elevation + half) - Math.tan(elevation - half)) * camera.imageDistance;
    };
    // Nearer than 0.4 m the ball's lower outline leaves the chin: it is blunter than any person's.
    const beyond = fc.double({ min: 0.4, max: 10, noNaN: true });
    fc.assert(
      fc.property(beyond, beyond, (a, b) => {
        let session: Session = { ...demo, crop: { ...demo.crop, hold: 'head-height' } };
        session = withPicture(withPicture(session, 'A', { standpoint: a }), 'B', { standpoint: b });
        // The ball is a mesh of 400 rings: its outline falls short by at most 1 - cos(pi / 800).
        expect(drawn(session, 'B') / drawn(session, 'A')).toBeCloseTo(1, 4);
      }),
      { seed: 3, numRuns: 25 },
    );
  });

  it('keep the frame height of the first picture whatever is held', () => {
    for (const hold of ['frame-height', 'head-height', 'pupil-distance'] as const) {
      const session = setHold.edit(demo, { to: hold }, ballContext);
      expect(resolve(session, 'A', ballContext).frameHeight).toBeCloseTo(0.42, 10);
    }
  });

  it('head height draws the near frame otherwise than frame height does', () => {
    const session = setHold.edit(demo, { to: 'head-height' }, ballContext);
    expect(Math.abs(resolve(session, 'B', ballContext).frameHeight - 0.42)).toBeGreaterThan(0.005);
  });
});

describe('a request that cannot be met', () => {
  it('still gives a picture, and never a NaN', () => {
    const wild = fc.record({
      standpoint: fc.double({
        min: LIMITS.standpoint.least,
        max: LIMITS.standpoint.most,
        noNaN: true,
      }),
      cameraHeight: fc.double({
        min: LIMITS.cameraHeight.least,
        max: LIMITS.cameraHeight.most,
        noNaN: true,
      }),
      tilt: fc.double({ min: LIMITS.tilt.least, max: LIMITS.tilt.most, noNaN: true }),
      fNumber: fc.double({ min: LIMITS.fNumber.least, max: LIMITS.fNumber.most, noNaN: true }),
      focal: fc.double({ min: LIMITS.focal.least, max: LIMITS.focal.most, noNaN: true }),
      by: fc.constantFrom('crop', 'lens', 'cut'),
      lens: fc.constantFrom(null, ...models.lenses.keys()),
      hold: fc.constantFrom('frame-height', 'head-height', 'pupil-distance'),
      frameHeight: fc.double({
        min: LIMITS.frameHeight.least,
        max: LIMITS.frameHeight.most,
        noNaN: true,
      }),
      format: fc.constantFrom(...models.formats.keys()),
    });
    const numbersIn = (value: unknown): number[] =>
      typeof value === 'number'
        ? [value]
        : value && typeof value === 'object'
          ? Object.values(value).flatMap(numbersIn)
          : [];
    fc.assert(
      fc.property(wild, ({ by, focal, hold, frameHeight, format, ...rest }) => {
        const view: Picture['view'] =
          by === 'crop' ? { by: 'crop' } : { by: by === 'cut' ? 'cut' : 'lens', focal };
        const session: Session = withPicture(
          {
            ...withBody(demo, { format }),
            crop: { ...demo.crop, hold: hold as Session['crop']['hold'], frameHeight },
          },
          'B',
          { ...rest, view },
        );
        const resolved = resolve(session, 'B');
        expect(numbersIn(resolved).every(Number.isFinite)).toBe(true);
        expect(resolved.frameHeight).toBeGreaterThan(0);
        expect(resolved.focusDistance).toBeGreaterThan(resolved.focal);
      }),
      { seed: 4, numRuns: 1000 },
    );
  });

  it('inside the focal length names that limit and what would do', () => {
    const session = withPicture(demo, 'A', { view: { by: 'lens', focal: 0.5 } });
    const { limits, frameHeight } = resolve(session, 'A');
    expect(limits[0]).toMatchObject({ reason: 'inside-focal-length', limit: 0.5, asked: 0.4 });
    expect(frameHeight).toBeCloseTo(LIMITS.frameHeight.least, 10);
    for (const { change, value } of must(limits[0]).remedies) {
      const mended =
        change === 'standpoint'
          ? withPicture(session, 'A', { standpoint: value + 1e-6 })
          : withPicture(session, 'A', { view: { by: 'lens', focal: value } });
      expect(resolve(mended, 'A').limits.map(({ reason }) => reason)).not.toContain(
        'inside-focal-length',
      );
      expect(resolve(mended, 'A').limits.map(({ reason }) => reason)).not.toContain(
        'frame-too-small',
      );
    }
  });

  it('a camera as high as its distance is brought down', () => {
    const { limits, camera } = resolve(withPicture(demo, 'A', { cameraHeight: 1 }), 'A');
    expect(limits[0]).toMatchObject({ reason: 'camera-too-high', asked: 1 });
    expect(camera.position[1]).toBeCloseTo(0.36, 10);
  });

  it('an axis that points away from the eyes is turned back', () => {
    const { limits } = resolve(withPicture(demo, 'A', { cameraHeight: 0.34, tilt: 0.7 }), 'A');
    expect(limits[0]?.reason).toBe('behind-camera');
  });
});

describe('lenses', () => {
  it('a lens that is too short says which standpoint and which frame would do', () => {
    const session = withLenses(demo, '28-70-f4-zoom');
    const limit = must(resolve(session, 'B').limits[0]);
    expect(limit.reason).toBe('lens-too-short');
    expect(limit.limit).toBeCloseTo(0.07, 12);
    const [stand, frame] = limit.remedies;
    const nearer = withPicture(session, 'B', { standpoint: must(stand).value });
    expect(resolve(nearer, 'B').lens?.id).toBe('28-70-f4-zoom');
    expect(resolve(nearer, 'B').lensMark).toBeCloseTo(0.07, 6);
    const wider = { ...session, crop: { ...session.crop, frameHeight: must(frame).value } };
    expect(resolve(wider, 'B').lensMark).toBeCloseTo(0.07, 6);
  });

  it('a lens that is too long says how far to stand', () => {
    const session = withLenses(demo, '85-f1-8');
    const limit = must(resolve(session, 'A').limits[0]);
    expect(limit.reason).toBe('lens-too-long');
    // By hand: 85 (420 + 36) / 36 = 1077 mm.
    expect(must(limit.remedies[0]).value).toBeCloseTo(1.0767, 4);
    expect(must(limit.remedies[0]).atLeast).toBe(true);
  });

  it('a prime serves a picture that needs its focal length within 2 %', () => {
    const at = (standpoint: number) =>
      resolve(withPicture(withLenses(demo, '85-f1-8'), 'A', { standpoint }), 'A').lens?.id;
    expect(at(1.077)).toBe('85-f1-8');
    expect(at(1.077 * 1.019)).toBe('85-f1-8');
    expect(at(1.077 * 1.03)).toBeUndefined();
  });

  it('a lens too near to focus says from where it would', () => {
    // 85 mm from 0.74 m frames 0.277 m; the tape reads 0.836 m, above its 0.80 m; from 0.69 m it does not.
    const session = withPicture(withLenses(demo, '85-f1-8'), 'A', {
      standpoint: 0.69,
      view: { by: 'lens', focal: 0.085 },
    });
    const limit = must(resolve(session, 'A').limits[0]);
    expect(limit.reason).toBe('too-near-to-focus');
    expect(limit.limit).toBeCloseTo(0.8, 12);
    const mended = withPicture(session, 'A', { standpoint: must(limit.remedies[0]).value + 1e-9 });
    expect(resolve(mended, 'A').limits).toEqual([]);
    expect(resolve(mended, 'A').tapeDistance).toBeCloseTo(0.8, 6);
  });

  it('an aperture that the lens has not is named', () => {
    const limit = must(
      resolve(
        withPicture(withLenses(demo, '85-f1-8'), 'A', { standpoint: 1.0767, fNumber: 1.4 }),
        'A',
      ).limits[0],
    );
    expect(limit).toMatchObject({ reason: 'aperture-too-wide', limit: 1.8, asked: 1.4 });
  });

  it('a named lens is kept even when it cannot', () => {
    const session = setLens.edit(demo, { letter: 'B', lens: '35-f2' }, context);
    expect(resolve(session, 'B').lens?.id).toBe('35-f2');
    expect(resolve(session, 'B').limits[0]?.reason).toBe('lens-too-short');
  });

  it('a named lens locked at a mark acts shorter near, by its own data', () => {
    // 70-200 mm f/4: printed table, 200 mm at 2 m on the tape acts as 183 mm; the formula stays within 2 %.
    const session = withPicture(demo, 'B', {
      standpoint: 2 - 0.2,
      view: { by: 'lens', focal: 0.2 },
      lens: '70-200-f4-zoom',
    });
    const { focal, lensMark, tapeDistance } = resolve(session, 'B');
    expect(tapeDistance).toBeGreaterThan(1.95);
    expect(Math.abs(focal / 0.1833 - 1)).toBeLessThan(0.02);
    expect(lensMark).toBeCloseTo(0.2, 9);
  });

  it('no lens of the kit: none is chosen, and the nearest miss comes first', () => {
    const session = withLenses(demo, '35-f2', '85-f1-8', '135-f1-8');
    const { lens, limits } = resolve(session, 'B');
    expect(lens).toBeNull();
    expect(limits[0]?.lens?.id).toBe('135-f1-8');
  });
});

describe('room', () => {
  it('ends where the photographer meets the wall', () => {
    const far = moveStandpoint.edit(demo, { letter: 'B', to: 3.2 }, context);
    const limit = must(resolve(far, 'B').limits.find(({ reason }) => reason === 'no-room'));
    const mended = withPicture(far, 'B', { standpoint: must(limit.remedies[0]).value - 1e-9 });
    expect(resolve(mended, 'B').limits).toEqual([]);
    // By hand: the tape reads s (1 + 36/420); 3.2 m are free, so s = 2.947 m.
    expect(must(limit.remedies[0]).value).toBeCloseTo(2.9474, 4);
  });

  it('keeps the lens off the nose', () => {
    const near = moveStandpoint.edit(demo, { letter: 'A', to: 0.15 }, context);
    const named = setLens.edit(near, { letter: 'A', lens: '70-300-f4-5-6-zoom' }, context);
    expect(resolve(named, 'A').limits.map(({ reason }) => reason)).toContain('no-clearance');
  });
});

describe('stay back and crop', () => {
  const cut = withPicture(demo, 'B', { view: { by: 'cut', focal: 0.085 } });

  it('shows the same view as the lens that frames it whole', () => {
    expect(resolve(cut, 'B').frameHeight).toBeCloseTo(0.42, 12);
    const whole = resolve(demo, 'B').camera.frustum;
    const part = resolve(cut, 'B').camera.frustum;
    for (const edge of ['left', 'right', 'bottom', 'top'] as const) {
      expect(part[edge]).toBeCloseTo(whole[edge], 12);
    }
  });

  it('says what it costs', () => {
    const { cut: cost, focal, camera } = resolve(cut, 'B');
    // s' of 85 mm at 2.4 m is 88.12 mm, of 189.47 mm it is 205.71 mm: 42.8 % of each side.
    expect(must(cost).linearShare).toBeCloseTo(0.42837, 4);
    expect(must(cost).megapixels).toBeCloseTo(24 * 0.42837 ** 2, 2);
    expect(must(cost).asIf.focal * 1000).toBeCloseTo(189.47, 2);
    expect(focal).toBe(0.085);
    expect(camera.sensor.height).toBeCloseTo(0.036 * must(cost).linearShare, 10);
    expect((camera.frustum.top - camera.frustum.bottom) * camera.imageDistance).toBeCloseTo(
      camera.sensor.height,
      12,
    );
  });

  it('cannot cut from a lens longer than the frame needs', () => {
    const { limits, cut: cost } = resolve(
      withPicture(demo, 'B', { view: { by: 'cut', focal: 0.3 } }),
      'B',
    );
    expect(cost).toBeNull();
    expect(limits[0]).toMatchObject({ reason: 'lens-too-long', lens: null });
    // 300 (420 + 36) / 36 = 3800 mm.
    expect(limits[0]?.remedies).toEqual([
      { change: 'focal', value: expect.closeTo(0.189474, 6), atLeast: false },
      { change: 'standpoint', value: expect.closeTo(3.8, 9), atLeast: true },
    ]);
  });
});

describe('what differs', () => {
  const between = (session: Session) => differences(resolve(session, 'A'), resolve(session, 'B'));

  it('is the standpoint alone in a crop match', () => {
    for (const hold of ['frame-height', 'head-height', 'pupil-distance'] as const) {
      expect(between(setHold.edit(demo, { to: hold }, context))).toEqual(['standpoint']);
    }
    expect(differenceSentence(['standpoint'])).toBeNull();
  });

  it('names a second thing', () => {
    const lowered = withPicture(demo, 'B', { cameraHeight: -0.3 });
    expect(between(lowered)).toEqual(['standpoint', 'camera-height']);
    expect(differenceSentence(between(lowered))).toBe(
      'Two things differ: the standpoint and the camera height.',
    );
    expect(between(withPicture(demo, 'B', { view: { by: 'lens', focal: 0.05 } }))).toEqual([
      'standpoint',
      'crop',
    ]);
  });

  it('does not count a cut as another crop', () => {
    expect(between(withPicture(demo, 'B', { view: { by: 'cut', focal: 0.05 } }))).toEqual([
      'standpoint',
    ]);
  });
});

describe('resolving', () => {
  it('does not hang on the other pictures but for what the first holds', () => {
    const moved = moveStandpoint.edit(demo, { letter: 'A', to: 1 }, context);
    expect(resolvePicture(moved, picture(moved, 'B'), models, context.cast)).toEqual(
      resolve(demo, 'B'),
    );
  });
});
