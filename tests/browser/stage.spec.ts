/**
 * The pictures themselves: nothing is drawn without need, greys are neutral, and a still is the picture
 * that the screen shows, however it is cut into tiles.
 */
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { expect, test } from './fixture';
import type { Image } from './image';
import { apart, still } from './stills';

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
  const { camera } = await app.picture('A');
  const saved = await still(app, camera, [shown.width, shown.height], { samples: 1 });
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
  const { camera } = await app.picture('A');
  const whole = await still(app, camera, [width, height], { samples: 2 });
  const side = Math.ceil(width / 3);
  const tiled = await still(app, camera, [width, height], {
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

test('a hundred frames of a clip leave no geometry behind', async ({ quick: app }) => {
  const { camera } = await app.picture('A');
  const counts = await app.page.evaluate(async (view) => {
    const hook = window.standpoint;
    if (!hook?.stage) throw new Error('the stage is not ready');
    const { stage } = hook;
    const one = hook.cast['1'];
    const geometries: number[] = [];
    for (let frame = 0; frame < 100; frame++) {
      // Each frame's eyes are turned anew; the other meshes are those of the frame before.
      const meshes = one.meshes.map((mesh) => (mesh.substance === 'eye' ? { ...mesh } : mesh));
      const sitters = [{ sitter: { ...one, meshes }, at: [0, 0, 0] as const }];
      const options = { sitters, look: 'mask', samples: 1 } as const;
      for await (const band of stage.renderPicture(view, 8, 12, options))
        if (band.length === 0) throw new Error('nothing was drawn');
      geometries.push(stage.counts().geometries);
    }
    return geometries;
  }, camera);
  expect(counts[0]).toBeGreaterThan(0);
  // The last few guests stay; from then on one comes and one goes.
  expect(counts.at(-1)).toBeLessThanOrEqual(counts[10] as number);
  expect(new Set(counts.slice(10)).size).toBe(1);
});

test('a large still gives the page its turns, tells how far it is, and stops within a tile', async ({
  quick: app,
}) => {
  const { camera } = await app.picture('A');
  const { told, error } = await app.page.evaluate(async (view) => {
    const hook = window.standpoint;
    if (!hook?.stage) throw new Error('the stage is not ready');
    const stop = new AbortController();
    const told: number[] = [];
    const picture = hook.stage.renderPicture(view, 8000, 12000, {
      samples: 64,
      signal: stop.signal,
      onProgress: (share) => {
        told.push(share);
        // The page's own event loop raises the signal, as a press would.
        if (told.length === 3) setTimeout(() => stop.abort(), 0);
      },
    });
    const error = await picture.next().then(
      () => 'a band came',
      (reason) => String(reason?.name),
    );
    return { told, error };
  }, camera);
  expect(error).toBe('AbortError');
  expect(told.length).toBeGreaterThanOrEqual(3);
  told.forEach((share, i) => {
    expect(share).toBeGreaterThan(told[i - 1] ?? 0);
  });
  // Of more than 300 tiles.
  expect(told.at(-1)).toBeLessThan(1 / 300);
});
