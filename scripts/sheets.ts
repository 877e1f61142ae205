/**
 * Contact sheets of the sitters, to look at: docs/sheets/*.jpg. All of them, or those whose names are given.
 * They are taken by the stage itself on the software rasteriser.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { servePreview } from './stage-preview/serve';
import { sheets } from './stage-preview/sheets';

const OUT = 'docs/sheets';

const wanted = process.argv.slice(2);
const chosen = sheets().filter(({ name }) => wanted.length === 0 || wanted.includes(name));
const unknown = wanted.filter((name) => !sheets().some((sheet) => sheet.name === name));
if (unknown.length > 0) {
  const names = sheets().map(({ name }) => name);
  console.error(`no sheet ${unknown.join(', ')}; there are ${names.join(', ')}`);
  process.exit(2);
}

const served = await servePreview(5181);
const page = await served.open();
await mkdir(OUT, { recursive: true });
for (const sheet of chosen) {
  const { image, missing } = await page.evaluate((asked) => window.preview.sheet(asked), sheet);
  await writeFile(join(OUT, `${sheet.name}.jpg`), Buffer.from(image, 'base64'));
  console.log(join(OUT, `${sheet.name}.jpg`));
  for (const reason of missing) console.log(`  left out: ${reason}`);
}
await served.close();
