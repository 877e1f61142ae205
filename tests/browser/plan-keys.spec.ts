/** The plan by keys alone, and by hand in both of its drawings. */
import { demoSession } from '../../src/session/demo';
import { type App, answered, expect, must, openPlan, test } from './plan-page';

const ZOOM = /^24–120 mm f\/4/;

/** What a screen reader would call what has the focus. */
const focused = (app: App): Promise<string> =>
  app.page.evaluate(() => {
    const found = document.activeElement;
    return found?.getAttribute('aria-label') ?? found?.textContent ?? '';
  });

/** Presses a key until what has the focus has such a name. */
const pressUntil = (app: App, key: 'Tab' | 'ArrowDown', name: RegExp): Promise<void> =>
  expect(async () => {
    await app.page.keyboard.press(key);
    expect(await focused(app)).toMatch(name);
  }).toPass({ intervals: [0] });

test('from an empty kit to the printed card by keys alone', async ({ fresh: app }) => {
  const demo = demoSession();
  await openPlan(app, { ...demo, kits: [{ ...demo.kits[0], lenses: [] }] });
  const { keyboard } = app.page;
  await pressUntil(app, 'Tab', /^Kit$/);
  await keyboard.press('Enter');
  await pressUntil(app, 'Tab', /^a lens of a usual class/);
  await keyboard.press('Enter');
  await app.page.getByRole('option').first().waitFor();
  await pressUntil(app, 'ArrowDown', ZOOM);
  await keyboard.press('Enter');
  await expect.poll(async () => (await app.session()).kits[0].lenses).toEqual(['24-120-f4-zoom']);
  await expect(app.slip()).toBeHidden();
  await answered(app);

  await pressUntil(app, 'Tab', /24–120 mm f\/4 zoom/);
  await keyboard.press('Enter');
  await expect(app.page.locator('.works-row.chosen')).toHaveCount(1);
  await expect
    .poll(async () => (await app.session()).pictures.find(({ letter }) => letter === 'B')?.lens)
    .toBe('24-120-f4-zoom');

  await pressUntil(app, 'Tab', /^Cards for the day$/);
  await keyboard.press('Enter');
  const card = app.page.getByRole('article').filter({ hasText: 'Half-length' }).last();
  await expect(card).toContainText('24–120 mm f/4 zoom, set to');
  // The browser's own dialog of printing would bar the page: that it is asked for is what can be seen.
  const printed = app.page.evaluate(
    () =>
      new Promise<boolean>((asked) => {
        window.print = () => asked(true);
      }),
  );
  await pressUntil(app, 'Tab', /^Print the cards$/);
  await keyboard.press('Enter');
  expect(await printed).toBe(true);
});

/** Drags a grip by pixels, and undoes it. */
async function drag(app: App, region: string, grip: RegExp, [dx, dy]: readonly [number, number]) {
  const what = `${region}, ${grip}`;
  const group = app.page
    .getByRole('region', { name: region })
    .locator('.plan-grip')
    .filter({ has: app.page.getByRole('slider', { name: grip }) });
  const target = group.locator('.plan-target').first();
  await target.scrollIntoViewIfNeeded();
  const before = await app.session();
  const box = must(await target.boundingBox(), what);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  await app.page.mouse.move(x + dx, y + dy, { steps: 5 });
  await expect(group, what).toHaveAttribute('data-dragging', 'true');
  await app.page.mouse.up();
  expect(await app.session(), what).not.toEqual(before);
  await app.undo().click();
  expect(await app.session(), `${what}, undone`).toEqual(before);
}

for (const region of ['From above', 'From the side'])
  test(`camera, sitter and backdrop are dragged, ${region.toLowerCase()}, and each is one step to undo`, async ({
    fresh: app,
  }) => {
    await openPlan(app);
    await drag(app, region, /^Standpoint B$/, [40, 0]);
    await drag(app, region, /^Sitter before/, [20, 0]);
    await drag(app, region, /^Backdrop$/, [15, 0]);
  });
