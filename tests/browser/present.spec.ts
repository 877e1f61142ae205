/** The talk: nothing that edits is seen, no answer is given away, and a remote's two keys run it. */
import AxeBuilder from '@axe-core/playwright';
import { gainAgainst } from '../../src/readings/compare';
import { formatPercent } from '../../src/readings/format';
import { comparedOf } from '../../src/session/comparison';
import { demoSession } from '../../src/session/demo';
import type { Comparison, Session } from '../../src/session/types';
import { expectedOf, must } from './expected';
import { type App, expect, test, VIEWPORT } from './fixture';

/** The demo with a move that is soon over. */
const QUICK: Session = { ...demoSession(), play: { from: 'A', to: 'B', seconds: 0.5 } };

const kept = (id: string, change: Partial<Comparison> = {}): Comparison => ({
  id,
  name: `Kept at 0.40 m, ${id}`,
  presented: true,
  asks: false,
  ...comparedOf(QUICK),
  ...change,
});

/** A headless browser has no screen to fill and does not answer: what the page asks for is played here. */
async function withScreen({ page }: App): Promise<void> {
  await page.addInitScript(() => {
    let filled: Element | null = null;
    const fill = (element: Element | null) => {
      filled = element;
      document.dispatchEvent(new Event('fullscreenchange'));
    };
    Object.defineProperty(Document.prototype, 'fullscreenElement', { get: () => filled });
    Element.prototype.requestFullscreen = async function () {
      fill(this);
    };
    Document.prototype.exitFullscreen = async () => fill(null);
  });
}

const isFullScreen = ({ page }: App): Promise<boolean> =>
  page.evaluate(() => document.fullscreenElement !== null);

async function start(app: App, session: Session = QUICK): Promise<void> {
  await withScreen(app);
  await app.goto('?test=landmarks');
  await app.use(session);
}

const talk = ({ page }: App) => page.getByRole('main');
const said = (app: App) => talk(app).locator('[aria-live="polite"]');
const number = (app: App) => app.page.getByRole('button', { name: /keys and acts/ });

async function present(app: App): Promise<void> {
  await app.press('Present');
  await app.figure('B').and(app.page.locator('.present *')).waitFor();
  await app.settled();
}

test('a kept comparison is asked, answered and played, and nothing tells before', async ({
  fresh: app,
}) => {
  await start(app);
  const { keyboard } = app.page;
  await app.press('Kept');
  await app.press('Keep this comparison');
  await app.value('Before .* is told, the class is asked').click();
  await expect.poll(async () => (await app.session()).comparisons[0]?.asks).toBe(true);
  await present(app);
  expect(await isFullScreen(app)).toBe(true);

  await expect(said(app)).toHaveText('Which picture was taken from nearer?');
  await expect(app.page.getByRole('banner')).toHaveCount(0);
  await expect(app.page.getByRole('navigation')).toHaveCount(0);
  await expect(app.page.locator('input, select, textarea, .setup, .rail-box, table')).toHaveCount(
    0,
  );

  /** All that can be read or heard: text, accessibility tree, names and titles. */
  const told = async () =>
    [
      await app.page.content(),
      await app.page.locator('body').ariaSnapshot(),
      await app.page.title(),
    ].join('\n');
  const NUMBERS = /\d\s?(m|mm|cm|%)\b|[02]\.40/;
  const body = async () =>
    (await told()).replace(/<head>.*<\/head>/s, '').replace(/ style="[^"]*"/g, '');
  expect(await body()).not.toMatch(NUMBERS);
  // Neither the numbers nor the move come before the answer.
  await keyboard.press('n');
  await keyboard.press('m');
  await keyboard.press('Enter');
  expect((await app.picture('A')).standpoint).toBe(0.4);
  expect(await body()).not.toMatch(NUMBERS);
  await expect(app.page.getByRole('button', { name: /Play the move|numbers/ })).toHaveCount(0);

  for (const letter of ['a', 'a', 'b', 'b']) await keyboard.press(letter);
  await keyboard.press('Backspace');
  await expect(app.page.getByRole('status').filter({ hasText: '3 answers' })).toBeVisible();
  await keyboard.press(' ');
  const [a, b] = await expectedOf(QUICK);
  const gain = must(gainAgainst(must(a).measures, must(b).measures));
  await expect(said(app)).toContainText(
    `A. The crop is equal, yet the nose is ${formatPercent(gain)} larger against the ears. Distance did that; the lens only kept the frame.`,
  );
  await expect(said(app)).toContainText('The class: A 2, B 1.');
  await expect(app.figure('A')).toContainText('0.40 m away');
  await expect(app.figure('B')).toContainText('2.40 m away');
  await expect(app.figure('B')).not.toContainText('lens');
  await keyboard.press('n');
  await expect(app.figure('B')).toContainText(/1\d\d\.\d mm lens/);

  await keyboard.press('m');
  await expect(said(app)).toContainText('A goes to where B stands. The crop is held.');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBe(2.4);
  await expect(app.figure('A')).toContainText('2.40 m away');
  await keyboard.press('Enter');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBe(0.4);
  await expect(said(app)).toContainText('A. The crop is equal');

  await keyboard.press('Control+z');
  await keyboard.press('Escape');
  await expect(app.page.getByRole('banner')).toBeVisible();
  expect(await isFullScreen(app)).toBe(false);
  expect(new URL(app.page.url()).hash).toBe('#compare');
  expect((await app.session()).comparisons[0]?.asks, 'nothing was undone in the talk').toBe(true);
});

