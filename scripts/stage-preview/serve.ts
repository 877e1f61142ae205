/** Builds and serves the preview page, and opens it in a browser of the tests' kind. */
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { build, preview } from 'vite';
import { findBrowser } from '../browser';

const configFile = join(import.meta.dirname, 'vite.config.ts');

export interface Served {
  /** A page of its own, ready to take pictures. */
  readonly open: () => Promise<Page>;
  readonly close: () => Promise<void>;
}

export async function servePreview(port: number): Promise<Served> {
  const outDir = join(tmpdir(), `stage-preview-${process.pid}`);
  await build({ configFile, logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    configFile,
    logLevel: 'error',
    build: { outDir },
    preview: { host: '127.0.0.1', port, strictPort: true },
  });
  const { executablePath, args, env } = await findBrowser();
  const browser: Browser = await chromium.launch({
    executablePath,
    args: [...args],
    env: { ...env },
  });
  return {
    open: async () => {
      const page = await browser.newPage({ viewport: { width: 200, height: 200 } });
      await page.goto(server.resolvedUrls?.local[0] as string);
      await page.waitForFunction(() => window.preview);
      return page;
    },
    close: async () => {
      await browser.close();
      await new Promise((done) => server.httpServer.close(done));
    },
  };
}
