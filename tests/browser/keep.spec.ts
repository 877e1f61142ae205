/** Nothing a person made is lost: undo, saving, links, files, and a browser that lacks something. */
import { readFileSync } from 'node:fs';
import { deflateSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { must } from './expected';
import { type App, expect, freshApp, test } from './fixture';
import { difference } from './image';

const STANDPOINT_B = 'Standpoint B, from the eyes to the lens';

/** The session that the browser's own store holds, read beside the app; null when there is none. */
const savedIn = (page: Page): Promise<unknown> =>
  page.evaluate(
    () =>
      new Promise<unknown>((resolve, reject) => {
        const opening = indexedDB.open('standpoint');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const all = database.transaction('sessions').objectStore('sessions').getAll();
          all.onsuccess = () => {
            database.close();
            const latest = all.result.toSorted((a, b) => b.savedAt - a.savedAt)[0];
            resolve(latest?.document.session ?? null);
          };
        };
      }),
  );

const saved = async (app: App): Promise<void> => {
  const session = await app.session();
  await expect.poll(() => savedIn(app.page)).toEqual(session);
};

/** Edits of every kind, each as a person makes it. */
const EDITS: readonly (readonly [what: string, edit: (app: App) => Promise<void>])[] = [
  ['standpoint', (app) => app.type(STANDPOINT_B, '1.8 m')],
  ['focal length', (app) => app.type('Focal length of A', '50')],
  ['aperture', (app) => app.type('Aperture of A', '4')],
  ['framing', (app) => app.choose('Framing', 'Head and shoulders')],
  ['frame height', (app) => app.type('Frame height at the eyes', '0.5 m')],
  ['orientation', (app) => app.choose('Upright or lying', 'lying')],
  ['eyes', (app) => app.type('Where the eyes sit in the frame', '45 %')],
  ['format', (app) => app.choose('Sensor format', 'APS-C, 23.6')],
  ['hold', (app) => app.choose('What holds the crop equal', 'pupil distance')],
  ['lock', (app) => app.choose('What a moved handle keeps', 'the lens')],
  [
    'pose',
    async (app) => {
      await app.value('How the sitter faces the camera').click();
      await app.type('Turn of the head', '20');
      await app.closeSlips();
    },
  ],
  [
    'camera height',
    async (app) => {
      await app.value('More of B').click();
      await app.type('Camera height of B', '0.2 m');
      await app.closeSlips();
    },
  ],
  ['light', (app) => app.type('Direction of the key light', '-30')],
  ['hair light', (app) => app.type('Strength of the hair light', '0 %')],
  ['gaze', (app) => app.choose('Where the eyes look', 'eyes straight ahead')],
  [
    'stance',
    async (app) => {
      await app.value('How the sitter stands').click();
      await app.choose('Arms and hands', 'hands in the lap');
      await app.closeSlips();
    },
  ],
  ['room', (app) => app.type('Backdrop, behind the eyes', '2 m')],
  ['print', (app) => app.type('Height of the print', '0.6 m')],
  ['move', (app) => app.type('Length of the move', '2')],
  ['units', (app) => app.choose('Units', 'feet and inches')],
  ['picture hung', (app) => app.press('Hang another picture')],
  [
    'picture taken down',
    async (app) => {
      await app.value('More of A').click();
      await app.press('Take this picture down');
    },
  ],
  [
    'title',
    async (app) => {
      await app.value('Session').click();
      await app.slip().getByRole('textbox').fill('Autumn, 5 sitters');
      await app.page.keyboard.press('Enter');
      await app.closeSlips();
    },
  ],
];

test('every edit is one step, undone by the button and brought again by keys', async ({
  fresh: app,
}) => {
  await app.goto('?test=landmarks');
  await app.press('Light, room and kit');
  const states: Session[] = [await app.session()];
  const same = (session: Session) => JSON.stringify(session);
  for (const [what, edit] of EDITS) {
    const before = same(must(states.at(-1)));
    await edit(app);
    await expect.poll(async () => same(await app.session()), what).not.toBe(before);
    states.push(await app.session());
  }
  for (const earlier of states.slice(0, -1).reverse()) {
    await app.undo().click();
    await expect.poll(async () => same(await app.session())).toBe(same(earlier));
  }
  await expect(app.undo()).toBeDisabled();
  for (const later of states.slice(1)) {
    await app.page.keyboard.press('Control+Shift+z');
    await expect.poll(async () => same(await app.session())).toBe(same(later));
  }
  await expect(app.redo()).toBeDisabled();
  await app.page.keyboard.press('Control+z');
  await expect.poll(async () => same(await app.session())).toBe(same(must(states.at(-2))));
  await app.page.keyboard.press('Control+y');
  await expect.poll(async () => same(await app.session())).toBe(same(must(states.at(-1))));
});

