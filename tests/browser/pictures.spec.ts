/**
 * The stage's pictures against kept references, on the software rasteriser. References are taken anew by
 * `npm run references`, to be looked at before they are committed.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import type { Cell } from '../../scripts/stage-preview/cell';
import { type Served, servePreview } from '../../scripts/stage-preview/serve';
import { decodePng, type Image } from './image';

const PORT = 5182;
const KEPT = join(import.meta.dirname, 'pictures');
const WIDTH = 240;
const HEIGHT = 300;
const SAMPLES = 4;

/**
 * The rasteriser repeats itself to the bit on one machine; another processor may round a step otherwise,
 * which moves an edge's sample now and then. So pixels may differ, but few, and never the whole.
 */
const STEP = 8;
const FEW = 0.005;
const MEAN = 0.5;

const woman = { label: '', person: 'adult-woman', frame: 0.4, gaze: 'lens' } as const;
const PICTURES: Readonly<Record<string, Cell>> = {
  front: woman,
  near: { ...woman, distance: 0.35 },
  'three-quarter': { ...woman, person: 'adult-man', turn: -40 },
  clay: { ...woman, turn: -90, look: 'clay' },
  eyes: { ...woman, frame: 0.12, eyesAt: 0.5, gaze: [20, 5] },
  'side-light': {
    ...woman,
    light: { key: { azimuth: 75, softness: 0.1 }, fill: { strength: 0.4 } },
  },
};

let served: Served;
test.beforeAll(async () => {
  served = await servePreview(PORT);
});
test.afterAll(() => served.close());

const take = async (page: Page, cell: Cell): Promise<Buffer> =>
  Buffer.from(
    await page.evaluate(
      ([asked, width, height, samples]) => window.preview.png(asked, width, height, samples),
      [cell, WIDTH, HEIGHT, SAMPLES] as const,
    ),
    'base64',
  );

/** Greatest difference of a pixel's channels, pixel by pixel. */
const apart = (a: Image, b: Image): number[] =>
  Array.from({ length: a.width * a.height }, (_, i) =>
    Math.max(
      ...[0, 1, 2].map((c) =>
        Math.abs((a.data[4 * i + c] as number) - (b.data[4 * i + c] as number)),
      ),
    ),
  );

for (const [name, cell] of Object.entries(PICTURES))
  test(`picture: ${name}`, async () => {
    const page = await served.open();
    const bytes = await take(page, cell);
    await page.close();
    const file = join(KEPT, `${name}.png`);
    if (process.env.TAKE_REFERENCES) {
      mkdirSync(KEPT, { recursive: true });
      writeFileSync(file, bytes);
      return;
    }
    writeFileSync(test.info().outputPath(`${name}.png`), bytes);
    expect(existsSync(file), `${file} is not there: npm run references`).toBe(true);
    const off = apart(decodePng(bytes), decodePng(readFileSync(file)));
    expect(off.filter((value) => value > STEP).length / off.length).toBeLessThanOrEqual(FEW);
    expect(off.reduce((sum, value) => sum + value, 0) / off.length).toBeLessThanOrEqual(MEAN);
  });

test('two runs give the same picture to the pixel', async () => {
  const cell = { ...woman, frame: 0.3 };
  const [first, second] = [await served.open(), await served.open()];
  expect((await take(first, cell)).equals(await take(second, cell))).toBe(true);
  // And again after something else was drawn.
  const again = await take(first, { ...cell, look: 'clay' });
  expect(again.equals(await take(second, cell))).toBe(false);
  expect((await take(first, cell)).equals(await take(second, cell))).toBe(true);
});

test('a grey card before the face reads grey in any light', async () => {
  const page = await served.open();
  const lights: readonly Cell['light'][] = [
    {},
    { key: { azimuth: 80, elevation: 5 }, fill: { strength: 2 } },
    { key: { strength: 0.3, softness: 0.9 }, hair: { strength: 2 } },
  ];
  for (const light of lights) {
    const cell: Cell = { ...woman, card: true, ...(light && { light }) };
    const { data } = decodePng(await take(page, cell));
    // The card covers 120 mm about the eyes: the picture's middle, at two fifths of its height.
    for (let y = Math.round(0.32 * HEIGHT); y < 0.48 * HEIGHT; y += 4)
      for (let x = Math.round(0.42 * WIDTH); x < 0.58 * WIDTH; x += 4) {
        const at = 4 * (y * WIDTH + x);
        const channels = [...data.subarray(at, at + 3)];
        expect(Math.max(...channels) - Math.min(...channels)).toBeLessThanOrEqual(2);
        expect(Math.max(...channels)).toBeGreaterThan(30);
      }
  }
});
