/** A page of the handout, as the browser has laid it out, as marks and their meaning. */
import { inkOf, type Place, POINTS_PER_MM } from './place';
import { readSvg } from './readSvg';
import { readText } from './readText';
import type { Block, Ink, Mark, PaperPage, PathMark, Tag } from './types';

const TAGS: Readonly<Record<string, Tag>> = {
  h2: 'H1',
  h3: 'H2',
  h4: 'H3',
  p: 'P',
  dt: 'P',
  dd: 'P',
  ol: 'L',
  ul: 'L',
  li: 'LI',
  table: 'Table',
  tr: 'TR',
  th: 'TH',
  td: 'TD',
  figcaption: 'Caption',
};

const box = (x: number, y: number, w: number, h: number, fill: Ink): PathMark => ({
  kind: 'path',
  d: `M${x} ${y}h${w}v${h}h${-w}z`,
  matrix: [1, 0, 0, 1, 0, 0],
  fill,
  stroke: null,
  cap: 'butt',
  join: 'miter',
  clips: [],
});

/** The ground and the edges of an element, as filled boxes. */
function surface(element: Element, style: CSSStyleDeclaration, place: Place): PathMark[] {
  const { left, top, width, height } = element.getBoundingClientRect();
  const k = place.scale;
  const [x, y, w, h] = [(left - place.left) * k, (top - place.top) * k, width * k, height * k];
  const marks: PathMark[] = [];
  const ground = inkOf(style.backgroundColor);
  if (ground && ground.colour !== '#ffffff') marks.push(box(x, y, w, h, ground));
  // A zoomed page's borders are as wide as its boxes say, not as its style says.
  const zoom = width / ((element as HTMLElement).offsetWidth || width);
  const edge = (side: 'Top' | 'Right' | 'Bottom' | 'Left') => {
    const wide = Number.parseFloat(style[`border${side}Width`]) * zoom * k;
    const ink = style[`border${side}Style`] === 'none' ? null : inkOf(style[`border${side}Color`]);
    return ink && wide > 0 ? { wide, ink } : null;
  };
  const [above, right, below, before] = [edge('Top'), edge('Right'), edge('Bottom'), edge('Left')];
  if (above) marks.push(box(x, y, w, above.wide, above.ink));
  if (below) marks.push(box(x, y + h - below.wide, w, below.wide, below.ink));
  if (before) marks.push(box(x, y, before.wide, h, before.ink));
  if (right) marks.push(box(x + w - right.wide, y, right.wide, h, right.ink));
  return marks;
}

function image(element: HTMLImageElement, place: Place): Mark {
  const { left, top, width, height } = element.getBoundingClientRect();
  const k = place.scale;
  return {
    kind: 'image',
    x: (left - place.left) * k,
    y: (top - place.top) * k,
    width: width * k,
    height: height * k,
    element,
  };
}

/** "1." or "•" before a list's item; the browser does not tell where it stands. */
function itemMark(
  item: Element,
  style: CSSStyleDeclaration,
  own: readonly (Mark | Block)[],
): Mark[] {
  const first = own
    .flatMap(function marks(part): Mark[] {
      return 'tag' in part ? part.parts.flatMap(marks) : [part];
    })
    .find((mark) => mark.kind === 'text');
  if (first?.kind !== 'text' || style.listStyleType === 'none') return [];
  const ordered = item.parentElement?.localName === 'ol';
  const number = [...(item.parentElement?.children ?? [])].indexOf(item) + 1;
  const text = ordered ? `${number}.` : '•';
  const width = (ordered ? 0.95 : 0.4) * first.size;
  return [{ ...first, text, x: first.x - width - 0.5 * first.size, width }];
}

function children(element: Element, place: Place): (Mark | Block)[] {
  return [...element.childNodes].flatMap((node): (Mark | Block)[] => {
    if (node instanceof Text) return readText(node, place);
    return node instanceof Element ? read(node, place) : [];
  });
}

function read(element: Element, place: Place): (Mark | Block)[] {
  const style = getComputedStyle(element);
  if (style.display === 'none' || style.visibility === 'hidden') return [];
  if (element.classList.contains('unseen')) return [];
  if (element instanceof SVGSVGElement) {
    const alt = element.getAttribute('aria-label');
    const parts = readSvg(element, place);
    return [alt === null ? { tag: 'Artifact', parts } : { tag: 'Figure', alt, parts }];
  }
  if (element instanceof HTMLImageElement)
    return [{ tag: 'Figure', alt: element.alt, parts: [image(element, place)] }];
  const ground = surface(element, style, place);
  const inner = children(element, place);
  const before: Block[] = ground.length > 0 ? [{ tag: 'Artifact', parts: ground }] : [];
  const tag = TAGS[element.localName];
  if (!tag) return [...before, ...inner];
  if (tag === 'LI')
    return [{ tag, parts: [...before, ...itemMark(element, style, inner), ...inner] }];
  return [{ tag, parts: [...before, ...inner] }];
}

/** @param size of the sheet, millimetres */
export function readPage(
  page: HTMLElement,
  size: { readonly width: number; readonly height: number },
): PaperPage {
  const { left, top, width } = page.getBoundingClientRect();
  const place: Place = { left, top, scale: (size.width * POINTS_PER_MM) / width };
  return {
    width: size.width * POINTS_PER_MM,
    height: size.height * POINTS_PER_MM,
    title: page.querySelector('h2')?.textContent ?? '',
    content: { tag: 'Sect', parts: children(page, place) },
  };
}
