/** The user's own sessions in the browser, and that none is lost when a tab dies amid a save. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { must } from './expected';
import { App, expect, test } from './fixture';

const ADDRESS = '?test=landmarks';

/** Every record of the browser's own store, read beside the app. */
const records = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ id: string; title: string; document: { session: Session } }[]>((resolve) => {
        const opening = indexedDB.open('standpoint');
        opening.onsuccess = () => {
          const database = opening.result;
          const all = database.transaction('sessions').objectStore('sessions').getAll();
          all.onsuccess = () => {
            database.close();
            resolve(all.result);
          };
        };
      }),
  );
const savedTitles = async (page: Page) => (await records(page)).map(({ title }) => title).sort();

const openSheet = async (app: App) => {
  await app.value('Session').click();
  await app.press('My sessions');
  await expect(app.page.getByRole('heading', { name: 'My sessions' })).toBeVisible();
};
const rename = async (app: App, title: string) => {
  await app.value('Session').click();
  await app.slip().getByRole('textbox').fill(title);
  await app.closeSlips();
  await expect.poll(() => savedTitles(app.page)).toContain(title);
};
const lines = (app: App) => app.page.locator('.session-line');

test('sessions are duplicated, renamed, opened, deleted and brought back', async ({
  fresh: app,
}) => {
  await app.goto(ADDRESS);
  await rename(app, 'Autumn');
  await openSheet(app);
  await expect(lines(app)).toHaveCount(1);
  await expect(lines(app)).toContainText('on this page now');
  await app.press('Duplicate Autumn');
  await expect(lines(app)).toHaveCount(2);
  await app.page.getByRole('button', { name: 'Name of the session: Autumn, copy' }).click();
  await app.slip().getByRole('textbox').fill('Winter');
  await app.page.keyboard.press('Enter');
  await expect.poll(() => savedTitles(app.page)).toEqual(['Autumn', 'Winter']);

  await app.press('Delete Winter');
  await expect(app.page.getByText('Winter is deleted.')).toBeVisible();
  await expect(app.page.getByRole('button', { name: 'Undo: Winter is deleted' })).toBeFocused();
  await app.page.keyboard.press('Enter');
  await app.press('Open Winter');
  await expect.poll(async () => (await app.session()).title).toBe('Winter');

  // What is done now is kept in Winter's record; undo goes back to Autumn and leaves Winter.
  await app.type('Standpoint B', '1.7 m');
  await expect
    .poll(async () => (await records(app.page)).map((each) => each.document.session))
    .toContainEqual(await app.session());
  await app.undo().click();
  await app.undo().click();
  await expect.poll(async () => (await app.session()).title).toBe('Autumn');
  await app.type('Standpoint A', '0.5 m');
  const standpoints = async () =>
    Object.fromEntries(
      (await records(app.page)).map(({ title, document }) => [
        title,
        document.session.pictures.map(({ standpoint }) => standpoint),
      ]),
    );
  await expect.poll(standpoints).toEqual({ Autumn: [0.5, 2.4], Winter: [0.4, 2.4] });
});

