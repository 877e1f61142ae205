/** The browser's own print of the pages that are not laid out as paper: whole, and with their pictures. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { type App, expect, openPlan, test } from './plan-page';

interface Sheet {
  readonly width: number;
  readonly images: number;
  /** Right edge of the text farthest to the right, points. */
  readonly reach: number;
  readonly text: string;
}

async function printed({ page }: App): Promise<Sheet[]> {
  const data = new Uint8Array(await page.pdf({ format: 'A4' }));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const sheets: Sheet[] = [];
  for (let i = 1; i <= pdf.numPages; i++) {
    const sheet = await pdf.getPage(i);
    const { fnArray } = await sheet.getOperatorList();
    const { items } = await sheet.getTextContent();
    const shown = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item] : []));
    sheets.push({
      width: sheet.getViewport({ scale: 1 }).width,
      images: fnArray.filter((operator) => operator === OPS.paintImageXObject).length,
      // Dimensions run upwards too.
      reach: Math.max(
        ...shown.map(
          ({ transform: [a, b, , , x], width }) => x + (width * Math.max(0, a)) / Math.hypot(a, b),
        ),
      ),
      text: shown
        .map(({ str }) => str)
        .join(' ')
        .replace(/\s+/g, ' '),
    });
  }
  return sheets;
}

const isWhole = (sheets: readonly Sheet[]): void => {
  for (const { reach, width } of sheets) expect(reach).toBeLessThan(width);
};

test('Compare prints its pictures, the rail and the readings', async ({ fresh: app }) => {
  await app.goto();
  await expect(app.page.getByText('Place to view a print from')).toBeVisible();
  const sheets = await printed(app);
  isWhole(sheets);
  expect(sheets[0]?.images).toBe(2);
  const text = sheets.map((sheet) => sheet.text).join(' ');
  expect(text).toContain('0.40 m from the eyes');
  expect(text).toContain('B focuses from');
  expect(text).toContain('Place to view a print from');
  expect(text).not.toContain('Look closer');
  // The screen has its own pictures back.
  await expect(app.page.locator('.printed')).toHaveCount(0);
});

test('Plan prints drawings, results and the chart, until cards are laid out', async ({
  fresh: app,
}) => {
  await openPlan(app);
  await expect(app.page.locator('.one-standpoint svg')).toBeVisible();
  const whole = await printed(app);
  isWhole(whole);
  expect(whole.reduce((sum, { images }) => sum + images, 0)).toBe(1);
  const text = whole.map((sheet) => sheet.text).join(' ');
  for (const title of ['From above', 'From the side', 'What works here', 'One standpoint'])
    expect(text).toContain(title);
  const cards = app.page.getByRole('button', { name: 'Cards for the day' });
  await cards.click();
  await app.page.getByRole('article').first().waitFor();
  expect((await printed(app)).map((sheet) => sheet.text).join(' ')).not.toContain('What works');
  await cards.click();
  expect((await printed(app)).map((sheet) => sheet.text).join(' ')).toContain('What works here');
});

test('the handout waits for its pictures, and prints them at the size of the paper', async ({
  fresh: app,
}) => {
  test.setTimeout(600_000);
  const { page } = app;
  // The browser's own dialog is not for tests: what it would have been given is looked at instead.
  await page.addInitScript(() => {
    window.print = () => {
      const paper = document.querySelector('.paper')?.getBoundingClientRect().width ?? Number.NaN;
      const dots = [...document.querySelectorAll<HTMLImageElement>('.photograph')].map(
        (image) =>
          image.naturalWidth / ((image.getBoundingClientRect().width / paper) * (210 / 25.4)),
      );
      document.body.dataset.dots = JSON.stringify(dots);
    };
  });
  await page.goto('?test#handout');
  await page.getByRole('button', { name: /^Kind of handout/ }).click();
  await page.getByRole('option', { name: /One comparison/ }).click();
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const handed = page.getByText('Handed to the browser’s own printing.');
  await expect(handed).toBeVisible({ timeout: 300_000 });
  const dots: number[] = JSON.parse((await page.locator('body').getAttribute('data-dots')) ?? '[]');
  expect(dots).toHaveLength(2);
  for (const each of dots) expect(Math.abs(each / 300 - 1)).toBeLessThan(0.02);
  const [sheet, ...others] = await printed(app);
  expect(others).toEqual([]);
  expect(sheet?.images).toBe(2);
  expect(sheet?.text).not.toContain('being rendered');
});

test('a talk prints the pictures that it shows', async ({ fresh: app }) => {
  await app.goto('?test#present');
  const sheets = await printed(app);
  expect(sheets.reduce((sum, { images }) => sum + images, 0)).toBeGreaterThanOrEqual(2);
});
