/** A drawing of a page as paths and texts: vectors stay vectors. */
import { inkOf, isBold, multiply, type Place } from './place';
import type { Mark, Matrix, PathMark, TextMark } from './types';

const matrixOf = ({ a, b, c, d, e, f }: DOMMatrix): Matrix => [a, b, c, d, e, f];

/** Path data of a basic shape (SVG 2, 10.2 to 10.7, "equivalent path"). */
function pathData(shape: SVGGeometryElement): string {
  const n = (name: string) => Number.parseFloat(shape.getAttribute(name) ?? '0');
  switch (shape.localName) {
    case 'path':
      return shape.getAttribute('d') ?? '';
    case 'rect': {
      const [x, y, w, h] = [n('x'), n('y'), n('width'), n('height')];
      return w > 0 && h > 0 ? `M${x} ${y}h${w}v${h}h${-w}z` : '';
    }
    case 'line':
      return `M${n('x1')} ${n('y1')}L${n('x2')} ${n('y2')}`;
    case 'circle':
    case 'ellipse': {
      const [cx, cy] = [n('cx'), n('cy')];
      const rx = n(shape.localName === 'circle' ? 'r' : 'rx');
      const ry = n(shape.localName === 'circle' ? 'r' : 'ry');
      return rx > 0 && ry > 0
        ? `M${cx - rx} ${cy}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0z`
        : '';
    }
    case 'polyline':
      return `M${shape.getAttribute('points') ?? ''}`;
    case 'polygon':
      return `M${shape.getAttribute('points') ?? ''}z`;
    default:
      return '';
  }
}

const referred = (value: string): string | null =>
  /url\(["']?#([^"')]+)["']?\)/.exec(value)?.[1] ?? null;

const numbers = (list: string): number[] =>
  list === 'none' ? [] : list.split(/[ ,]+/).map((each) => Number.parseFloat(each));

class Drawing {
  private readonly marks: Mark[] = [];
  private readonly toPage: Matrix;
  private readonly inverse: DOMMatrix;

  constructor(
    private readonly svg: SVGSVGElement,
    place: Place,
  ) {
    const box = svg.getBoundingClientRect();
    const view = svg.viewBox.baseVal;
    const [width, height] = view?.width ? [view.width, view.height] : [box.width, box.height];
    const scale = Math.min(box.width / width, box.height / height) * place.scale;
    const spare = {
      x: (box.width * place.scale - width * scale) / 2,
      y: (box.height * place.scale - height * scale) / 2,
    };
    this.toPage = [
      scale,
      0,
      0,
      scale,
      (box.left - place.left) * place.scale + spare.x - (view?.x ?? 0) * scale,
      (box.top - place.top) * place.scale + spare.y - (view?.y ?? 0) * scale,
    ];
    this.inverse = (svg.getScreenCTM() as DOMMatrix).inverse();
  }

  read(): Mark[] {
    for (const child of this.svg.children) this.element(child as SVGElement, []);
    return this.marks;
  }

  /** From an element's own coordinates to the page's. The zoom of the page drops out. */
  private matrix(element: SVGGraphicsElement): Matrix {
    const own = this.inverse.multiply(element.getScreenCTM() as DOMMatrix);
    return multiply(this.toPage, matrixOf(own));
  }

  private element(element: SVGElement, clips: PathMark['clips']): void {
    const style = getComputedStyle(element);
    if (style.display === 'none' || style.visibility === 'hidden') return;
    if (['defs', 'pattern', 'clipPath', 'title', 'desc', 'style'].includes(element.localName))
      return;
    const clip = referred(style.clipPath);
    const inner = clip ? [...clips, ...this.clip(clip, element as SVGGraphicsElement)] : clips;
    if (element instanceof SVGTextElement) this.text(element, style);
    else if (element instanceof SVGGeometryElement) this.shape(element, style, inner);
    else for (const child of element.children) this.element(child as SVGElement, inner);
  }

  private clip(id: string, user: SVGGraphicsElement): PathMark['clips'] {
    const path = this.svg.ownerDocument.getElementById(id);
    const matrix = this.matrix(user);
    return [...(path?.children ?? [])].flatMap((shape) =>
      shape instanceof SVGGeometryElement ? [{ d: pathData(shape), matrix }] : [],
    );
  }