test('all sessions go into one file and come back from it', async ({ fresh: app }) => {
  await app.goto(ADDRESS);
  await rename(app, 'Autumn');
  await openSheet(app);
  const downloading = app.page.waitForEvent('download');
  await app.press('Export all');
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/^sessions-\d{4}-\d\d-\d\d\.standpoints\.json$/);
  await expect(app.page.getByText(/^1 session saved as /)).toBeVisible();
  const file = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(file.sessions).toHaveLength(1);
  const other = structuredClone(file.sessions[0]);
  other.document.session.title = 'From elsewhere';
  const broken = structuredClone(other);
  broken.document.session.pictures[0].standpoint = null;
  file.sessions.push(broken, other);

  const choosing = app.page.waitForEvent('filechooser');
  await app.press('Import');
  await (await choosing).setFiles({
    name: 'sessions.standpoints.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await expect(app.page.getByText('1 session added. 1 session was here already.')).toBeVisible();
  await expect(
    app.page.getByText(/^Number 2 was left out\. .+ damaged at pictures\.0\.standpoint/),
  ).toBeVisible();
  expect(await savedTitles(app.page)).toEqual(['Autumn', 'From elsewhere']);
});

test('a small picture of the wall is kept with a session', async ({ fresh: app }) => {
  await app.goto();
  await rename(app, 'Autumn');
  await openSheet(app);
  // It is taken once the pictures rest; the sheet shows it when it is opened after that.
  await expect(async () => {
    await app.closeSlips();
    await openSheet(app);
    const picture = app.page.getByRole('img', { name: 'Pictures of Autumn' });
    await expect(picture).toBeVisible({ timeout: 1000 });
    const size = await picture.evaluate(async (image: HTMLImageElement) => {
      await image.decode();
      return [image.naturalWidth, image.naturalHeight, image.src.length];
    });
    expect(must(size[0])).toBeGreaterThan(60);
    expect(must(size[1])).toBeGreaterThan(60);
    expect(must(size[2])).toBeLessThan(60_000);
  }).toPass();
});

test('storage that is nearly full is told, with what to do', async ({ fresh: app }) => {
  await app.page.addInitScript(() => {
    navigator.storage.estimate = async () => ({ usage: 90e6, quota: 100e6 });
    const asked = { persist: 0 };
    Object.assign(window, { asked });
    navigator.storage.persisted = async () => false;
    navigator.storage.persist = async () => {
      asked.persist++;
      return true;
    };
  });
  await app.goto(ADDRESS);
  await expect(app.page.getByRole('alert')).toHaveCount(0);
  await rename(app, 'Autumn');
  await expect(app.page.getByRole('alert')).toContainText(/nearly full: 90\s%.+export all/);
  await rename(app, 'Winter');
  expect(await app.page.evaluate(() => Reflect.get(window, 'asked').persist)).toBe(1);
});

/** Deaths of the tab, each at another moment of a save. */
const DEATHS = 6;

test('no session is lost or torn when the tab dies amid a save', async ({ fresh: app }) => {
  test.slow();
  const context = app.page.context();
  const errors: string[] = [];
  /** Puts edits numbered from `first` on, each saved at once, and never ends; every part carries the number. */
  const storm = (page: Page, first: number) =>
    page.evaluate((from) => {
      let n = from;
      const next = () => {
        if (!window.standpoint) throw new Error('the page shows no session');
        const { store } = window.standpoint;
        const numbered = `${n++}`;
        const logo = `data:image/png;base64,${numbered.padStart(8, '0').repeat(30_000)}`;
        store.act(
          {
            edit: (session: Session) => ({
              ...session,
              title: numbered,
              notes: `${numbered} `.repeat(2000),
              handout: {
                ...session.handout,
                author: { ...session.handout.author, words: numbered, logo },
              },
            }),
            label: () => 'Storm',
          },
          {},
        );
        window.dispatchEvent(new Event('pagehide'));
        setTimeout(next, 0);
      };
      next();
    }, first);

  let page = app.page;
  let least = 0;
  for (let death = 0; death < DEATHS; death++) {
    page.on('pageerror', ({ message }) => errors.push(message));
    await new App(page).goto(ADDRESS);
    const first = 1000 * (death + 1);
    await storm(page, first);
    await expect
      .poll(async () => Math.max(...(await savedTitles(page)).map((title) => Number(title) || 0)))
      .toBeGreaterThanOrEqual(first);
    least = first;
    // Half of the tabs are closed, half crash; each a little later into its saves than the one before.
    await page.evaluate(
      (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
      (death * 7) % 31,
    );
    if (death % 2 === 0) await page.close({ runBeforeUnload: false });
    else {
      const crashed = page.waitForEvent('crash');
      const session = await context.newCDPSession(page);
      session.send('Page.crash').catch(() => undefined);
      await crashed;
      await page.close();
    }
    page = await context.newPage();
    const back = await new App(page).goto(ADDRESS);
    const session = await back.session();
    // The latest complete save, whole.
    const n = Number(session.title);
    expect(n).toBeGreaterThanOrEqual(least);
    expect(session.notes).toBe(`${n} `.repeat(2000));
    expect(session.handout.author.words).toBe(`${n}`);
    expect(session.handout.author.logo).toBe(
      `data:image/png;base64,${`${n}`.padStart(8, '0').repeat(30_000)}`,
    );
    expect({ ...session, title: '', notes: '', handout: null }).toEqual({
      ...demoSession(),
      title: '',
      notes: '',
      handout: null,
    });
    await expect(page.getByRole('alert')).toHaveCount(0);
  }
  expect(errors).toEqual([]);
});
