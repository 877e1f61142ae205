/** Makes README's picture anew: the demo session at 1440 x 900, from the built app. */
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { findBrowser } from './browser';

const OUT = 'docs/compare.png';

await build({ logLevel: 'warn' });
const server = await preview({ preview: { host: '127.0.0.1', port: 5180 }, logLevel: 'error' });
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: [...args], env: { ...env } });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
await page.goto(`${server.resolvedUrls?.local[0]}?test`);
// Both pictures are drawn and their rays are cast.
await page.waitForFunction(
  () =>
    (window.standpoint?.stage?.counts().renders ?? 0) >= 2 &&
    window.standpoint?.pictures.every(({ measures }) => measures.visibility !== null),
);
await page.screenshot({ path: OUT });
await browser.close();
await new Promise((done) => server.httpServer.close(done));
console.log(OUT);