  private shape(
    shape: SVGGeometryElement,
    style: CSSStyleDeclaration,
    clips: PathMark['clips'],
  ): void {
    const d = pathData(shape);
    if (d === '') return;
    const matrix = this.matrix(shape);
    const opacity = Number(style.opacity);
    const pattern = referred(style.fill);
    if (pattern) this.pattern(pattern, shape, [...clips, { d, matrix }]);
    const fill = pattern ? null : inkOf(style.fill, Number(style.fillOpacity) * opacity);
    const ink = inkOf(style.stroke, Number(style.strokeOpacity) * opacity);
    const width = Number.parseFloat(style.strokeWidth);
    const stroke =
      ink && width > 0 ? { ...ink, width, dash: numbers(style.strokeDasharray) } : null;
    if (!fill && !stroke) return;
    this.marks.push({
      kind: 'path',
      d,
      matrix,
      fill,
      stroke,
      cap: style.strokeLinecap as PathMark['cap'],
      join: style.strokeLinejoin as PathMark['join'],
      clips,
    });
  }

  /** A pattern's tiles, laid over the box of what it fills and cut to it. */
  private pattern(id: string, shape: SVGGeometryElement, clips: PathMark['clips']): void {
    const pattern = this.svg.ownerDocument.getElementById(id);
    if (!(pattern instanceof SVGPatternElement)) return;
    const [w, h] = [pattern.width.baseVal.value, pattern.height.baseVal.value];
    const own = pattern.patternTransform.baseVal.consolidate()?.matrix;
    const turn = own ? new DOMMatrix([own.a, own.b, own.c, own.d, own.e, own.f]) : new DOMMatrix();
    const box = shape.getBBox();
    const back = turn.inverse();
    const corners = [0, 1, 2, 3].map((i) =>
      new DOMPoint(box.x + (i & 1) * box.width, box.y + (i >> 1) * box.height).matrixTransform(
        back,
      ),
    );
    const span = (values: number[], step: number) => [
      Math.floor(Math.min(...values) / step),
      Math.ceil(Math.max(...values) / step),
    ];
    const [left, right] = span(
      corners.map(({ x }) => x),
      w,
    ) as [number, number];
    const [top, bottom] = span(
      corners.map(({ y }) => y),
      h,
    ) as [number, number];
    const base = multiply(this.matrix(shape), matrixOf(turn));
    for (const part of pattern.children) {
      if (!(part instanceof SVGGeometryElement)) continue;
      const style = getComputedStyle(part);
      const ink = inkOf(style.stroke);
      const fill = inkOf(style.fill);
      for (let i = left; i < right; i++)
        for (let j = top; j < bottom; j++)
          this.marks.push({
            kind: 'path',
            d: pathData(part),
            matrix: multiply(base, [1, 0, 0, 1, i * w, j * h]),
            fill: ink ? null : fill,
            stroke: ink && { ...ink, width: Number.parseFloat(style.strokeWidth), dash: [] },
            cap: 'butt',
            join: 'miter',
            clips,
          });
    }
  }

  private text(text: SVGTextElement, whole: CSSStyleDeclaration): void {
    const matrix = this.matrix(text);
    const walker = text.ownerDocument.createTreeWalker(text, NodeFilter.SHOW_TEXT);
    let from = 0;
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const data = (node as Text).data.replace(/\s+/g, ' ');
      const count = Math.min(data.length, text.getNumberOfChars() - from);
      if (data.trim() !== '' && count > 0) {
        const style = getComputedStyle(node.parentElement as Element);
        const at = text.getStartPositionOfChar(from);
        const ink = inkOf(style.fill, Number(style.fillOpacity) * Number(whole.opacity));
        const width = text.getSubStringLength(from, count);
        const size = Number.parseFloat(style.fontSize);
        if (style.stroke !== 'none' && style.paintOrder.startsWith('stroke'))
          this.marks.push(this.ground(at, width, size, matrix));
        if (ink)
          this.marks.push({
            kind: 'text',
            text: data,
            x: at.x,
            baseline: at.y,
            size,
            bold: isBold(style),
            width,
            ink,
            matrix,
          } satisfies TextMark);
      }
      from += count;
    }
  }

  /** White paper under a text that keeps clear of the lines it lies on. */
  private ground(at: DOMPoint, width: number, size: number, matrix: Matrix): PathMark {
    const [above, below] = [0.72 * size, 0.2 * size];
    return {
      kind: 'path',
      d: `M${at.x} ${at.y - above}h${width}v${above + below}h${-width}z`,
      matrix,
      fill: { colour: '#ffffff', opacity: 1 },
      stroke: null,
      cap: 'butt',
      join: 'miter',
      clips: [],
    };
  }
}

export const readSvg = (svg: SVGSVGElement, place: Place): Mark[] => new Drawing(svg, place).read();
