/** The table and the chart over standpoints: what the sheet shows, copies and saves, and what the page prints. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import Papa from 'papaparse';
import { must } from './expected';
import { type App, expect, test } from './fixture';

/** Sitters are built and measured, beside other work. */
const LONGEST = 180_000;
test.setTimeout(2 * LONGEST);

async function openSheet({ page }: App): Promise<void> {
  await page.getByRole('link', { name: 'Handout' }).click();
  await page.getByRole('button', { name: 'Table and charts' }).click();
  await measured(page);
}

/** What was asked for is measured and shown. */
const measured = (page: Page): Promise<void> =>
  page.locator('.table-sheet[aria-busy="false"] .range-table').waitFor({ timeout: LONGEST });

async function saved(app: App, act: string): Promise<{ name: string; text: string }> {
  const downloading = app.page.waitForEvent('download');
  await app.press(act);
  const download = await downloading;
  return {
    name: download.suggestedFilename(),
    text: readFileSync(await download.path(), 'utf8'),
  };
}

test('standpoints are typed as a range or a list; a wrong one stays with its reason', async ({
  quick: app,
}) => {
  const { page } = app;
  await openSheet(app);
  await app.value('Standpoints').click();
  const start = app.slip().getByRole('textbox', { name: 'From' });
  await start.fill('1 cm');
  await start.press('Enter');
  await expect(app.slip()).toContainText('They lie between 0.15 m and 30.00 m.');
  await start.fill('0.3');
  await app.slip().getByRole('textbox', { name: 'To', exact: true }).fill('1');
  await app.slip().getByRole('textbox', { name: 'In steps of' }).fill('0.1 mm');
  await start.press('Enter');
  await expect(app.slip()).toContainText('too many for one table');
  await app.slip().getByRole('textbox', { name: 'In steps of' }).fill('10 cm');
  await start.press('Enter');
  await expect(app.value('Standpoints')).toHaveText('8 standpoints, 0.30 m to 1.00 m');
  expect((await app.session()).tabled).toHaveLength(8);
  await app.value('Standpoints').click();
  const list = app.slip().getByRole('textbox', { name: /^Or one by one/ });
  await list.fill('0.4, 60 cm, 2 ft');
  await list.press('Enter');
  await expect(app.value('Standpoints')).toHaveText('3 standpoints, 0.40 m to 0.61 m');
  await measured(page);
  // B's own standpoint has a row too.
  await expect(page.locator('.range-table tbody tr')).toHaveCount(4);
  await page.getByRole('button', { name: 'With the pictures’ own standpoints' }).click();
  await expect(page.locator('.range-table tbody tr')).toHaveCount(3);
  await app.closeSlips();
});

test('the table is copied and saved; the file holds what the table shows', async ({
  quick: app,
}) => {
  const { page } = app;
  await openSheet(app);
  await app.value('Sitters').click();
  await page.getByRole('option', { name: 'Child of 8' }).click();
  await page.keyboard.press('Escape');
  await expect(page.locator('.range-table [scope="colgroup"]')).toHaveCount(2, {
    timeout: LONGEST,
  });
  await measured(page);
  const shown = await page
    .locator('.range-table tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')),
    );
  const file = await saved(app, 'Save as CSV');
  expect(file.name).toMatch(/\.csv$/);
  const { data, errors } = Papa.parse<string[]>(file.text, { skipEmptyLines: true });
  expect(errors).toEqual([]);
  expect(data).toHaveLength(1 + shown.length);
  for (const [i, cells] of shown.entries()) {
    const fields = must(data[i + 1]);
    const [, at, letter] = fields;
    expect(`${letter === '' ? '' : `${letter} `}${at}`).toBe(cells[0]);
    expect(fields.slice(3).filter((_, k) => k % 2 === 1)).toEqual(cells.slice(1));
  }
  await app.press('Copy the table');
  await expect(page.getByText('Copied.')).toBeVisible();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  const lines = copied.split('\n').map((line) => line.split('\t'));
  expect(lines).toHaveLength(1 + shown.length);
  expect(must(lines[1]).slice(2)).toEqual(must(shown[0]).slice(1));
  await app.closeSlips();
});

test('the chart marks A and B, follows the choice of reading and is saved as a drawing', async ({
  quick: app,
}) => {
  const { page } = app;
  await openSheet(app);
  const chart = page.locator('.chart-part svg');
  await expect(chart.locator('.chart-letter')).toHaveText(['A', 'B']);
  await expect(chart).toHaveAttribute('aria-label', /Nose to ear .* Picture A, 0\.40 m: 1\.\d\d\./);
  await app.choose('Reading in the chart', 'Ears, against the eyes');
  await expect(chart).toHaveAttribute('aria-label', /^Ears, against the eyes/);
  await expect(chart).toContainText('Ears, against the eyes, %');
  await page.emulateMedia({ colorScheme: 'dark' });
  const file = await saved(app, 'Save the chart as SVG');
  await page.emulateMedia({ colorScheme: null });
  expect(file.name).toMatch(/ears.*\.svg$/);
  // Opened by itself it is a well-formed drawing with everything it needs.
  const alone = await page.evaluate((text) => {
    const document = new DOMParser().parseFromString(text, 'image/svg+xml');
    const at = document.querySelector('circle');
    return {
      root: document.documentElement.localName,
      broken: document.querySelector('parsererror') !== null,
      classes: document.querySelectorAll('[class]').length,
      dot: at?.getAttribute('style') ?? '',
      texts: [...document.querySelectorAll('text')].map((each) => each.textContent),
    };
  }, file.text);
  expect(alone).toMatchObject({ root: 'svg', broken: false, classes: 0 });
  expect(alone.texts).toContain('A');
  // The light theme's accent of A, whatever the screen's scheme.
  expect(alone.dot).toContain('fill:rgb(133, 40, 15)');
  expect(file.text).not.toMatch(/var\(|light-dark|foreignObject/);
  await app.closeSlips();
});

test('the page of numbers has a row and a mark for each picture, dark ink on white in the dark too', async ({
  quick: app,
}) => {
  const { page } = app;
  const session = await app.session();
  const numbers = {
    id: 'page-1',
    kind: 'numbers',
    comparison: null,
    parts: ['chart', 'computed'],
    words: {},
  } as const;
  await app.use({
    ...session,
    tabled: Array.from({ length: 60 }, (_, i) => Number((0.3 + i / 20).toFixed(2))),
    handout: { ...session.handout, pages: [numbers] },
  });
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.getByRole('link', { name: 'Handout' }).click();
  const sheet = page.locator('.paper');
  await expect(sheet.locator('.chart-letter')).toHaveText(['A', 'B', 'A', 'B'], {
    timeout: LONGEST,
  });
  await expect(sheet).toContainText(/22 of 60 standpoints are shown/);
  const [foot, chart] = await Promise.all(
    ['.page-foot', '.page-charts'].map((part) => sheet.locator(part).boundingBox()),
  );
  // All of it is on the sheet.
  expect(must(chart).y + must(chart).height).toBeLessThanOrEqual(must(foot).y);
  await expect(sheet.locator('.chart-curve').first()).toHaveCSS('stroke', 'rgb(26, 26, 26)');
  await expect(sheet.locator('.chart-tab').first()).toHaveCSS('fill', 'rgb(133, 40, 15)');
  await page.emulateMedia({ colorScheme: null });
});
