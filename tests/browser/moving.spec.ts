/** The moving page, opened from the disk with the network off, against the app's own readings. */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { MovingFrame } from '../../src/handout/moving/types';
import { demoSession } from '../../src/session/demo';
import { standpointAlong } from '../../src/session/play';
import { must } from './expected';
import { expect, freshApp, test } from './fixture';

/** A software rasteriser takes minutes over some pictures beside other work; milliseconds. */
const LONGEST = 900_000;
test.setTimeout(LONGEST);

const STEPS = 9;
/** Rows of the page, in its order, by the ids of the app's table. */
const ROWS = [
  'nose_to_ear_ratio',
  'size_ratio.nose_tip',
  'size_ratio.ears',
  'focal_length_mm',
  'background_size_ratio',
  'depth_of_field_m.total',
  'nose_to_lens_m',
];
/** Words of the session that nobody chose for the page. */
const PRIVATE = { title: 'Sitting of Morgan Example', notes: 'Call Morgan before ten.' };

test('opens from the disk without a network; its numbers are the app’s', async ({
  fresh,
  browser,
  baseURL,
}) => {
  await fresh.goto();
  const session = demoSession();
  // Without pages, whose pictures would be rendered first.
  await fresh.use({ ...session, ...PRIVATE, handout: { ...session.handout, pages: [] } });
  await fresh.page.getByRole('link', { name: 'Handout' }).click();
  await fresh.press('Moving page');
  await fresh.choose('Standpoints', `${STEPS} standpoints`);
  await fresh.choose('Size of the pictures', 'pictures of 480 pixels');
  const downloading = fresh.page.waitForEvent('download', { timeout: LONGEST });
  await fresh.press('Make the page');
  const download = await downloading;
  expect(download.suggestedFilename()).toBe('move-0-40-m-to-2-40-m.html');
  const path = test.info().outputPath('move.html');
  await download.saveAs(path);
  const html = readFileSync(path, 'utf8');
  expect(html.length).toBeLessThan(1_000_000);
  // Faces and pictures are letters too, and may spell anything.
  const text = html.replace(/base64,[\w+/=]+/g, '');
  for (const word of ['Morgan', ...session.kits.map(({ name }) => name)])
    expect(text).not.toContain(word);

  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.setOffline(true);
  const page = await context.newPage();
  const asked: string[] = [];
  const wrong: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
  await page.goto(pathToFileURL(path).href);
  const slider = page.getByRole('slider', { name: 'Standpoint, from the eyes to the lens' });
  const frames: MovingFrame[] = JSON.parse(await page.locator('#frames').innerHTML());
  expect(frames).toHaveLength(STEPS);
  const cells = () => page.locator('tbody .follows').allInnerTexts();
  const image = page.locator('.moving img');
  const seen = new Set<string>();
  await slider.focus();
  for (const [i, frame] of frames.entries()) {
    expect(frame.standpoint).toBeCloseTo(standpointAlong(0.4, 2.4, i / (STEPS - 1), 'look'), 12);
    await expect(slider).toHaveAttribute('aria-valuetext', frame.place);
    await expect(page.locator('.moving strong')).toHaveText(`${frame.place} from the eyes`);
    await expect(page.locator('#changes')).toHaveText(frame.changes);
    expect(await cells()).toEqual([...frame.cells]);
    seen.add(must(await image.getAttribute('src')));
    expect(
      await image.evaluate((each: HTMLImageElement) =>
        each.decode().then(() => each.naturalHeight),
      ),
    ).toBe(480);
    await page.keyboard.press('ArrowRight');
  }
  expect(seen.size).toBe(STEPS);
  await page.keyboard.press('Home');
  await expect(slider).toHaveAttribute('aria-valuetext', must(frames[0]).place);
  expect(
    asked.filter((address) => !address.startsWith('data:') && !address.startsWith('file:')),
  ).toEqual([]);
  expect(asked.filter((address) => address.startsWith('file:'))).toEqual([
    pathToFileURL(path).href,
  ]);
  expect(wrong).toEqual([]);
  for (const [width, height] of [
    [390, 844],
    [1440, 900],
    [1920, 1080],
  ] as const) {
    await page.setViewportSize({ width, height });
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);
  }
  await context.close();

  // The same standpoints in the app itself, where only landmarks need be drawn.
  const app = await freshApp(browser, baseURL);
  await app.goto('?test=landmarks');
  await app.press(/^All \d+ readings$/);
  for (const i of [0, 3, STEPS - 1]) {
    const frame = must(frames[i]);
    const [a, ...others] = session.pictures;
    await app.use({
      ...session,
      pictures: [{ ...must(a), standpoint: frame.standpoint }, ...others],
    });
    for (const [row, id] of ROWS.entries())
      expect((await app.reading(id))[0], `${id} from ${frame.place}`).toBe(frame.cells[row]);
  }
  await app.page.context().close();
});
