/** Looking tools, the move and the table that leaves the page: each right in something measured. */
import { pictureShare } from '../../src/optics/camera';
import type { Camera } from '../../src/optics/types';
import { readings } from '../../src/readings/read';
import { demoSession } from '../../src/session/demo';
import type { Letter } from '../../src/session/types';
import { castOf, expectedOf, leadsOf, must, resolveAll } from './expected';
import { type App, expect, test } from './fixture';
import { crop, difference, type Image, inCommon } from './image';

const toggle = (app: App, name: string) => app.page.getByRole('button', { name, exact: true });

/** Points of a path in shares of the picture's height. */
const pathPoints = async (app: App, letter: Letter): Promise<[number, number][]> => {
  const line = app.figure(letter).locator('path.over-outline');
  await expect(line).toHaveAttribute('d', /L/);
  const d = must(await line.getAttribute('d'));
  return [...d.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
};

/** A camera's silhouette, twice as fine as the one that the outline is traced from. */
async function maskOf(app: App, camera: Camera): Promise<Image> {
  const { width, height, mask } = await app.page.evaluate((view) => {
    const drawn = window.standpoint?.stage?.silhouette(view, 960);
    if (!drawn) throw new Error('no stage');
    return { ...drawn, mask: Array.from(drawn.mask) };
  }, camera);
  return { width, height, data: Uint8Array.from(mask) };
}

/** Share of the points that lie on the mask's edge: sitter and background within two of its pixels. */
function shareOnEdge(points: readonly [number, number][], mask: Image): number {
  const isOnEdge = ([px, py]: [number, number]) => {
    const [x, y] = [Math.floor(px * mask.height), Math.floor(py * mask.height)];
    let [least, most] = [255, 0];
    for (let v = Math.max(0, y - 2); v <= Math.min(mask.height - 1, y + 2); v++)
      for (let u = Math.max(0, x - 2); u <= Math.min(mask.width - 1, x + 2); u++) {
        const value = mask.data[v * mask.width + u] ?? 0;
        [least, most] = [Math.min(least, value), Math.max(most, value)];
      }
    return least < 128 && most >= 128;
  };
  return points.filter(isOnEdge).length / points.length;
}

test('the outline over a picture is the other picture’s silhouette', async ({ quick: app }) => {
  await toggle(app, 'outline of the other').click();
  const points = await pathPoints(app, 'A');
  expect(points.length).toBeGreaterThan(200);
  const [a, b] = await app.pictures();
  const other = await maskOf(app, must(b).camera);
  const own = await maskOf(app, must(a).camera);
  expect(shareOnEdge(points, other)).toBeGreaterThan(0.99);
  expect(shareOnEdge(points, own)).toBeLessThan(0.6);
  // Moved, it is traced anew.
  await app.type('Standpoint B, from the eyes to the lens', '0.6 m');
  const nearer = await maskOf(app, (await app.picture('B')).camera);
  await expect
    .poll(async () => shareOnEdge(await pathPoints(app, 'A'), nearer))
    .toBeGreaterThan(0.99);
  await toggle(app, 'outline of the other').click();
});

/** How much nearer an image is to one of two others: below 1 nearer to the first. */
function nearness(image: Image, first: Image, second: Image): number {
  return (
    difference(...inCommon(image, first)) / Math.max(1e-9, difference(...inCommon(image, second)))
  );
}

const part = (image: Image, from: number, to: number): Image => {
  const x = Math.ceil(from * image.width);
  return crop(image, { x, y: 0, width: Math.floor(to * image.width) - x, height: image.height });
};

test('the wipe shows the other picture right of its line', async ({ app }) => {
  const [a, b] = [await app.pixels('A'), await app.pixels('B')];
  await app.redrawn(() => toggle(app, 'wipe').click());
  const wiped = await app.pixels('A');
  expect(difference(part(wiped, 0, 0.49), part(a, 0, 0.49))).toBeLessThan(0.5);
  expect(nearness(part(wiped, 0.51, 1), part(b, 0.51, 1), part(a, 0.51, 1))).toBeLessThan(0.3);
  const line = app.figure('A').getByRole('slider');
  await line.focus();
  await app.redrawn(() => app.page.keyboard.press('Home'));
  expect(nearness(await app.pixels('A'), b, a)).toBeLessThan(0.3);
  await app.redrawn(() => toggle(app, 'wipe').click());
  expect(difference(await app.pixels('A'), a)).toBeLessThan(0.5);
});

test('the blink shows one picture and the other in turn', async ({ app }) => {
  const [a, b] = [await app.pixels('A'), await app.pixels('B')];
  await toggle(app, 'blink').click();
  const against = async () => nearness(await app.pixels('A'), b, a);
  await expect.poll(against).toBeLessThan(0.3);
  await expect.poll(against).toBeGreaterThan(3);
  await toggle(app, 'blink').click();
  await expect.poll(against).toBeGreaterThan(3);
});

test('landmarks are joined where they are drawn, with lengths at the scale of the eyes', async ({
  quick: app,
}) => {
  await toggle(app, 'landmarks').click();
  const cast = await castOf(demoSession());
  const sitter = must(leadsOf(demoSession(), cast)[0]);
  const { zygion_left, zygion_right } = sitter.landmarks;
  const breadth = zygion_left[0] - zygion_right[0];
  const cells = app.page.locator('[data-length="face-breadth"] td');
  const mm = (metres: number) => `${Math.round(1000 * metres)} mm`;
  // Square to a level axis, z before the eyes: drawn d / (d - z) times as long.
  const drawn = (d: number) => mm((breadth * d) / (d - zygion_left[2]));
  await expect(cells).toHaveText([drawn(0.4), drawn(2.4), mm(breadth)]);

  const [a] = resolveAll(demoSession(), cast);
  const { camera } = must(a);
  const drawnLines = app.figure('A').locator('line.over-length');
  // A level line has no height, so it never counts as visible.
  await drawnLines.first().waitFor({ state: 'attached' });
  const ends = await drawnLines.evaluateAll((lines) =>
    lines.map((line) => ['x1', 'y1', 'x2', 'y2'].map((name) => Number(line.getAttribute(name)))),
  );
  const aspect = camera.sensor.width / camera.sensor.height;
  for (const [from, to] of [
    ['zygion_right', 'zygion_left'],
    ['pupil_right', 'pupil_left'],
    ['superaurale_left', 'subaurale_left'],
  ] as const) {
    const wanted = [from, to].flatMap((name) => {
      const share = pictureShare(camera, sitter.landmarks[name]);
      return share.ok ? [share.value.across * aspect, share.value.down] : [];
    });
    const hit = ends.some((end) => end.every((v, k) => Math.abs(v - must(wanted[k])) < 1e-6));
    expect(hit, `${from} to ${to}`).toBe(true);
  }
  await toggle(app, 'landmarks').click();
});

test('the rings of the stretch are the images of equal balls at one distance', async ({
  quick: app,
}) => {
  await toggle(app, 'stretch').click();
  const drawn = app.figure('A').locator('ellipse.over-outline');
  await expect.poll(() => drawn.count()).toBeGreaterThan(20);
  const rings = await drawn.evaluateAll((all) =>
    all.map((ring) => ['cx', 'cy', 'rx', 'ry'].map((name) => Number(ring.getAttribute(name)))),
  );
  const { frustum } = (await app.picture('A')).camera;
  const height = frustum.top - frustum.bottom;
  const elongations: number[] = [];
  const angles = rings.map(([cx = 0, cy = 0, rx = 0, ry = 0]) => {
    const foot = Math.hypot(frustum.left + cx * height, frustum.top - cy * height);
    const [outer, inner] = [Math.atan(foot + rx * height), Math.atan(foot - rx * height)];
    const [axis, half] = [(outer + inner) / 2, (outer - inner) / 2];
    // A cone of that half angle, cut by a plane tilted so far, has eccentricity sin a / cos b
    // (geometry of conic sections, Dandelin).
    const eccentricity = Math.sin(axis) / Math.cos(half);
    expect(ry / rx).toBeCloseTo(Math.sqrt(1 - eccentricity ** 2), 3);
    elongations.push(rx / ry);
    return half;
  });
  expect(Math.max(...angles) / Math.min(...angles)).toBeCloseTo(1, 3);
  // From 0.40 m the corner of this frame lies some 38 degrees off the axis: sec 38° = 1.27.
  expect(Math.max(...elongations)).toBeGreaterThan(1.15);
  expect(Math.min(...elongations)).toBeLessThan(1.01);
  await toggle(app, 'stretch').click();
});

const frameHeight = (shown: Awaited<ReturnType<App['picture']>>): number =>
  (shown.camera.frustum.top - shown.camera.frustum.bottom) * shown.standpoint;

test('the move plays with the crop held, pauses and is scrubbed by keys', async ({
  quick: app,
}) => {
  const place = app.page.getByRole('slider', { name: 'Place in the move' });
  const at = async () => Number(await place.inputValue());
  await app.press('Play the move, A to B');
  await expect.poll(at).toBeGreaterThan(2);
  await app.press('Pause');
  const paused = await at();
  const halted = await app.picture('A');
  expect(paused).toBeLessThan(100);
  // Even in metres, to the whole percent that the slider shows.
  expect(Math.abs(halted.standpoint - (0.4 + (2 * paused) / 100))).toBeLessThan(0.011);
  expect(frameHeight(halted)).toBeCloseTo(0.42, 9);
  await app.settled();
  expect(await at()).toBe(paused);

  await place.focus();
  await app.page.keyboard.press('Home');
  await expect.poll(at).toBe(0);
  for (let i = 0; i < 10; i++) await app.page.keyboard.press('ArrowRight');
  await expect.poll(at).toBe(10);
  expect((await app.picture('A')).standpoint).toBeCloseTo(0.6, 9);
  await app.page.keyboard.press('End');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBeCloseTo(2.4, 9);
  expect(frameHeight(await app.picture('A'))).toBeCloseTo(0.42, 9);
  // Looked at, not changed.
  expect(await app.session()).toEqual(demoSession());
  await app.press('Back to the start');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBe(0.4);
});

test('the move ends by itself on the last picture', async ({ quick: app }) => {
  await app.type('Length of the move', '0.5');
  await app.press('Play the move, A to B');
  await expect.poll(async () => (await app.picture('A')).standpoint).toBeCloseTo(2.4, 9);
  await expect(app.page.getByRole('button', { name: 'Play the move, A to B' })).toBeVisible();
  await app.press('Back to the start');
});

test('where motion is not wanted the move goes in steps', async ({ quick: app }) => {
  await app.page.emulateMedia({ reducedMotion: 'reduce' });
  const step = app.page.getByRole('button', { name: 'Step through the move' });
  await expect(step).toBeVisible();
  await expect(app.page.getByRole('button', { name: /^Play the move/ })).toHaveCount(0);
  for (const standpoint of [0.4, 0.9, 1.4]) {
    await step.click();
    await expect.poll(async () => (await app.picture('A')).standpoint).toBeCloseTo(standpoint, 9);
    // It stays there by itself.
    await app.settled();
    expect((await app.picture('A')).standpoint).toBeCloseTo(standpoint, 9);
  }
  await app.press('Back to the start');
  await app.page.emulateMedia({ reducedMotion: null });
});

/** Fields of CSV text (RFC 4180). */
function parseCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g,
  )) {
    if (end === '' && quoted === undefined && bare === '') break;
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? bare);
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

