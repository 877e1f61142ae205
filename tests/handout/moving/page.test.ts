import { describe, expect, it } from 'vitest';
import { movingPage } from '../../../src/handout/moving/page';
import type { MovingContent, MovingFrame } from '../../../src/handout/moving/types';

const NONCE = '0123456789abcdef';
const HOSTILE = `</script><script>alert(1)</script>"'><img src=x onerror=alert(2)>&amp; ${'\u2028'}`;

const frame = (standpoint: number, text: string): MovingFrame => ({
  image: 'data:image/webp;base64,AAAA',
  alt: text,
  title: text,
  details: [text, text],
  cells: [text],
  standpoint,
  place: text,
  changes: text,
  says: [text],
});

const content = (text: string): MovingContent => ({
  language: 'en',
  title: text,
  lead: text,
  labels: { slider: text, hint: text, measured: text, noScript: text },
  size: { width: 2, height: 3 },
  letters: { start: text, moving: text },
  accents: { start: 'black', moving: 'navy' },
  ends: [text, text],
  fonts: [{ weight: 400, address: 'data:font/woff2;base64,AAAA' }],
  start: frame(0.4, text),
  rows: [text],
  frames: [frame(0.4, text), frame(2.4, text)],
  notes: [text],
});

describe('the moving page', () => {
  it('lets no text become markup, whatever it holds', () => {
    const page = movingPage(content(HOSTILE), NONCE);
    const plain = movingPage(content('plain'), NONCE);
    const tags = (html: string) => html.match(/<[a-z/!][^\s>]*/gi);
    expect(tags(page)).toEqual(tags(plain));
  });

  it('gives its frames back as they were put in', () => {
    const own = content(HOSTILE);
    const json = /<script type="application\/json" id="frames">(.*?)<\/script>/s.exec(
      movingPage(own, NONCE),
    )?.[1];
    expect(JSON.parse(json ?? '')).toEqual(own.frames);
  });

  it('names no address to fetch from, and forbids fetching', () => {
    const page = movingPage(content('plain'), NONCE);
    expect(page).not.toMatch(/https?:|\/\/[a-z]|@import/i);
    const addresses = [...page.matchAll(/(?:src=|href=|url\()"([^"]*)"/g)].map(
      ([, address]) => address,
    );
    for (const address of addresses) expect(address).toMatch(/^data:/);
    expect(page).toContain(`default-src 'none'; img-src data:;`);
    expect(page.match(/nonce="0123456789abcdef"/g)).toHaveLength(2);
    expect(page).not.toContain('unsafe-inline');
  });

  it('leaves the first picture out where the moving one is alone', () => {
    const alone = movingPage({ ...content('plain'), start: null }, NONCE);
    expect(alone.match(/<figure/g)).toHaveLength(1);
    expect(alone.match(/<td class="number/g)).toHaveLength(1);
  });
});
