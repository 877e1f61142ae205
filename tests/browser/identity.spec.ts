/**
 * The picture and the numbers agree: each landmark's vertex, of the very mesh that is shown, is found in
 * the pixels within half a pixel of where the optics project the landmark. The projection itself is
 * checked against a computer-vision library in tests/reference.
 */
import { pictureShare } from '../../src/optics/camera';
import type { Camera } from '../../src/optics/types';
import { demoSession } from '../../src/session/demo';
import type { Letter, Picture, Session } from '../../src/session/types';
import { LANDMARKS, type LandmarkName, type Landmarks } from '../../src/sitter/types';
import { castOf, leadsOf, models, must, resolveAll } from './expected';
import { type App, expect, freshApp, test } from './fixture';
import { findSquares } from './squares';

const DEGREE = Math.PI / 180;
const LARGE = { width: 1920, height: 1200 } as const;
/** Side of a square, and room for its blended rim, buffer pixels per CSS pixel. */
const APART = 7;

const standpoints = (...taken: readonly (Partial<Picture> & { standpoint: number })[]): Picture[] =>
  taken.map((own, i) => ({
    ...must(demoSession().pictures[0]),
    letter: must((['A', 'B', 'C', 'D'] as const)[i]),
    ...own,
  }));

const NEAR_AND_FAR = standpoints(
  { standpoint: 0.3 },
  { standpoint: 0.4 },
  { standpoint: 2.4 },
  { standpoint: 8 },
);

interface Case {
  readonly what: string;
  readonly session: Session;
  /** Fewer landmarks than this found in any picture, and the check has checked nothing. */
  readonly least: number;
}

const { crop, people, ...rest } = demoSession();
const [person] = people;

const CASES: readonly Case[] = [
  {
    what: 'near and far, upright',
    session: { ...rest, crop, people, pictures: NEAR_AND_FAR },
    least: 20,
  },
  {
    what: 'near and far, lying, the eyes off centre',
    session: {
      ...rest,
      people,
      crop: { ...crop, orientation: 'landscape', eyesAt: 0.42, eyesAcross: 0.68 },
      pictures: standpoints({ standpoint: 0.3 }, { standpoint: 8 }),
    },
    least: 16,
  },
  {
    what: 'camera raised, lowered and tilted',
    session: {
      ...rest,
      people,
      crop: { ...crop, frameHeight: 0.6 },
      pictures: standpoints(
        { standpoint: 0.4, cameraHeight: 0.2, tilt: -12 * DEGREE },
        { standpoint: 2.4, cameraHeight: -0.7, tilt: 25 * DEGREE },
        { standpoint: 8, cameraHeight: 1.2, tilt: -9 * DEGREE },
      ),
    },
    least: 20,
  },
  {
    what: 'head turned, nodded and tilted on a turned body',
    session: {
      ...rest,
      crop,
      people: [
        {
          ...person,
          pose: {
            ...person.pose,
            bodyTurn: -30 * DEGREE,
            headTurn: 50 * DEGREE,
            headNod: -18 * DEGREE,
            headTilt: 12 * DEGREE,
          },
        },
      ],
      pictures: NEAR_AND_FAR,
    },
    least: 18,
  },
  {
    what: 'another sitter at full length, seen from above',
    session: {
      ...rest,
      people: [{ ...person, model: 'adult-man' }],
      crop: { ...crop, frameHeight: 2.1, eyesAt: 0.12, framing: null },
      pictures: standpoints(
        { standpoint: 1.2, cameraHeight: 0.4, tilt: -20 * DEGREE },
        { standpoint: 4 },
      ),
    },
    least: 14,
  },
  {
    what: 'different sitters in different pictures, one of them seated with folded arms',
    session: {
      ...rest,
      crop,
      people: [
        { ...person, pose: { ...person.pose, stance: 'seated', arms: 'folded' } },
        { ...person, id: '2', model: 'adult-man', gaze: { yaw: 0.2, pitch: -0.1 } },
      ],
      pictures: [
        ...standpoints({ standpoint: 0.4 }),
        ...standpoints({ standpoint: 0.4 }, { standpoint: 0.9 })
          .slice(1)
          .map((picture) => ({ ...picture, of: ['2'] as const })),
      ],
    },
    least: 18,
  },
];

/** A few small squares on black: little contrast, 0..255, but more than none. */
const SQUARES_ALONE = 1;

type Placed = ReadonlyMap<LandmarkName, { readonly x: number; readonly y: number }>;

