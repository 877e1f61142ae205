/** The main job, done by hand: standpoints moved and typed, locks, holds, set-up, and what the page says. */
import { project } from '../../src/optics/camera';
import { readings } from '../../src/readings/read';
import { demoSession } from '../../src/session/demo';
import type { ResolvedPicture } from '../../src/session/resolve';
import { REGION, type Sitter } from '../../src/sitter/types';
import { castOf, expectedOf, leadsOf, models, must, sitterOf } from './expected';
import { type App, expect, test } from './fixture';
import { difference, inCommon } from './image';

/** Long side of the 36 x 24 mm frame, the height of an upright picture. */
const H = 0.036;

const STANDPOINT_A = 'Standpoint A, from the eyes to the lens';
const STANDPOINT_B = 'Standpoint B, from the eyes to the lens';

const both = async (app: App): Promise<[ResolvedPicture, ResolvedPicture]> => {
  const [a, b] = await app.pictures();
  return [must(a), must(b)];
};

/** Of the plane through the eyes, square to a level axis, as the frustum cuts it. */
const frameHeight = ({ camera, standpoint }: ResolvedPicture): number =>
  (camera.frustum.top - camera.frustum.bottom) * standpoint;

test('the first view: two pictures, one crop, and the readings that the program computes', async ({
  app,
}) => {
  const [a, b] = await both(app);
  expect([a.standpoint, b.standpoint]).toEqual([0.4, 2.4]);
  expect(frameHeight(a)).toBeCloseTo(0.42, 9);
  expect(frameHeight(b)).toBeCloseTo(0.42, 9);
  // f = s h / (H + h), the thin lens.
  expect(a.focal).toBeCloseTo((0.4 * H) / (0.42 + H), 9);
  expect(b.focal).toBeCloseTo((2.4 * H) / (0.42 + H), 9);
  const [left, right] = [await app.pixels('A'), await app.pixels('B')];
  expect(difference(...inCommon(left, right)), 'the two pictures differ').toBeGreaterThan(5);

  await app.page.waitForFunction(() =>
    window.standpoint?.pictures.every(({ measures }) => measures.visibility !== null),
  );
  await app.press(/^All \d+ readings$/);
  const wanted = (await expectedOf(demoSession())).map(({ measures }) =>
    readings(measures, { units: 'metric', pronoun: 'her' }),
  );
  const first = must(wanted[0]);
  expect(first.length).toBeGreaterThan(40);
  const shown = await app.page.locator('tbody[data-reading]').evaluateAll((bodies) =>
    bodies.map((body) => ({
      id: body.getAttribute('data-reading'),
      cells: [...body.querySelectorAll('.numbers td')].map((cell) => cell.textContent),
    })),
  );
  for (const [i, { id }] of first.entries()) {
    const row = shown.find((each) => each.id === id);
    expect(row?.cells.slice(0, 2), id).toEqual(wanted.map((column) => must(column[i]).shown));
  }
  await app.press('The main readings');
});

test('a handle is dragged by mouse: the crop stays, the focal length follows, one step', async ({
  quick: app,
}) => {
  const tab = async (letter: 'A' | 'B') =>
    must(await app.handle(letter).locator('.rail-tab').boundingBox());
  const [a, b] = [await tab('A'), await tab('B')];
  const perMetre = (b.x - a.x) / 2;
  const way = Math.round(-0.8 * perMetre);
  const [x, y] = [b.x + b.width / 2, b.y + b.height / 2];
  await app.redrawn(async () => {
    await app.page.mouse.move(x, y);
    await app.page.mouse.down();
    await app.page.mouse.move(x + way / 2, y, { steps: 3 });
    await app.page.mouse.move(x + way, y, { steps: 3 });
    await app.page.mouse.up();
  });
  const [fixed, moved] = await both(app);
  expect(fixed.standpoint).toBe(0.4);
  // The handle follows the mouse on its scale, to the centimetre it is snapped to.
  expect(Math.abs(moved.standpoint - (2.4 + way / perMetre))).toBeLessThan(0.011);
  expect(frameHeight(moved)).toBeCloseTo(0.42, 9);
  expect(moved.focal).toBeCloseTo((moved.standpoint * H) / (0.42 + H), 9);
  const shown = `${moved.standpoint.toFixed(2)} m`;
  await expect(app.value(STANDPOINT_B)).toHaveText(shown);
  await expect(app.undo()).toHaveAccessibleName(`Undo: B moved to ${shown}`);
  await app.undo().click();
  await expect(app.value(STANDPOINT_B)).toHaveText('2.40 m');
});

