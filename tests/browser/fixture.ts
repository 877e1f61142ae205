/**
 * The app in a real browser, and the ways a person uses it. Waits are for states (the document, drawn
 * pictures, what the page says), never for a length of time.
 */
import {
  type Browser,
  type BrowserContextOptions,
  test as base,
  expect,
  type Page,
} from '@playwright/test';
import { demoSession } from '../../src/session/demo';
import type { ResolvedPicture } from '../../src/session/resolve';
import type { Letter, Session } from '../../src/session/types';
import { contrast, type Image } from './image';

export { expect };

export const VIEWPORT = { width: 1440, height: 900 } as const;

/** Less contrast than this and a picture shows nothing, 0..255. */
const LEAST_CONTRAST = 8;

/** One page of the app. */
export class App {
  constructor(readonly page: Page) {}

  async goto(address = '?test'): Promise<this> {
    await this.page.goto(address);
    return this.ready();
  }

  /** Every picture is drawn. */
  async ready(): Promise<this> {
    await this.page.waitForFunction(() => {
      const hook = window.standpoint;
      return hook?.stage && hook.stage.counts().renders >= hook.pictures.length;
    });
    await this.settled();
    return this;
  }

  /** Nothing was drawn during several turns of the browser's own frame loop: all is up to date. */
  async settled(): Promise<void> {
    await this.page.evaluate(async () => {
      const frame = () => new Promise(requestAnimationFrame);
      const renders = () => window.standpoint?.stage?.counts().renders;
      for (let quiet = 0, last = renders(); quiet < 6; quiet++) {
        await frame();
        const now = renders();
        if (now !== last) quiet = 0;
        last = now;
      }
    });
  }

  renders = (): Promise<number> =>
    this.page.evaluate(() => window.standpoint?.stage?.counts().renders ?? Number.NaN);

  /** Does something that changes at least one picture, and waits until it is drawn. */
  async redrawn(change: () => Promise<unknown>): Promise<void> {
    const before = await this.renders();
    await change();
    await this.page.waitForFunction(
      (count) => (window.standpoint?.stage?.counts().renders ?? 0) > count,
      before,
    );
    await this.settled();
  }

  session = (): Promise<Session> =>
    this.page.evaluate(() => {
      if (!window.standpoint) throw new Error('the page shows no session');
      return window.standpoint.store.getState().session;
    });

  /** Puts a session on the page as one step. */
  async use(session: Session): Promise<void> {
    await this.page.evaluate((next) => window.standpoint?.store.open(next, 'Test'), session);
    await this.page.waitForFunction(
      () =>
        window.standpoint?.store.getState().session.pictures.length ===
        window.standpoint?.pictures.length,
    );
    await this.settled();
  }

  /** The pictures as they are shown now, resolved to cameras. */
  async pictures(): Promise<ResolvedPicture[]> {
    await this.settled();
    return this.page.evaluate(
      () => window.standpoint?.pictures.map(({ resolved }) => resolved) ?? [],
    );
  }

  async picture(letter: Letter): Promise<ResolvedPicture> {
    const found = (await this.pictures()).find((each) => each.letter === letter);
    if (!found) throw new Error(`no picture ${letter}`);
    return found;
  }

  /** A picture's pixels on the one canvas. Throws unless a live context has drawn something. */
  async pixels(letter: Letter, leastContrast = LEAST_CONTRAST): Promise<Image> {
    const read = await this.page.evaluate((wanted) => {
      const canvas = document.querySelector<HTMLCanvasElement>('main canvas');
      const gl = canvas?.getContext('webgl2');
      if (!canvas || !gl || gl.isContextLost()) throw new Error('no live WebGL context');
      const hung = document.querySelector(`[data-picture="${wanted}"] [role="img"]`);
      if (!hung) throw new Error(`no picture ${wanted}`);
      const [frame, box] = [canvas.getBoundingClientRect(), hung.getBoundingClientRect()];
      const scale = canvas.width / frame.width;
      const left = Math.round((box.left - frame.left) * scale);
      const top = Math.round((box.top - frame.top) * scale);
      const width = Math.round((box.right - frame.left) * scale) - left;
      const height = Math.round((box.bottom - frame.top) * scale) - top;
      const pen = new OffscreenCanvas(width, height).getContext('2d');
      if (!pen) throw new Error('no canvas to read with');
      pen.drawImage(canvas, -left, -top);
      const { data } = pen.getImageData(0, 0, width, height);
      let binary = '';
      for (let i = 0; i < data.length; i += 0x8000)
        binary += String.fromCharCode(...data.subarray(i, i + 0x8000));
      return { width, height, data: btoa(binary) };
    }, letter);
    const image = { ...read, data: new Uint8Array(Buffer.from(read.data, 'base64')) };
    if (!(contrast(image) > leastContrast)) throw new Error(`picture ${letter} shows nothing`);
    return image;
  }

