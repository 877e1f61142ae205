/** Every expectation is worked out here from sides, distances and dimensions, not from the code. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radToDeg } from '../../src/optics/units';
import { landmarkRatio } from '../../src/readings/measure-face';
import { type Measures, measure } from '../../src/readings/measures';
import { personalDistance } from '../../src/readings/proxemics';
import { always } from '../optics/value';
import { dimensionsOf, models, picture } from './picture';

const H = 0.42;
const near = (found: number | null, expected: number) => expect(found).toBeCloseTo(expected, 10);

describe('a headshot of 0.42 m from 0.40 m, by hand', () => {
  const d = 0.4;
  const m = measure(picture({ standpoint: d, fNumber: 4, backdrop: 1.2 }));
  const f = (d * 0.036) / (H + 0.036);
  const image = (f * d) / (d - f);

  it('has the thin lens of 31.58 mm', () => {
    near(m.lens.focal, f);
    expect(m.lens.focal * 1000).toBeCloseTo(31.579, 3);
    near(m.lens.imageDistance, image);
    near(m.lens.magnification, 0.036 / H);
    near(m.lens.sensorMark, d + image);
    near(m.lens.frame.height, H);
    near(m.lens.frame.width, (H * 24) / 36);
  });

  it('sees by the image distance, not by the focal length', () => {
    near(m.lens.angle.vertical, 2 * Math.atan(0.036 / 2 / image));
    near(m.lens.angle.horizontal, 2 * Math.atan(0.024 / 2 / image));
    near(m.lens.angle.diagonal, 2 * Math.atan(Math.hypot(0.036, 0.024) / 2 / image));
    expect(radToDeg(m.lens.angle.vertical)).toBeLessThan(
      radToDeg((2 * Math.atan(0.018 / f)) as never) - 3,
    );
  });

  it('draws nose and ears by their depths', () => {
    const dimensions = dimensionsOf();
    const nose = dimensions.nose_tip_to_eye_plane / 1000;
    const ear = nose - dimensions.nose_tip_to_tragion / 1000;
    near(m.face.size.nose_tip, d / (d - nose));
    near(m.face.size.ears, d / (d - ear));
    near(m.face.noseToEar.mean, (d - ear) / (d - nose));
    near(m.face.noseToEar.left, (d - ear) / (d - nose));
    near(m.face.step.nearer10cm, (0.3 - ear) / (0.3 - nose) - (d - ear) / (d - nose));
    near(m.face.step.farther1ft, (0.7048 - ear) / (0.7048 - nose) - (d - ear) / (d - nose));
  });

  it('draws breadths as their planes stand', () => {
    const dimensions = dimensionsOf();
    const { alare_left: alare, zygion_left: zygion } = picture({ standpoint: d }).sitter.landmarks;
    near(
      m.face.noseBreadthToFaceBreadth.here,
      dimensions.nose_breadth / (d - alare[2]) / (dimensions.bizygomatic_breadth / (d - zygion[2])),
    );
    near(
      m.face.noseBreadthToFaceBreadth.far,
      dimensions.nose_breadth / dimensions.bizygomatic_breadth,
    );
    near(
      landmarkRatio(picture({ standpoint: d }), 'alare_left', 'zygion_left'),
      (d - zygion[2]) / (d - alare[2]),
    );
  });

  it('draws the wall small and needs it wide', () => {
    near(m.scene.backdrop.size, 0.4 / 1.6);
    near(m.scene.backdrop.width, (0.28 * 1.6) / 0.4);
    near(m.scene.backdrop.widthWithMargin, ((0.28 * 1.6) / 0.4) * 1.2);
    near(m.scene.backdrop.extent?.left ?? null, (-0.14 * 1.6) / 0.4);
    near(m.scene.backdrop.extent?.top ?? null, (0.21 * 1.6) / 0.4);
  });

  it('stretches the corner by sec² and sec of the field angle', () => {
    const tangent = Math.hypot(0.036, 0.024) / 2 / image;
    near(m.scene.stretch.corner.stretch.equalDistance.radial, 1 + tangent ** 2);
    near(m.scene.stretch.corner.stretch.equalDistance.tangential, Math.sqrt(1 + tangent ** 2));
    near(m.scene.stretch.edge.stretch.equalDistance.radial, 1 + (0.018 / image) ** 2);
  });

  it('is sharp where the disc is at most 0.03 mm', () => {
    const disc = (x: number) => (f ** 2 * Math.abs(x - d)) / (4 * x * (d - f));
    near(disc(m.scene.sharp.near), 0.00003);
    near(disc(m.scene.sharp.far), 0.00003);
    near(m.scene.sharp.hyperfocal, f ** 2 / (4 * 0.00003) + f);
    expect(m.scene.sharp.noseTip).toBe(false);
    near(m.scene.blur?.inPicture ?? null, disc(1.6) / 0.036);
    near(m.scene.blur?.onBackdrop ?? null, (1.2 * 0.036) / (4 * (H + 0.036)));
  });

  it('loses light, and asks for a print to be seen from near', () => {
    near(m.scene.light.effectiveFNumber, 4 * (1 + 0.036 / H));
    near(m.scene.light.lossStops, 2 * Math.log2(1 + 0.036 / H));
    near(m.scene.light.airyDisc, 2.44 * 550e-9 * 4 * (1 + 0.036 / H));
    near(m.lens.print.viewing, (0.4 * 0.3) / H);
  });
});

describe('the standpoint and the face', () => {
  const standpoint = fc.double({ min: 0.15, max: 20, noNaN: true });

  it('a frontal nose-to-ear ratio falls to 1', () => {
    always(
      fc.property(standpoint, fc.double({ min: 1.001, max: 3, noNaN: true }), (d, farther) => {
        const [here, there] = [d, d * farther].map(
          (at) => measure(picture({ standpoint: at })).face.noseToEar.mean ?? 0,
        );
        expect(here).toBeGreaterThan(there ?? 0);
        expect(there).toBeGreaterThan(1);
      }),
      100,
    );
    expect(measure(picture({ standpoint: 1000 })).face.noseToEar.mean).toBeCloseTo(1, 3);
  });

  it('a tilt about the lens changes no size', () => {
    always(
      fc.property(
        standpoint,
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (d, tilt, share) => {
          const level = { standpoint: d, height: d * share, pose: { headTurn: 0.4 } };
          const [a, b] = [measure(picture(level)), measure(picture({ ...level, tilt }))];
          expect(b.face.size).toEqual(a.face.size);
          expect(b.face.noseToEar).toEqual(a.face.noseToEar);
          expect(b.face.step).toEqual(a.face.step);
          expect(b.scene.backdrop.size).toBe(a.scene.backdrop.size);
        },
      ),
      60,
    );
  });

  it('a turned head parts the ears, and the near one passes the eyes', () => {
    const turned = measure(picture({ standpoint: 0.6, pose: { headTurn: Math.PI / 3 } }));
    expect(turned.face.noseToEar.left).toBeGreaterThan(turned.face.noseToEar.right ?? 9);
    expect(turned.face.size.ear_right).toBeGreaterThan(1);
    expect(turned.face.noseToEar.right).toBeLessThan(1);
  });

  it('reads the pupils as they look, and the head whatever the gaze', () => {
    const ahead = picture({ standpoint: 0.4, pose: { headTurn: 0.3 } });
    const { pupil_left, pupil_right } = ahead.sitter.landmarks;
    // Both eyes a little inwards, as on a near lens.
    const inward = {
      ...ahead,
      sitter: {
        ...ahead.sitter,
        landmarks: {
          ...ahead.sitter.landmarks,
          pupil_left: [pupil_left[0] - 0.0008, pupil_left[1], pupil_left[2]] as const,
          pupil_right: [pupil_right[0] + 0.0008, pupil_right[1], pupil_right[2]] as const,
        },
      },
    };
    const { pupils, seenFrom } = measure(inward).face;
    expect(pupils.far).toBeCloseTo(measure(ahead).face.pupils.here, 12);
    expect(pupils.far - pupils.here).toBeCloseTo(0.0016 * Math.cos(0.3), 5);
    expect(seenFrom).toEqual(measure(ahead).face.seenFrom);
  });

  it('tells from where the face is seen', () => {
    always(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (turn, nod) => {
          const pose = { headTurn: turn, headNod: nod };
          const { seenFrom } = measure(picture({ standpoint: 1, pose })).face;
          // To a millionth: a pose takes a smaller angle for none.
          // Undoing the turn, then the nod, brings the camera's direction into the head's axes.
          const [x, z] = [-Math.sin(turn), Math.cos(turn)];
          const [y2, z2] = [-z * Math.sin(nod), z * Math.cos(nod)];
          expect(seenFrom.turn).toBeCloseTo(Math.atan2(x, z2), 6);
          expect(seenFrom.pitch).toBeCloseTo(Math.asin(y2), 6);
        },
      ),
      60,
    );
    const above = measure(picture({ standpoint: 1, height: Math.sin(0.2) }));
    expect(above.viewAngle).toBeCloseTo(0.2, 12);
    expect(above.face.seenFrom.pitch).toBeCloseTo(0.2, 9);
  });

  it('the distance for a gain has that gain', () => {
    const { percent5, percent10 } = measure(picture({ standpoint: 1 })).face.distanceForGain;
    const gainFrom = (d: number) =>
      (measure(picture({ standpoint: d })).face.noseToEar.mean ?? 0) - 1;
    near(gainFrom(percent5 ?? 0), 0.05);
    near(gainFrom(percent10 ?? 0), 0.1);
  });

  it('has no size for what is not before the lens', () => {
    const inside = measure(picture({ standpoint: 0.02, frameHeight: 0.02 }));
    expect(inside.face.size.nose_tip).toBeNull();
    expect(inside.face.noseToEar.mean).toBeNull();
    expect(inside.face.step.nearer10cm).toBeNull();
    expect(inside.face.size.ears).toBeGreaterThan(0);
  });

  it('stands in the bands of Hall (1966): 1.5, 4 and 12 feet', () => {
    expect([0.457, 0.458, 1.219, 1.22, 3.657, 3.66].map(personalDistance)).toEqual([
      'intimate',
      'personal',
      'personal',
      'social',
      'social',
      'public',
    ]);
  });
});

describe('equal crops', () => {
  it('share the disc on the backdrop and nearly the sharp depth', () => {
    always(
      fc.property(
        fc.double({ min: 0.3, max: 6, noNaN: true }),
        fc.double({ min: 0.3, max: 6, noNaN: true }),
        (a, b) => {
          const [one, other] = [a, b].map((d) => measure(picture({ standpoint: d }))) as [
            Measures,
            Measures,
          ];
          near(one.scene.blur?.onBackdrop ?? 0, other.scene.blur?.onBackdrop ?? 1);
        },
      ),
      60,
    );
    // Far less near is 2 N c (H/h) (1 + H/h) / (1 - k²) with k = N c (H/h) / f: at an equal crop
    // only k differs, and it is small.
    const [one, other] = [0.4, 2.4].map((d) => {
      const { near: from, far } = measure(picture({ standpoint: d })).scene.sharp;
      const k = (8 * 0.00003 * (H / 0.036)) / ((d * 0.036) / (H + 0.036));
      return (far - from) * (1 - k ** 2);
    });
    near(one ?? 0, other ?? 1);
    near(one ?? 0, 2 * 8 * 0.00003 * (H / 0.036) * (1 + H / 0.036));
  });
});

describe('a frame placed by shift', () => {
  it('moves the spans on the backdrop, not their widths', () => {
    const asked = { standpoint: 1, frameHeight: 0.6 };
    const [centred, placed] = [picture(asked), picture({ ...asked, eyesAt: 1 / 3 })].map(
      (input) => measure(input).scene.backdrop,
    );
    near(placed?.width ?? 0, centred?.width ?? 1);
    // Eyes a third from the top: 0.2 m of frame above them, 0.4 m below, 2.2 times that behind.
    near(placed?.extent?.top ?? null, 0.2 * 2.2);
    near(placed?.extent?.bottom ?? null, -0.4 * 2.2);
  });
});

describe('stay back and crop', () => {
  it('keeps view, blur and sharpness of the longer lens, and costs pixels', () => {
    const whole = measure(picture({ standpoint: 2.4, fNumber: 8 }));
    const lens = whole.lens.focal / 2;
    const cut = measure(picture({ standpoint: 2.4, fNumber: 4, cutFrom: lens }));
    near(cut.lens.focal, lens);
    near(cut.lens.asIf.focal, whole.lens.focal);
    near(cut.lens.asIf.fNumber, 8);
    expect(cut.lens.angle).toEqual(whole.lens.angle);
    near(cut.scene.sharp.near, whole.scene.sharp.near);
    near(cut.scene.blur?.inPicture ?? 0, whole.scene.blur?.inPicture ?? 1);
    const shortImage = (lens * 2.4) / (2.4 - lens);
    const share = shortImage / whole.lens.imageDistance;
    near(cut.lens.cut?.areaShare ?? null, share ** 2);
    near(cut.lens.cut?.megapixels ?? null, 24 * share ** 2);
    // 24 megapixels upright: 6000 high. 300 dots in 25.4 mm.
    near(cut.lens.cut?.print.height ?? null, (6000 * share * 0.0254) / 300);
    expect(whole.lens.cut).toBeNull();
  });
});

describe('a chosen lens', () => {
  it('gives the free way to the nose', () => {
    const lens = models.lenses.get('85-f1-8');
    if (!lens) throw new Error('no such lens');
    const m = measure(picture({ standpoint: 1, lens }));
    const nose = picture({ standpoint: 1 }).sitter.landmarks.pronasale;
    const front = m.lens.sensorMark - lens.length;
    expect(m.clearance).toBeCloseTo(Math.hypot(front - nose[2], nose[1]), 9);
    expect(measure(picture({ standpoint: 1 })).clearance).toBeNull();
  });
});
