/** The plan in a real browser: from an empty kit to the printed card, by hand, by keys, and with hostile input. */
import AxeBuilder from '@axe-core/playwright';
import { demoSession } from '../../src/session/demo';
import { type App, answered, expect, GREAT_HALL, OF_THIRTY, openPlan, test } from './plan-page';

const LENS_70_300 = '70–300 mm f/4–5.6 zoom';

const framing = (app: App, name: string) =>
  app.page.getByRole('region', { name, exact: true }).locator('.works-row');

const row = (app: App, name: string, lens: string) =>
  framing(app, name).filter({ has: app.page.locator('.works-pick', { hasText: lens }) });

test('a chosen result hangs in the picture, and Compare, rail and readings follow; undo takes it back', async ({
  fresh: app,
}) => {
  await openPlan(app);
  const headshot = row(app, 'Headshot', LENS_70_300);
  await expect(headshot).toContainText('Nearer, the nose gains more than 8 %');
  await headshot.getByRole('button').first().click();
  const session = await app.session();
  const hung = session.pictures.find(({ letter }) => letter === 'B');
  expect(hung?.lens).toBe('70-300-f4-5-6-zoom');
  await expect(headshot.getByRole('button').first()).toHaveAttribute('aria-pressed', 'true');
  await expect(app.page.getByRole('heading', { name: /^Headshot from/ })).toBeVisible();

  await app.page.getByRole('link', { name: 'Compare' }).click();
  await app.page.locator('main.compare').waitFor();
  await expect(app.handle('B')).toHaveAttribute('aria-valuenow', String(hung?.standpoint));
  await app.undo().click();
  expect((await app.session()).pictures).toEqual(demoSession().pictures);
});

test('from an empty kit to the printed card', async ({ fresh: app }) => {
  const demo = demoSession();
  const [kit] = demo.kits;
  await openPlan(app, { ...demo, kits: [{ ...kit, lenses: [] }] });
  await expect(app.page.getByText('The kit holds no lens yet.')).toBeVisible();
  await app.press('Kit');
  await app.choose('a lens of a usual class', '85 mm f/1.8');
  await app.choose('a lens of a usual class', '24–120 mm f/4');
  await answered(app);
  await expect(row(app, 'Half-length', '24–120')).toContainText('Farther');
  await row(app, 'Half-length', '24–120').getByRole('button').first().click();

  await app.press('Cards for the day');
  const card = app.page.getByRole('article').filter({ hasText: 'Half-length' }).last();
  await expect(card).toContainText('24–120 mm f/4 zoom, set to');
  await expect(card).toContainText('On the tape, from the sensor mark');
  await expect(card).toContainText('Weigh every stand');
  await app.page.emulateMedia({ media: 'print' });
  await expect(card).toBeVisible();
  await expect(app.page.getByRole('heading', { name: 'From above' })).toBeHidden();
  await expect(app.page.getByRole('button', { name: 'Print the cards' })).toBeHidden();
});

test('a lens typed by its figures, and one measured with a tape', async ({ fresh: app }) => {
  await openPlan(app);
  await app.press('Kit');
  await app.press('type a lens by its figures');
  const field = (name: RegExp) => app.slip().getByRole('textbox', { name });
  await field(/^Longest focal/).fill('20 mm');
  await app.slip().getByRole('button', { name: 'Put it in the kit' }).click();
  await expect(app.slip()).toContainText('shorter than the shortest');
  await field(/^Longest focal/).fill('135 mm');
  await field(/^Shortest focal/).fill('135 mm');
  await app.slip().getByRole('button', { name: 'Put it in the kit' }).click();
  expect((await app.session()).ownLenses).toHaveLength(1);

  await app.value('Measure 70–300').click();
  await field(/^Focal length set/).fill('150 mm');
  // The worked example of the formula H = k (D - e): see tests/optics/measure-lens.
  await field(/^Nearer distance/).fill('2 m');
  await field(/^What fills the long side/)
    .first()
    .fill('0.435 m');
  await field(/^Farther distance/).fill('3 m');
  await field(/^What fills the long side/)
    .last()
    .fill('0.668 m');
  await expect(app.slip()).toContainText('13.3');
  await field(/^Distance it was focused at/).fill('2.5 m');
  await app.slip().getByRole('button', { name: 'Use the lens so' }).click();
  const { ownLenses } = await app.session();
  expect(ownLenses.at(-1)?.entrancePupil).toBeCloseTo(0.133, 3);
  expect(ownLenses.at(-1)?.measured?.focusedAt).toBe(2.5);
});

