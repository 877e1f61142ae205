/** The handout from the first page to the PDF, which a reader of PDFs then reads. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { multiply } from '../../src/handout/pdf/place';
import type { Matrix } from '../../src/handout/pdf/types';
import { expect, test } from './fixture';

/** A software rasteriser takes minutes over the pictures at 300 dots per inch; milliseconds. */
const LONGEST = 600_000;
test.setTimeout(LONGEST);

const MM = 72 / 25.4;

async function open(page: Page) {
  await page.goto('/?test#handout');
  await expect(page.locator('.page-hung').first()).toBeVisible();
}

/** Every picture of the pages is rendered. */
const rendered = (page: Page) =>
  expect(page.locator('.photograph-waiting')).toHaveCount(0, { timeout: LONGEST });

async function savePdf(page: Page): Promise<Uint8Array> {
  const downloading = page.waitForEvent('download', { timeout: LONGEST });
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toBe('head-shot-day-village-hall-players.pdf');
  return new Uint8Array(readFileSync(await download.path()));
}

test('a client sheet: text stays text, faces are embedded, pictures have 300 dots an inch', async ({
  page,
}) => {
  await open(page);
  // Words of one's own, in three scripts, and a letter that no face has.
  const title = page.getByRole('textbox', { name: 'Words of the page: title' }).first();
  await title.fill('Why the camera stands back: γιατί, зачем, \u6211');
  await title.blur();
  await rendered(page);
  const bytes = await savePdf(page);
  await expect(page.getByText('so they print as boxes: \u6211')).toBeVisible();

  // The reader takes what it is given for itself.
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  expect(pdf.numPages).toBe(2);
  const { info } = (await pdf.getMetadata()) as unknown as {
    info: Record<string, unknown>;
  };
  expect(info.Title).toBe('Head-shot day, village hall players');
  expect(info.Language).toBe('en');
  expect((await pdf.getMarkInfo())?.Marked).toBe(true);
  const outline = await pdf.getOutline();
  expect(outline.map((item) => item.title)).toEqual([
    expect.stringContaining('Why the camera stands back'),
    'The room on the day',
  ]);

  const first = await pdf.getPage(1);
  expect(first.view.map((value) => Math.round(value / MM))).toEqual([0, 0, 210, 297]);
  const { items } = await first.getTextContent();
  const text = items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replace(/\s+/g, ' ');
  expect(text).toContain('γιατί');
  expect(text).toContain('зачем');
  expect(text).toMatch(/0\.40 m from the eyes/);
  expect(text).toMatch(/Nose to ear/);
  expect(text).toContain('1 of 2');
  // The page's structure is that of the text.
  const tree = JSON.stringify(await first.getStructTree());
  for (const tag of ['H1', 'P', 'Table', 'TH', 'TD', 'Figure']) expect(tree).toContain(`"${tag}"`);
  expect(tree).toMatch(/Picture A\./);

  // Faces: a subset's name begins with six letters and a plus sign (ISO 32000-1, 9.6.4).
  const raw = Buffer.from(bytes).toString('latin1');
  const names = [...raw.matchAll(/\/FontName \/([^\s/]+)/g)].map(([, name]) => name);
  expect(names.length).toBeGreaterThan(2);
  for (const name of names) expect(name).toMatch(/^[A-Z]{6}\+/);
  expect([...raw.matchAll(/\/FontFile[23]? /g)].length).toBe(names.length);

  // Pictures: the pixels of each over its width on paper.
  const { fnArray, argsArray } = await first.getOperatorList();
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const stack: Matrix[] = [];
  const resolutions: number[] = [];
  for (const [i, operator] of fnArray.entries()) {
    if (operator === OPS.save) stack.push(matrix);
    if (operator === OPS.restore) matrix = stack.pop() ?? matrix;
    if (operator === OPS.transform) matrix = multiply(matrix, argsArray[i] as Matrix);
    if (operator === OPS.paintImageXObject)
      resolutions.push((argsArray[i][1] as number) / (Math.hypot(matrix[0], matrix[1]) / 72));
  }
  expect(resolutions.length).toBe(9);
  for (const dpi of resolutions) expect(Math.abs(dpi / 300 - 1)).toBeLessThan(0.02);
});