/** Where each landmark before the lens is drawn in a picture of that many pixels. */
function placesOf(camera: Camera, landmarks: Landmarks, width: number, height: number): Placed {
  return new Map(
    LANDMARKS.flatMap((name) => {
      const share = pictureShare(camera, landmarks[name]);
      return share.ok
        ? [[name, { x: share.value.across * width, y: share.value.down * height }] as const]
        : [];
    }),
  );
}

/** Landmarks whose whole square lies in the frame and touches no other square. */
function separate(places: Placed, width: number, height: number, apart: number): LandmarkName[] {
  const inside = (at: number, size: number) => at > apart && at < size - apart;
  return [...places].flatMap(([name, { x, y }]) => {
    if (!inside(x, width) || !inside(y, height)) return [];
    const isAlone = [...places].every(
      ([other, at]) => other === name || Math.max(Math.abs(at.x - x), Math.abs(at.y - y)) > apart,
    );
    return isAlone ? [name] : [];
  });
}

/** Checks every picture of a session; returns the greatest distance, pixels. */
async function checkSquares(app: App, { session, least }: Case, scale: number): Promise<number> {
  const cast = await castOf(session);
  const leads = leadsOf(session, cast);
  let worst = 0;
  for (const [i, { letter, camera }] of resolveAll(session, cast).entries()) {
    const image = await app.pixels(letter, SQUARES_ALONE);
    const places = placesOf(camera, must(leads[i]).landmarks, image.width, image.height);
    const wanted = separate(places, image.width, image.height, APART * scale);
    expect(wanted.length, `landmarks to be found in ${letter}`).toBeGreaterThanOrEqual(least);
    const found = findSquares(image);
    for (const name of wanted) {
      const square = found.get(name);
      expect(square, `${name} in ${letter}`).toBeDefined();
      const place = must(places.get(name));
      const off = Math.hypot(must(square).x - place.x, must(square).y - place.y);
      expect(off, `${name} in ${letter}, pixels off`).toBeLessThan(0.5);
      worst = Math.max(worst, off);
    }
  }
  return worst;
}

test.describe('landmarks in the pixels', () => {
  let app: App;
  test.beforeAll(async ({ browser, baseURL }) => {
    app = await freshApp(browser, baseURL, { viewport: LARGE });
    await app.goto('?test=landmarks');
  });
  test.afterAll(() => app.page.context().close());

  for (const each of CASES) {
    test(each.what, async () => {
      await app.use(each.session);
      // Another sitter's sculpture is fetched first.
      await app.page.waitForFunction(
        (wanted) => {
          const cast = window.standpoint?.cast;
          const statures = [cast?.['1'], cast?.['2']].flatMap(
            (one) => one?.dimensions.stature ?? [],
          );
          return JSON.stringify(statures) === JSON.stringify(wanted);
        },
        each.session.people.map(
          ({ model }) => must(models.sitters.get(model)).dimensions.stature.mm,
        ),
      );
      await app.settled();
      test.info().annotations.push({
        type: 'greatest distance, pixels',
        description: (await checkSquares(app, each, 1)).toFixed(3),
      });
    });
  }

  test('the check is sharp: the marked focal length instead of the image distance misses', async () => {
    const { session } = must(CASES[0]);
    await app.use(session);
    const cast = await castOf(session);
    const present = must(leadsOf(session, cast)[0]);
    const [near] = resolveAll(session, cast);
    const { camera, focal } = must(near);
    const wider = camera.imageDistance / focal;
    const { left, right, bottom, top } = camera.frustum;
    const wrong: Camera = {
      ...camera,
      frustum: {
        left: left * wider,
        right: right * wider,
        bottom: bottom * wider,
        top: top * wider,
      },
    };
    const letter: Letter = 'A';
    const image = await app.pixels(letter, SQUARES_ALONE);
    const found = findSquares(image);
    const places = placesOf(wrong, present.landmarks, image.width, image.height);
    const { x, y } = must(places.get('ectocanthion_left'));
    const square = must(found.get('ectocanthion_left'));
    expect(Math.hypot(square.x - x, square.y - y)).toBeGreaterThan(0.5);
  });
});

test('landmarks in the pixels of a display of two pixels to one', async ({ browser, baseURL }) => {
  const app = await freshApp(browser, baseURL, { deviceScaleFactor: 2 });
  await app.goto('?test=landmarks');
  const { crop: own, ...others } = demoSession();
  const session = { ...others, crop: { ...own, eyesAcross: 0.4 } };
  await app.use(session);
  await checkSquares(app, { what: '', session, least: 24 }, 2);
  await app.page.context().close();
});
