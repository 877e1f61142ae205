/** The plan against hostile numbers in every value of its sentences. */
import { expect, openPlan, test } from './plan-page';

const HOSTILE = ['', 'abc', '-1', '1e9', 'NaN', '1/0', '9'.repeat(400)] as const;

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
  ]) {
    const value = app.value(label);
    await expect(value.first(), label).toBeVisible();
    await value.first().click();
    const field = app.slip().getByRole('textbox');
    for (const text of HOSTILE) {
      await field.fill(text);
      await app.page.keyboard.press('Enter');
      await expect(app.slip().locator('.slip-wrong'), `${label}: ${text}`).toBeVisible();
    }
    await app.closeSlips();
  }
  expect(await app.session()).toEqual(before);
});