test('pages are edited, added, moved and taken out, and undo brings them back', async ({
  page,
}) => {
  await open(page);
  const pages = page.locator('.paper');
  const setUp = page.getByRole('region', { name: 'Sheet and pages' });
  await setUp.getByRole('button', { name: /^Kind of handout/ }).click();
  await page.getByRole('option', { name: /A lesson/ }).click();
  await expect(pages).toHaveCount(2);
  await expect(
    page.getByText('Which picture was taken from nearer, and what shows it?'),
  ).toBeVisible();
  await setUp.getByRole('button', { name: /^Add a page/ }).click();
  await page.getByRole('option', { name: /Notes/ }).click();
  await expect(pages).toHaveCount(3);
  const notes = page.getByRole('textbox', { name: 'Words of the page: notes' });
  await notes.fill('Bring the step.');
  await notes.blur();
  await expect(notes).toHaveText('Bring the step.');
  await setUp.getByRole('button', { name: '3 Notes' }).click();
  await setUp.getByRole('button', { name: 'Earlier', exact: true }).click();
  await expect(pages.nth(1).locator('h2')).toHaveText('Notes');
  await setUp.getByRole('button', { name: 'Take out' }).click();
  await expect(pages).toHaveCount(2);
  for (let i = 0; i < 5; i++) await page.keyboard.press('Control+z');
  await expect(pages.first().locator('h2')).toHaveText('Why the camera stands where it stands');
});

test('words emptied follow the pictures again; Escape puts back what stood there', async ({
  page,
}) => {
  await open(page);
  const lead = page.getByRole('textbox', { name: 'Words of the page: first lines' }).first();
  const usual = (await lead.textContent()) ?? '';
  await lead.fill('Mine');
  await lead.press('Escape');
  await expect(lead).toHaveText(usual);
  await lead.fill('Mine');
  await lead.blur();
  await expect(lead).toHaveText('Mine');
  await lead.fill('');
  await lead.blur();
  await expect(lead).toHaveText(usual);
});

test('words that outgrow their page are told, until they fit again', async ({ page }) => {
  await open(page);
  const told = page.getByText('does not fit on the paper');
  await expect(told).toHaveCount(0);
  const lead = page.getByRole('textbox', { name: 'Words of the page: first lines' }).first();
  await lead.fill('Stand back and let the face keep its own proportions. '.repeat(60));
  await lead.blur();
  await expect(told).toHaveCount(1);
  await page.keyboard.press('Control+z');
  await expect(told).toHaveCount(0);
});

for (const paper of ['A4 upright', 'Letter upright', 'A4 lying', 'Letter lying']) {
  test(`nothing is cut off on ${paper}, of any kind of handout`, async ({ page }) => {
    await open(page);
    const setUp = page.getByRole('region', { name: 'Sheet and pages' });
    await setUp.getByRole('button', { name: /^Paper/ }).click();
    await page.getByRole('option', { name: paper }).click();
    for (const kind of [/A client sheet/, /A lesson/, /One comparison/, /A plan for the day/]) {
      await setUp.getByRole('button', { name: /^Kind of handout/ }).click();
      await page.getByRole('option', { name: kind }).click();
      await expect(page.getByText('Being worked out')).toHaveCount(0, { timeout: LONGEST });
      const spills = await page.locator('.page-body').evaluateAll((bodies) =>
        bodies.map((body) => {
          const end = body.getBoundingClientRect().bottom;
          return Math.max(
            ...[...body.children].map((part) => part.getBoundingClientRect().bottom - end),
          );
        }),
      );
      for (const spill of spills) expect(spill).toBeLessThan(1);
    }
  });
}
