/** The saved still: its size, its captions, that it is the picture of the screen, and its tiles. */
import { readFileSync } from 'node:fs';
import { type Box, sheetFor } from '../../src/handout/sheet';
import { demoSession } from '../../src/session/demo';
import { planTiles } from '../../src/stage/tiles';
import { must } from './expected';
import { type App, expect, test } from './fixture';
import {
  contrast,
  countColour,
  crop,
  decodePng,
  difference,
  type Image,
  shrink,
  steps,
} from './image';

/** The light theme's accents of A and B. */
const ACCENTS = [
  [0x85, 0x28, 0x0f],
  [0x17, 0x45, 0x8a],
] as const;
/** Width over height of an upright 36 x 24 mm frame, in the metres that the program divides. */
const UPRIGHT = 24 / 1000 / (36 / 1000);
const CAPTIONED = { captions: true, letters: true, scale: false };
const BARE = { captions: false, letters: false, scale: false };
/**
 * Root mean square, 0..255: the screen's pixel is one view, the still's four, averaged over the area that
 * one screen pixel covers; edges and soft shadows differ by that.
 */
const AS_ON_SCREEN = 6;

/** A software rasteriser takes minutes over a large still, and longer beside other work; milliseconds. */
const LONGEST = 600_000;
test.setTimeout(LONGEST);

interface Saved {
  readonly name: string;
  readonly bytes: Buffer;
  readonly image: Image;
}

/** Saves from the sheet that is open. */
async function save(app: App, width: number): Promise<Saved> {
  await app.slip().getByRole('textbox', { name: 'Width, pixels' }).fill(String(width));
  const downloading = app.page.waitForEvent('download', { timeout: LONGEST });
  await app.press('Save the PNG');
  const download = await downloading;
  const bytes = readFileSync(await download.path());
  await expect(app.slip().getByRole('status')).toContainText(
    `Saved as ${download.suggestedFilename()}, `,
  );
  return { name: download.suggestedFilename(), bytes, image: decodePng(bytes) };
}

const inside = ({ x, y, width, height }: Box, image: Image): Image =>
  crop(image, { x, y, width, height });

/** Steps between neighbouring pixels that only a picture rendered at this size has. */
function sharpSteps(image: Image): number {
  let count = 0;
  for (let i = 4; i < image.data.length; i += 4)
    if (Math.abs((image.data[i + 1] ?? 0) - (image.data[i - 3] ?? 0)) > 50) count += 1;
  return count;
}

test('side by side at 3840 pixels: size, letters, captions, and the screen’s own pictures', async ({
  app,
}) => {
  const screen = [await app.pixels('A'), await app.pixels('B')];
  await app.press('Save a still');
  const { name, bytes, image } = await save(app, 3840);
  expect(name).toBe('standpoint-a-0.40m-b-2.40m.png');
  const sheet = sheetFor(3840, [UPRIGHT, UPRIGHT], CAPTIONED);
  expect([image.width, image.height]).toEqual([3840, sheet.height]);
  expect(bytes.includes('not a photograph')).toBe(true);
  for (const [i, box] of sheet.pictures.entries()) {
    expect(Math.abs(box.width / box.height - UPRIGHT)).toBeLessThan(0.001);
    const picture = inside(box, image);
    const shown = must(screen[i]);
    const small = shrink(picture, shown.width, shown.height);
    expect(difference(small, shown), `picture ${i} against the screen`).toBeLessThan(AS_ON_SCREEN);
    // More than any enlargement of the screen's 290 pixels to 1700 could hold.
    expect(sharpSteps(picture)).toBeGreaterThan(500);
    const caption = inside(must(sheet.captions[i]), image);
    const [own, other] = [must(ACCENTS[i]), must(ACCENTS[1 - i])];
    // The letter and the strip at the caption's edge.
    expect(countColour(caption, own, 2)).toBeGreaterThan(3 * sheet.line ** 2 * 0.3);
    expect(countColour(caption, other, 2)).toBe(0);
    expect(contrast(caption)).toBeGreaterThan(20);
  }
  await app.closeSlips();
});