test('a drag is one step, and so is a held key', async ({ fresh: app }) => {
  await app.goto('?test=landmarks');
  const tab = must(await app.handle('B').locator('.rail-tab').boundingBox());
  const [x, y] = [tab.x + tab.width / 2, tab.y + tab.height / 2];
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  await app.page.mouse.move(x - 200, y, { steps: 8 });
  await app.page.mouse.up();
  await expect.poll(async () => (await app.session()).pictures[1]?.standpoint).toBeLessThan(2.3);
  const dragged = await app.session();
  await app.page.keyboard.down('ArrowRight');
  for (let i = 0; i < 5; i++) await app.page.keyboard.down('ArrowRight');
  await app.page.keyboard.up('ArrowRight');
  await expect
    .poll(async () => (await app.session()).pictures[1]?.standpoint)
    .toBeCloseTo(must(dragged.pictures[1]).standpoint + 0.06, 9);
  await app.page.keyboard.press('Control+z');
  await expect.poll(() => app.session()).toEqual(dragged);
  await app.page.keyboard.press('Control+z');
  await expect.poll(() => app.session()).toEqual(demoSession());
  await expect(app.undo()).toBeDisabled();
});

test('work is saved and comes back on reload', async ({ fresh: app }) => {
  await app.goto('?test=landmarks');
  await app.type(STANDPOINT_B, '3.1 m');
  await app.choose('Framing', 'Half-length');
  await saved(app);
  await expect(app.page.getByText(/Saved at \d/)).toBeVisible();
  const before = await app.session();
  await app.page.reload();
  await app.ready();
  expect(await app.session()).toEqual(before);
  await expect(app.value(STANDPOINT_B)).toHaveText('3.10 m');
});

test('a copied link opens the same session elsewhere, as a step that can be undone', async ({
  fresh: app,
  browser,
  baseURL,
}) => {
  await app.goto('?test=landmarks');
  await app.type(STANDPOINT_B, '3.3 m');
  await app.choose('Upright or lying', 'lying');
  await app.press('Copy link');
  await expect(app.page.getByRole('status').filter({ hasText: 'Link copied' })).toHaveCount(1);
  const link = new URL(await app.page.evaluate(() => navigator.clipboard.readText()));
  expect(link.origin).toBe(new URL(must(baseURL)).origin);
  const sent = await app.session();

  const other = await freshApp(browser, baseURL);
  await other.goto(`?test=landmarks${link.hash}`);
  expect(await other.session()).toEqual(sent);
  // The address is cleared, so that a reload shows the work done since.
  expect(new URL(other.page.url()).hash).toBe('');
  await other.undo().click();
  await expect.poll(() => other.session()).toEqual(demoSession());
  await other.page.context().close();
});

const linkOf = (content: unknown): string =>
  `#session=${deflateSync(JSON.stringify(content)).toString('base64url')}`;

test('damaged and foreign links say what is wrong and change nothing', async ({ fresh: app }) => {
  const format = 'standpoint-session';
  const demo = demoSession();
  const whole = linkOf({ format, session: demo });
  const middle = Math.floor(whole.length / 2);
  const flipped = whole[middle] === 'A' ? 'B' : 'A';
  const LINKS = [
    [whole.slice(0, middle) + flipped + whole.slice(middle + 1), 'This link is damaged'],
    [whole.slice(0, -40), 'This link is damaged'],
    [
      linkOf({ format, session: { ...demo, version: demo.version + 1 } }),
      'This link comes from a newer version.',
    ],
    [linkOf({ hello: 'world' }), 'This link holds no session.'],
    [
      linkOf({ format, session: { ...demo, kits: [{ ...demo.kits[0], lenses: ['unheard-of'] }] } }),
      'This link asks for the lens "unheard-of", which is not here.',
    ],
  ] as const;
  await app.goto('?test=landmarks');
  await app.type(STANDPOINT_B, '1.7 m');
  const before = await app.session();
  for (const [hash, sentence] of LINKS) {
    await app.page.evaluate((to) => {
      window.location.hash = to;
    }, hash);
    const notice = app.page.getByRole('alert').filter({ hasText: sentence });
    await expect(notice).toContainText('Nothing was changed.');
    expect(await app.session()).toEqual(before);
    expect(new URL(app.page.url()).hash).toBe('');
    await notice.getByRole('button').click();
    await expect(notice).toHaveCount(0);
  }
  // The same on arrival.
  await saved(app);
  await app.page.goto('about:blank');
  await app.goto(`?test=landmarks${LINKS[0][0]}`);
  await expect(app.page.getByRole('alert')).toContainText('This link is damaged');
  expect(await app.session()).toEqual(before);
});

