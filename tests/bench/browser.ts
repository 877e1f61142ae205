/** The page of the benches (tests/bench/page), built and opened in the browser that the tests drive. */
import { chromium, type Page } from '@playwright/test';
import react from '@vitejs/plugin-react';
import { build, type InlineConfig, preview } from 'vite';
import { findBrowser } from '../../scripts/browser';
import type { Bench } from './page/main';

declare global {
  interface Window {
    bench: Bench;
  }
}

/** Until the page has drawn its first pictures, beside other programs; milliseconds. */
const SLOW_START = 300_000;

const config: InlineConfig = {
  configFile: false,
  root: `${import.meta.dirname}/page`,
  base: './',
  plugins: [react()],
  build: { outDir: '../../../node_modules/.cache/bench-page', emptyOutDir: true },
};

/** Opens the page for one use; browser and server are closed whatever happens. */
export async function withBenchPage<T>(use: (page: Page) => Promise<T>): Promise<T> {
  await build({ ...config, logLevel: 'error' });
  const server = await preview({
    ...config,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 5181 },
  });
  const { executablePath, args, env } = await findBrowser();
  const browser = await chromium.launch({ executablePath, args: [...args], env: { ...env } });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
    page.on('pageerror', (error) => console.error(error));
    page.on('console', (message) => {
      if (message.type() === 'error') console.error(message.text());
    });
    await page.goto(`${server.resolvedUrls?.local[0]}`);
    await page.waitForFunction(() => window.bench, undefined, { timeout: SLOW_START });
    return await use(page);
  } finally {
    await browser.close();
    await new Promise((done) => server.httpServer.close(done));
  }
}