test('a handle is moved by keys, and a digit begins a typed distance', async ({ quick: app }) => {
  const standpoint = async () => must((await app.session()).pictures[1]).standpoint;
  const handle = app.handle('B');
  await handle.focus();
  await app.page.keyboard.press('ArrowRight');
  await expect.poll(standpoint).toBe(2.41);
  await app.page.keyboard.press('Shift+ArrowLeft');
  await expect.poll(standpoint).toBe(2.31);
  await app.page.keyboard.press('End');
  // The wall behind the camera ends the rail.
  await expect.poll(standpoint).toBe(3.8);
  await app.page.keyboard.press('Home');
  await expect.poll(standpoint).toBe(0.15);
  await expect(handle).toHaveAttribute('aria-valuetext', /^0\.15 metres from the eyes, intimate/);
  await app.page.keyboard.press('3');
  const entry = app.slip().getByRole('textbox');
  await expect(entry).toHaveValue('3');
  await expect(entry).toBeFocused();
  await app.page.keyboard.type('.05 m');
  await app.page.keyboard.press('Enter');
  await expect.poll(standpoint).toBe(3.05);
  await expect(handle).toBeFocused();
});

test('a distance is typed in the caption, in any of its units', async ({ quick: app }) => {
  await app.type(STANDPOINT_B, '7 ft 6 in');
  // 7.5 ft of 0.3048 m each.
  await expect.poll(async () => (await app.picture('B')).standpoint).toBeCloseTo(2.286, 12);
  await app.type(STANDPOINT_B, '2,3 m');
  await expect.poll(async () => (await app.picture('B')).standpoint).toBe(2.3);
  expect(frameHeight(await app.picture('B'))).toBeCloseTo(0.42, 9);
});

test('what cannot be read or is out of range stays, with the reason', async ({ quick: app }) => {
  await app.type(STANDPOINT_A, 'over there');
  const entry = app.slip().getByRole('textbox');
  await expect(entry).toHaveValue('over there');
  await expect(app.slip()).toContainText('"over there" is not a distance');
  await expect(entry).toHaveAttribute('aria-invalid', 'true');
  await entry.fill('1,200');
  await app.page.keyboard.press('Enter');
  await expect(app.slip()).toContainText('can be read in two ways. Write 1.2 m or 1200 m.');
  await entry.fill('40 m');
  await app.page.keyboard.press('Enter');
  await expect(app.slip()).toContainText('The most is 30.00 m.');
  await entry.fill('5 cm');
  await app.page.keyboard.press('Enter');
  await expect(app.slip()).toContainText('The least is 0.15 m.');
  expect(await app.session()).toEqual(demoSession());
  await app.closeSlips();
});

test.describe('locks', () => {
  test('the crop is kept: a new focal length moves the camera', async ({ quick: app }) => {
    await app.type('Focal length of B', '105 mm');
    await expect.poll(async () => (await app.picture('B')).focal).toBeCloseTo(0.105, 9);
    const moved = await app.picture('B');
    // s = f (H + h) / h
    expect(moved.standpoint).toBeCloseTo((0.105 * (0.42 + H)) / H, 6);
    expect(frameHeight(moved)).toBeCloseTo(0.42, 9);
  });

  test('the lens is kept: the frame follows the standpoint', async ({ quick: app }) => {
    const before = await app.picture('B');
    await app.choose('What a moved handle keeps', 'the lens');
    await app.type(STANDPOINT_B, '1.2 m');
    await expect.poll(async () => (await app.picture('B')).standpoint).toBe(1.2);
    const after = await app.picture('B');
    expect(after.focal).toBeCloseTo(before.focal, 9);
    // H = h (s - f) / f
    expect(frameHeight(after)).toBeCloseTo((H * (1.2 - before.focal)) / before.focal, 6);
    await expect(app.value('Frame height of B, at the eyes')).toHaveText(
      `${frameHeight(after).toFixed(2)} m`,
    );
    await app.choose('What a moved handle keeps', 'the crop');
    await expect.poll(async () => frameHeight(await app.picture('B'))).toBeCloseTo(0.42, 9);
  });

  test('the standpoint is kept: focal length and frame follow each other', async ({
    quick: app,
  }) => {
    await app.choose('What a moved handle keeps', 'the standpoint');
    await app.handle('B').focus();
    await app.page.keyboard.press('ArrowRight');
    await app.page.keyboard.press('End');
    await expect(app.value(STANDPOINT_B)).toBeDisabled();
    expect((await app.session()).pictures.map(({ standpoint }) => standpoint)).toEqual([0.4, 2.4]);
    await app.type('Focal length of B', '100 mm');
    await expect.poll(async () => (await app.picture('B')).focal).toBeCloseTo(0.1, 9);
    const [a, b] = await both(app);
    expect([a.standpoint, b.standpoint]).toEqual([0.4, 2.4]);
    expect(frameHeight(b)).toBeCloseTo((H * (2.4 - 0.1)) / 0.1, 6);
    // One crop for both.
    expect(frameHeight(a)).toBeCloseTo(frameHeight(b), 9);
    await app.type('Frame height of B, at the eyes', '0.5 m');
    await expect
      .poll(async () => (await app.picture('B')).focal)
      .toBeCloseTo((2.4 * H) / (0.5 + H), 9);
  });
});