test('a remote goes through the slides and darkens them; leaving returns to where one was', async ({
  fresh: app,
}) => {
  const far = QUICK.pictures.map((each) => ({ ...each, standpoint: each.standpoint + 0.2 }));
  const other = { ...must(QUICK.people[0]), model: 'adult-man' };
  await start(app, {
    ...QUICK,
    comparisons: [
      kept('one', { asks: true }),
      kept('left out', { presented: false }),
      kept('two', { name: 'Two steps', pictures: far, people: [other] }),
      kept('three'),
    ],
  });
  await app.page.getByRole('link', { name: 'Handout' }).click();
  await present(app);
  const { keyboard } = app.page;
  const reads = async (place: string, sentence: string | RegExp) => {
    await expect(number(app)).toHaveText(place);
    await expect(said(app)).toHaveText(sentence);
  };
  await reads('1 of 3', /^Which/);
  await keyboard.press('PageDown');
  await reads('1 of 3', /^A\. The crop/);
  await keyboard.press('PageDown');
  await reads('2 of 3', 'Two steps');
  await app.settled();
  expect((await app.picture('A')).standpoint).toBeCloseTo(0.6, 9);
  await app.pixels('A', 1);
  await keyboard.press('PageDown');
  await reads('3 of 3', 'The same crop from two standpoints.');
  await keyboard.press('PageDown');
  await reads('3 of 3', 'The same crop from two standpoints.');
  await keyboard.press('PageUp');
  await reads('2 of 3', 'Two steps');
  await keyboard.press('1');
  await reads('1 of 3', /^Which/);

  await keyboard.press('.');
  const dark = app.page.getByRole('status').filter({ hasText: 'The screen is dark' });
  await expect(dark).toHaveCSS('background-color', 'rgb(0, 0, 0)');
  expect(await dark.boundingBox()).toEqual({ x: 0, y: 0, ...VIEWPORT });
  await keyboard.press('PageDown');
  await expect(dark).toHaveCount(0);
  await reads('1 of 3', /^Which/);

  // Presses on the right half go on, on the left half back.
  const { width, height } = VIEWPORT;
  await app.page.mouse.click(0.9 * width, 0.5 * height);
  await reads('1 of 3', /^A\. The crop/);
  await app.page.mouse.click(0.1 * width, 0.5 * height);
  await reads('1 of 3', /^Which/);

  // The browser's own Escape ends the full screen without a key for the page.
  await app.page.evaluate(() => document.exitFullscreen());
  await expect(app.page.getByRole('banner')).toBeVisible();
  expect(new URL(app.page.url()).hash).toBe('#handout');
});

