/**
 * The backdrop in the pictures is the plan's: the sheet's edges, found in the pixels, lie within half a pixel of
 * where the optics project the edges of the plan's backdrop.
 */
import { pictureShare } from '../../src/optics/camera';
import type { Camera, Vec3 } from '../../src/optics/types';
import { planRoom } from '../../src/plan/room';
import type { PlanRoom } from '../../src/plan/types';
import { floorOf } from '../../src/session/cast';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { castOf, must, resolveAll } from './expected';
import { expect, freshApp, test } from './fixture';
import type { Image } from './image';

const DEGREE = Math.PI / 180;
/** Pixels to both sides of an edge that are looked at. */
const BESIDE = 5;
/** Rows or columns of pixels, or nothing was measured. */
const LEAST_LINES = 40;
/** Steps of 255 between paper and wall: with less no edge is measured. */
const LEAST_STEP = 20;

const { crop, room, pictures, light, ...rest } = demoSession();

/** Light on the backdrop alone: the wall beside it lies in its shadow. */
const onBackdrop: Session['light'] = {
  key: { ...light.key, strength: 0 },
  fill: light.fill,
  hair: { ...light.hair, strength: 0 },
  background: { ...light.background, strength: 2 },
};

function seen(
  changes: Partial<Session['room']>,
  own: Partial<Session['pictures'][number]> & { standpoint: number },
): Session {
  return {
    ...rest,
    light: onBackdrop,
    room: { ...room, obstacles: [], ...changes },
    crop: {
      ...crop,
      frameHeight: 2.2,
      framing: null,
      orientation: 'landscape',
      eyesAt: 0.4,
    },
    pictures: [{ ...must(pictures[0]), ...own }],
  };
}

const CASES: readonly (readonly [string, Session])[] = [
  ['straight on', seen({}, { standpoint: 2.4 })],
  [
    'from above, tilted, beside the middle of the room',
    seen({ aside: 0.3 }, { standpoint: 2.4, cameraHeight: 0.3, tilt: -7 * DEGREE }),
  ],
  [
    'wide paper well off the wall',
    seen(
      {
        length: 9,
        width: 7,
        ceiling: 3.2,
        sitterBefore: 1.6,
        backdrop: { offWall: 1, width: 2.72, top: 2.1 },
      },
      { standpoint: 3 },
    ),
  ],
  ['across a corner', seen({ axis: 'diagonal' }, { standpoint: 2.4 })],
];

type Point = readonly [x: number, y: number];

interface Edge {
  readonly name: string;
  /** Its ends in the sitter's frame. */
  readonly ends: readonly [Vec3, Vec3];
  /** Found by going along a row, or along a column. */
  readonly along: 'row' | 'column';
}

/** The straight edges: clear of the bend at the foot of the paper, and of its corners. */
function edgesOf({ backdrop, floor }: PlanRoom): Edge[] {
  const { behind, left, right, top } = backdrop;
  const side = (x: number): readonly [Vec3, Vec3] => [
    [x, floor + 0.5, -behind],
    [x, top - 0.1, -behind],
  ];
  return [
    { name: 'left edge', ends: side(left), along: 'row' },
    { name: 'right edge', ends: side(right), along: 'row' },
    {
      name: 'upper edge',
      ends: [
        [right + 0.1, top, -behind],
        [left - 0.1, top, -behind],
      ],
      along: 'column',
    },
  ];
}

const brightness = ({ data, width }: Image, x: number, y: number): number =>
  [0, 1, 2].reduce((sum, c) => sum + must(data[4 * (y * width + x) + c]), 0) / 3;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A straight line through the first and the last of three neighbours, the middle one in between. */
const lineThrough = (a: number, b: number, c: number, at: number): ((i: number) => number) => {
  const middle = (a + b + c) / 3;
  return (i) => middle + ((c - a) / 2) * (i - at);
};

/**
 * Where the step between two greys, each of which changes evenly (a soft shadow lies beside the sheet), is
 * among the pixels about `near`; null where there is no clear one.
 */
function stepNear(at: (i: number) => number, near: number): number | null {
  const first = Math.round(near) - BESIDE;
  const count = 2 * BESIDE;
  const window = Array.from({ length: count }, (_, i) => at(first + i));
  const [a, b, c] = window as [number, number, number];
  const [d, e, f] = window.slice(-3) as [number, number, number];
  const before = lineThrough(a, b, c, 1);
  const after = lineThrough(d, e, f, count - 2);
  const step = (i: number) => after(i) - before(i);
  if (Math.abs(step(near - first - 0.5)) < LEAST_STEP) return null;
  const past = window.slice(3, -3).map((value, i) => (value - before(i + 3)) / step(i + 3));
  return first + count - 3 - past.reduce((sum, share) => sum + share, 0);
}

/** How far off the edge is found, pixel row by pixel row (or column by column). */
function offsets(image: Image, camera: Camera, { ends, along }: Edge): number[] {
  const [a, b] = ends.map((end): Point => {
    const share = pictureShare(camera, end);
    if (!share.ok) throw new Error(share.reason);
    const place: Point = [share.value.across * image.width, share.value.down * image.height];
    return along === 'row' ? place : [place[1], place[0]];
  }) as [Point, Point];
  const [long, wide] = along === 'row' ? [image.height, image.width] : [image.width, image.height];
  const from = Math.max(0, Math.ceil(Math.min(a[1], b[1])));
  const to = Math.min(long, Math.floor(Math.max(a[1], b[1])));
  const found: number[] = [];
  for (let line = from; line < to; line++) {
    const expected = a[0] + ((line + 0.5 - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
    if (expected < BESIDE + 1 || expected > wide - BESIDE - 1) continue;
    const step = stepNear(
      (i) => (along === 'row' ? brightness(image, i, line) : brightness(image, line, i)),
      expected,
    );
    if (step !== null) found.push(step - expected);
  }
  return found;
}

test('the edges of the backdrop lie where the plan has them', async ({ browser, baseURL }) => {
  test.slow();
  const app = await freshApp(browser, baseURL, { viewport: { width: 1920, height: 1200 } });
  await app.goto();
  for (const [what, session] of CASES) {
    await app.redrawn(() =>
      app.page.evaluate((next) => window.standpoint?.store.open(next, 'Test'), session),
    );
    const cast = await castOf(session);
    const { camera, letter } = must(resolveAll(session, cast)[0]);
    const image = await app.pixels(letter);
    let measured = 0;
    for (const edge of edgesOf(planRoom(session.room, -floorOf(cast['1'])))) {
      const off = offsets(image, camera, edge).map(Math.abs);
      // Paper that reaches into a corner touches a wall as bright as itself.
      if (off.length < LEAST_LINES) continue;
      measured += 1;
      const worst = off.reduce((most, value) => Math.max(most, value), 0);
      // Wall boards' joints and other edges beside the paper's own disturb single lines.
      const within = off.filter((value) => value < 0.5).length / off.length;
      test.info().annotations.push({
        type: `${what}, ${edge.name}: mean and greatest distance, pixels`,
        description: `${mean(off).toFixed(3)}, ${worst.toFixed(3)}`,
      });
      expect(within, `${what}, ${edge.name}: lines within half a pixel`).toBeGreaterThan(0.95);
      expect(mean(off), `${what}, ${edge.name}: mean distance`).toBeLessThan(0.3);
    }
    expect(measured, `${what}: edges measured`).toBeGreaterThanOrEqual(
      session.room.axis === 'diagonal' ? 2 : 3,
    );
  }
  await app.page.context().close();
});