test('small and without captions', async ({ app }) => {
  await app.press('Save a still');
  for (const part of ['with captions', 'letters'])
    await app.slip().getByRole('button', { name: part, exact: true }).click();
  const { image } = await save(app, 640);
  const sheet = sheetFor(640, [UPRIGHT, UPRIGHT], BARE);
  expect([image.width, image.height]).toEqual([640, sheet.height]);
  for (const accent of ACCENTS) expect(countColour(image, accent, 2)).toBe(0);
  await app.closeSlips();
});

test('one picture alone, in several tiles, has no seams', async ({ app }) => {
  // A square frame of this width takes two tiles each way, and no more time than it must.
  const session = demoSession();
  const [kit] = session.kits;
  // The eyes off the middle: the face's own midline must not lie on the border that is looked at.
  await app.use({
    ...session,
    kits: [{ ...kit, bodies: [{ ...kit.bodies[0], format: 'film-6x6' }] }],
    crop: { ...session.crop, eyesAcross: 0.42 },
  });
  const screen = await app.pixels('B');
  await app.value('More of B').click();
  await app.press('Save this picture alone');
  const { name, image } = await save(app, 1000);
  expect(name).toBe('standpoint-b-2.40m.png');
  const sheet = sheetFor(1000, [1], CAPTIONED);
  expect([image.width, image.height]).toEqual([1000, sheet.height]);
  const picture = inside(must(sheet.pictures[0]), image);
  const small = shrink(picture, screen.width, screen.height);
  expect(difference(small, screen)).toBeLessThan(AS_ON_SCREEN);
  // The tiles of src/app/compare/makeStill.ts: 768 pixels a side.
  const tiles = planTiles(picture.width, picture.height, { side: 768, rowArea: 8 * 1024 * 1024 });
  const borders = {
    across: must(tiles[0])
      .slice(1)
      .map(({ x }) => x),
    down: tiles.slice(1).map((row) => must(row[0]).y),
  };
  expect(borders.across.length).toBeGreaterThan(0);
  expect(borders.down.length).toBeGreaterThan(0);
  for (const [way, places] of Object.entries(borders)) {
    const step = steps(picture, way === 'across');
    for (const place of places) {
      const around = [-4, -3, -2, 2, 3, 4].map((off) => must(step[place + off]));
      const usual = around.reduce((sum, value) => sum + value, 0) / around.length;
      expect(usual).toBeGreaterThan(0);
      expect(must(step[place]), `step ${way} at ${place}`).toBeLessThan(1.15 * usual + 0.05);
    }
  }
  await app.closeSlips();
});

test('progress is shown, and a stopped still leaves nothing', async ({ app }) => {
  const downloads: string[] = [];
  app.page.on('download', (download) => downloads.push(download.suggestedFilename()));
  await app.press('Save a still');
  await app.slip().getByRole('textbox', { name: 'Width, pixels' }).fill('6000');
  await app.press('Save the PNG');
  const progress = app.slip().getByRole('progressbar');
  await expect(progress).toBeVisible();
  await expect
    .poll(async () => Number(await progress.getAttribute('aria-valuenow')), {
      timeout: LONGEST / 2,
    })
    .toBeGreaterThan(0);
  await app.press('Stop');
  await expect(app.slip().getByRole('status')).toHaveText('Stopped. Nothing was saved.');
  await expect(progress).toHaveCount(0);
  // The page is free for the next one.
  const { name } = await save(app, 320);
  expect(downloads).toEqual([name]);
  await app.closeSlips();
});

test('a width out of range says the range', async ({ quick: app }) => {
  await app.press('Save a still');
  const width = app.slip().getByRole('textbox', { name: 'Width, pixels' });
  for (const wrong of ['16385', '319', '12.5', 'wide']) {
    await width.fill(wrong);
    await app.press('Save the PNG');
    await expect(app.slip()).toContainText('The width is a whole number from 320 to 16384.');
    await expect(width).toHaveValue(wrong);
  }
  await app.closeSlips();
});
