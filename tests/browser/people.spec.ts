/** Who sits: chosen, dressed, shaped and set beside somebody else, as a person does it. */
import { demoSession } from '../../src/session/demo';
import { castOf, leadsOf, models, must } from './expected';
import { type App, expect, test } from './fixture';

const open = async (app: App) => {
  const trigger = app.page.getByRole('button', { name: 'Who sits', exact: true });
  if ((await trigger.getAttribute('aria-expanded')) !== 'true') await trigger.click();
  await app.page.locator('.people').waitFor();
};
const close = (app: App) => app.page.getByRole('button', { name: 'Who sits', exact: true }).click();
const group = (app: App, name: string) =>
  app.page.getByRole('button', { name, exact: true }).click();
const row = (app: App, name: string) => app.page.locator(`[data-dimension="${name}"]`);

/** The first person as shown now. */
const dimensions = (app: App) =>
  app.page.evaluate(() => window.standpoint?.cast['1'].dimensions ?? null);
/** Names of the first person's meshes. */
const meshes = (app: App) =>
  app.page.evaluate(() => window.standpoint?.cast['1'].meshes.map(({ name }) => name) ?? []);

test('a typed dimension shapes the sitter exactly, tells its percentile, and is undone', async ({
  quick: app,
}) => {
  await open(app);
  await group(app, 'Nose and mouth');
  const nose = row(app, 'nose_breadth');
  await expect(nose).toContainText('50th percentile of women, NIOSH 2003');
  await app.type('Nose breadth', '41 mm');
  await expect.poll(async () => (await dimensions(app))?.nose_breadth).toBe(41);
  // Between the 50th (35.5 mm) and 95th percentile of the survey's table.
  await expect(nose).toContainText(/8\d(st|nd|rd|th) percentile of women/);
  const { alare_left, alare_right } = must(
    await app.page.evaluate(() => window.standpoint?.cast['1'].landmarks),
  );
  expect(alare_left[0] - alare_right[0]).toBeCloseTo(0.041, 4);
  await nose.getByRole('button', { name: 'Nose breadth as measured' }).click();
  const own = must(models.sitters.get('adult-woman')).dimensions.nose_breadth.mm;
  await expect.poll(async () => (await dimensions(app))?.nose_breadth).toBe(own);
  await app.undo().click();
  await expect.poll(async () => (await dimensions(app))?.nose_breadth).toBe(41);
  await close(app);
});

test('a slider runs by the keyboard, half a millimetre at a time', async ({ quick: app }) => {
  await open(app);
  await group(app, 'Ears');
  const slider = row(app, 'ear_protrusion').getByRole('slider');
  const before = must(await dimensions(app)).ear_protrusion;
  await slider.focus();
  for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowRight');
  await expect
    .poll(async () => (await app.session()).people[0].changes.ear_protrusion)
    .toBeGreaterThan(before + 1.4);
  await expect
    .poll(async () => (await dimensions(app))?.ear_protrusion)
    .toBe((await app.session()).people[0].changes.ear_protrusion);
  await app.press('All dimensions as measured');
  expect((await app.session()).people[0].changes).toEqual({});
  await close(app);
});

test('what no person can have is named where it stands, and changes nothing', async ({
  quick: app,
}) => {
  await open(app);
  await group(app, 'Body');
  await app.type('Chest height', '1.00 m');
  await group(app, 'Neck and shoulders');
  const before = await app.session();
  await app.type('Shoulder height', '0.95 m');
  await expect(row(app, 'acromial_height').getByRole('status')).toContainText(/cannot be/);
  expect(await app.session()).toEqual(before);
  await close(app);
});