test('what stands in the drawing from above is dragged and moved by keys, as one step each', async ({
  fresh: app,
}) => {
  await openPlan(app);
  const above = app.page.getByRole('region', { name: 'From above' });
  const camera = above.getByRole('slider', { name: 'Standpoint B' });
  const before = (await app.session()).pictures[1]?.standpoint ?? 0;
  await camera.focus();
  await app.page.keyboard.press('ArrowRight');
  await expect
    .poll(async () => (await app.session()).pictures[1]?.standpoint)
    .toBeCloseTo(before + 0.01, 6);
  await app.undo().click();

  const box = await camera.boundingBox();
  if (!box) throw new Error('the camera has no place');
  await app.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await app.page.mouse.down();
  await app.page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 5 });
  await app.page.mouse.up();
  const moved = (await app.session()).pictures[1]?.standpoint ?? 0;
  expect(moved).toBeGreaterThan(before + 0.05);
  await app.undo().click();
  expect((await app.session()).pictures[1]?.standpoint).toBe(before);

  const side = app.page.getByRole('region', { name: 'From the side' });
  const backdrop = side.getByRole('slider', { name: /[Bb]ackdrop/ }).first();
  await backdrop.focus();
  await app.page.keyboard.press('ArrowRight');
  await expect.poll(app.session).not.toEqual(demoSession());
});

test('a room too small for everything names what is in the way and what would do', async ({
  fresh: app,
}) => {
  const demo = demoSession();
  const room = { ...demo.room, length: 2, width: 1.6, sitterBefore: 0.6, obstacles: [] };
  await openPlan(app, { ...demo, room });
  const rows = app.page.locator('.works-row');
  await expect(rows.filter({ has: app.page.locator('.works-yes') })).toHaveCount(0);
  await expect(rows.filter({ hasText: 'Would work:' }).first()).toBeVisible();
  const remedy = rows.locator('.works-why').getByRole('button').first();
  await remedy.click();
  await answered(app);
  await expect(rows.filter({ has: app.page.locator('.works-yes') }).first()).toBeVisible();
  await app.undo().click();
  await answered(app);
  await expect(rows.filter({ has: app.page.locator('.works-yes') })).toHaveCount(0);
});

test('a group of 30 is answered', async ({ fresh: app }) => {
  const demo = demoSession();
  const models = Array.from({ length: 10 }, (_, i) => (i % 2 ? 'adult-man' : 'adult-woman'));
  const wanted = {
    id: 'wanted-9',
    framing: null,
    frameHeight: null,
    orientation: 'landscape',
    eyesAt: 0.4,
    cameraHeight: 0,
    of: 'group',
  } as const;
  await openPlan(app, {
    ...demo,
    room: { ...demo.room, ...GREAT_HALL },
    plan: {
      ...demo.plan,
      asked: { ...demo.plan.asked, ...OF_THIRTY },
      wanted: [wanted],
      group: {
        rows: [
          { place: 'seated', models, spacing: 0.6 },
          { place: 'standing', models, spacing: 0.6 },
          { place: 'step', models, spacing: 0.6 },
        ],
        rowSpacing: 0.7,
        step: 0.2,
        curve: 'straight',
      },
    },
  });
  await expect(app.page.locator('.works-yes').first()).toBeVisible();
  await app.page.locator('.works-pick:not([disabled])').first().click();
  await expect(app.page.locator('.works-row.chosen')).toHaveCount(1);
});

test('hostile numbers are refused where they are typed, and change nothing', async ({
  fresh: app,
}) => {
  await openPlan(app);
  const before = await app.session();
  for (const label of ['Length of the room', 'Width of the backdrop', 'Height of the ceiling']) {
    for (const text of ['-3', '1e99', 'NaN', '2,4o m', '0', '∞', '']) {
      await app.value(label).click();
      await app.slip().getByRole('textbox').fill(text);
      await app.page.keyboard.press('Enter');
      await expect(app.slip().locator('.slip-wrong')).toBeVisible();
      await app.closeSlips();
    }
  }
  for (const text of ['900 %', '-5 %', 'x']) {
    await app.value('The most that the nose may gain').click();
    await app.slip().getByRole('textbox').fill(text);
    await app.page.keyboard.press('Enter');
    await expect(app.slip().locator('.slip-wrong')).toBeVisible();
    await app.closeSlips();
  }
  expect(await app.session()).toEqual(before);
});

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const) {
  test(`no serious finding of axe and nothing wider than the page at ${width} px`, async ({
    fresh: app,
  }) => {
    await app.page.setViewportSize({ width, height });
    await openPlan(app);
    await app.press('Kit');
    await app.press('Cards for the day');
    await app.page.getByRole('article').first().waitFor();
    const { violations } = await new AxeBuilder({ page: app.page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    const serious = violations.filter(
      ({ impact }) => impact === 'serious' || impact === 'critical',
    );
    expect(
      serious.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`)),
    ).toEqual([]);
    const spare = await app.page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(spare).toBeLessThanOrEqual(0);
  });
}