test('a screen measured by a card tells where to see each picture from', async ({ fresh: app }) => {
  await start(app);
  await present(app);
  const { keyboard } = app.page;
  await keyboard.press('n');
  await expect(said(app)).not.toContainText('perspective');
  await keyboard.press('c');
  const slider = app.slip().getByRole('slider');
  await expect(slider).toBeFocused();
  const card = app.page.locator('.measure-card');
  const before = must(await card.boundingBox());
  // ISO/IEC 7810, format ID-1: 85.60 mm by 53.98 mm.
  expect(before.width / before.height).toBeCloseTo(85.6 / 53.98, 2);
  for (let i = 0; i < 4; i++) await keyboard.press('ArrowRight');
  await expect
    .poll(async () => must(await card.boundingBox()).width)
    .toBeCloseTo(before.width + 2, 0);
  await app.type('All that is seen here', '1.44 m');
  // A millimetre a pixel.
  await expect.poll(async () => must(await card.boundingBox()).width).toBeCloseTo(85.6, 1);
  await app.slip().getByRole('button', { name: 'Close' }).click();
  await expect(app.slip()).toHaveCount(0);

  const height = must(await app.figure('B').getByRole('img').boundingBox()).height;
  // d P / H by hand.
  const from = (d: number) => `${((d * height * 0.001) / 0.42).toFixed(2)} m`;
  const sentence = `A shows the camera’s own perspective from ${from(0.4)}, B from ${from(2.4)}.`;
  await expect(said(app)).toContainText(sentence);

  await app.page.reload();
  await app.figure('B').waitFor();
  await keyboard.press('n');
  await expect(said(app), 'kept for this screen').toContainText(sentence);
});

test('without wanted motion the move goes by steps', async ({ fresh: app }) => {
  await app.page.emulateMedia({ reducedMotion: 'reduce' });
  await start(app);
  await present(app);
  const { keyboard } = app.page;
  const standpoint = async () => (await app.picture('A')).standpoint;
  for (const wanted of [0.4, 0.9, 1.4, 1.9, 2.4, 0.4]) {
    await keyboard.press('m');
    await expect.poll(standpoint).toBeCloseTo(wanted, 9);
  }
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`no serious finding of axe, and words that are read from afar, ${colorScheme}`, async ({
    fresh: app,
  }) => {
    await app.page.emulateMedia({ colorScheme });
    await start(app);
    await present(app);
    await app.page.keyboard.press('n');
    await number(app).click();
    await expect(app.page.getByRole('button', { name: 'Leave the talk' })).toBeVisible();
    const { violations, passes } = await new AxeBuilder({ page: app.page }).analyze();
    expect(passes.length).toBeGreaterThan(10);
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);

    const small = await app.page
      .locator('.present-said p, .letter, .where, .how')
      .evaluateAll(
        (all, least) =>
          all
            .filter((each) => Number.parseFloat(getComputedStyle(each).fontSize) < least)
            .map((each) => each.textContent),
        VIEWPORT.height / 30,
      );
    expect(small).toEqual([]);
    const size = await app.page
      .locator('.present')
      .evaluate(({ scrollWidth, scrollHeight }) => ({ width: scrollWidth, height: scrollHeight }));
    expect(size, 'a slide fits the screen').toEqual(VIEWPORT);
  });
}

test('on a phone nothing is cut off, and a tap goes on', async ({ fresh: app }) => {
  const letters = ['A', 'B', 'C', 'D'] as const;
  const pictures = letters.map((letter, i) => ({
    ...must(QUICK.pictures[0]),
    letter,
    standpoint: 0.4 + 0.8 * i,
  }));
  const { width, height } = { width: 390, height: 844 };
  await start(app, {
    ...QUICK,
    comparisons: [kept('one', { asks: true }), kept('two', { pictures })],
  });
  await app.page.setViewportSize({ width, height });
  await present(app);
  const wide = () =>
    app.page
      .locator('.present, .present .caption')
      .evaluateAll((all) =>
        all.filter((each) => each.scrollWidth > each.clientWidth).map((each) => each.className),
      );
  const on = () => app.page.mouse.click(0.9 * width, 0.6 * height);
  for (const letter of ['B', 'D'] as const) {
    await on();
    await app.figure(letter).waitFor();
    await app.page.keyboard.press('n');
    await expect(app.figure(letter)).toContainText('lens');
    expect(await wide()).toEqual([]);
  }
  const small = await app.page
    .locator('.present button:visible')
    .evaluateAll((all) =>
      all.map((each) => each.getBoundingClientRect().height).filter((each) => each < 44 - 0.01),
    );
  expect(small).toEqual([]);
});