/** Height on the sensor from the chin's lowest to the crown's highest point, from the mesh as drawn. */
function drawnHead({ camera }: ResolvedPicture, sitter: Sitter): number {
  let [crown, chin] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const { menton } = sitter.landmarks;
  for (const { substance, positions, regions } of sitter.meshes) {
    if (substance !== 'skin') continue;
    for (const [i, region] of regions.entries()) {
      const [x, y, z] = [3 * i, 3 * i + 1, 3 * i + 2].map((k) => positions[k] ?? 0);
      const point = [must(x), must(y), must(z)] as const;
      const drawn = project(camera, point);
      if (!drawn.ok) continue;
      if (region === REGION.face || region === REGION.scalp) crown = Math.max(crown, drawn.value.v);
      // The jaw's foremost part alone: the ramus behind it may hang lower in a near picture.
      const isChin =
        Math.hypot(point[0] - menton[0], point[1] - menton[1], point[2] - menton[2]) < 0.02;
      if (isChin && region !== REGION.body) chin = Math.min(chin, drawn.value.v);
    }
  }
  return crown - chin;
}

function drawnPupils({ camera }: ResolvedPicture, { landmarks }: Sitter): number {
  const [left, right] = [
    project(camera, landmarks.pupil_left),
    project(camera, landmarks.pupil_right),
  ];
  if (!left.ok || !right.ok) throw new Error('the pupils are not before the lens');
  return Math.hypot(left.value.u - right.value.u, left.value.v - right.value.v);
}

test.describe('holds', () => {
  const HOLD = 'What holds the crop equal';

  test('head height, crown to chin as drawn', async ({ quick: app }) => {
    const sitter = await sitterOf(demoSession());
    const before = await both(app);
    expect(drawnHead(before[0], sitter) / drawnHead(before[1], sitter)).not.toBeCloseTo(1, 2);
    await app.choose(HOLD, 'head height');
    await expect.poll(async () => (await app.picture('B')).held.hold).toBe('head-height');
    const [a, b] = await both(app);
    expect(drawnHead(a, sitter) / drawnHead(b, sitter)).toBeCloseTo(1, 6);
    // It still holds when a handle moves.
    await app.type(STANDPOINT_B, '1.1 m');
    await expect.poll(async () => (await app.picture('B')).standpoint).toBe(1.1);
    const after = await both(app);
    expect(drawnHead(after[0], sitter) / drawnHead(after[1], sitter)).toBeCloseTo(1, 6);
  });

  test('pupil distance, with a turned head', async ({ quick: app }) => {
    await app.value('How the sitter faces the camera').click();
    await app.type('Turn of the head, degrees', '15');
    await app.closeSlips();
    const session = await app.session();
    const leads = leadsOf(session, await castOf(session));
    const [near, far] = [must(leads[0]), must(leads[1])];
    await app.choose(HOLD, 'pupil distance');
    await expect.poll(async () => (await app.picture('B')).held.hold).toBe('pupil-distance');
    const [a, b] = await both(app);
    expect(drawnPupils(a, near) / drawnPupils(b, far)).toBeCloseTo(1, 9);
    await app.choose(HOLD, 'frame height');
    await expect.poll(async () => (await app.picture('B')).held.hold).toBe('frame-height');
    const [c, d] = await both(app);
    expect(frameHeight(c)).toBeCloseTo(frameHeight(d), 9);
    expect(drawnPupils(c, near) / drawnPupils(d, far)).not.toBeCloseTo(1, 3);
  });
});

