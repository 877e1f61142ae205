/**
 * The pictures themselves: nothing is drawn without need, greys are neutral, and a still is the picture
 * that the screen shows, however it is cut into tiles.
 */
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import type { StillOptions } from '../../src/stage';
import { type App, expect, test } from './fixture';
import type { Image } from './image';

/** Renders a picture's still in the page. */
async function still(
  app: App,
  letter: string,
  width: number,
  height: number,
  options: Pick<StillOptions, 'samples' | 'tileSide' | 'bandHeight'>,
): Promise<Image> {
  const text = await app.page.evaluate(
    async ([wanted, wide, high, how]) => {
      const hook = window.standpoint;
      const shown = hook?.pictures.find(({ resolved }) => resolved.letter === wanted);
      if (!hook?.stage || !shown) throw new Error(`no picture ${wanted}`);
      let binary = '';
      for await (const band of hook.stage.renderPicture(shown.resolved.camera, wide, high, how))
        for (let i = 0; i < band.length; i += 0x8000)
          binary += String.fromCharCode(...band.subarray(i, i + 0x8000));
      return btoa(binary);
    },
    [letter, width, height, options] as const,
  );
  return { width, height, data: new Uint8Array(Buffer.from(text, 'base64')) };
}

/** Greatest difference in a channel, pixel by pixel. */
function apart(a: Image, b: Image): number[] {
  expect([a.width, a.height, a.data.length]).toEqual([b.width, b.height, b.data.length]);
  return Array.from({ length: a.width * a.height }, (_, i) =>
    Math.max(
      ...[0, 1, 2].map((c) =>
        Math.abs((a.data[4 * i + c] as number) - (b.data[4 * i + c] as number)),
      ),
    ),
  );
}

/** Differs from each neighbour by no more than this in any channel: no edge runs there. */
const SMOOTH = 6;

function isSmooth({ width, height, data }: Image, i: number): boolean {
  const [x, y] = [i % width, Math.floor(i / width)];
  if (x === 0 || y === 0 || x === width - 1 || y === height - 1) return false;
  return [i - 1, i + 1, i - width, i + width].every((j) =>
    [0, 1, 2].every(
      (c) => Math.abs((data[4 * i + c] as number) - (data[4 * j + c] as number)) <= SMOOTH,
    ),
  );
}

test('nothing is drawn while nothing changes, and one standpoint moves one picture', async ({
  app,
}) => {
  const before = await app.page.evaluate(async () => {
    const counts = window.standpoint?.stage?.counts();
    for (let i = 0; i < 60; i++) await new Promise(requestAnimationFrame);
    return [counts, window.standpoint?.stage?.counts()];
  });
  expect(before[1]).toEqual(before[0]);
  await app.handle('B').focus();
  await app.redrawn(() => app.page.keyboard.press('ArrowLeft'));
  const after = await app.page.evaluate(() => window.standpoint?.stage?.counts());
  expect(after?.renders).toBe((before[0]?.renders ?? 0) + 1);
  expect(after?.shadowUpdates).toBe(before[0]?.shadowUpdates);
});

test('grey paint under the studio’s lamps is neutral', async ({ app }) => {
  const { width, height, data } = await app.pixels('B');
  // At its edges, above the shoulders, picture B looks past the head at the painted wall and its dark joints.
  const rows = Array.from({ length: Math.floor(height / 16) - 1 }, (_, i) => 4 * (i + 1));
  const columns = [6, Math.round(width / 12), width - Math.round(width / 12), width - 6];
  const read = rows.flatMap((y) =>
    columns.map((x) => [...data.subarray(4 * (y * width + x), 4 * (y * width + x) + 3)]),
  );
  for (const channels of read)
    expect(Math.max(...channels) - Math.min(...channels)).toBeLessThanOrEqual(2);
  const lit = read.filter((channels) => Math.max(...channels) > 30);
  expect(lit.length).toBeGreaterThanOrEqual(read.length / 2);
});

test('a still is the picture on the screen', async ({ app }) => {
  // Hair is cut into strands finer than a pixel: neighbours that agree there do so by chance.
  const demo = demoSession();
  const bald: Session = { ...demo, people: [{ ...demo.people[0], looks: { hair: 'bald' } }] };
  await app.redrawn(() =>
    app.page.evaluate((next) => window.standpoint?.store.open(next, 'Test'), bald),
  );
  const shown = await app.pixels('A');
  const saved = await still(app, 'A', shown.width, shown.height, { samples: 1 });
  const off = apart(shown, saved);
  // The screen averages four samples of what covers a pixel and the still takes one, so at edges they
  // differ. Where neither shows one, an edge of at most `SMOOTH` steps may still run: averaging across it
  // stays within those. Each is rounded to 8 bits with a dither of half a step: within one step of the
  // true value, two from the other.
  const flat = off.filter((_, i) => isSmooth(shown, i) && isSmooth(saved, i));
  expect(flat.length / off.length).toBeGreaterThan(0.4);
  expect(flat.reduce((most, value) => Math.max(most, value), 0)).toBeLessThanOrEqual(SMOOTH + 2);
  expect(flat.reduce((sum, value) => sum + value, 0) / flat.length).toBeLessThan(1);
  // Averaging what covers a pixel moves no light: the whole picture is as bright.
  const means = [shown, saved].map(({ data }) => data.reduce((a, b) => a + b, 0) / data.length);
  expect(Math.abs((means[0] as number) - (means[1] as number))).toBeLessThan(1);
});

test('tiles join without seams', async ({ app }) => {
  const { width, height } = await app.pixels('A');
  const whole = await still(app, 'A', width, height, { samples: 2 });
  const side = Math.ceil(width / 3);
  const tiled = await still(app, 'A', width, height, {
    samples: 2,
    tileSide: side,
    bandHeight: 64,
  });
  const off = apart(whole, tiled);
  const differing = off.flatMap((value, i) => (value > 2 ? [i] : []));
  expect(differing.length / off.length).toBeLessThanOrEqual(0.001);
  const tile = width / Math.ceil(width / side);
  const atSeams = differing.filter((i) => {
    const column = i % width;
    return (
      Math.abs(column - Math.round(column / tile) * tile) <= 1 && column > 1 && column < width - 2
    );
  });
  // A seam that shows differs along its length; single hairs differ here and there.
  const seams = Math.ceil(width / side) - 1;
  expect(atSeams.length).toBeLessThanOrEqual(0.02 * seams * height);
});
