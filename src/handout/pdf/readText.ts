/** The texts of a page as the browser has set them: one mark a line and face. */
import { inkOf, isBold, type Place } from './place';
import type { TextMark } from './types';

/** What the browser keeps for a face above and below the baseline, by the face. */
const heights = new Map<string, { readonly ascent: number; readonly descent: number }>();

function heightsOf(style: CSSStyleDeclaration): {
  readonly ascent: number;
  readonly descent: number;
} {
  const font = `${style.fontWeight} 100px ${style.fontFamily}`;
  const known = heights.get(font);
  if (known) return known;
  const pen = new OffscreenCanvas(1, 1).getContext('2d');
  if (!pen) throw new Error('the browser gives no canvas');
  pen.font = font;
  const { fontBoundingBoxAscent: ascent, fontBoundingBoxDescent: descent } = pen.measureText('x');
  const own = { ascent: ascent / 100, descent: descent / 100 };
  heights.set(font, own);
  return own;
}

interface Word {
  readonly text: string;
  readonly box: DOMRect;
}

/** Each word's own box; a word that is broken over two lines is two words. */
function words(node: Text): Word[] {
  const range = node.ownerDocument.createRange();
  const found: Word[] = [];
  for (const match of node.data.matchAll(/\S+/g)) {
    range.setStart(node, match.index);
    range.setEnd(node, match.index + match[0].length);
    const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
    if (boxes.length === 1) found.push({ text: match[0], box: boxes[0] as DOMRect });
    else found.push(...letters(node, match.index, match[0]));
  }
  return found;
}

function letters(node: Text, from: number, word: string): Word[] {
  const range = node.ownerDocument.createRange();
  const found: { text: string; box: DOMRect }[] = [];
  for (let i = 0; i < word.length; i++) {
    range.setStart(node, from + i);
    range.setEnd(node, from + i + 1);
    const box = range.getBoundingClientRect();
    const last = found.at(-1);
    if (last && isSameLine(last.box, box)) {
      const right = Math.max(last.box.right, box.right);
      last.text += word[i];
      last.box = new DOMRect(last.box.left, last.box.top, right - last.box.left, last.box.height);
    } else found.push({ text: word[i] as string, box });
  }
  return found;
}

const isSameLine = (a: DOMRect, b: DOMRect): boolean => Math.abs(a.top - b.top) < a.height / 2;

/** The marks of one text node. */
export function readText(node: Text, place: Place): TextMark[] {
  const parent = node.parentElement;
  if (!parent || node.data.trim() === '') return [];
  const style = getComputedStyle(parent);
  const ink = inkOf(style.color);
  if (!ink) return [];
  const { ascent, descent } = heightsOf(style);
  const upper = style.textTransform === 'uppercase';
  const lines: Word[][] = [];
  for (const word of words(node)) {
    const line = lines.at(-1);
    const last = line?.at(-1);
    if (line && last && isSameLine(last.box, word.box)) line.push(word);
    else lines.push([word]);
  }
  return lines.map((line): TextMark => {
    const first = (line[0] as Word).box;
    const right = Math.max(...line.map(({ box }) => box.right));
    const left = Math.min(...line.map(({ box }) => box.left));
    const size = (first.height / (ascent + descent)) * place.scale;
    const text = line.map((word) => word.text).join(' ');
    return {
      kind: 'text',
      text: upper ? text.toUpperCase() : text,
      x: (left - place.left) * place.scale,
      baseline: (first.top - place.top) * place.scale + ascent * size,
      size,
      bold: isBold(style),
      width: (right - left) * place.scale,
      ink,
    };
  });
}
