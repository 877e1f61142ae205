/**
 * Contact sheets of the sitters, to look at: docs/sheets/*.jpg. All of them, or those whose names are given.
 * They are taken by the stage itself on the software rasteriser.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { findBrowser } from './browser';
import { sheets } from './stage-preview/sheets';

const OUT = 'docs/sheets';
const ROOT = 'scripts/stage-preview';

const wanted = process.argv.slice(2);
const chosen = sheets().filter(({ name }) => wanted.length === 0 || wanted.includes(name));
const unknown = wanted.filter((name) => !sheets().some((sheet) => sheet.name === name));
if (unknown.length > 0) {
  const names = sheets().map(({ name }) => name);
  console.error(`no sheet ${unknown.join(', ')}; there are ${names.join(', ')}`);
  process.exit(2);
}

const configFile = join(ROOT, 'vite.config.ts');
const outDir = join(tmpdir(), `sheets-${process.pid}`);
await build({ configFile, logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({
  configFile,
  logLevel: 'error',
  build: { outDir },
  preview: { host: '127.0.0.1', port: 5181 },
});
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: [...args], env: { ...env } });
const page = await browser.newPage({ viewport: { width: 200, height: 200 } });
await page.goto(server.resolvedUrls?.local[0] as string);
await page.waitForFunction(() => window.preview);
await mkdir(OUT, { recursive: true });
for (const sheet of chosen) {
  const { image, missing } = await page.evaluate((asked) => window.preview.sheet(asked), sheet);
  await writeFile(join(OUT, `${sheet.name}.jpg`), Buffer.from(image, 'base64'));
  console.log(join(OUT, `${sheet.name}.jpg`));
  for (const reason of missing) console.log(`  left out: ${reason}`);
}
await browser.close();
await new Promise((done) => server.httpServer.close(done));
