/** For everybody: assistive technology, the keyboard alone, narrow screens, touch, and a page at rest. */
import AxeBuilder from '@axe-core/playwright';
import type { Locator } from '@playwright/test';
import { demoSession } from '../../src/session/demo';
import { type App, expect, freshApp, test } from './fixture';

/** Serious and critical findings of WCAG 2.2 A and AA, each as rule and place. */
async function findings({ page }: App): Promise<string[]> {
  // Halfway from light to dark a colour is neither.
  await page.evaluate(() =>
    Promise.allSettled(document.getAnimations().map((each) => each.finished)),
  );
  const { violations, passes } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect(passes.length, 'rules that looked at something').toBeGreaterThan(10);
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`no serious finding of axe, ${colorScheme}`, async ({ quick: app }) => {
    await app.page.emulateMedia({ colorScheme });
    expect(await findings(app)).toEqual([]);
    await app.value('Standpoint A, from the eyes to the lens').click();
    await expect(app.slip()).toBeVisible();
    expect(await findings(app), 'with a slip open').toEqual([]);
    await app.closeSlips();
    await app.press('Save a still');
    await expect(app.slip()).toBeVisible();
    expect(await findings(app), 'with a sheet open').toEqual([]);
    await app.closeSlips();
    await app.press('Who sits');
    await app.press('Nose and mouth');
    await app.page.locator('[data-dimension="nose_breadth"]').waitFor();
    expect(await findings(app), 'with the sitter being shaped').toEqual([]);
    await app.value('Colour of the skin').click();
    await expect(app.slip()).toBeVisible();
    expect(await findings(app), 'with swatches open').toEqual([]);
    await app.closeSlips();
    await app.press('Light, room and kit');
    await app.value('Strength of the hair light').waitFor();
    expect(await findings(app), 'with the lights open').toEqual([]);
    await app.press('Light, room and kit');
    await app.page.emulateMedia({ colorScheme: null });
  });
}

/** Presses Tab until the focus is on an element; fails after more than a whole round. */
async function tabTo({ page }: App, wanted: Locator): Promise<void> {
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press('Tab');
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`Tab does not reach ${wanted}`);
}

test('the whole job is done by the keyboard alone', async ({ fresh: app }) => {
  await app.goto('?test=landmarks');
  const { keyboard } = app.page;
  const standpoint = async () => (await app.session()).pictures[1]?.standpoint;

  await tabTo(app, app.handle('B'));
  await expect(app.handle('B')).toBeFocused();
  const isMarked = await app
    .handle('B')
    .locator('.rail-focus')
    .evaluate(
      (mark) => getComputedStyle(mark).display !== 'none' && getComputedStyle(mark).opacity !== '0',
    );
  expect(isMarked).toBe(true);
  await keyboard.press('Shift+ArrowLeft');
  await expect.poll(standpoint).toBe(2.3);

  await tabTo(app, app.value('Standpoint A, from the eyes to the lens'));
  await keyboard.press('Enter');
  await expect(app.slip().getByRole('textbox')).toBeFocused();
  await keyboard.type('60 cm');
  await keyboard.press('Enter');
  await expect.poll(async () => (await app.session()).pictures[0]?.standpoint).toBe(0.6);
  // The focus is back where it came from.
  await expect(app.value('Standpoint A, from the eyes to the lens')).toBeFocused();

  await tabTo(app, app.value('Framing'));
  await keyboard.press('Enter');
  await expect(app.page.getByRole('option').filter({ hasText: /^Headshot/ })).toBeFocused();
  const framing = async () => (await app.session()).crop.framing;
  await keyboard.press('ArrowDown');
  const next = app.page.getByRole('option').filter({ hasText: /^Head and shoulders/ });
  await expect(next).toBeFocused();
  await keyboard.press('Enter');
  await expect.poll(framing).toBe('head-and-shoulders');

  await tabTo(app, app.value('outline of the other'));
  await keyboard.press('Space');
  await expect(app.figure('A').locator('path.over-outline')).toHaveCount(1);

  await tabTo(app, app.value('Play the move'));
  await tabTo(app, app.page.getByRole('slider', { name: 'Place in the move' }));
  await keyboard.press('End');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBeCloseTo(2.3, 9);

  await tabTo(app, app.value('Back to the start'));
  await keyboard.press('Enter');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBe(0.6);

  await tabTo(app, app.value('Save a still'));
  await keyboard.press('Enter');
  await tabTo(app, app.value('Save the PNG'));
  const width = app.slip().getByRole('textbox', { name: 'Width, pixels' });
  await width.focus();
  await keyboard.press('Control+a');
  await keyboard.type('320');
  const downloading = app.page.waitForEvent('download');
  await keyboard.press('Enter');
  expect((await downloading).suggestedFilename()).toMatch(/^standpoint-a-0\.60m-b-2\.30m\.png$/);
  await app.closeSlips();

  await keyboard.press('Control+z');
  await expect.poll(framing).toBe(demoSession().crop.framing);
});

