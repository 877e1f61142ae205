/** The cards on paper: what the browser's own PDF holds, and whether its drawings are to the scale they tell. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { demoSession } from '../../src/session/demo';
import { type App, expect, must, openPlan, test } from './plan-page';

const MM = 72 / 25.4;
/** How far a printed length may be off: of the drawing's own rounding. */
const TOLERANCE = 0.02;

interface Placed {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

interface Sheet {
  /** PDF points. */
  readonly width: number;
  readonly height: number;
  readonly texts: readonly Placed[];
}

async function printed(app: App, format: 'A4' | 'Letter'): Promise<Sheet[]> {
  const data = new Uint8Array(await app.page.pdf({ format, preferCSSPageSize: false }));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const sheets: Sheet[] = [];
  for (let i = 1; i <= pdf.numPages; i++) {
    const page = await pdf.getPage(i);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    sheets.push({
      width,
      height,
      texts: items.flatMap((item) =>
        'str' in item && item.str.trim() !== ''
          ? [{ text: item.str, x: item.transform[4], y: item.transform[5] }]
          : [],
      ),
    });
    expect((await page.getOperatorList()).fnArray).toContain(OPS.showText);
  }
  return sheets;
}

const textOf = ({ texts }: Sheet): string =>
  texts
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');

for (const format of ['A4', 'Letter'] as const) {
  test(`cards and drawings are whole on ${format}`, async ({ fresh: app }) => {
    await openPlan(app);
    await app.press('Cards for the day');
    const cards = app.page.getByRole('article');
    await cards.first().waitFor();
    const titles = (await app.page.locator('.cards .card h3').allInnerTexts()).map((text) =>
      text.replace(/\s+/g, ' ').replace(/^\d+/, ''),
    );
    expect(titles.length).toBeGreaterThanOrEqual(6);
    const sheets = await printed(app, format);
    expect(sheets.length).toBeGreaterThanOrEqual(2);
    expect(sheets.length).toBeLessThanOrEqual(4);
    const whole = sheets.map(textOf).join(' ');
    for (const title of titles) expect(whole).toContain(title);
    expect(whole).toContain('On the tape, from the sensor mark');
    // Nothing of the screen but the cards.
    expect(whole).not.toContain('Print the cards');
    expect(whole).not.toContain('What works here');
    for (const { width, height, texts } of sheets) {
      // 12 mm of margin on each side; a text's own length is not told here.
      for (const { text, x, y } of texts) {
        expect(x, text).toBeGreaterThan(11.5 * MM);
        expect(x, text).toBeLessThan(width - 11.5 * MM);
        expect(y, text).toBeGreaterThan(11.5 * MM);
        expect(y, text).toBeLessThan(height - 11.5 * MM);
      }
    }
    // A card stands on one sheet: its heading and its last line are together.
    for (const sheet of sheets) {
      const text = textOf(sheet);
      const count = (part: string) => text.split(part).length - 1;
      expect(count('On the tape, from the sensor mark')).toBe(count('Backdrop needed'));
    }
  });

  test(`drawings are to scale on ${format}`, async ({ fresh: app }) => {
    await openPlan(app);
    await app.press('Cards for the day');
    await app.page.getByRole('article').first().waitFor();
    const sheets = await printed(app, format);
    const sheet = must(sheets.find((each) => /The room, 1 : \d+/.test(textOf(each))));
    const scale = Number(must(/The room, 1 : (\d+)/.exec(textOf(sheet)))[1]);
    // The bar's figures: 0 begins at its left end, the middle ones stand centred below their marks.
    const zeros = sheet.texts.filter(({ text }) => text === '0');
    const ends = sheet.texts.filter(({ text }) => /^\d+(\.\d+)? m$/.test(text));
    let measured = 0;
    for (const zero of zeros) {
      const end = ends
        .filter(({ x, y }) => Math.abs(y - zero.y) < 1 && x > zero.x)
        .sort((a, b) => a.x - b.x)[0];
      if (!end) continue;
      const bar = await barOf(app, end.text);
      const paper = (end.x + bar.textHalf - zero.x) / MM;
      const wanted = (Number.parseFloat(end.text) * 1000) / scale;
      expect(Math.abs(paper / wanted - 1)).toBeLessThan(TOLERANCE);
      measured += 1;
    }
    // Each figure of both bars, which are drawn twice: its halo, then its ink.
    expect(measured).toBe(4);
  });
}

/** Half the width of the bar's last figure, points: the PDF tells where a text begins. */
const barOf = async (app: App, text: string): Promise<{ textHalf: number }> => {
  await app.page.emulateMedia({ media: 'print' });
  const width = await app.page
    .locator('.card-drawings text.plan-figure-text', { hasText: text })
    .first()
    .evaluate((node) => (node as SVGTextElement).getComputedTextLength());
  await app.page.emulateMedia({ media: null });
  return { textHalf: (width / 2) * 0.75 };
};

test('a session without a lens prints the list that says so', async ({ fresh: app }) => {
  const demo = demoSession();
  await openPlan(app, { ...demo, kits: [{ ...demo.kits[0], lenses: [] }] });
  await app.press('Cards for the day');
  await app.page.getByRole('article').first().waitFor();
  expect((await printed(app, 'A4')).map(textOf).join(' ')).toContain('Nothing that is wanted');
});