  /** A value in a sentence, by the beginning of its label. */
  value = (label: string) => this.page.getByRole('button', { name: new RegExp(`^${label}`) });

  /** The topmost slip or sheet. */
  slip = () => this.page.getByRole('dialog').last();

  /** Opens a value's slip, types into it and confirms. */
  async type(label: string, text: string): Promise<void> {
    await this.value(label).click();
    await this.slip().getByRole('textbox').fill(text);
    await this.page.keyboard.press('Enter');
  }

  /** Opens a value's slip and picks the option whose text begins so. */
  async choose(label: string, option: string): Promise<void> {
    await this.value(label).click();
    await this.page
      .getByRole('option')
      .filter({ hasText: new RegExp(`^${option}`) })
      .click();
  }

  press = (name: string | RegExp) =>
    this.page.getByRole('button', { name, exact: true }).first().click();

  async closeSlips(): Promise<void> {
    // A slip that is still closing takes the key and leaves the one below it open.
    await expect(async () => {
      await this.page.keyboard.press('Escape');
      expect(await this.page.getByRole('dialog').count()).toBe(0);
    }).toPass({ intervals: [200] });
  }

  handle = (letter: Letter) => this.page.getByRole('slider', { name: `Standpoint ${letter}` });

  figure = (letter: Letter) => this.page.locator(`[data-picture="${letter}"]`);

  /** Shown values of a row of the readings, a cell a picture and one for the change. */
  async reading(id: string): Promise<string[]> {
    const cells = this.page.locator(`[data-reading="${id}"] td`);
    // The table is fetched after the first pictures.
    await cells.first().waitFor();
    return cells.allInnerTexts();
  }

  undo = () => this.page.getByRole('button', { name: /^Undo/ });
  redo = () => this.page.getByRole('button', { name: /^Redo/ });
}

/** A context of its own: nothing saved, nothing opened before. */
export async function freshApp(
  browser: Browser,
  baseURL: string | undefined,
  options: BrowserContextOptions = {},
): Promise<App> {
  if (baseURL === undefined) throw new Error('no address is set');
  const context = await browser.newContext({ baseURL, viewport: VIEWPORT, ...options });
  return new App(await context.newPage());
}

interface Shared {
  readonly app: App;
  readonly address: string;
  /** The last test failed or left something open: the page starts anew. */
  isStale: boolean;
}

/** A page that several tests share: loading it once saves minutes on a software rasteriser. */
async function share(
  browser: Browser,
  baseURL: string | undefined,
  address: string,
  use: (shared: Shared) => Promise<void>,
): Promise<void> {
  const app = await freshApp(browser, baseURL, { permissions: CLIPBOARD });
  await use({ app, address, isStale: true });
  await app.page.context().close();
}

/** A shared page on the demo session for one test. */
async function lend(
  shared: Shared,
  use: (app: App) => Promise<void>,
  hasFailed: () => boolean,
): Promise<void> {
  const { app, address } = shared;
  if (shared.isStale) await app.goto(address);
  await app.page.setViewportSize(VIEWPORT);
  await app.use(demoSession());
  await use(app);
  const left = app.page.locator('[role="dialog"], .looks [aria-pressed="true"]');
  shared.isStale = hasFailed() || (await left.count().catch(() => 1)) > 0;
}

const CLIPBOARD = ['clipboard-read', 'clipboard-write'];

interface Fixtures {
  /** The app on the demo session. */
  readonly app: App;
  /** The same where the pictures show landmarks alone, which draws fast: for numbers and words. */
  readonly quick: App;
  /** A page in a context of its own, not yet opened: for what is kept, lost or missing. */
  readonly fresh: App;
}

export const test = base.extend<Fixtures, { photo: Shared; squares: Shared }>({
  photo: [
    ({ browser }, use, { project }) => share(browser, project.use.baseURL, '?test', use),
    { scope: 'worker' },
  ],
  squares: [
    ({ browser }, use, { project }) => share(browser, project.use.baseURL, '?test=landmarks', use),
    { scope: 'worker' },
  ],
  app: ({ photo }, use, info) => lend(photo, use, () => info.status !== info.expectedStatus),
  quick: ({ squares }, use, info) => lend(squares, use, () => info.status !== info.expectedStatus),
  fresh: async ({ browser, baseURL }, use) => {
    const app = await freshApp(browser, baseURL, { permissions: CLIPBOARD });
    await use(app);
    await app.page.context().close();
  },
});