test('the sitter turns, raises and tilts the head, and is drawn so', async ({ app }) => {
  const before = await app.pixels('B');
  await app.value('How the sitter faces the camera').click();
  await app.redrawn(() => app.type('Turn of the head, degrees', '30'));
  await app.type('Head up', '-10');
  await app.closeSlips();
  await expect(app.value('How the sitter faces the camera')).toHaveText(
    /^turned 30(\.0)?° to the picture’s right and lowered 10(\.0)?°$/,
  );
  await app.settled();
  const { landmarks } = await sitterOf(await app.session());
  const shown = await app.page.evaluate(() => window.standpoint?.cast['1'].landmarks);
  expect(shown?.pronasale).toEqual(landmarks.pronasale);
  // A head turned to its left has its nose on the picture's right, +x.
  expect(landmarks.pronasale[0]).toBeGreaterThan(0.01);
  expect(difference(before, await app.pixels('B'))).toBeGreaterThan(5);
});

test('orientation, format, framing, eyes and aperture', async ({ quick: app }) => {
  await app.choose('Upright or lying', 'lying');
  await expect.poll(async () => (await app.picture('A')).camera.sensor.width).toBe(0.036);
  const box = must(await app.figure('A').getByRole('img').boundingBox());
  expect(box.width / box.height).toBeCloseTo(1.5, 1);

  await app.choose('Sensor format', '4/3 type');
  // Long side of the 4/3 type, models/formats.
  await expect.poll(async () => (await app.picture('A')).camera.sensor.width).toBe(0.0173);
  const [a] = await both(app);
  expect(frameHeight(a)).toBeCloseTo(0.42, 9);
  expect(a.focal).toBeCloseTo((0.4 * 0.013) / (0.42 + 0.013), 9);

  await app.choose('Framing', 'Half-length');
  await expect.poll(async () => (await app.session()).crop.framing).toBe('half-length');
  const { crop } = await app.session();
  const { eyesAt, orientation } = must(models.framings.get('half-length'));
  expect(crop).toMatchObject({ eyesAt, orientation });
  expect(frameHeight(await app.picture('B'))).toBeCloseTo(crop.frameHeight, 9);
  await expect(app.value('Frame height at the eyes')).toHaveText(
    `${crop.frameHeight.toFixed(2)} m`,
  );

  await app.type('Where the eyes sit in the frame', '40 %');
  await expect.poll(async () => (await app.session()).crop.eyesAt).toBe(0.4);
  const { camera } = await app.picture('B');
  const { top, bottom } = camera.frustum;
  // The eyes lie on the level axis: that far below the upper edge.
  expect(top / (top - bottom)).toBeCloseTo(0.4, 9);

  await app.type('Aperture of B', 'f/2.8');
  await expect(app.value('Aperture of B')).toHaveText('f/2.8');
  await app.value('Aperture of A').click();
  await app.press('f/11');
  await expect(app.value('Aperture of A')).toHaveText('f/11');
  expect((await app.session()).pictures.map(({ fNumber }) => fNumber)).toEqual([11, 2.8]);
});

test('a raised or tilted camera states its angle, and that two things differ', async ({
  quick: app,
}) => {
  await expect(app.page.getByText('Not the distance alone differs')).toHaveCount(0);
  await app.value('More of A').click();
  await app.type('Camera height of A, against the eyes', '10 cm');
  await app.closeSlips();
  // asin(0.10 / 0.40)
  await expect(app.figure('A')).toContainText('The camera sees the face from 14.5° above.');
  const said = app.page.getByText('Not the distance alone differs');
  await expect(said).toContainText('Two things differ: the standpoint and the camera height.');
  const { camera, standpoint } = await app.picture('A');
  expect(standpoint).toBeCloseTo(0.4, 12);
  expect(camera.position[1]).toBeCloseTo(0.1, 12);

  await app.value('More of A').click();
  await app.type('Tilt of A, degrees', '-8');
  await app.closeSlips();
  await expect(said).toContainText(
    'Three things differ: the standpoint, the camera height and the tilt.',
  );
  expect((await app.picture('A')).camera.tilt).toBeCloseTo((-8 * Math.PI) / 180, 12);
});