/** Boxes of a scaled drawing are fractions of a pixel off. */
const ROUNDING = 0.01;

for (const width of [360, 390]) {
  test(`a phone of ${width} pixels: nothing scrolls sideways, targets are finger-sized`, async ({
    browser,
    baseURL,
  }) => {
    const app = await freshApp(browser, baseURL, {
      viewport: { width, height: 780 },
      hasTouch: true,
      isMobile: true,
    });
    await app.goto('?test=landmarks');
    const widths = await app.page.evaluate(() => ({
      content: document.documentElement.scrollWidth,
      window: window.innerWidth,
    }));
    expect(widths.content).toBeLessThanOrEqual(width);
    // A phone's browser widens its window for content that is too wide.
    expect(widths.window).toBe(width);
    await app.pixels('A', 1);
    await app.pixels('B', 1);

    for (const letter of ['A', 'B'] as const) {
      const sizes = await app
        .handle(letter)
        .locator('.rail-target')
        .evaluateAll((all) =>
          all.map((each) => {
            const box = each.getBoundingClientRect();
            return Math.min(box.width, box.height);
          }),
        );
      expect(Math.max(...sizes), `handle ${letter}`).toBeGreaterThan(44 - ROUNDING);
    }
    const small = () =>
      app.page.locator('button:visible').evaluateAll(
        (buttons, least) =>
          buttons
            .filter((button) => button.matches('.do, .toggle'))
            .filter((button) => button.getBoundingClientRect().height < least)
            .map((button) => button.textContent),
        44 - ROUNDING,
      );
    expect(await small(), 'acts lower than 44 pixels').toEqual([]);

    // A finger moves a handle, and the page does not scroll away below it.
    await app.handle('B').scrollIntoViewIfNeeded();
    const tab = await app.handle('B').locator('.rail-tab').boundingBox();
    if (!tab) throw new Error('no handle');
    const finger = await app.page.context().newCDPSession(app.page);
    const [x, y] = [tab.x + tab.width / 2, tab.y + tab.height / 2];
    const scrolled = await app.page.evaluate(() => window.scrollY);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: at, y }],
      });
    await touch('touchStart', x);
    for (let i = 1; i <= 5; i++) await touch('touchMove', x - 12 * i);
    await touch('touchEnd', x - 60);
    await expect.poll(async () => (await app.session()).pictures[1]?.standpoint).toBeLessThan(2.2);
    expect(await app.page.evaluate(() => window.scrollY)).toBe(scrolled);

    // Somebody is shaped by a finger, the pictures in sight.
    await app.press('Who sits');
    await app.press('Nose and mouth');
    const row = app.page.locator('[data-dimension="nose_breadth"]');
    await row.getByRole('slider').scrollIntoViewIfNeeded();
    const track = await row.locator('.dimension-track').boundingBox();
    if (!track) throw new Error('no slider');
    await app.page.touchscreen.tap(track.x + 0.8 * track.width, track.y + track.height / 2);
    await expect
      .poll(async () => (await app.session()).people[0].changes.nose_breadth ?? 0)
      .toBeGreaterThan(40);
    await expect(row.getByRole('button', { name: 'Nose breadth as measured' })).toBeVisible();
    expect(await small(), 'acts of the panel lower than 44 pixels').toEqual([]);
    const wall = await app.page.locator('.wall').boundingBox();
    expect(wall?.y, 'the pictures stay at the top').toBeGreaterThan(-1);
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await app.page.context().close();
  });
}

test('a page at rest draws nothing', async ({ app }) => {
  await app.settled();
  const before = await app.renders();
  expect(before).toBeGreaterThan(1);
  // The one wait for a length of time: that nothing happens can only be seen by watching for a while.
  await app.page.waitForTimeout(2000);
  expect(await app.renders()).toBe(before);
});
