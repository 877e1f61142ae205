/** The plan against hostile numbers: in every value of its sentences, and in its kit and group. */
import { type App, answered, expect, openPlan, test } from './plan-page';

const HOSTILE = ['', 'abc', '-1', '1e9', 'NaN', '1/0', '9'.repeat(400)] as const;

/** A value's slip keeps each text open, with the reason below it. */
async function refuses(app: App, label: string): Promise<void> {
  const value = app.value(label).first();
  await expect(value, label).toBeVisible();
  await value.click();
  const field = app.slip().getByRole('textbox');
  for (const text of HOSTILE) {
    await field.fill(text);
    await app.page.keyboard.press('Enter');
    await expect(app.slip().locator('.slip-wrong'), `${label}: ${text}`).toBeVisible();
  }
  await app.closeSlips();
}

/** A form of figures tells at each field that is wrong why; `optional` of them may be empty. */
async function formRefuses(app: App, send: string, optional: number): Promise<void> {
  const fields = app.slip().getByRole('textbox');
  const count = await fields.count();
  expect(count).toBeGreaterThan(optional);
  for (const text of HOSTILE) {
    for (let i = 0; i < count; i++) await fields.nth(i).fill(text);
    await app.slip().getByRole('button', { name: send }).click();
    await expect(app.slip().locator('.field .slip-wrong'), `${send}: ${text}`).toHaveCount(
      text === '' ? count - optional : count,
    );
  }
  await app.closeSlips();
}

test('every value of the sentences refuses what is no number of its kind', async ({
  fresh: app,
}) => {
  test.slow();
  await openPlan(app);
  const before = await app.session();
  for (const label of [
    'Length of the room',
    'Width of the room',
    'Height of the ceiling',
    'Width of the backdrop',
    'Backdrop off the wall',
    'Upper edge of the backdrop',
    'Sitter’s eyes before the backdrop',
    'The most that the nose may gain',
    'Backdrop beyond the frame',
  ])
    await refuses(app, label);
  expect(await app.session()).toEqual(before);
});

test('the kit refuses it: a body’s pixels, a lens typed, a lens measured', async ({
  fresh: app,
}) => {
  test.slow();
  await openPlan(app);
  const before = await app.session();
  await app.press('Kit');
  await refuses(app, 'Megapixels of the body');
  await app.press('type a lens by its figures');
  // Largest magnification and entrance pupil.
  await formRefuses(app, 'Put it in the kit', 2);
  await app.value('Measure 70–300').click();
  // The distance it was focused at.
  await formRefuses(app, 'Use the lens so from now on', 1);
  expect(await app.session()).toEqual(before);
});

test('a group refuses it', async ({ fresh: app }) => {
  test.slow();
  await openPlan(app);
  await app.press('Group');
  await app.press('Begin with a group of twelve, in two rows');
  await app.press('Add a row behind');
  await answered(app);
  const before = await app.session();
  for (const label of ['From head to head in the row', 'From row to row', 'Height of one step'])
    await refuses(app, label);
  expect(await app.session()).toEqual(before);
});