test('stay back and crop keeps the perspective and says what it costs', async ({ quick: app }) => {
  const before = await app.picture('B');
  await app.value('More of B').click();
  await app.choose('The lens that B is cut from', '85 mm');
  await expect.poll(async () => (await app.picture('B')).cut).not.toBeNull();
  await app.closeSlips();
  const after = await app.picture('B');
  expect(after.standpoint).toBe(before.standpoint);
  expect(after.camera.frustum.top).toBeCloseTo(before.camera.frustum.top, 6);
  expect(after.camera.frustum.right).toBeCloseTo(before.camera.frustum.right, 6);

  const { focal } = after;
  const wider = (H * (2.4 - focal)) / focal;
  const kept = (0.42 / wider) ** 2;
  const cost = app.figure('B');
  await expect(cost).toContainText(`${Math.round(100 * kept)} % of the wider picture is kept`);
  await expect(cost).toContainText(`${(24 * kept).toFixed(1)} megapixels`);
  await expect(cost).toContainText(/a print of \d+ × \d+ cm at 300 dpi/);
  await expect(cost).toContainText(/The blur is that of \d+(\.\d+)? mm at f\/\d+/);
  await app.value('More of B').click();
  await app.press('Fill the frame again');
  await expect.poll(async () => (await app.picture('B')).cut).toBeNull();
});

test('a lens that cannot says its limit and what would do, and the picture still shows', async ({
  app,
}) => {
  const before = await app.picture('A');
  await app.value('More of A').click();
  await app.choose('Lens of A', '70–300 mm');
  await app.closeSlips();
  const said = app.figure('A').getByRole('status');
  await expect(said).toContainText('70–300 mm f/4–5.6 zoom begins at 70.0 mm; this picture needs');
  await expect(said).toContainText('Would do: stand at');
  // The view is the one that was asked for.
  expect((await app.picture('A')).camera).toEqual(before.camera);
  await app.pixels('A');

  // The one lens of the kit that is long enough for B opens to about f/5 there.
  await app.type('Aperture of B', '2.8');
  await expect(app.figure('B').getByRole('status')).toContainText(
    /The 70–300 mm f\/4–5\.6 zoom opens to f\/[\d.]+ here; f\/2\.8 was asked\. Would do: use f\/[\d.]+/,
  );
});

test('up to four pictures hang, and are taken down again', async ({ app }) => {
  const hang = app.page.getByRole('button', { name: 'Hang another picture' });
  await hang.click();
  await hang.click();
  await expect(app.page.locator('[data-picture]')).toHaveCount(4);
  await expect(hang).toBeDisabled();
  await app.settled();
  for (const letter of ['A', 'B', 'C', 'D'] as const) await app.pixels(letter);
  await expect(app.handle('D')).toBeVisible();
  expect(await app.reading('nose_to_ear_ratio')).toHaveLength(6);

  await app.value('More of B').click();
  await app.press('Take this picture down');
  await expect(app.page.locator('[data-picture]')).toHaveCount(3);
  await expect(app.figure('B')).toHaveCount(0);
  await app.settled();
  await app.pixels('D');
  // The free letter is taken first.
  await hang.click();
  await expect(app.figure('B')).toBeVisible();
});

test('matching the look takes the other standpoint', async ({ quick: app }) => {
  await app.value('More of A').click();
  await app.press('Match the look of B');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBeCloseTo(2.4, 6);
});

test('feet and inches: shown and typed', async ({ quick: app }) => {
  await app.press('Light, room and kit');
  await app.choose('Units', 'feet and inches');
  // 2.4 m is 7 ft 10.49 in; the page writes half inches.
  await expect(app.value(STANDPOINT_B)).toHaveText('7 ft 10.5 in');
  await app.type(STANDPOINT_B, '6');
  await expect.poll(async () => (await app.picture('B')).standpoint).toBeCloseTo(6 * 0.3048, 9);
  await app.press('Light, room and kit');
});
