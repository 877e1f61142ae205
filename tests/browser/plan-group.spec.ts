/** A group of thirty built by hand on the plan's page, and how soon it is answered. */
import { demoSession } from '../../src/session/demo';
import { type App, answered, expect, GREAT_HALL, OF_THIRTY, openPlan, test } from './plan-page';

const PEOPLE = 30;

const countIn = async (app: App): Promise<number> =>
  (await app.session()).plan.group?.rows.reduce((sum, { models }) => sum + models.length, 0) ?? 0;

/** So many more of the first model offered, in the row of that place. */
async function addTo(app: App, row: number, more: number): Promise<void> {
  await app.value('Who is in the row').nth(row).click();
  const one = app
    .slip()
    .getByRole('button', { name: /^One more: / })
    .first();
  for (let i = 0; i < more; i++) await one.click();
  await app.closeSlips();
}

test('thirty people are put together in the panel, framed and answered', async ({ fresh: app }) => {
  const demo = demoSession();
  await openPlan(app, {
    ...demo,
    room: {
      ...demo.room,
      ...GREAT_HALL,
      sitterBefore: 3.5,
    },
    plan: { ...demo.plan, asked: { ...demo.plan.asked, ...OF_THIRTY } },
  });
  await app.press('Group');
  await app.press('Begin with a group of twelve, in two rows');
  await app.press('Add a row behind');
  expect(await countIn(app)).toBe(16);
  await addTo(app, 0, 4);
  await addTo(app, 1, 4);
  await addTo(app, 2, 5);
  expect(await countIn(app)).toBe(PEOPLE - 1);
  await answered(app);

  const group = app.page.getByRole('region', { name: 'Own frame, group', exact: true });
  await app.value('Who is in the row').nth(2).click();
  const last = app
    .slip()
    .getByRole('button', { name: /^One more: / })
    .first();
  const before = await app.page.locator('main.plan').evaluate((main) => {
    // When the page is first answered without remedies, and when with them.
    const times = { asked: 0, verdicts: 0, whole: 0 };
    Object.assign(window, { planTimes: times });
    new MutationObserver(() => {
      const now = performance.now();
      const isBusy = main.getAttribute('aria-busy') === 'true';
      if (isBusy && times.asked === 0) times.asked = now;
      if (times.asked === 0) return;
      const isSeeking = main.textContent?.includes('is being looked for') ?? false;
      if (times.verdicts === 0 && (isSeeking || !isBusy)) times.verdicts = now;
      if (!isBusy && times.whole === 0) times.whole = now;
    }).observe(main, { attributes: true, childList: true, subtree: true, characterData: true });
    return performance.now();
  });
  await last.click();
  await expect(app.slip()).toContainText(`The group holds ${PEOPLE} people at the most.`);
  await expect(last).toBeDisabled();
  await app.closeSlips();
  await answered(app);
  const times = await app.page.evaluate(
    () => (window as unknown as { planTimes: Record<string, number> }).planTimes,
  );
  test.info().annotations.push({
    type: 'asked, verdicts, whole: milliseconds after the page was asked',
    description: [times.asked, times.verdicts, times.whole]
      .map((time) => Math.round((time ?? 0) - before))
      .join(', '),
  });
  expect(await countIn(app)).toBe(PEOPLE);

  await expect(group.locator('.works-yes').first()).toBeVisible();
  await group.locator('.works-pick:not([disabled])').first().click();
  await expect(app.page.locator('.works-row.chosen')).toHaveCount(1);
});