test('starting again from the demo can be undone', async ({ fresh: app }) => {
  await app.goto('?test=landmarks');
  await app.type(STANDPOINT_B, '1.7 m');
  const before = await app.session();
  await app.value('Session').click();
  await app.press('Start again');
  await expect.poll(() => app.session()).toEqual(demoSession());
  await app.undo().click();
  await expect.poll(() => app.session()).toEqual(before);
});

test('a session is saved as a file and opened from it; a damaged file changes nothing', async ({
  fresh: app,
}) => {
  await app.goto('?test=landmarks');
  await app.type(STANDPOINT_B, '1.9 m');
  const filed = await app.session();
  await app.value('Session').click();
  const downloading = app.page.waitForEvent('download');
  await app.press('Save as a file');
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/\.standpoint\.json$/);
  const text = readFileSync(await download.path(), 'utf8');
  expect(JSON.parse(text)).toEqual({ format: 'standpoint-session', session: filed });
  await app.closeSlips();

  await app.type(STANDPOINT_B, '0.9 m');
  const later = await app.session();
  const open = async (content: string) => {
    await app.value('Session').click();
    const choosing = app.page.waitForEvent('filechooser');
    await app.press('Open a file');
    await (await choosing).setFiles({
      name: 'sitting.standpoint.json',
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    });
  };
  const WRONG = [
    [text.slice(0, text.length / 2), /This file is damaged at line \d+\. Nothing was changed\./],
    [
      text.replace('"standpoint": 1.9', '"standpoint": "near"'),
      /This file is damaged at .*pictures.*standpoint.*Nothing was changed\./,
    ],
    ['{"name": "a shopping list"}', /This file holds no session\. Nothing was changed\./],
  ] as const;
  for (const [content, sentence] of WRONG) {
    await open(content);
    const notice = app.page.getByRole('alert').filter({ hasText: sentence });
    await expect(notice).toBeVisible();
    expect(await app.session()).toEqual(later);
    await notice.getByRole('button').click();
  }
  await open(text);
  await expect.poll(() => app.session()).toEqual(filed);
  await app.undo().click();
  await expect.poll(() => app.session()).toEqual(later);
});

test('a browser without storage says so, and everything else works', async ({ fresh: app }) => {
  await app.page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await app.goto('?test=landmarks');
  await expect(app.page.getByRole('alert')).toContainText(
    'This browser keeps nothing here. Save a file before you leave.',
  );
  await app.type(STANDPOINT_B, '1.7 m');
  await expect(app.value(STANDPOINT_B)).toHaveText('1.70 m');
  await app.pixels('A', 1);
});

test('a browser without WebGL says so, and readings and rail work all the same', async ({
  fresh: app,
}) => {
  await app.page.addInitScript(() => {
    const given = HTMLCanvasElement.prototype.getContext;
    // biome-ignore lint/suspicious/noExplicitAny: the overloads of getContext cannot be written down
    HTMLCanvasElement.prototype.getContext = function (this: any, kind: string, ...rest: any[]) {
      return kind.includes('webgl') ? null : Reflect.apply(given, this, [kind, ...rest]);
    } as typeof given;
  });
  await app.page.goto('?test');
  await expect(app.page.getByRole('alert')).toContainText('gives the page no WebGL 2');
  const before = await app.reading('nose_to_ear_ratio');
  expect(before[1]).toMatch(/^1\.\d\d$/);
  await app.handle('B').focus();
  await app.page.keyboard.press('Home');
  await expect(app.value(STANDPOINT_B)).toHaveText('0.15 m');
  await expect.poll(() => app.reading('nose_to_ear_ratio')).not.toEqual(before);
});

test('a lost graphics context is told, and the same pictures come back', async ({ fresh: app }) => {
  await app.goto();
  const before = [await app.pixels('A'), await app.pixels('B')];
  await app.page.evaluate(() => {
    const gl = document.querySelector<HTMLCanvasElement>('main canvas')?.getContext('webgl2');
    const extension = gl?.getExtension('WEBGL_lose_context');
    if (!extension) throw new Error('the context cannot be taken away');
    Object.assign(window, { giveBack: () => extension.restoreContext() });
    extension.loseContext();
  });
  const notice = app.page.getByRole('alert').filter({ hasText: 'pictures come back' });
  await expect(notice).toBeVisible();
  await expect(app.pixels('A')).rejects.toThrow('no live WebGL context');
  await app.redrawn(() =>
    app.page.evaluate(() => (window as unknown as { giveBack(): void }).giveBack()),
  );
  await expect(notice).toHaveCount(0);
  const after = [await app.pixels('A'), await app.pixels('B')];
  for (const [i, image] of before.entries())
    expect(difference(image, must(after[i])), `picture ${i}`).toBe(0);
});