test('hair, glasses and colours are the sitter’s own until they are changed', async ({
  quick: app,
}) => {
  await open(app);
  await app.choose('How the hair is worn', 'short');
  await expect.poll(async () => (await meshes(app)).join()).toContain('hair-short');
  await app.choose('Colour of the skin', 'deep brown');
  expect((await app.session()).people[0].looks).toMatchObject({
    hair: 'short',
    colours: { skin: '#6a4530' },
  });
  await app.value('Colour of the eyes').click();
  await app.slip().getByRole('textbox').fill('5b7');
  await app.page.keyboard.press('Enter');
  await expect
    .poll(async () => (await app.session()).people[0].looks.colours?.eyes)
    .toBe('#55bb77');
  await app.press('Looks as the sitter’s own');
  expect((await app.session()).people[0].looks).toEqual({});
  await close(app);
});

test('the eyes meet each picture’s lens: nearer, the pupils come closer together', async ({
  quick: app,
}) => {
  const cast = await castOf(demoSession());
  const [near, far] = leadsOf(demoSession(), cast);
  const shown = await app.page.evaluate(() =>
    window.standpoint?.pictures.map(({ subjects }) => subjects[0].sitter.landmarks),
  );
  expect(must(shown)[0]?.pupil_left).toEqual(must(near).landmarks.pupil_left);
  expect(must(shown)[1]?.pupil_left).toEqual(must(far).landmarks.pupil_left);
  // Each eye turns about a point 10.5 mm behind its pupil until it looks at the lens, 0.40 m off.
  const rest = cast['1'].landmarks.pupil_left;
  const angle = Math.atan2(rest[0], 0.4 - (rest[2] - 0.0105));
  const turned = rest[0] - 0.0105 * Math.sin(angle);
  expect(must(near).landmarks.pupil_left[0]).toBeCloseTo(turned, 5);
  await app.press(/^All \d+ readings/);
  const [a, b] = await app.reading('pupil_distance_mm');
  expect(Number.parseFloat(must(a))).toBeLessThan(Number.parseFloat(must(b)));
  await app.press('The main readings');
  await app.choose('Where the eyes look', 'eyes straight ahead');
  await expect
    .poll(() =>
      app.page.evaluate(
        () => window.standpoint?.pictures[0]?.subjects[0].sitter.landmarks.pupil_left,
      ),
    )
    .toEqual(rest);
});

test('a second person takes a picture, matches the look, and stands beside the first', async ({
  quick: app,
}) => {
  await open(app);
  await app.choose('Second person', 'Adult man, 50th');
  await expect
    .poll(() => app.page.evaluate(() => window.standpoint?.pictures[1]?.subjects[0].person))
    .toBe('2');
  await expect(app.page.locator('.readings thead')).toContainText('woman');
  await expect(app.page.locator('.readings thead')).toContainText('man');
  await expect(
    app.page.getByText('Two things differ: the sitter and the standpoint.'),
  ).toBeVisible();

  await app.press('Stand there');
  await expect
    .poll(async () => {
      const [woman, man] = await app.reading('nose_to_ear_ratio');
      return woman === man;
    })
    .toBe(true);

  await app.choose('Who is in B', 'the woman and the man');
  await expect
    .poll(() => app.page.evaluate(() => window.standpoint?.pictures[1]?.subjects.length))
    .toBe(2);
  // Three columns, the change, and the sentence below.
  await expect.poll(async () => (await app.reading('nose_to_ear_ratio')).length).toBe(5);
  await app.press('Take the second person away');
  await expect
    .poll(() => app.page.evaluate(() => window.standpoint?.pictures[1]?.subjects.length))
    .toBe(1);
  await close(app);
});

test('pressing what is chosen already closes the list', async ({ quick: app }) => {
  await app.value('What holds the crop equal').click();
  await app.page
    .getByRole('option')
    .filter({ hasText: /^frame height/ })
    .click();
  await expect(app.page.getByRole('dialog')).toHaveCount(0);
});

test('a typed title is kept when Escape closes its slip', async ({ quick: app }) => {
  await app.value('Session').click();
  await app.slip().getByRole('textbox').fill('Spring, 3 sitters');
  await app.page.keyboard.press('Escape');
  await expect.poll(async () => (await app.session()).title).toBe('Spring, 3 sitters');
  await expect(app.undo()).toHaveAccessibleName('Undo: Title changed');
});
