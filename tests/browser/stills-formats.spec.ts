/**
 * Stills in their three formats: the same pixels by other decoders, metadata by another reader, and the way
 * back from a dropped file. Small, since a software rasteriser draws them.
 */
import { readFileSync } from 'node:fs';
import reader from 'exifreader';
import { decode } from 'jpeg-js';
import type { Format } from '../../src/handout/encode/types';
import { findState } from '../../src/handout/metadata/find';
import { RENDERED } from '../../src/handout/metadata/xmp';
import { comparedOf } from '../../src/session/comparison';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { must } from './expected';
import { type App, expect, test } from './fixture';
import { crop, decodePng, difference, type Image } from './image';

const LONGEST = 600_000;
test.setTimeout(LONGEST);

const WIDTH = 320;
const NAMES: Readonly<Record<Format, string>> = { png: 'PNG', jpeg: 'JPEG', webp: 'WebP' };
const TYPES: Readonly<Record<Format, string>> = {
  png: 'image/png',
  jpeg: 'image/jpeg',
  webp: 'image/webp',
};

async function openSheet(app: App): Promise<void> {
  await app.press('Save a still');
  await app.slip().getByRole('textbox', { name: 'Width, pixels' }).fill(String(WIDTH));
}

async function save(app: App, format: Format): Promise<{ name: string; bytes: Buffer }> {
  await app.choose('Kind of file', NAMES[format]);
  const downloading = app.page.waitForEvent('download', { timeout: LONGEST });
  await app.press(`Save the ${NAMES[format]}`);
  const download = await downloading;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** Decoded by the browser itself. */
async function inBrowser(app: App, bytes: Buffer, format: Format): Promise<Image> {
  const read = await app.page.evaluate(
    async ([text, type]) => {
      const data = Uint8Array.from(atob(text as string), (c) => c.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([data], { type: type as string }));
      const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
      if (!pen) throw new Error('no canvas');
      pen.drawImage(bitmap, 0, 0);
      const { width, height, data: pixels } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
      return { width, height, data: [...pixels] };
    },
    [bytes.toString('base64'), TYPES[format]],
  );
  return { ...read, data: Uint8Array.from(read.data) };
}

/** Drops a file on the page, as a hand would. */
async function drop(app: App, bytes: Buffer, name: string, type: string): Promise<void> {
  const held = await app.page.evaluateHandle(
    ([text, called, kind]) => {
      const data = Uint8Array.from(atob(text as string), (c) => c.charCodeAt(0));
      const transfer = new DataTransfer();
      transfer.items.add(new File([data], called as string, { type: kind as string }));
      return transfer;
    },
    [bytes.toString('base64'), name, type],
  );
  await app.page.dispatchEvent('body', 'dragover', { dataTransfer: held });
  await expect(app.page.getByText('Drop a still or a session file to open it')).toBeVisible();
  await app.page.dispatchEvent('body', 'drop', { dataTransfer: held });
  await expect(app.page.getByText('Drop a still or a session file to open it')).toHaveCount(0);
}

const shownFor = (session: Session): Session => ({
  ...session,
  title: 'Not for everybody',
  notes: 'nor this',
  pictures: session.pictures.map((picture, i) => ({ ...picture, standpoint: 0.5 + i })),
});

test('three formats hold the same pixels, tell of them, and bring the comparison back', async ({
  app,
}) => {
  const session = shownFor(demoSession());
  await app.use(session);
  await openSheet(app);
  await app.slip().getByRole('button', { name: 'scale bar' }).click();
  const png = await save(app, 'png');
  const jpeg = await save(app, 'jpeg');
  const webp = await save(app, 'webp');
  await app.closeSlips();
  expect([png, jpeg, webp].map(({ name }) => name)).toEqual(
    ['png', 'jpg', 'webp'].map((extension) => `standpoint-a-0.50m-b-1.50m.${extension}`),
  );

  const exact = decodePng(png.bytes);
  // Root mean square, 0..255: what quality 92 leaves of small type and hair; a wrong profile or matrix is far more.
  expect(difference(await inBrowser(app, jpeg.bytes, 'jpeg'), exact)).toBeLessThan(4);
  expect(difference(await inBrowser(app, webp.bytes, 'webp'), exact)).toBeLessThan(6);
  const other = decode(jpeg.bytes, { useTArray: true });
  expect(difference({ ...other, data: other.data }, exact)).toBeLessThan(4);

  for (const [format, { bytes }] of Object.entries({ png, jpeg, webp })) {
    const { exif, xmp, icc } = reader.load(new Uint8Array(bytes).buffer, { expanded: true });
    expect(exif?.ImageDescription?.description).toContain('A: 0.50 m from the eyes');
    expect(exif?.FNumber?.value).toEqual([800, 100]);
    // The two differ: one field of the file could not be true of both.
    expect(exif?.FocalLength).toBeUndefined();
    expect(xmp?.DigitalSourceType?.value).toBe(RENDERED);
    expect(xmp?.description?.description).toContain('not a photograph');
    if (format !== 'png') expect(icc?.['ICC Description']?.description).toBe('sRGB');
    const found = await findState(new Blob([new Uint8Array(bytes)]));
    expect(found.is === 'state' && found.state.holds).toBe('pictures');
    expect(bytes.includes('Not for everybody')).toBe(false);
  }

  for (const [format, { bytes, name }] of Object.entries({ png, jpeg, webp })) {
    await app.use(demoSession());
    await drop(app, bytes, name, TYPES[format as Format]);
    await expect.poll(async () => comparedOf(await app.session())).toEqual(comparedOf(session));
    const hung = await app.session();
    expect(hung).toMatchObject({ title: demoSession().title, notes: '', kits: session.kits });
    await app.undo().click();
    expect(await app.session()).toEqual(demoSession());
  }
});

test('one picture alone tells its focal length, distance and 35 mm equivalent; with all of the session on request', async ({
  app,
}) => {
  const session = shownFor(demoSession());
  await app.use(session);
  const { focal } = await app.picture('B');
  await openSheet(app);
  await app.choose('What is saved', 'picture B alone');
  await app
    .slip()
    .getByRole('button', { name: /^with names, notes/ })
    .click();
  const { bytes, name } = await save(app, 'jpeg');
  await app.closeSlips();
  const { exif } = reader.load(new Uint8Array(bytes).buffer, { expanded: true });
  const ratio = (value: unknown) => {
    const [over = 0, under = 1] = value as [number, number];
    return over / under;
  };
  expect(ratio(exif?.FocalLength?.value)).toBeCloseTo(1000 * focal, 2);
  expect(ratio(exif?.SubjectDistance?.value)).toBeCloseTo(1.5, 3);
  expect(exif?.FocalLengthIn35mmFilm?.value).toBe(Math.round(1000 * focal));
  await app.use(demoSession());
  await drop(app, bytes, name, 'image/jpeg');
  await expect.poll(() => app.session()).toEqual(session);
});

test('a strip shows the crop from each standpoint, which can be spaced anew', async ({ app }) => {
  await openSheet(app);
  await app.choose('What is saved', 'a strip');
  await app.value('Standpoints of the strip').click();
  await app.slip().getByRole('textbox', { name: 'From' }).fill('0.4 m');
  await app.slip().getByRole('textbox', { name: 'To' }).fill('2 m');
  await app.slip().getByRole('textbox', { name: 'How many' }).fill('5');
  await app.slip().getByRole('button', { name: 'even in metres' }).click();
  await app.press('Space them so');
  expect((await app.session()).series.map((d) => Number(d.toFixed(6)))).toEqual([
    0.4, 0.8, 1.2, 1.6, 2,
  ]);
  const { bytes, name } = await save(app, 'png');
  await app.closeSlips();
  expect(name).toBe('standpoint-5-0.40m-2.00m.png');
  const image = decodePng(bytes);
  expect(image.width).toBe(WIDTH);
  // Five pictures of one crop: each differs from the next, and the last two least.
  const width = Math.floor(WIDTH / 5);
  const cell = (i: number) => crop(image, { x: i * width, y: 8, width, height: 60 });
  const steps = [0, 1, 2, 3].map((i) => difference(cell(i), cell(i + 1)));
  for (const step of steps) expect(step).toBeGreaterThan(1);
});

test('what is foreign, damaged or too large for a WebP is told, and changes nothing', async ({
  quick: app,
}) => {
  const before = await app.session();
  const bare = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
    'base64',
  );
  await drop(app, bare, 'holiday.png', 'image/png');
  await expect(app.page.getByRole('alert').first()).toContainText('was not saved from here');
  await app.press('Put away');
  await drop(app, bare.subarray(0, 20), 'holiday.png', 'image/png');
  await expect(app.page.getByRole('alert').first()).toContainText('damaged');
  await app.press('Put away');
  expect(await app.session()).toEqual(before);
  await app.press('Save a still');
  await app.choose('Kind of file', 'WebP');
  await app.slip().getByRole('textbox', { name: 'Width, pixels' }).fill('9000');
  await app.press('Save the WebP');
  await expect(app.slip()).toContainText('up to 24 megapixels');
  await app.closeSlips();
  expect(must(before.pictures[0]).letter).toBe('A');
});