test('the table is copied as text and as CSV, and reads back', async ({ quick: app }) => {
  await app.page.waitForFunction(() =>
    window.standpoint?.pictures.every(({ measures }) => measures.visibility !== null),
  );
  const clipboard = () => app.page.evaluate(() => navigator.clipboard.readText());
  const [a, b] = (await expectedOf(demoSession())).map(({ measures }) =>
    readings(measures, { units: 'metric', pronoun: 'her' }),
  );
  await app.press('Copy as CSV');
  await expect.poll(clipboard).toMatch(/^id,/);
  const [head, ...rows] = parseCsv(await clipboard());
  expect(head).toEqual([
    'id',
    'reading',
    'A (SI)',
    'A',
    'B (SI)',
    'B',
    'change',
    'meaning',
    'formula',
  ]);
  for (const [i, reading] of must(a).entries()) {
    const row = must(
      rows.find(([id]) => id === reading.id),
      reading.id,
    );
    const other = must(must(b)[i]);
    expect(row).toHaveLength(9);
    expect([row[3], row[5]], reading.id).toEqual([reading.shown, other.shown]);
    for (const [cell, { value }] of [
      [row[2], reading],
      [row[4], other],
    ] as const) {
      // Exact values; two engines may differ in the last bits.
      if (typeof value === 'number') expect(Number(cell), reading.id).toBeCloseTo(value, 12);
      else expect(cell, reading.id).toBe(value === null ? '' : String(value));
    }
  }
  await app.press('Copy the table');
  await expect.poll(clipboard).toContain('\t');
  const lines = (await clipboard()).split('\n').map((line) => line.split('\t'));
  expect(lines[0]?.slice(1)).toEqual(['A', 'B']);
  const nose = must(lines.find(([name]) => name === must(must(a)[0]).name));
  expect(nose.slice(1, 3)).toEqual([must(must(a)[0]).shown, must(must(b)[0]).shown]);
});
